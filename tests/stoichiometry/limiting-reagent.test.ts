import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { extentOfReaction, limitingReagent, type Supplies } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

const alum = '2Al + 2KOH + 4H2SO4 + 22H2O -> 2KAl(SO4)2·12H2O + 3H2'
const nitride = '3Si + 2N2 -> Si3N4'

describe('what limits', () => {
  it.each([
    { supplies: { Al: '0.05 mol', KOH: '0.05 mol', H2SO4: '0.2 mol' }, limits: 'Al', extent: '0.025 mol' },
    { supplies: { Al: '0.05 mol', KOH: '0.04 mol', H2SO4: '0.2 mol' }, limits: 'KOH', extent: '0.02 mol' },
    { supplies: { Al: '0.05 mol', H2SO4: '80 mmol' }, limits: 'H2SO4', extent: '20 mmol' },
    { supplies: { Al: '0.05 mol', H2O: '0.11 mol' }, limits: 'H2O', extent: '0.005 mol' },
    { supplies: { Al: '1.35 g', KOH: '5.6 g' }, limits: 'Al', extent: '0.0250 mol' },
    { supplies: { H2SO4: '0.1 mol', KOH: '0.05 mol', Al: '0.05 mol' }, limits: 'Al', extent: '0.025 mol' }, // first of a tie
    { supplies: { Al: '0 mol', KOH: '0.05 mol' }, limits: 'Al', extent: '0 mol' },
  ] as readonly { supplies: Supplies; limits: string; extent: string }[])('$limits of $supplies', (row) => {
    const found = limitingReagent(alum, row.supplies)
    expect(found.formula).toBe(row.limits)
    expect(found.extent.toString()).toBe(row.extent)
    expect(extentOfReaction(alum, row.supplies).equals(found.extent)).toBe(true)
  })

  it('matches formulas however they are written', () => {
    const mixed = 'FeSO4·7H2O + (NH4)2SO4 -> (NH4)2Fe(SO4)2·6H2O + H2O'
    expect(limitingReagent(mixed, { 'FeSO4.7H2O': '7.0 g', N2H8SO4: '3.5 g' }).formula).toBe('FeSO4·7H2O')
  })

  it('adds up portions of one reactant', () => {
    const supplies = [
      { formula: 'Si', amount: exact('0.02 mol') },
      { formula: 'Si', amount: exact('0.01 mol') },
      { formula: 'N2', amount: exact('1 mol') },
    ]
    expect(limitingReagent(nitride, supplies).extent.toString()).toBe('0.01 mol')
  })

  it('terms of one species count together', () => {
    expect(limitingReagent('NaCl + NaCl -> 2NaCl', { NaCl: '1 mol' }).extent.toString()).toBe('0.5 mol')
  })

  it('lists every supply in the order of the equation, and what was taken for granted', () => {
    const found = limitingReagent(alum, { H2SO4: '0.2 mol', Al: '0.05 mol' })
    expect(found.reactants.map(({ formula, extent }) => `${formula} ${extent}`)).toEqual([
      'Al 0.025 mol',
      'H2SO4 0.05 mol',
    ])
    expect(found.takenAsExcess).toEqual(['KOH', 'H2O'])
  })
})

describe('practically equal', () => {
  const supplies = { Si: '3.00 mol', N2: '2.015 mol' } as const
  it.each([
    { band: undefined, equal: ['N2'] },
    { band: '0.75 %', equal: ['N2'] },
    { band: '0.7 %', equal: [] },
    { band: 0, equal: [] },
  ] as const)('within $band: $equal', ({ band, equal }) => {
    expect(limitingReagent(nitride, supplies, { practicallyEqualWithin: band }).practicallyEqual).toEqual(equal)
  })
  it('up to the very end of the band', () => {
    const equal = (N2: `${number} mol`) => limitingReagent(nitride, { Si: '3.00 mol', N2 }).practicallyEqual
    expect([equal('2.02 mol'), equal('2.0201 mol')]).toEqual([['N2'], []]) // 1.01 times the extent of 1.00 mol
  })
  it('an exact tie is practically equal within nothing', () => {
    const found = limitingReagent(nitride, { Si: '3 mol', N2: '2 mol' }, { practicallyEqualWithin: 0 })
    expect(found).toMatchObject({ formula: 'Si', practicallyEqual: ['N2'] })
  })
})

describe('the graph', () => {
  it('text in mol is exact, text in g is measured', () => {
    const { reactants } = limitingReagent(nitride, { Si: '2.00 g', N2: '0.1 mol' })
    expect(reactants.map(({ amount }) => amount.significantFigures)).toEqual([3, null])
  })
  it('a mass that was measured stays the same measurement', () => {
    const own = quantity('2.00 g', { id: 'bench 1, silicon' })
    const { amount } = limitingReagent(nitride, { Si: own })
    expect(amount.operands[0]?.input).toBe(own.input)
  })
  it('extents say whose they are', () => {
    const { extent } = limitingReagent(nitride, { Si: quantity('0.30 mol'), N2: '1 mol' })
    expect(extent.toString()).toBe('0.10 mol')
    expect(extent.naming).toEqual({ label: 'extent that Si allows', symbol: 'ξ', of: 'Si' })
    expect(extent.operands[1]?.naming).toEqual({ label: 'stoichiometric number of Si', symbol: 'ν', of: 'Si' })
  })
  it('uses the atomic weights it is told to use', () => {
    const supplies = { Si: '2.0000000 g' } as const
    const wall = { name: 'wall chart', values: { Si: '28.1' } }
    const figures = [undefined, wall].map(
      (weights) => limitingReagent(nitride, supplies, { weights }).extent.significantFigures,
    )
    expect(figures).toEqual([5, 3])
  })
})

describe('what is refused', () => {
  it.each([
    { supplies: {}, code: 'stoichiometry/nothing-limits' },
    { supplies: [], code: 'stoichiometry/nothing-limits' },
    { supplies: { Si3N4: '1 mol' }, code: 'stoichiometry/not-a-reactant' },
    { supplies: { NaCl: '1 mol' }, code: 'stoichiometry/not-a-reactant' },
    { supplies: { si: '1 mol' }, code: 'formula/unknown-symbol' },
    { supplies: { Si: '-1 mol' }, code: 'stoichiometry/negative' },
    { supplies: { Si: '-1 g' }, code: 'stoichiometry/negative' },
    { supplies: { Si: '1 mL' }, code: 'stoichiometry/not-a-supply' },
    { supplies: { Si: '1' }, code: 'stoichiometry/not-a-supply' },
    { supplies: { Si: 0.05 }, code: 'stoichiometry/not-a-supply' },
    { supplies: { Si: 'much' }, code: 'quantity/not-a-numeral' },
    { supplies: { Si: undefined }, code: 'quantity/not-text' },
    { supplies: null, code: 'stoichiometry/bad-supplies' },
    { supplies: undefined, code: 'stoichiometry/bad-supplies' },
    { supplies: 'Si', code: 'stoichiometry/bad-supplies' },
    { supplies: [null], code: 'stoichiometry/bad-supplies' },
    { supplies: [{ amount: '1 mol' }], code: 'stoichiometry/bad-supplies' },
    { supplies: [{ formula: 'Si' }], code: 'quantity/not-text' },
    { supplies: JSON.parse('{ "__proto__": "1 mol" }'), code: 'formula/markup' },
    { supplies: { constructor: '1 mol' }, code: 'formula/unknown-symbol' },
  ])('$supplies: $code', ({ supplies, code }) => {
    expect(refusal(() => limitingReagent(nitride, supplies as never)).code).toBe(code)
  })

  it('tells which supply it was', () => {
    expect(refusal(() => limitingReagent(nitride, { Si: '1 mL' as never }))).toMatchObject({
      path: ['Si'],
      found: '1 mL',
    })
    expect(refusal(() => limitingReagent(nitride, { Si: 'much' as never })).message).toContain('supply of Si')
    expect(refusal(() => limitingReagent(nitride, [undefined] as never)).found).toBe('undefined')
    expect(refusal(() => limitingReagent(nitride, 5 as never)).found).toBe('5')
    expect(refusal(() => limitingReagent(nitride, { Si: '-1 mol' }))).toMatchObject({
      message: '-1 mol is below zero (amount of Si).',
      found: '-1 mol',
    })
    expect(refusal(() => limitingReagent(nitride, {})).expected).toBe('an amount or a mass of one of Si, N2')
    expect(refusal(() => limitingReagent(nitride, { Si3N4: '1 mol' }))).toMatchObject({
      message: 'The equation "3Si + 2N2 -> Si3N4" does not consume Si3N4.',
      found: 'Si3N4',
      expected: 'Si, N2',
    })
  })
  it.each(['-1 %', '1 g'])('a band of %s', (band) => {
    const call = (): unknown => limitingReagent(nitride, { Si: '1 mol' }, { practicallyEqualWithin: band as never })
    expect(['stoichiometry/negative', 'quantity/wrong-dimension']).toContain(refusal(call).code)
  })
  it('an equation that does not balance', () => {
    expect(refusal(() => limitingReagent('Si + N2 -> Si3N4', { Si: '1 mol' })).code).toBe(
      'stoichiometry/unbalanced-equation',
    )
  })
})

describe('laws', () => {
  const thousandths = fc.integer({ min: 1, max: 5000 }).map((n) => exact(`${n} mmol` as '1 mmol'))
  it('no reactant allows a smaller extent than the limiting one', () => {
    fc.assert(
      fc.property(thousandths, thousandths, (Si, N2) => {
        const { extent, reactants } = limitingReagent(nitride, { Si, N2 })
        return reactants.every((reactant) => reactant.extent.compare(extent) >= 0)
      }),
    )
  })
  it('ten times as much of everything goes ten times as far', () => {
    fc.assert(
      fc.property(thousandths, thousandths, (Si, N2) => {
        const more = { Si: Si.times(exact(10)), N2: N2.times(exact(10)) }
        return extentOfReaction(nitride, more).equals(extentOfReaction(nitride, { Si, N2 }).times(exact(10)))
      }),
    )
  })
})
