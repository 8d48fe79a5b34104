import { molarMass } from 'saltwright/formula'
import { constant, exact, quantity, roundTo } from 'saltwright/quantity'
import { amountFromMass, massFromAmount } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { calculationOf, isDivisor, partsOf } from '../../src/review/calculation.js'
import { estimate } from '../../src/review/estimate.js'
import { because, isOfYield, othersOf, partsIn, theoreticalYieldIn } from '../../src/review/look-up.js'
import { molarMassesOf } from '../../src/review/molar-masses.js'
import { recompute } from '../../src/review/recompute.js'
import { exchanged, leftOut, roundedEarly, timesNumber, upsideDown } from '../../src/review/replacement.js'

const amount = exact('0.0250 mol', { role: 'amount', of: 'ZnO' })
const zinc = molarMass('ZnSO4·7H2O')
const mass = massFromAmount(amount, 'ZnSO4·7H2O')

describe('a calculation', () => {
  it('is read once, operands before results, and a molar mass as one number', () => {
    const calculation = calculationOf(mass)
    expect(calculationOf(mass)).toBe(calculation)
    expect(calculation.quantities.map(String)).toEqual(['0.0250 mol', '287.54 g/mol', '7.1885 g'])
    expect(calculation.quantities.map((q) => calculation.placeOf(q))).toEqual([0, 1, 2])
    expect(calculation.placeOf(exact('0.0250 mol'))).toBeUndefined()
  })

  it('only a sum of atomic weights that is called a molar mass is read as one number', () => {
    expect(partsOf(zinc)).toEqual([])
    expect(partsOf(zinc.named({ role: 'mass' }))).toHaveLength(4)
    const doubled = zinc.times(exact(2)).named({ role: 'molar mass' })
    expect(partsOf(doubled)).toEqual(doubled.operands)
  })

  it('tells what a quantity goes into', () => {
    const twice = amount.plus(amount.times(exact(3)))
    const calculation = calculationOf(twice)
    expect(calculation.usersOf(amount).map(({ rule }) => rule)).toEqual(['product', 'sum'])
    expect(calculation.usersOf(twice)).toEqual([])
  })

  it('has one measurement in several roles, each once', () => {
    const theory = amount.named({ role: 'theoretical yield' })
    const calculation = calculationOf(amount.plus(theory).plus(amount))
    expect(calculation.inRole('amount')).toHaveLength(1)
    expect(calculation.inRole('theoretical yield').map(({ naming }) => naming.role)).toEqual(['theoretical yield'])
    expect(calculation.inRole('tare')).toEqual([])
    expect(calculation.placeOf(theory)).toBe(calculation.placeOf(amount))
  })

  it('calls a measurement in one role what it was called first', () => {
    const calculation = calculationOf(amount.plus(amount.named({ role: 'amount', of: 'the oxide' })))
    expect(calculation.inRole('amount').map(({ naming }) => naming.of)).toEqual(['ZnO'])
  })

  it.each([
    { what: 'directly', divisor: exact('2 g'), isBelow: true },
    { what: 'in another unit', divisor: exact('2000 mg').to('g'), isBelow: true },
    { what: 'rounded', divisor: roundTo(exact('2.04 g'), { figures: 1 }), isBelow: true },
    { what: 'as part of a sum', divisor: exact('1 g').plus(exact('1 g')), isBelow: false },
  ])('tells what stands under a fraction line: $what', ({ divisor, isBelow }) => {
    const above = quantity('5.00 g')
    const calculation = calculationOf(above.dividedBy(divisor))
    const [source = divisor] = divisor.operands
    expect(isDivisor(calculation, source)).toBe(isBelow)
    expect(isDivisor(calculation, divisor)).toBe(true)
    expect(isDivisor(calculation, above)).toBe(false)
    expect(isDivisor(calculation, calculation.result)).toBe(false)
  })

  it('a factor is no divisor', () => {
    const factor = exact('2 g')
    expect(isDivisor(calculationOf(factor.times(exact(3))), factor)).toBe(false)
  })

  it('follows a divisor through any number of changes of unit', () => {
    const source = exact('2 g')
    let below = source
    for (let times = 0; times < 20_000; times += 1) below = below.to(times % 2 === 0 ? 'mg' : 'g')
    const calculation = calculationOf(exact('1 g').dividedBy(below))
    expect(isDivisor(calculation, source)).toBe(true)
    expect(isDivisor(calculation, calculation.result)).toBe(false)
  })
})

describe('what is looked up in a calculation', () => {
  it('numbers in a role, of one dimension', () => {
    const calculation = calculationOf(mass)
    expect(partsIn(calculation, 'molar mass', 'molarMass').map(String)).toEqual(['287.54 g/mol'])
    expect(partsIn(calculation, 'molar mass', 'mass')).toEqual([])
    expect(partsIn(calculation, 'amount', 'amount').map(String)).toEqual(['0.0250 mol'])
  })

  it('its theoretical yield: the amount before the mass', () => {
    const grams = quantity('2.00 g', { role: 'theoretical yield' })
    const moles = quantity('0.500 mol', { role: 'theoretical yield' })
    expect(theoreticalYieldIn(calculationOf(grams))?.unit).toBe('g')
    expect(theoreticalYieldIn(calculationOf(grams.dividedBy(moles)))?.unit).toBe('mol')
    expect(theoreticalYieldIn(calculationOf(mass))).toBeUndefined()
    expect([grams, moles, amount].map((q) => isOfYield(calculationOf(q)))).toEqual([true, true, false])
  })

  it('others of the same substance, and not the same number', () => {
    const bottle = (text: '1 mol/L', of: string) => exact(text, { role: 'concentration', of })
    const own = bottle('3 mol/L' as '1 mol/L', 'H2SO4')
    const others = [own, bottle('1 mol/L', 'H2SO4'), bottle('1 mol/L', 'HCl')]
    expect(othersOf(own, others)).toEqual([others[1]])
  })

  it('its molar masses, each formula once, and whether a mass is divided by them', () => {
    const found = calculationOf(
      quantity('2.00 g')
        .dividedBy(constant('81.38 g/mol', { role: 'molar mass', of: 'ZnO' }))
        .times(constant('287.54 g/mol', { role: 'molar mass', of: 'ZnSO4·7H2O' }))
        .plus(amount.times(zinc)),
    )
    expect(molarMassesOf(found).map(({ of, quantities, divides }) => [of, quantities.length, divides])).toEqual([
      ['ZnO', 1, true],
      ['ZnSO4·7H2O', 2, false],
    ])
    expect(molarMassesOf(found)).toBe(molarMassesOf(found))
  })

  it('a mass is divided by a molar mass where that is done once, whatever else is done with it', () => {
    const back = massFromAmount(amountFromMass(exact('2.00 g'), 'ZnO').times(exact(2)), 'ZnO')
    expect(molarMassesOf(calculationOf(back)).map(({ of, divides }) => [of, divides])).toEqual([['ZnO', true]])
  })

  it('only molar masses that say of what they are', () => {
    const bare = calculationOf(amount.times(constant('81.38 g/mol', { role: 'molar mass' })))
    expect(molarMassesOf(bare)).toEqual([])
  })
})

describe('what stands in the place of a quantity', () => {
  const half = exact('0.5', { role: 'mole ratio', of: 'ZnO' })

  it.each([
    { what: 'one divided by it', made: upsideDown(half), value: 2 },
    { what: 'the number 1', made: leftOut(half), value: 1 },
    { what: 'so many times it', made: timesNumber(half, '3'), value: 1.5 },
    { what: 'it, rounded', made: roundedEarly(exact('0.4567'), 2), value: 0.46 },
  ])('$what, on decimals and on doubles', ({ made, value }) => {
    expect(made.with(made.replace).value.toNumber()).toBe(value)
    expect(made.estimate(made.replace.value.toNumber())).toBeCloseTo(value, 12)
  })

  it('keeps its names', () => {
    for (const made of [upsideDown(half), timesNumber(half, '3')]) expect(made.with(half).naming).toEqual(half.naming)
  })

  it('two in each other’s place take the numbers, not the names', () => {
    const [first, second] = exchanged(exact('3 mol/L', { of: 'stock' }), exact('0.5 mol/L', { of: 'made' }))
    expect([first, second].map((one) => `${one?.with(one.replace)} for ${one?.replace}`)).toEqual([
      '0.5 mol/L for 3 mol/L',
      '3 mol/L for 0.5 mol/L',
    ])
  })

  it('several changes are all made, in whatever order they are named', () => {
    const calculation = calculationOf(exact('2.5 g').times(half))
    const changes = calculation.quantities.map((q) => timesNumber(q, '3'))
    for (const order of [changes, [...changes].reverse()]) {
      expect(recompute(calculation, order)?.value.toNumber()).toBe(33.75)
      expect(estimate(calculation, order)).toBeCloseTo(33.75, 12)
    }
  })

  it('a reason comes with its changes', () => {
    const change = leftOut(half)
    expect(because('half left out', change)).toEqual({ reason: 'half left out', change: [change] })
  })
})
