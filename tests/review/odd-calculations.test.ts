import { atomicWeightSet } from 'saltwright/element'
import { gasVolume, percentYield } from 'saltwright/product'
import { constant, exact, type Naming, type Quantity, quantity } from 'saltwright/quantity'
import { type ReviewContext, reviewAnswer, reviewWorksheet } from 'saltwright/review'
import { massFromAmount } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { calculationOf } from '../../src/review/calculation.js'
import { guessesAt } from '../../src/review/guesses.js'
import { called } from '../../src/review/look-up.js'
import { recompute } from '../../src/review/recompute.js'
import { timesNumber } from '../../src/review/replacement.js'
import { slips } from '../../src/review/slips.js'
import { smallFraction } from '../../src/review/small-fraction.js'
import { ways } from './ways.js'
import { filledIn, zincPlan } from './worksheets.js'

const molar = (text: string, naming: Naming): Quantity<'molarMass'> =>
  constant(text as '1 g/mol', { role: 'molar mass', ...naming })
const tenth = exact('0.100 mol')

/** What each slip gives, of those that apply. */
function given(expected: Quantity, context: ReviewContext = {}): Readonly<Record<string, string>> {
  const calculation = calculationOf(expected)
  const guesses = guessesAt(calculation, { ...context, weights: undefined }, slips)
  return Object.fromEntries(
    guesses.map(({ slip, way }) => [slip.name, recompute(calculation, way.change)?.value.toPrecision(4) ?? '']),
  )
}

describe('calculations that are odd', () => {
  it('a molar mass in kilograms', () => {
    const mass = tenth.times(molar('0.249677 kg/mol', { of: 'CuSO4·5H2O' }))
    expect(reviewAnswer(mass, '15.96 g').candidates[0]?.slips).toEqual(['hydrate-weighed-as-anhydrous'])
    expect(given(mass)['molar-mass-rounded']).toBe('0.02500')
  })

  it('a molar mass of nothing in particular, or of what is no formula, is only rounded or left out', () => {
    for (const naming of [{}, { of: 'blue vitriol' }]) {
      const names = Object.keys(given(tenth.times(molar('249.68 g/mol', naming))))
      expect(names).not.toContain('hydrate-weighed-as-anhydrous')
      expect(names).toContain('milligrams-and-grams')
    }
  })

  it('a molar mass of an element without an atomic weight', () => {
    const mass = tenth.times(molar('309.8 g/mol', { of: 'Tc2O7·2H2O' }))
    expect(given(mass)).toMatchObject({ 'hydrate-weighed-as-anhydrous': '27.38', 'molar-mass-rounded': '31.00' })
    expect(Object.keys(given(mass))).not.toContain('subscript-left-out: Tc2')
  })

  it('a formula with counts that are not whole', () => {
    expect(Object.keys(given(tenth.times(molar('68.9 g/mol', { of: 'Fe0.95O' }))))).not.toContain('subscript-left-out')
    expect(given(massFromAmount(tenth, 'CaSO4·½H2O'))['hydrate-weighed-as-anhydrous']).toBe('13.61')
  })

  it('an alum written with its doubled formula', () => {
    const mass = tenth.times(molar('948.7 g/mol', { of: 'K2SO4·Al2(SO4)3·24H2O' }))
    expect(given(mass)['alum-unit-doubled']).toBe('47.44')
  })

  it('chlorine counts 35.5 even where whole atomic masses are used', () => {
    expect(given(massFromAmount(tenth, 'NaCl'))['molar-mass-rounded']).toBe('5.850')
  })

  it('an excess below one, and a mole ratio that is no ratio of small numbers', () => {
    const short = tenth.times(exact('0.9', { role: 'excess' }))
    expect(Object.keys(given(short))).not.toContain('excess-per-cent-as-factor')
    const ratio = exact('0.1234567891', { role: 'mole ratio', of: 'X' })
    expect(smallFraction(ratio)).toBeUndefined()
    expect(smallFraction(exact('12345'))).toBeUndefined()
    expect(smallFraction(exact('1.5'))).toEqual({ top: 3, bottom: 2 })
    expect(smallFraction(exact('1000'))).toEqual({ top: 1000, bottom: 1 })
    expect(smallFraction(exact('0.001'))).toEqual({ top: 1, bottom: 1000 })
    expect(smallFraction(exact('150 %'))).toEqual({ top: 3, bottom: 2 })
    for (const none of ['1001', '0', '-0.5'] as const) expect(smallFraction(exact(none))).toBeUndefined()
    expect(smallFraction(exact('1').dividedBy(exact('1001')))).toBeUndefined()
    const mass = tenth.times(ratio).times(molar('100.1 g/mol', { of: 'X' }))
    expect(Object.keys(given(mass))).toContain('ratio-left-out')
  })

  it('a gas at a pressure in atmospheres, and a gas constant without an amount', () => {
    const at = { temperature: '25.0 degC', pressure: '1.00 atm' } as const
    const { volume } = gasVolume({ gas: 'H2', amount: '0.0400 mol', at })
    expect(reviewAnswer(volume, '99.2 L').candidates[0]?.slips).toEqual(['pressure-units-mixed'])
    const energy = exact('8.314 J/(mol K)').times(exact('300 K'))
    expect(Object.keys(given(energy))).not.toContain('molar-volume-elsewhere')
    const cold = gasVolume({ gas: 'H2', amount: '0.0400 mol', at: { temperature: '0 degC', pressure: '100 kPa' } })
    expect(Object.keys(given(cold.volume))).not.toContain('celsius-in-gas-law')
  })

  it('a gas constant that is itself worked out, and amounts where no volume is', () => {
    const at = { temperature: '25.0 degC', pressure: '100 kPa' } as const
    const { volume } = gasVolume({ gas: 'H2', amount: '0.0400 mol', at })
    expect(Object.keys(given(volume))).toContain('pressure-units-mixed')
    const worked = exact('4.157 J/(mol K)').times(exact('2'))
    expect(Object.keys(given(worked.times(exact('2'))))).not.toContain('molar-volume-elsewhere')
    expect(ways(worked.times(exact('2')), 'pressure-units-mixed')).toHaveLength(1)
    expect(ways(tenth.times(exact('2')), 'molar-volume-elsewhere')).toEqual([])
  })

  it('a theoretical yield beside reactants of which one is weighed, or several alike', () => {
    const theory = quantity('0.0400 mol', { role: 'theoretical yield', of: 'ZnSO4·7H2O' })
    const reactant = (of: string, gives: '1 mol', mass?: '1 g') =>
      ({ of, amount: exact(gives), gives: exact(gives), ...(mass && { mass: exact(mass) }) }) as const
    const zinc = reactant('ZnO', '0.0400 mol' as '1 mol', '3.255 g' as '1 g')
    const acid = reactant('H2SO4', '0.0440 mol' as '1 mol')
    const salt = reactant('NaCl', '0.0500 mol' as '1 mol', '2.922 g' as '1 g')
    expect(ways(theory, 'smaller-mass-limits', { reactants: [acid, zinc] })).toEqual([])
    expect(ways(theory, 'smaller-mass-limits', { reactants: [salt, zinc] })).toEqual([
      'theoretical yield of ZnSO4·7H2O from NaCl',
    ])
    expect(ways(theory, 'smaller-mass-limits', { reactants: [zinc, { ...salt, mass: exact('9 g') }] })).toEqual([])
    expect(ways(theory, 'excess-reagent-limits', { reactants: [salt, zinc, acid, zinc] })).toEqual([
      'theoretical yield of ZnSO4·7H2O from NaCl',
      'theoretical yield of ZnSO4·7H2O from H2SO4',
    ])
    const few = { ...acid, amount: exact('0.0100 mol') }
    expect(ways(theory, 'fewer-moles-limits', { reactants: [zinc, few, { ...salt, amount: few.amount }] })).toEqual([
      'theoretical yield of ZnSO4·7H2O from H2SO4',
    ])
    expect(ways(theory, 'reactant-masses-added', { reactants: [zinc, salt] })).toEqual([])
  })

  it('excess factors of other reagents, each value once, and none that is one', () => {
    const factor = (text: '1', of: string) => exact(text, { role: 'excess', of })
    const atHand = [
      factor('1.10' as '1', 'KOH'),
      factor('1.1' as '1', 'H2O2'),
      factor('1', 'HCl'),
      factor('1.5' as '1', 'HNO3'),
      factor('1.2' as '1', 'ZnO'),
    ]
    const zinc = exact('0.0400 mol', { role: 'amount', of: 'ZnO' })
    expect(ways(zinc, 'excess-on-another-reagent', { atHand })).toEqual([
      'amount of ZnO with the excess of KOH',
      'amount of ZnO with the excess of HNO3',
    ])
    const own = zinc.times(factor('1.2' as '1', 'ZnO')).named({ role: 'amount', of: 'ZnO' })
    expect(ways(own, 'excess-on-another-reagent', { atHand })).toEqual([])
    expect(ways(own, 'excess-per-cent-as-factor')).toEqual([
      'excess of ZnO as 0.2',
      'excess of ZnO as 20',
      'excess of ZnO as 2.2',
    ])
    expect(ways(zinc.times(factor('1', 'ZnO')), 'excess-left-out')).toEqual([])
    const theory = exact('0.0400 mol', { role: 'theoretical yield' })
    expect(ways(theory, 'excess-on-product', { atHand })).toHaveLength(3)
    expect(ways(theory, 'excess-on-another-reagent', { atHand })).toEqual([])
  })

  it('a yield without the names of its substances', () => {
    const reactants = [
      { of: 'ZnO', amount: tenth, gives: tenth },
      { of: 'the acid', amount: exact('0.120 mol'), gives: exact('0.120 mol') },
    ]
    const found = given(percentYield('2.00 g', '4.00 g'), { reactants })
    expect(found['excess-reagent-limits']).toBe('41.67')
    expect(Object.keys(found)).not.toContain('yield-on-the-metal')
    const named = quantity('4.00 g', { role: 'theoretical yield', of: 'ZnSO4·7H2O' })
    expect(Object.keys(given(percentYield('2.00 g', named), { reactants }))).not.toContain('yield-on-the-metal')
  })

  it('a yield as a plain ratio may be misplaced as well', () => {
    const share = percentYield('2.00 g', '4.00 g').to('1')
    expect(given(share)['per-cent-place']).toBe('0.0005000')
  })

  it('a theoretical yield that divides something else than a yield is not turned over', () => {
    const theory = quantity('0.0400 mol', { role: 'theoretical yield', of: 'ZnSO4·7H2O' })
    expect(Object.keys(given(quantity('11.5 g').dividedBy(theory)))).not.toContain('yield-upside-down')
  })

  it('a reading that nobody copies by hand', () => {
    expect(Object.keys(given(quantity('1.234567890123456789012345 g')))).not.toContain('digits-swapped')
    expect(Object.keys(given(quantity('-1.23 g')))).not.toContain('digits-swapped')
  })

  it('a gravimetric factor between things that are no formulas', () => {
    const factor = molar('120.4 g/mol', { of: 'the salt' })
      .dividedBy(molar('233.4 g/mol', { of: 'the precipitate' }))
      .named({ role: 'mass fraction' })
    const mass = quantity('0.6168 g').times(factor)
    expect(Object.keys(given(mass))).toContain('gravimetric-factor-upside-down')
    expect(Object.keys(given(mass))).not.toContain('ion-for-salt')
  })

  it('a temperature is compared in its own unit', () => {
    const warm = quantity('22.0 degC')
    expect(reviewAnswer(warm, '295.2 K').verdict).toBe('agrees')
    expect(reviewAnswer(warm, '350 K').verdict).toBe('unexplained')
    expect(reviewAnswer(exact('0.0147 L').to('mL'), '0.0441 L').verdict).toBe('unexplained')
    expect(reviewAnswer(exact('90 min').to('h'), '270 min').verdict).toBe('unexplained')
    expect(reviewAnswer(exact('1.5 h').to('min'), '4.5 h').verdict).toBe('unexplained')
  })

  it('an answer that is itself worked out and exact', () => {
    const third = exact('1 mol').dividedBy(exact(3))
    expect(reviewAnswer(third, exact('2 mol').dividedBy(exact(6))).verdict).toBe('agrees')
    expect(reviewAnswer(exact('0.3333 mol'), third).verdict).toBe('unexplained')
  })

  it('names for quantities without a label', () => {
    expect(called(exact('1 g'))).toBe('number')
    expect(called(exact('1 g', { symbol: 'm' }))).toBe('m')
    expect(called(exact('1 g', { role: 'mass', of: 'ZnO' }))).toBe('mass of ZnO')
  })

  it('a change of what a calculation does not use changes nothing', () => {
    const calculation = calculationOf(tenth)
    expect(recompute(calculation, [timesNumber(exact('5 g'), '2')])).toBe(calculation.result)
  })
})

describe('pairs where nearly everything fits', () => {
  it('are no more than five, and none with a slip that does it alone', () => {
    const amount = tenth
      .times(exact('1.5', { role: 'mole ratio', of: 'X' }))
      .times(exact('1.2', { role: 'excess', of: 'X' }))
    const mass = massFromAmount(amount, 'KAl(SO4)2·12H2O', { assay: exact('85 %') })
    const { candidates } = reviewAnswer(mass, '67 g', { pairs: true })
    const single = candidates.filter(({ slips: names }) => names.length === 1).map(({ slips: [name] }) => name)
    const pairs = candidates.filter(({ slips: names }) => names.length === 2)
    expect(pairs).toHaveLength(5)
    for (const { slips: names } of pairs) for (const name of names) expect(single).not.toContain(name)
  })
})

describe('a worksheet by a table of atomic weights that lacks an element', () => {
  it('is stopped by that', () => {
    const weights = atomicWeightSet({ name: 'short', values: { H: '1.008' } })
    const filled = filledIn({ 'molar-mass-of-product': '287.5 g/mol' })
    expect(() => reviewWorksheet(zincPlan, filled, { weights })).toThrowError(
      expect.objectContaining({ code: 'element/not-in-set' }),
    )
  })
})

describe('a worksheet without a question for the theoretical amount', () => {
  it('carries no choice forward', () => {
    const { answers } = reviewWorksheet(
      {
        title: 'Invented',
        context: {},
        questions: [
          {
            kind: 'choice',
            id: 'limiting-reagent',
            asks: 'Which?',
            choices: [
              { formula: 'ZnO', name: 'oxide' },
              { formula: 'H2SO4', name: 'acid' },
            ],
            right: ['ZnO'],
          },
        ],
      },
      filledIn({ 'limiting-reagent': 'acid' }),
    )
    expect(answers[0]?.status).toBe('wrong')
  })
})
