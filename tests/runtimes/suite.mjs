/**
 * What has to work wherever JavaScript does: read, weigh, balance, plan, assess, write, review, store and read again, refuse. No API of
 * any runtime is used here but `console`.
 */

/** The doors that the suite walks through. */
export const doors = [
  'saltwright',
  'saltwright/quantity',
  'saltwright/formula',
  'saltwright/equation',
  'saltwright/preparation',
  'saltwright/review',
  'saltwright/report',
]

const recipe = {
  format: 'saltwright/recipe@1',
  title: 'Zinc sulfate heptahydrate',
  product: 'ZnSO4·7H2O',
  scale: { of: 'ZnO', amount: '0.0400 mol' },
  stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
  supplies: [
    { form: 'solid', substance: 'ZnO' },
    { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
  ],
}
const records = { format: 'saltwright/records@1', product: { gross: '20.317 g', tare: '11.204 g' } }

/** Goes through everything with the modules of the doors; throws at the first thing that is not as it should be. */
export function suite(modules) {
  const [front, quantities, formulas, equations, preparations, reviews, reports] = modules
  const checks = []
  const same = (what, found, expected) => {
    if (String(found) !== String(expected)) throw new Error(`${what}: ${found}, not ${expected}`)
    checks.push(what)
  }
  numbers(quantities, same)
  same('a formula', formulas.molarMass('(NH4)2Fe(SO4)2·6H2O'), '392.12 g/mol')
  same(
    'an equation',
    equations.balance('Al + KOH + H2O -> K[Al(OH)4] + H2'),
    '2 Al + 2 KOH + 6 H2O -> 2 K[Al(OH)4] + 3 H2',
  )
  refusals(front, same)
  preparation({ preparations, reviews, reports }, same)
  same('one copy behind all doors', front.quantity === quantities.quantity, true)
  return checks.length
}

function numbers({ quantity, standardUncertainty, calculationToJSON, calculationFromJSON }, same) {
  const tare = quantity('11.2040(2) g')
  const net = quantity('18.6320(2) g').minus(tare)
  same('a difference', net, '7.4280 g')
  same('an uncertainty', standardUncertainty(net), '0.00028 g')
  same('a spelling', quantity('0.0400 mol').to('mmol'), '40.0 mmol')
  const [again] = calculationFromJSON(JSON.parse(JSON.stringify(calculationToJSON([net]))))
  same('a calculation as JSON', standardUncertainty(again), '0.00028 g')
}

function refusals({ tryParseFormula, tryQuantity, isSaltwrightError }, same) {
  const { ok, error } = tryParseFormula('cuso4')
  same('a refusal', `${ok} ${error.code} ${error.hint}`, 'false formula/unknown-symbol CuSO4?')
  same('a guard', isSaltwrightError(tryQuantity('3,98 g').error), true)
}

function preparation({ preparations, reviews, reports }, same) {
  const plan = preparations.planPreparation(recipe)
  same('a plan', plan.supplies.map(({ measure }) => measure).join(), '3.255 g,14.7 mL')
  const stored = JSON.parse(JSON.stringify(plan))
  same('a plan from JSON', preparations.planPreparation(stored.recipe).theoretical.mass, plan.theoretical.mass)
  const assessment = preparations.assessPreparation(recipe, records)
  same('a yield', assessment.percentYield, '79.23 %')
  same('a sheet', reports.benchSheet(plan, 'markdown').split('\n')[0], '# Zinc sulfate heptahydrate')
  same('a review', reviews.reviewAnswer(plan.theoretical.mass, '11.502 g').verdict, 'agrees')
  same('a schema', preparations.recipeSchema.safeParse({ format: 'none' }).success, false)
  same('a JSON Schema', preparations.recipeJsonSchema().type, 'object')
}
