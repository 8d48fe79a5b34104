import { atomicWeightSet } from 'saltwright/element'
import { gravimetricFactor, netMass, percentYield, waterOfCrystallisation } from 'saltwright/product'
import { constant, exact, type Naming, type Quantity, quantity, sum } from 'saltwright/quantity'
import { type ReviewContext, reviewAnswer } from 'saltwright/review'
import { amountFromMass, massFromAmount, moleRatio } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { ways } from './ways.js'

const named = (text: string, role: NonNullable<Naming['role']>, of?: string): Quantity =>
  exact(text as '1 g', { role, ...(of && { of }) })
const ratio = (text: string, role: NonNullable<Naming['role']>, of?: string) =>
  named(text, role, of) as Quantity<'ratio'>
const tenth = exact('0.100 mol', { role: 'amount', of: 'KOH' })
const need = (text: string, of = 'H2SO4') => named(text, 'amount', of) as Quantity<'amount'>
const solution = (text: '1 mol/L', of = 'HCl') => named(text, 'concentration', of) as Quantity<'amountConcentration'>
const tenMillilitres = exact('10 mL')
const spare = ratio('1.2', 'excess')
const percent = ratio('37.2 %', 'mass fraction', 'HCl')
const density = named('1.18 g/mL', 'density', 'HCl')
const row: ReviewContext = {
  atHand: [ratio('98 %', 'mass fraction', 'H2SO4'), named('1.84 g/mL', 'density', 'H2SO4')],
}
const zincMass = massFromAmount(tenth, 'ZnSO4·7H2O')
const grams = quantity('2.00 g')
const potash = moleRatio('NaNO3 + KCl -> KNO3 + NaCl', 'KCl', 'NaNO3')

describe('a slip is looked for where it applies, and only there', () => {
  it.each<{ slip: string; to: string; of: Quantity; context?: ReviewContext; many: number }>([
    { slip: 'leftover-not-counted', to: 'two needs of one acid', of: need('1 mol').plus(need('2 mol')), many: 1 },
    {
      slip: 'leftover-not-counted',
      to: 'three needs of it',
      of: sum([need('1 mol'), need('2 mol'), need('3 mol')]),
      many: 0,
    },
    { slip: 'leftover-not-counted', to: 'needs of two', of: need('1 mol').plus(need('2 mol', 'HCl')), many: 0 },
    {
      slip: 'leftover-not-counted',
      to: 'what is no need',
      of: named('1 mol', 'theoretical yield', 'X').plus(named('2 mol', 'theoretical yield', 'X')),
      many: 0,
    },
    { slip: 'leftover-not-counted', to: 'what is taken off', of: need('2 mol').minus(need('1 mol')), many: 0 },
    {
      slip: 'leftover-not-counted',
      to: 'masses',
      of: named('1 g', 'amount', 'X').plus(named('2 g', 'amount', 'X')),
      many: 0,
    },
    {
      slip: 'coefficients-on-masses',
      to: 'from a mass to a mass',
      of: massFromAmount(amountFromMass(grams, 'NaNO3').times(potash), 'KCl'),
      many: 1,
    },
    { slip: 'coefficients-on-masses', to: 'from an amount to a mass', of: zincMass, many: 0 },
    { slip: 'coefficients-on-masses', to: 'from a mass to an amount', of: amountFromMass(grams, 'NaNO3'), many: 0 },
    { slip: 'moles-as-grams', to: 'a mass from an amount', of: zincMass, many: 1 },
    { slip: 'moles-as-grams', to: 'an amount from a mass', of: amountFromMass(grams, 'NaNO3'), many: 0 },
    {
      slip: 'spare-left-out',
      to: 'a total of what benches take',
      of: sum([tenMillilitres, tenMillilitres]).times(spare),
      many: 1,
    },
    { slip: 'spare-left-out', to: 'what one takes', of: tenMillilitres.times(spare), many: 0 },
    { slip: 'spare-left-out', to: 'a product', of: tenMillilitres.times(exact(2)).times(spare), many: 0 },
    { slip: 'spare-left-out', to: 'a total of amounts', of: sum([tenth, tenth]).times(spare), many: 0 },
    {
      slip: 'next-row-of-table',
      to: 'a mass fraction with a density',
      of: exact('5 mL')
        .times(density as Quantity<'density'>)
        .times(percent),
      context: row,
      many: 1,
    },
    { slip: 'next-row-of-table', to: 'a mass fraction alone', of: grams.times(percent), context: row, many: 0 },
    {
      slip: 'next-row-of-table',
      to: 'a density alone',
      of: exact('5 mL').times(density as Quantity<'density'>),
      context: row,
      many: 0,
    },
    {
      slip: 'next-row-of-table',
      to: 'a table of mass fractions alone',
      of: exact('5 mL')
        .times(density as Quantity<'density'>)
        .times(percent),
      context: { atHand: row.atHand!.slice(0, 1) },
      many: 0,
    },
    {
      slip: 'purity-left-out',
      to: 'a purity that was found',
      of: percentYield('8.20 g', '9.87 g', { purity: '92.0 %' }),
      many: 1,
    },
    {
      slip: 'purity-left-out',
      to: 'a purity that was worked out',
      of: grams.times(exact('0.5').times(exact(1)).named({ role: 'purity' })),
      many: 0,
    },
    { slip: 'purity-left-out', to: 'what is pure', of: grams.times(ratio('1', 'purity')), many: 0 },
    { slip: 'assay-left-out', to: 'an assay', of: grams.times(ratio('0.98', 'assay')), many: 1 },
    { slip: 'assay-left-out', to: 'a mass fraction', of: grams.times(percent), many: 1 },
    {
      slip: 'assay-left-out',
      to: 'a mass fraction that was worked out',
      of: grams.times(gravimetricFactor({ weighed: 'BaSO4', sought: 'SO4' })),
      many: 0,
    },
    {
      slip: 'gravimetric-factor-upside-down',
      to: 'a gravimetric factor',
      of: grams.times(gravimetricFactor({ weighed: 'BaSO4', sought: 'SO4' })),
      many: 1,
    },
    { slip: 'gravimetric-factor-upside-down', to: 'a mass fraction', of: grams.times(percent), many: 0 },
    {
      slip: 'water-on-residue',
      to: 'water as a share of the sample',
      of: waterOfCrystallisation({ hydrate: '249.677 g', residue: '159.602 g', anhydrous: 'CuSO4' }).waterFraction,
      many: 1,
    },
    { slip: 'water-on-residue', to: 'another loss', of: grams.minus(exact('1 g')).dividedBy(grams), many: 0 },
    {
      slip: 'other-bottle',
      to: 'another bottle of the same acid',
      of: tenMillilitres.times(solution('1 mol/L')),
      context: { atHand: [solution('3 mol/L' as '1 mol/L'), solution('6 mol/L' as '1 mol/L', 'H2SO4')] },
      many: 1,
    },
    {
      slip: 'normality-as-molarity',
      to: 'an equivalence factor',
      of: grams.times(ratio('0.5', 'equivalence factor')),
      many: 1,
    },
    { slip: 'normality-as-molarity', to: 'one of one', of: grams.times(ratio('1', 'equivalence factor')), many: 0 },
    { slip: 'tare-left-in', to: 'a weighing by difference', of: netMass({ gross: '3.5 g', tare: '1.5 g' }), many: 1 },
    { slip: 'tare-left-in', to: 'a difference of other masses', of: grams.minus(exact('1 g')), many: 0 },
    {
      slip: 'step-yields-averaged',
      to: 'two steps',
      of: ratio('0.5', 'percent yield').times(ratio('0.8', 'percent yield')),
      many: 1,
    },
    { slip: 'step-yields-averaged', to: 'one step', of: ratio('0.5', 'percent yield').times(exact(2)), many: 0 },
    { slip: 'per-cent-place', to: 'a per cent', of: exact('40 %').plus(exact('10 %')), many: 5 },
    { slip: 'per-cent-place', to: 'a ratio of no yield', of: exact('0.4').plus(exact('0.1')), many: 0 },
    { slip: 'millilitres-as-litres', to: 'litres from millilitres', of: exact('25 mL').to('L'), many: 2 },
    { slip: 'litres-as-millilitres', to: 'litres from millilitres', of: exact('25 mL').to('L'), many: 1 },
    { slip: 'litres-as-millilitres', to: 'millilitres from litres', of: exact('0.025 L').to('mL'), many: 2 },
    { slip: 'milligrams-and-grams', to: 'grams from milligrams', of: exact('250 mg').to('g'), many: 3 },
    { slip: 'milligrams-and-grams', to: 'a mass', of: grams, many: 2 },
    { slip: 'milligrams-and-grams', to: 'an amount', of: tenth, many: 0 },
    { slip: 'millimoles-and-moles', to: 'an amount', of: tenth, many: 2 },
    { slip: 'millimoles-and-moles', to: 'moles from millimoles', of: exact('25 mmol').to('mol'), many: 3 },
    { slip: 'millimoles-and-moles', to: 'millimoles from moles', of: exact('0.025 mol').to('mmol'), many: 3 },
    {
      slip: 'water-for-solution',
      to: 'a concentration',
      of: tenth.dividedBy(named('50 mL', 'volume', 'KOH') as Quantity<'volume'>),
      context: { atHand: [named('45 mL', 'volume', 'H2O')] },
      many: 1,
    },
    {
      slip: 'water-for-solution',
      to: 'an amount in a volume',
      of: solution('1 mol/L').times(named('50 mL', 'volume', 'KOH') as Quantity<'volume'>),
      context: { atHand: [named('45 mL', 'volume', 'H2O')] },
      many: 0,
    },
    { slip: 'millimoles-and-moles', to: 'a mass', of: grams, many: 0 },
    { slip: 'ratio-left-out', to: 'two to one', of: tenth.times(ratio('2', 'mole ratio')), many: 1 },
    { slip: 'ratio-left-out', to: 'one to one', of: tenth.times(ratio('1', 'mole ratio')), many: 0 },
    { slip: 'equation-not-balanced', to: 'three to two', of: tenth.times(ratio('1.5', 'mole ratio')), many: 2 },
    { slip: 'equation-not-balanced', to: 'three to one', of: tenth.times(ratio('3', 'mole ratio')), many: 0 },
    {
      slip: 'equation-not-balanced',
      to: 'one to three',
      of: tenth.dividedBy(exact(1)).times(ratio('0.5', 'mole ratio')),
      many: 0,
    },
    { slip: 'molar-mass-rounded', to: 'a molar mass', of: zincMass, many: 3 },
    {
      slip: 'molar-mass-rounded',
      to: 'a molar mass of nothing in particular',
      of: tenth.times(constant('287.54 g/mol')),
      many: 0,
    },
  ])('$slip to $to: $many', ({ slip, of, context, many }) => {
    expect(ways(of, slip, context)).toHaveLength(many)
  })

  it('the mass of an ion follows the atomic weights of the course', () => {
    const weights = atomicWeightSet({ name: 'old chart', values: { S: '33.000' }, extends: 'abridged' })
    const mass = exact('1.0000 g').times(gravimetricFactor({ weighed: 'BaSO4', sought: 'MgSO4' }))
    const stated = ((33 + 4 * 15.999) / (137.33 + 33 + 4 * 15.999)).toFixed(4)
    const { candidates } = reviewAnswer(mass, `${stated} g`, { weights })
    expect(candidates.map(({ slips: [name] }) => name)).toContain('ion-for-salt')
  })
})
