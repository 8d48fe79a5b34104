/**
 * Validating a recipe beside the same schema in the classic form of the schema library, with the same readers and without any, a
 * validator that compiles JSON Schema, and reading the same bytes as JSON; planning it beside the bare arithmetic of the same plan;
 * classes.
 */
import Ajv from 'ajv/dist/2020.js'
import { Decimal as Shared } from 'decimal.js'
import { assessPreparation, planClass, planPreparation, recipeJsonSchema, recipeSchema } from 'saltwright/preparation'
import { classicForm } from './classic-form.mjs'
import { atMost, timed } from './harness.mjs'

const Decimal = Shared.clone({ defaults: true, precision: 34, rounding: 6 })

/** Two stages and four supplies, with cooling, washes and cautions: nothing is left out. The amounts are invented. */
export const recipe = {
  format: 'saltwright/recipe@1',
  title: 'Ammonium iron(II) sulfate hexahydrate',
  product: '(NH4)2Fe(SO4)2·6H2O',
  scale: { of: 'Fe', amount: '0.0300 mol' },
  stages: [
    { name: 'Dissolve', equation: 'Fe(s) + H2SO4(aq) -> FeSO4(aq) + H2(g)', steps: ['Warm on a water bath.'] },
    { name: 'Join and crystallise', equation: 'FeSO4 + H2SO4 + 2NH3 + 6H2O -> (NH4)2Fe(SO4)2·6H2O' },
  ],
  supplies: [
    { form: 'solid', substance: 'Fe', name: 'iron powder', assay: '99.5 %' },
    { form: 'solution', substance: 'H2SO4', stage: 'Dissolve', concentration: '3.00 mol/L', excessFactor: '1.20' },
    { form: 'solution', substance: 'H2SO4', stage: 'Join and crystallise', concentration: '3.00 mol/L' },
    { form: 'stock', substance: 'NH3', massFraction: '25 %', density: '0.91 g/mL', excessFactor: '1.05' },
  ],
  instruments: { balance: '0.001 g', cylinder: '0.1 mL', cylinderCapacity: '25 mL' },
  crystallisation: { temperature: '5 degC', water: '20 mL', evaporated: '5 mL' },
  washes: [{ with: 'cold ethanol', volume: '3 mL', portions: 3, substance: 'C2H6O' }],
  operations: ['evaporate', 'suction', 'dry'],
}
const records = {
  format: 'saltwright/records@1',
  supplies: [{ substance: 'Fe', gross: '25.913 g', tare: '24.217 g' }],
  product: { tare: '11.204 g', series: ['20.931 g', '20.918 g', '20.917 g'], constancy: { within: '0.005 g' } },
}

const classic = classicForm(recipeSchema)
const shape = classicForm(recipeSchema, false)
const bytes = JSON.stringify(recipe)
const compiled = new Ajv({ strict: false }).compile(recipeJsonSchema())

/** What a person would work out of it with a calculator: the amounts, masses and volumes of the sheet. */
function bareArithmetic() {
  const weights = { H: '1.0080', N: '14.007', O: '15.999', S: '32.06', Fe: '55.845' }
  const mass = (counts) =>
    Object.entries(counts).reduce(
      (sum, [symbol, count]) => sum.plus(new Decimal(weights[symbol]).times(count)),
      new Decimal(0),
    )
  const n = new Decimal('0.0300')
  const iron = n.times(mass({ Fe: 1 })).div('0.995')
  const first = n.times('1.20')
  const left = first.minus(n)
  const ammonia = new Decimal('0.25').times('910').div(mass({ N: 1, H: 3 }))
  const product = mass({ N: 2, H: 20, Fe: 1, S: 2, O: 14 })
  return [
    iron,
    first.div('3.00').times(1000),
    n.minus(left).div('3.00').times(1000),
    n.times(2).times('1.05').div(ammonia).times(1000),
    n.times(product),
    left.div(n).times(100),
    n.times('8.314462618').times('298.15').div(100),
  ]
}

function benches(count) {
  return Array.from({ length: count }, (_, index) => ({
    name: `Bench ${index + 1}`,
    scale: { amount: `0.0${200 + (index % 700)} mol` },
  }))
}

/** Turns of ten milliseconds or less: in longer ones the machine hardly ever does nothing else. */
const plans = 10
const readings = 200
const often = (calls, call) => () => {
  for (let count = 0; count < calls; count += 1) call()
}

export function measure() {
  const misspelt = { ...recipe, product: 'ZnSo4' }
  if (![recipeSchema, classic, shape].every((schema) => schema.safeParse(recipe).success) || !compiled(recipe))
    throw new Error('all of them accept the recipe')
  if ([recipeSchema, classic].some((schema) => schema.safeParse(misspelt).success))
    throw new Error('those that read the texts refuse a misspelt one')
  if (!shape.safeParse(misspelt).success || !compiled(misspelt)) throw new Error('the shape alone has no misspelt text')
  if (planPreparation(recipe).cooling?.known !== true) throw new Error('the plan has everything')
  const planning = timed(
    [
      { name: 'planPreparation, two stages, four supplies', run: often(plans, () => planPreparation(recipe)) },
      { name: 'the bare arithmetic of the plan in decimal.js', run: often(plans, bareArithmetic) },
      { name: 'assessPreparation', run: often(plans, () => assessPreparation(recipe, records)) },
    ],
    { rounds: 100, items: plans },
  )
  const validating = timed(
    [
      { name: 'recipeSchema.safeParse, every text read', run: often(readings, () => recipeSchema.safeParse(recipe)) },
      {
        name: 'schema library, classic form, the same readers',
        run: often(readings, () => classic.safeParse(recipe)),
      },
      { name: 'schema library, classic form, the shape alone', run: often(readings, () => shape.safeParse(recipe)) },
      { name: 'compiled JSON Schema, the shape alone', run: often(readings, () => compiled(recipe)) },
      { name: 'JSON.parse of the same bytes', run: often(readings, () => JSON.parse(bytes)) },
    ],
    { rounds: 100, items: readings },
  )
  const [ours, same, alone] = validating
  const list = benches(1000)
  const classes = timed([{ name: 'planClass, each of a thousand benches', run: () => planClass(recipe, list) }], {
    rounds: 5,
    items: list.length,
  })
  return {
    title: 'Preparations',
    about: `Microseconds for each recipe, plan or bench. Validating reads every formula, equation and number with its unit, which takes most of the time: ${(ours.time / alone.time).toFixed(0)} times what the schema library takes for the shape alone, in which any text passes. Its classic form, which we do not ship, also compiles the schema to a function, which pages may forbid.`,
    rows: [...planning, ...validating, ...classes],
    targets: [
      atMost('milliseconds for a plan of two stages and four supplies', 1, planning[0].time / 1000),
      atMost('seconds for a class of a thousand benches', 1, (classes[0].time * list.length) / 1e6),
      atMost(
        'times the classic form of the schema library with the same readers, to validate',
        1,
        ours.time / same.time,
      ),
    ],
  }
}
