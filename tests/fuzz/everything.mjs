/** Every function of the front door with anything in every place: whatever comes in, only errors of the library come out. */
import * as s from 'saltwright'
import { anything, Trap } from './json.mjs'

const { exact, parseEquation, parseFormula, planPreparation, quantity } = s

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

const texts = [
  '3.977 g',
  '0.0400 mol',
  '25.00 mL',
  '2 mol/L',
  '1.84 g/mL',
  '96 %',
  '1.2',
  '20 degC',
  '-3 g',
  '0 g',
  '0',
  '1e130',
  '1e-130 g',
  'ZnSO4·7H2O',
  'ZnSO4',
  'H2O',
  'Zn',
  'e^-',
  'SO4^2-',
  'ZnO + H2SO4 -> ZnSO4 + H2O',
  'H2 + O2 -> H2O',
  'acid',
  'base',
  'plain',
  'latex',
  'half-up',
  'abridged',
  'g',
  'mol',
  '',
]

/** Values that fit somewhere, so that calls get past the first guard. */
const fitting = [
  ...texts,
  1,
  2,
  0.5,
  95,
  ...texts.slice(0, 9).map((text) => quantity(text)),
  exact('0.04 mol'),
  exact(2),
  quantity('5.00 g').minus(quantity('1.00 g')),
  parseFormula('ZnSO4·7H2O'),
  parseFormula('SO4^2-'),
  parseEquation('ZnO + H2SO4 -> ZnSO4 + H2O'),
  recipe,
  planPreparation(recipe),
  ['1.00 g', '1.01 g'],
  [quantity('1.00 g'), quantity('1.01 g')],
  [],
  {},
]

const keys = Array.from(
  new Set(
    [
      'of amount mass volume formula gas substance substances equation times crystal water temperature dissolved evaporated',
      'solubility form concentration massFraction density molality normality equivalentsPerMole from to target stock',
      'actual theoretical gross tare weighings criterion within sample residue sought blank purity weights x figures place',
      'rule replace with round conversion factor label symbol role uncertainty coverageFactor standard halfWidth',
      'distribution degreesOfFreedom expanded level style medium wrongSide substances neutralisation operations gases',
      'format benches options name scale extent titrant assay weighedAs table product',
    ].flatMap((line) => line.split(' ')),
  ),
)

function argument(random, depth = 0) {
  if (random.oneIn(5)) return anything(random, [recipe])
  if (depth > 2 || random.below(10) < 6) return random.pick(fitting)
  if (random.oneIn(3)) return random.many(3, () => argument(random, depth + 1))
  return Object.fromEntries(random.many(6, () => [random.pick(keys), argument(random, depth + 1)]))
}

const functions = Object.entries(s).filter(([, value]) => typeof value === 'function' && !/^class/.test(String(value)))
const methods = ['plus', 'minus', 'times', 'dividedBy', 'to', 'compare', 'equals', 'named']
const receivers = texts.slice(0, 9).map((text) => quantity(text))

export const everything = {
  name: 'everything',
  input: (random) => {
    const given = random.many(4, () => argument(random))
    if (!random.oneIn(8)) return { call: random.pick(functions), given }
    const method = random.pick(methods)
    const own = random.oneIn(6) ? argument(random) : random.pick(receivers)
    return { call: [method, (...rest) => receivers[0][method].apply(own, rest)], given }
  },
  read: ({ call: [, run], given }) => {
    try {
      const result = run(...given)
      return typeof result?.next === 'function' ? [...result] : result
    } catch (error) {
      if (error instanceof Trap || /revoked/.test(error?.message)) return undefined // the caller's own error
      throw error
    }
  },
  check: (value) => {
    if (s.isQuantity(value) && !value.value.isFinite()) throw new Error(`not finite: ${value}`)
  },
  limit: { fixed: 300, perCharacter: 0.1 },
}
