/** The readers of the library, each with what it is fed, what has to hold of what it accepts, and how long it may take. */
import { readdirSync, readFileSync } from 'node:fs'
import * as s from 'saltwright'
import { calculationFromJSON, calculationToJSON, fromJSON, toJSON } from 'saltwright/quantity'
import * as grammars from './grammars.mjs'
import * as check from './invariants.mjs'
import { anything, mutatedDocument } from './json.mjs'
import { mutated, nonsense, repeated } from './texts.mjs'

const examples = new URL('../../docs/examples/', import.meta.url)

function documents(folder) {
  const names = readdirSync(new URL(folder, examples)).sort()
  return names.map((name) => JSON.parse(readFileSync(new URL(folder + name, examples), 'utf8')))
}

const recipes = documents('recipes/')
const records = documents('records/')
const recipeOf = new Map(
  readdirSync(new URL('records/', examples))
    .sort()
    .map((name, index) => [records[index], name.replace(/-bench-\d+\.json$/, '.json')]),
)
const recipeByName = new Map(
  readdirSync(new URL('recipes/', examples))
    .sort()
    .map((name, index) => [name, recipes[index]]),
)

/** Text for a reader of text: generated, changed, senseless or very long. */
function textFrom(generate, pieces, longest = 200_000) {
  return (random) => {
    const kind = random.below(1000)
    if (kind === 0) return repeated(random, pieces, longest)
    if (kind < 20) return repeated(random, pieces, 300)
    if (kind < 120) return nonsense(random, pieces)
    const text = generate(random)
    return kind < 550 ? text : mutated(random, text, [generate(random), generate(random)])
  }
}

/** A slip in a text of a document, of the kind the text looks like. */
function textOf(random, text) {
  const other = random.pick([grammars.quantity, grammars.formula, grammars.equation, grammars.numeral])(random)
  if (random.oneIn(6)) return other
  const digits = text.replace(/\d/, () => String(random.below(10)))
  return random.oneIn(3) ? digits : mutated(random, text, [other, text])
}

const documentFrom = (list, random) =>
  random.oneIn(12)
    ? anything(random, [...recipes, ...records])
    : mutatedDocument(random, random.pick(list), { documents: [...recipes, ...records], textOf })

const benches = Array.from({ length: 3 }, (_, index) => ({
  name: `Bench ${index + 1}`,
  scale: { amount: `0.0${index + 3}00 mol` },
}))
const classes = recipes.map((recipe) => ({
  recipe,
  benches: [...benches, { name: 'Bench 4', scale: { mass: '5.00 g' } }],
  options: { spare: { percent: '20 %' }, containers: { volume: '50 mL', mass: '5 g' } },
}))

const tare = s.quantity('11.2040(2) g', { id: 'tare' })
const crop = s.quantity('18.632 g').minus(tare)
const calculations = [
  [s.quantity('3.980 g')],
  [s.exact('0.0400 mol'), s.quantity('250 mL'), s.quantity('25.0 degC').to('K')],
  [crop, s.quantity('19.1100(2) g').minus(tare)],
  [s.mean([crop, tare]), s.squareRoot(s.quantity('2.0')), s.power(s.quantity('1.5'), 3)],
  [s.percentYield(crop, '11.502 g'), s.molarMass('ZnSO4·7H2O')],
  [
    s.roundTo(s.quantity('2.346 g'), { figures: 2 }),
    s.logarithm(s.quantity('1.0e-7')),
    s.antilogarithm(s.quantity('0.5')),
  ],
].map((list) => JSON.parse(JSON.stringify(calculationToJSON(list))))
const numbers = calculations.flatMap((saved) =>
  calculationFromJSON(saved).map((q) => JSON.parse(JSON.stringify(toJSON(q)))),
)

/** A name, the input, the reader, the check, and the most microseconds for each character beside a fixed part. */
export const readers = [
  {
    name: 'numeral',
    input: textFrom(grammars.numeral, ['1', '0', '.', 'e', ' ', '000 ', '-']),
    read: (text) => s.countFigures(text),
    check: (count, text) => check.checkNumeral(text, count),
    limit: { fixed: 2, perCharacter: 0.001 },
  },
  {
    name: 'quantity',
    input: textFrom(grammars.quantity, ['1', '0', '.', '(', ')', ' ± ', ' g', ' mL', '%']),
    read: (text) => s.quantity(text),
    check: check.checkQuantity,
    limit: { fixed: 2, perCharacter: 0.001 },
  },
  {
    name: 'formula',
    input: textFrom(grammars.formula, ['H', '2', '(', ')', '[', '·', '7H2O', '^', '-', 'Co', 'SO4', '(H', 'x']),
    read: (text) => s.parseFormula(text),
    check: check.checkFormula,
    limit: { fixed: 5, perCharacter: 0.001 },
  },
  {
    name: 'equation',
    input: textFrom(grammars.equation, ['H2 + ', ' -> ', 'O2', ' + ', '2', '(', '+', 'Fe^2+ + ', ' = ', '·', '(aq)']),
    read: (text) => s.parseEquation(text),
    check: check.checkEquation,
    limit: { fixed: 5, perCharacter: 0.002 },
  },
  {
    name: 'recipe',
    input: (random) => documentFrom(recipes, random),
    read: (recipe) => s.planPreparation(recipe),
    check: check.checkPlan,
    limit: { fixed: 100, perCharacter: 0.05 },
  },
  {
    name: 'records',
    input: (random) => {
      const given = random.pick(records)
      return { recipe: recipeByName.get(recipeOf.get(given)), records: documentFrom([given], random) }
    },
    read: (input) => s.assessPreparation(input.recipe, input.records),
    check: check.checkAssessment,
    limit: { fixed: 100, perCharacter: 0.05 },
  },
  {
    name: 'class',
    input: (random) => {
      const { recipe, ...rest } = random.pick(classes)
      const list = documentFrom([rest], random)
      const parts = Object(list)
      return { recipe, benches: tried(() => parts.benches), options: tried(() => parts.options) }
    },
    read: (input) => s.planClass(input.recipe, input.benches, input.options),
    check: check.checkClass,
    limit: { fixed: 200, perCharacter: 0.1 },
  },
  {
    name: 'quantity as JSON',
    input: (random) => documentFrom([...numbers, ...calculations], random),
    read: (json) => fromJSON(json),
    check: (q) => check.checkSaved([q]),
    limit: { fixed: 50, perCharacter: 0.05 },
  },
  {
    name: 'calculation as JSON',
    input: (random) => documentFrom(calculations, random),
    read: (json) => calculationFromJSON(json),
    check: check.checkSaved,
    limit: { fixed: 50, perCharacter: 0.05 },
  },
]

function tried(read) {
  try {
    return read()
  } catch {
    return undefined
  }
}
