import { planBenches, planPreparation, type Recipe } from 'saltwright/preparation'
import { assessmentSheet, benchSheet, classCsv, preparationRoomSheet, solubilityPicture } from 'saltwright/report'
import { amountOf, amountUsedInAll, limitingReagent, runStages } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { formatEquation, parseEquation, stageMultipliers } from '../../src/equation/index.js'
import { isSaltwrightError, showFound } from '../../src/errors.js'
import { formatFormula, molarMass, parseFormula, withWater } from '../../src/formula/index.js'
import { assessPreparation } from '../../src/preparation/index.js'
import {
  calculationFromJSON,
  calculationToJSON,
  effectiveDegreesOfFreedom,
  quantity,
} from '../../src/quantity/index.js'
import { zincSulfate } from '../preparation/recipes.js'

/** What fuzzing found once, and must not find again. */

function codeOf(run: () => unknown): string | undefined {
  try {
    run()
    return undefined
  } catch (error) {
    return isSaltwrightError(error) ? error.code : `a bare ${error}`
  }
}

const revoked = (): object => {
  const { proxy, revoke } = Proxy.revocable({}, {})
  revoke()
  return proxy
}
const trap = new Proxy(
  {},
  {
    get: () => {
      throw new TypeError('a trap')
    },
  },
)

describe('numbers', () => {
  it.each([
    { text: '5e00000000003 g', value: '5000' },
    { text: '5e-00000000003 g', value: '0.005' },
    { text: '1e99999999999 g', value: 'quantity/exponent-out-of-range' },
  ])('$text: zeros in front of an exponent are passed over', ({ text, value }) => {
    const read = (): string => quantity(text as '1 g').value.toFixed()
    expect(codeOf(read) ?? read()).toBe(value)
  })

  it.each(['5594·10-0(52) kg', '(0979e−0 ± 126) kg'])('%s has no place of minus zero', (text) => {
    expect(quantity(text as '1 kg').place).toBe(0)
    expect(Object.is(quantity(text as '1 kg').place, 0)).toBe(true)
  })

  it.each(['(42.48 ± 90e95)e6 g', '(342.56e96 ± 569)e6 g'])('%s: a power of ten behind brackets has bounds', (text) => {
    expect(codeOf(() => quantity(text as '1 g'))).toBe('quantity/exponent-out-of-range')
  })

  it.each(['1.5(2', '(1.5', '(1.5 ± 0.1'])('%s: the mistake lies within the text', (text) => {
    try {
      quantity(text as '1 g')
      expect.unreachable()
    } catch (error) {
      expect(isSaltwrightError(error) && error.position).toEqual({ start: text.length, end: text.length })
    }
  })

  it.each([
    { key: 'measurements', hole: [undefined] },
    { key: 'results', hole: new Array(1) },
  ])('holes in the $key of a saved calculation are mistakes', ({ key, hole }) => {
    const saved = {
      format: 'saltwright/calculation@1',
      measurements: [{ kind: 'measured', place: -3 }],
      nodes: [{ measurement: 0, value: '3.980', unit: 'g' }],
      results: [0],
    }
    expect(codeOf(() => calculationFromJSON({ ...saved, [key]: hole }))).toBe('quantity/bad-json')
    expect(codeOf(() => calculationFromJSON({ ...saved, [key]: new Array(1) }))).toBe('quantity/bad-json')
  })

  it('a saved calculation without results is a mistake, as none can be saved', () => {
    const empty = { format: 'saltwright/calculation@1', measurements: [], nodes: [], results: [] }
    expect(codeOf(() => calculationFromJSON(empty))).toBe('quantity/bad-json')
  })

  it.each(['plus', 'minus', 'times', 'dividedBy', 'to', 'compare', 'equals', 'named', 'toString', 'toJSON'] as const)(
    '%s called on something else is refused',
    (method) => {
      const run = Reflect.get(quantity('1.00 g'), method) as (...given: readonly unknown[]) => unknown
      for (const other of [{}, undefined, '1.00 g', revoked()])
        expect(codeOf(() => run.call(other, quantity('1.00 g')))).toBe('quantity/not-a-quantity')
    },
  )
})

describe('formulas', () => {
  it('have frozen notes however long they are', () => {
    expect(Object.isFrozen(parseFormula('Co'.repeat(120)).notes)).toBe(true)
  })

  it.each([
    { text: 'Na^+^2+', code: 'formula/bad-charge' },
    { text: 'Na(+)(+)', code: 'formula/bad-charge' },
    { text: 'Si12{+}^0.5Cu3+', code: 'formula/bad-charge' },
    { text: '[Na^+]2^+', code: 'formula/bad-charge' },
    { text: 'H(⅓Al)2', code: 'formula/misplaced-number' },
    { text: '(-2]', code: 'formula/misplaced-charge' },
    { text: '(2-)', code: 'formula/misplaced-charge' },
    { text: 'SO4(2-]', code: 'formula/misplaced-number' },
  ])('$text is refused, as it could not be written again', ({ text, code }) => {
    expect(codeOf(() => parseFormula(text))).toBe(code)
  })

  it('in a style that is a list of symbols are refused', () => {
    expect(codeOf(() => formatFormula('H2O', [Symbol('s')] as never))).toBe('formula/unknown-style')
  })
})

describe('equations', () => {
  it.each([
    { text: '4·7H2O -> H2O', written: '4·7H2O -> H2O' },
    { text: '1·7H2O -> H2O', written: '1·7H2O -> H2O' },
    { text: '2·½H2O -> H2O', written: '2·1/2H2O -> H2O' },
  ])('$text: a number in front of a number is kept apart', ({ text, written }) => {
    expect(formatEquation(text)).toBe(written)
    expect(formatEquation(formatEquation(text, 'unicode'))).toBe(written)
    expect(formatEquation(text, 'latex')).toContain('\\cdot ')
  })

  it('are frozen all the way down', () => {
    const [term] = parseEquation('2H2 + O2 -> 2H2O').left
    expect(Object.isFrozen(term?.coefficient) && Object.isFrozen(term?.position)).toBe(true)
    expect(Object.isFrozen(parseEquation('H2 -> H2').left[0]?.coefficient)).toBe(true)
  })
})

describe('objects that are not what they should be', () => {
  it.each([
    ['an empty object', () => ({})],
    ['nothing', () => undefined],
    ['null', () => null],
    ['a text', () => 'a plan'],
    ['a format alone', () => ({ format: 'saltwright/plan@1' })],
    ['a trap', () => trap],
    ['a revoked proxy', revoked],
  ])('%s is no plan', (_, given) => {
    expect(codeOf(() => benchSheet(given() as never))).toBe('report/not-a-plan')
    expect(codeOf(() => preparationRoomSheet(given() as never))).toBe('report/not-a-plan')
    expect(codeOf(() => classCsv(given() as never))).toBe('report/not-a-plan')
    expect(codeOf(() => assessmentSheet(given() as never))).toBe('report/not-an-assessment')
  })

  it.each([undefined, null, 5])('%s is no batch to draw', (value) => {
    expect(codeOf(() => solubilityPicture(value as never))).toBe('crystallisation/not-an-object')
  })

  it('a plan that was stored as JSON is to be made again', () => {
    const plan = planPreparation(zincSulfate)
    expect(codeOf(() => benchSheet(JSON.parse(JSON.stringify(plan))))).toBe('report/not-a-plan')
    expect(codeOf(() => benchSheet({ ...plan, stages: undefined } as never))).toBe('report/not-a-plan')
    expect(benchSheet(planPreparation(JSON.parse(JSON.stringify(plan)).recipe))).toBe(benchSheet(plan))
  })

  it.each([
    ['nothing', () => undefined],
    ['a number', () => 5],
    ['a trap', () => trap],
    ['a revoked proxy', revoked],
  ])('%s is no recipe to assess', (_, given) => {
    const records = { format: 'saltwright/records@1', product: { mass: '1.00 g' } } as const
    expect(codeOf(() => assessPreparation(given() as never, records))).toMatch(/^preparation\/(invalid|unreadable)$/)
  })

  it.each([undefined, null, 5, {}])('%# are no benches', (value) => {
    expect(codeOf(() => [...planBenches(zincSulfate, value as never)])).toBe('preparation/invalid')
  })

  it.each([undefined, {}, { stages: 5 }, { stages: [5] }, { stages: [{ used: [null] }] }])('%# are no run', (value) => {
    expect(codeOf(() => amountUsedInAll(value as never, 'H2O'))).toBe('stoichiometry/not-an-object')
    expect(codeOf(() => amountOf(value as never, 'H2O'))).toBe('stoichiometry/not-an-object')
  })

  it('that are no number are none of water or of degrees of freedom', () => {
    const hostile = { [Symbol.toPrimitive]: 'x' } as never
    expect(codeOf(() => withWater('ZnSO4', hostile))).toBe('formula/bad-water-number')
    expect(codeOf(() => molarMass('ZnSO4·xH2O', { x: hostile }))).toBe('formula/bad-water-number')
    expect(codeOf(() => effectiveDegreesOfFreedom([], hostile))).toBe('quantity/bad-coverage')
    const component = { standard: 1, degreesOfFreedom: hostile }
    expect(codeOf(() => effectiveDegreesOfFreedom([component]))).toBe('quantity/bad-coverage')
  })

  it('are no quantities to save and no stages, and nor are the holes of a list', () => {
    expect(codeOf(() => calculationToJSON(new Array(3)))).toBe('quantity/not-a-quantity')
    expect(codeOf(() => runStages(new Array(3)))).toBe('stoichiometry/bad-stages')
    expect(codeOf(() => amountOf(new Array(3), 'H2O'))).toBe('stoichiometry/not-an-object')
    expect(codeOf(() => limitingReagent('ZnO + H2SO4 -> ZnSO4 + H2O', new Array(3)))).toBe('stoichiometry/bad-supplies')
    expect(codeOf(() => stageMultipliers(new Array(3)))).toBe('equation/not-text')
  })

  it('are shown in a message whatever they are', () => {
    expect(showFound(revoked())).toBe('an object')
  })

  it('with a prototype of their own change nothing', () => {
    const recipe = JSON.parse(JSON.stringify(zincSulfate).replace('{', '{"__proto__":{"polluted":"yes"},')) as Recipe
    expect(codeOf(() => planPreparation(recipe))).toBe('preparation/invalid')
    expect('polluted' in {}).toBe(false)
  })
})
