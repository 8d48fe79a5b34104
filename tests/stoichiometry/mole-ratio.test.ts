import { describe, expect, it } from 'vitest'
import { parseEquation } from '../../src/equation/index.js'
import { quantity } from '../../src/quantity/index.js'
import { amountNeeded, moleRatio } from '../../src/stoichiometry/index.js'
import { refusal } from '../quantity/refusal.js'

const dissolving = '2Al + 6HCl -> 2AlCl3 + 3H2'
const alum = '2Al + 2KOH + 4H2SO4 + 22H2O -> 2KAl(SO4)2·12H2O + 3H2'

describe('mole ratios', () => {
  it.each([
    { equation: dissolving, of: 'H2', per: 'Al', is: '1.5' },
    { equation: dissolving, of: 'Al', per: 'H2', is: '0.6666666667' },
    { equation: dissolving, of: 'Al', per: 'Al', is: '1' },
    { equation: alum, of: 'H2SO4', per: 'Al', is: '2' },
    { equation: '1/2 N2 + 3/2 H2 -> NH3', of: 'H2', per: 'NH3', is: '1.5' },
    { equation: 'Fe^3+ + 3OH^- -> Fe(OH)3', of: 'OH^-', per: 'Fe(OH)3', is: '3' },
    { equation: 'H2O + NaOH + HCl -> NaCl + 2H2O', of: 'H2O', per: 'HCl', is: '1' }, // what is left when water cancels
    { equation: '3H2O + NaOH + HCl -> NaCl + 4H2O', of: 'H2O', per: 'NaCl', is: '1' },
    { equation: '3H2O + CaO -> Ca(OH)2 + 2H2O', of: 'H2O', per: 'CaO', is: '1' },
    { equation: '2KNO3(aq) -> 2KNO3(s)', of: 'KNO3', per: 'KNO3', is: '1' },
    { equation: 'NaCl + NaCl -> 2NaCl', of: 'NaCl', per: 'NaCl', is: '1' },
  ])('$of per $per in $equation: $is', ({ equation, of, per, is }) => {
    expect(moleRatio(equation, of, per).toString()).toBe(is)
  })

  it('are exact, and say what they are', () => {
    const ratio = moleRatio(dissolving, 'H2', 'Al')
    expect(ratio.significantFigures).toBeNull()
    expect(ratio.naming).toEqual({ label: 'moles of H2 per mole of Al', symbol: 'r', of: 'H2', role: 'mole ratio' })
  })

  it('of thirds stay thirds', () => {
    const ratio = moleRatio(dissolving, 'Al', 'H2')
    expect(ratio.rule).toBe('quotient')
    expect(ratio.operands.map(String)).toEqual(['2', '3'])
    expect(ratio.naming.role).toBe('mole ratio')
  })

  it('take an equation that was read', () => {
    expect(moleRatio(parseEquation(dissolving), 'HCl', 'Al').toString()).toBe('3')
  })
})

describe('the amount needed', () => {
  it.each([
    { of: 'H2SO4', need: { for: '0.025 mol', of: 'Al' }, is: '0.05 mol' },
    { of: 'H2SO4', need: { for: '0.025 mol', of: 'KAl(SO4)2.12H2O', excessFactor: '1.2' }, is: '0.06 mol' },
    { of: 'KOH', need: { for: '25 mmol', of: 'Al', excessFactor: 2 }, is: '50 mmol' },
    { of: 'H2', need: { for: '0 mol', of: 'Al' }, is: '0 mol' },
    { of: 'KOH', need: { for: quantity('0.0250 mol'), of: 'Al' }, is: '0.0250 mol' },
  ] as const)('of $of for $need.for of $need.of is $is', ({ of, need, is }) => {
    expect(amountNeeded(alum, of, need).toString()).toBe(is)
  })

  it('remembers the ratio and the excess', () => {
    const amount = amountNeeded(alum, 'H2SO4', { for: '0.025 mol', of: 'Al', excessFactor: 1.5 })
    expect(amount.naming).toMatchObject({ label: 'amount of H2SO4', role: 'amount' })
    const [need, excess] = amount.operands
    expect(excess?.naming).toMatchObject({ role: 'excess', of: 'H2SO4', symbol: 'f' })
    expect(need?.naming.label).toBe('need of H2SO4')
    expect(need?.operands.map(({ naming }) => naming.role)).toEqual(['amount', 'mole ratio'])
  })
})

describe('what is refused', () => {
  const need = { for: '0.025 mol', of: 'Al' } as const
  it.each([
    { call: () => moleRatio(dissolving, 'NaCl', 'Al'), code: 'stoichiometry/not-in-equation' },
    { call: () => moleRatio(dissolving, 'Al', 'AlCl3·6H2O'), code: 'stoichiometry/not-in-equation' },
    { call: () => moleRatio('Al + HCl -> AlCl3 + H2', 'Al', 'HCl'), code: 'stoichiometry/unbalanced-equation' },
    { call: () => moleRatio('Fe^3+ -> Fe^2+', 'Fe^3+', 'Fe^2+'), code: 'stoichiometry/unbalanced-equation' },
    { call: () => moleRatio('2Al', 'Al', 'Al'), code: 'equation/missing-arrow' },
    { call: () => moleRatio(null as never, 'Al', 'Al'), code: 'equation/not-text' },
    { call: () => moleRatio(dissolving, 'al', 'Al'), code: 'formula/unknown-symbol' },
    { call: () => amountNeeded(alum, 'NaCl', need), code: 'stoichiometry/not-in-equation' },
    { call: () => amountNeeded(alum, 'KOH', { ...need, of: 'NaCl' }), code: 'stoichiometry/not-in-equation' },
    { call: () => amountNeeded(alum, 'KOH', { ...need, for: '-1 mol' }), code: 'stoichiometry/negative' },
    { call: () => amountNeeded(alum, 'KOH', { ...need, excessFactor: -1 }), code: 'stoichiometry/negative' },
    { call: () => amountNeeded(alum, 'KOH', { ...need, for: '1 g' as never }), code: 'quantity/wrong-dimension' },
    {
      call: () => amountNeeded(alum, 'KOH', { ...need, excessFactor: '2 mol' as never }),
      code: 'quantity/wrong-dimension',
    },
    { call: () => amountNeeded(alum, 'KOH', {} as never), code: 'formula/not-text' },
    { call: () => amountNeeded(alum, 'KOH', null as never), code: 'stoichiometry/not-an-object' },
    { call: () => amountNeeded(alum, 'KOH', '0.025 mol' as never), code: 'stoichiometry/not-an-object' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))

  it('an equation that does not balance, with the balanced one as hint', () => {
    expect(refusal(() => moleRatio('Al + HCl -> AlCl3 + H2', 'Al', 'HCl')).found).toBe('Al + HCl -> AlCl3 + H2')
    expect(refusal(() => moleRatio('Al + HCl -> AlCl3 + H2', 'Al', 'HCl')).hint).toBe('2 Al + 6 HCl -> 2 AlCl3 + 3 H2')
  })
  it('a species that is not there, naming those that are', () => {
    expect(refusal(() => moleRatio(dissolving, 'NaCl', 'Al'))).toMatchObject({
      message: 'The equation "2Al + 6HCl -> 2AlCl3 + 3H2" does not contain NaCl.',
      found: 'NaCl',
      expected: 'Al, HCl, AlCl3, H2',
    })
  })
})
