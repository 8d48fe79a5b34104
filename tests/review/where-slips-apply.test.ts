import { atomicWeightSet } from 'saltwright/element'
import { molarMass } from 'saltwright/formula'
import { gasVolume, gravimetricFactor, netMass, percentYield, waterOfCrystallisation } from 'saltwright/product'
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
const label = named('1.18 g/mL', 'density', 'HCl') as Quantity<'density'>
const row: ReviewContext = {
  atHand: [ratio('98 %', 'mass fraction', 'H2SO4'), named('1.84 g/mL', 'density', 'H2SO4')],
}
const zincMass = massFromAmount(tenth, 'ZnSO4·7H2O')
const grams = quantity('2.00 g')
const potash = moleRatio('NaNO3 + KCl -> KNO3 + NaCl', 'KCl', 'NaNO3')
const gramsPerLitre = solution('1 mol/L').times(molarMass('ZnSO4·7H2O'))
const blueVitriol = constant('249.68 g/mol', { role: 'molar mass', of: 'blue vitriol' })
const spareOfAcid: ReviewContext = { atHand: [ratio('1.5', 'excess', 'the acid')] }
const gasConstant = constant('8.314 J/(mol K)')
const hydrogen = gasVolume({ gas: 'H2', amount: '0.0400 mol', at: { temperature: '25.0 degC', pressure: '100 kPa' } })
const ammonia = (of: string, share: string) => massFromAmount(tenth, of).dividedBy(ratio(share, 'mass fraction', of))
/** Of these one is the same number, and one each differs from a volume of hydrochloric acid in one respect. */
const printed = [
  exact('20 mL', { role: 'volume', of: 'HCl' }),
  exact('0.01 L', { role: 'volume', of: 'HCl' }),
  exact('20 g', { role: 'volume', of: 'HCl' }),
  exact('20 mL', { role: 'volume', of: 'H2SO4' }),
  exact('20 mL', { role: 'tare', of: 'HCl' }),
]
/** A strength with two decimals was measured. */
const bottle = (text: '1 mol/L' | '1.02 mol/L') =>
  text === '1 mol/L' ? solution(text) : quantity(text, { role: 'concentration', of: 'HCl' })
const weighing = netMass({ gross: '3.5 g', tare: '1.5 g' })
const tare = (text: string, naming: Naming = {}) => exact(text as '1 g', { role: 'tare', ...naming })
const theory = exact('5 g', { role: 'theoretical yield', of: 'ZnSO4·7H2O' })
const reactant = (of: string, mass?: string, gives = '0.1 mol') => ({
  of,
  amount: tenth,
  gives: exact(gives as '1 mol'),
  mass: mass === undefined ? undefined : exact(mass as '1 g'),
})
const factorOf = (weighed: string, sought: string) => grams.times(gravimetricFactor({ weighed, sought }))
const water = <D extends 'mass' | 'ratio'>(q: Quantity<D>) => q.named({ of: 'H2O' })
const thirdMole = exact('1 mol').dividedBy(exact(3))

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
      of: exact('5 mL').times(label).times(percent),
      context: row,
      many: 1,
    },
    { slip: 'next-row-of-table', to: 'a mass fraction alone', of: grams.times(percent), context: row, many: 0 },
    {
      slip: 'next-row-of-table',
      to: 'a density alone',
      of: exact('5 mL').times(label),
      context: row,
      many: 0,
    },
    {
      slip: 'next-row-of-table',
      to: 'a table of mass fractions alone',
      of: exact('5 mL').times(label).times(percent),
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
    { slip: 'leftover-not-counted', to: 'one need alone', of: sum([need('1 mol')]), many: 0 },
    {
      slip: 'coefficients-on-masses',
      to: 'a ratio of two molar masses',
      of: gravimetricFactor({ weighed: 'BaSO4', sought: 'MgSO4' }),
      many: 0,
    },
    { slip: 'moles-as-grams', to: 'grams in a litre', of: gramsPerLitre, many: 0 },
    { slip: 'hydrate-weighed-as-anhydrous', to: 'grams in a litre', of: gramsPerLitre, many: 0 },
    { slip: 'hydrate-weighed-as-anhydrous', to: 'a molar mass', of: molarMass('ZnSO4·7H2O'), many: 1 },
    { slip: 'one-water-only', to: 'a monohydrate', of: massFromAmount(tenth, 'ZnSO4·H2O'), many: 0 },
    { slip: 'other-hydrate', to: 'a hydrate, of the usual ones', of: zincMass, many: 5 },
    {
      slip: 'other-hydrate',
      to: 'a hydrate beside another one, its anhydrous salt and another salt',
      of: zincMass,
      context: { formulas: ['ZnSO4·7H2O', 'ZnSO4', 'ZnSO4·4H2O', 'CuSO4·3H2O'] },
      many: 6,
    },
    {
      slip: 'anhydrous-taken-as-hydrate',
      to: 'an anhydrous salt beside its hydrate and that of another salt',
      of: massFromAmount(tenth, 'ZnSO4'),
      context: { formulas: ['ZnSO4·7H2O', 'CuSO4·5H2O'] },
      many: 1,
    },
    { slip: 'anhydrous-taken-as-hydrate', to: 'an anhydrous salt alone', of: massFromAmount(tenth, 'ZnSO4'), many: 0 },
    {
      slip: 'anhydrous-taken-as-hydrate',
      to: 'what is no formula',
      of: tenth.times(blueVitriol),
      context: { formulas: ['CuSO4·5H2O'] },
      many: 0,
    },
    { slip: 'alum-unit-doubled', to: 'an alum', of: massFromAmount(tenth, 'KAl(SO4)2·12H2O'), many: 1 },
    {
      slip: 'alum-unit-doubled',
      to: 'a sulfate with other water',
      of: massFromAmount(tenth, 'Al2(SO4)3·18H2O'),
      many: 0,
    },
    { slip: 'alum-unit-doubled', to: 'a phosphate with twelve', of: massFromAmount(tenth, 'Na3PO4·12H2O'), many: 0 },
    { slip: 'alum-unit-doubled', to: 'a nitrate with twelve', of: massFromAmount(tenth, 'Fe(NO3)3·12H2O'), many: 0 },
    {
      slip: 'formula-of-another-compound',
      to: 'a salt beside itself, its hydrate, one of other numbers and one of other elements',
      of: massFromAmount(tenth, 'FeSO4'),
      context: { formulas: ['FeSO4', 'FeSO4·7H2O', 'Fe2(SO4)3', 'ZnSO4'] },
      many: 1,
    },
    {
      slip: 'formula-of-another-compound',
      to: 'what is no formula',
      of: tenth.times(blueVitriol),
      context: { formulas: ['CuSO4·5H2O'] },
      many: 0,
    },
    {
      slip: 'coefficient-in-molar-mass',
      to: 'a substance with a coefficient in the first equation alone',
      of: massFromAmount(tenth, 'KOH'),
      context: { equations: ['H2SO4 + 2KOH -> K2SO4 + 2H2O', 'Al + 3KOH -> K3AlO3 + 1.5H2'] },
      many: 1,
    },
    {
      slip: 'coefficient-in-molar-mass',
      to: 'a substance with half of one',
      of: massFromAmount(tenth, 'O2'),
      context: { equations: ['H2 + ½O2 -> H2O'] },
      many: 0,
    },
    {
      slip: 'coefficient-in-molar-mass',
      to: 'the substances of a ratio of 3 to 2',
      of: massFromAmount(amountFromMass(grams, 'Al').times(ratio('1.5', 'mole ratio', 'H2')), 'H2'),
      many: 2,
    },
    {
      slip: 'coefficient-of-neighbour',
      to: 'a ratio, with the other coefficients of the first equation',
      of: tenth.times(ratio('0.5', 'mole ratio', 'K2SO4')),
      context: { equations: ['H2SO4 + 2KOH -> K2SO4 + 2H2O', 'K2SO4 + 3H2 -> 5KOH'] },
      many: 1,
    },
    {
      slip: 'coefficient-of-neighbour',
      to: 'the ratio of a substance of no equation',
      of: tenth.times(ratio('0.5', 'mole ratio', 'Na2SO4')),
      context: { equations: ['H2SO4 + 2KOH -> K2SO4 + 2H2O'] },
      many: 0,
    },
    {
      slip: 'one-step-for-all',
      to: 'a ratio beside its own, another one and that of another substance',
      of: tenth.times(ratio('2', 'mole ratio', 'H2SO4')),
      context: {
        atHand: [
          ratio('2', 'mole ratio', 'H2SO4'),
          ratio('0.5', 'mole ratio', 'H2SO4'),
          ratio('3', 'mole ratio', 'KOH'),
        ],
      },
      many: 1,
    },
    { slip: 'excess-on-another-reagent', to: 'a mass', of: grams.times(exact(2)), context: spareOfAcid, many: 1 },
    { slip: 'excess-on-another-reagent', to: 'a volume', of: tenMillilitres, context: spareOfAcid, many: 1 },
    {
      slip: 'excess-on-another-reagent',
      to: 'a concentration',
      of: solution('1 mol/L'),
      context: spareOfAcid,
      many: 0,
    },
    { slip: 'excess-per-cent-as-factor', to: 'no excess', of: tenth.times(ratio('1', 'excess')), many: 0 },
    { slip: 'excess-per-cent-as-factor', to: 'one in per cent', of: tenth.times(ratio('110 %', 'excess')), many: 3 },
    { slip: 'pressure-units-mixed', to: 'a pressure alone', of: exact('1 atm').to('kPa'), many: 0 },
    {
      slip: 'molar-volume-elsewhere',
      to: 'an amount that comes after the gas constant was used',
      of: gasConstant.times(exact('300 K')).times(tenth).dividedBy(exact('100 kPa')),
      many: 0,
    },
    { slip: 'molar-volume-elsewhere', to: 'an energy', of: gasConstant.times(tenth), many: 0 },
    { slip: 'molar-volume-elsewhere', to: 'the volume of a gas', of: hydrogen.volume, many: 5 },
    {
      slip: 'per-cent-by-volume',
      to: 'a strength',
      of: label.times(percent),
      many: 1,
    },
    {
      slip: 'per-cent-by-volume',
      to: 'a volume of liquid',
      of: tenMillilitres.times(label),
      many: 0,
    },
    { slip: 'millilitres-as-grams', to: 'a strength', of: label.times(percent), many: 0 },
    {
      slip: 'millilitres-as-grams',
      to: 'the mass of a volume',
      of: tenMillilitres.times(label),
      many: 1,
    },
    {
      slip: 'millilitres-as-grams',
      to: 'a volume, and a strength beside it',
      of: tenMillilitres.times(label).plus(label.times(percent).times(tenMillilitres)),
      many: 1,
    },
    {
      slip: 'millilitres-as-grams',
      to: 'the volume of a mass',
      of: grams.dividedBy(label),
      many: 1,
    },
    { slip: 'ammonia-formula-mixed', to: 'ammonia of 28 %', of: ammonia('NH3', '28 %'), many: 1 },
    { slip: 'ammonia-formula-mixed', to: 'the same by its other formula', of: ammonia('NH4OH', '28 %'), many: 1 },
    { slip: 'ammonia-formula-mixed', to: 'pure ammonia', of: ammonia('NH3', '1'), many: 0 },
    { slip: 'ammonia-formula-mixed', to: 'an acid of 28 %', of: ammonia('HCl', '28 %'), many: 0 },
    { slip: 'ammonia-formula-mixed', to: 'ammonia without a label', of: massFromAmount(tenth, 'NH3'), many: 0 },
    {
      slip: 'next-row-of-table',
      to: 'a mass fraction that was worked out',
      of: exact('5 mL')
        .times(label)
        .times(exact('0.2').times(exact(2)).named({ role: 'mass fraction' })),
      context: row,
      many: 0,
    },
    {
      slip: 'next-row-of-table',
      to: 'a row of the same mass fraction',
      of: exact('5 mL').times(label).times(percent),
      context: { atHand: [ratio('0.372', 'mass fraction', 'X'), named('1.84 g/mL', 'density', 'X')] },
      many: 0,
    },
    {
      slip: 'spare-left-out',
      to: 'twice a total',
      of: exact(2)
        .times(spare)
        .times(sum([tenMillilitres])),
      many: 0,
    },
    {
      slip: 'printed-amount-kept',
      to: 'a volume of acid, of all that is printed',
      of: tenMillilitres.named({ role: 'volume', of: 'HCl' }),
      context: { atHand: printed },
      many: 1,
    },
    {
      slip: 'printed-amount-kept',
      to: 'a volume of nothing in particular',
      of: tenMillilitres.named({ role: 'volume' }),
      context: { atHand: [exact('20 mL', { role: 'volume' })] },
      many: 0,
    },
    {
      slip: 'printed-amount-kept',
      to: 'a volume in no role',
      of: tenMillilitres.named({ of: 'HCl' }),
      context: { atHand: [exact('20 mL', { of: 'HCl' })] },
      many: 0,
    },
    ...(
      [
        ['1.02 mol/L', '1 mol/L', 'label-strength', 'other-bottle'],
        ['1 mol/L', '1.02 mol/L', 'other-bottle', 'label-strength'],
      ] as const
    ).flatMap(([own, other, found, not]) =>
      [found, not].map((slip) => ({
        slip,
        to: `${own} beside ${other}`,
        of: tenMillilitres.times(bottle(own)),
        context: { atHand: [bottle(other)] },
        many: slip === found ? 1 : 0,
      })),
    ),
    {
      slip: 'other-bottle',
      to: 'two strengths that were measured',
      of: tenMillilitres.times(bottle('1.02 mol/L')),
      context: { atHand: [quantity('1.04 mol/L', { role: 'concentration', of: 'HCl' })] },
      many: 1,
    },
    {
      slip: 'dilution-upside-down',
      to: 'a dilution',
      of: exact('50 mL')
        .times(solution('1 mol/L'))
        .dividedBy(solution('3 mol/L' as '1 mol/L')),
      many: 1,
    },
    {
      slip: 'dilution-upside-down',
      to: 'an amount in a volume',
      of: tenMillilitres.times(solution('1 mol/L')),
      many: 0,
    },
    { slip: 'dilution-upside-down', to: 'a volume of one solution', of: tenth.dividedBy(solution('1 mol/L')), many: 0 },
    {
      slip: 'other-tare',
      to: 'one with a tare like its own',
      of: weighing,
      context: { atHand: [tare('1.5 g')] },
      many: 0,
    },
    {
      slip: 'other-tare',
      to: 'one with another tare',
      of: weighing,
      context: { atHand: [tare('1500.1 mg')] },
      many: 1,
    },
    {
      slip: 'other-tare',
      to: 'one with a paper',
      of: weighing,
      context: { atHand: [tare('0.2 g', { label: 'Filter Paper' }), tare('0.3 g', { of: 'paper' })] },
      many: 0,
    },
    {
      slip: 'paper-left-in',
      to: 'one with two papers and a beaker',
      of: weighing,
      context: { atHand: [tare('0.2 g', { label: 'Filter Paper' }), tare('300 mg', { of: 'paper' }), tare('9 g')] },
      many: 2,
    },
    {
      slip: 'paper-left-in',
      to: 'a tare of two parts',
      of: grams.minus(sum([tare('1 g'), tare('100 mg')]).named({ role: 'tare' })),
      many: 2,
    },
    {
      slip: 'paper-left-in',
      to: 'a tare of one part',
      of: grams.minus(sum([tare('1 g')]).named({ role: 'tare' })),
      many: 0,
    },
    {
      slip: 'paper-left-in',
      to: 'a tare that is a product',
      of: grams.minus(tare('1 g').times(exact(2)).named({ role: 'tare' })),
      many: 0,
    },
    { slip: 'paper-left-in', to: 'another sum', of: grams.minus(sum([tare('1 g'), tare('0.1 g')])), many: 0 },
    {
      slip: 'weighed-too-soon',
      to: 'a weighing beside an equal and an earlier one',
      of: weighing,
      context: { atHand: ['3.5 g', '3600 mg'].map((text) => exact(text as '1 g', { role: 'gross' })) },
      many: 1,
    },
    {
      slip: 'step-yields-averaged',
      to: 'yields that were worked out',
      of: percentYield('1 g', '2 g').times(percentYield('1 g', '4 g')),
      many: 0,
    },
    { slip: 'yield-upside-down', to: 'a yield', of: percentYield('1 g', '2 g'), many: 1 },
    {
      slip: 'yield-on-starting-mass',
      to: 'a yield beside two reactants, one of them weighed',
      of: percentYield('1 g', '2 g'),
      context: { reactants: [reactant('ZnO', '3.255 g'), reactant('H2SO4')] },
      many: 1,
    },
    {
      slip: 'yield-on-starting-mass',
      to: 'a theoretical yield itself',
      of: theory,
      context: { reactants: [reactant('ZnO', '3.255 g')] },
      many: 0,
    },
    {
      slip: 'reactant-masses-added',
      to: 'a theoretical yield beside one reactant that is weighed',
      of: theory,
      context: { reactants: [reactant('ZnO', '3.255 g'), reactant('H2SO4')] },
      many: 0,
    },
    {
      slip: 'reactant-masses-added',
      to: 'a theoretical yield beside two',
      of: theory,
      context: { reactants: [reactant('ZnO', '3.255 g'), reactant('NaCl', '1 g'), reactant('H2SO4')] },
      many: 1,
    },
    {
      slip: 'smaller-mass-limits',
      to: 'a theoretical yield beside one reactant that is weighed and does not limit',
      of: theory,
      context: { reactants: [reactant('H2SO4'), reactant('ZnO', '3.255 g', '0.2 mol')] },
      many: 0,
    },
    {
      slip: 'yield-on-the-metal',
      to: 'the yield of soda alum beside what brings aluminium, sodium and neither',
      of: exact('0.1 mol', { role: 'theoretical yield', of: 'NaAl(SO4)2·12H2O' }),
      context: {
        reactants: [
          reactant('H2SO4'),
          reactant('Al2(SO4)3', undefined, '0.2 mol'),
          reactant('NaCl', undefined, '0.3 mol'),
          reactant('the rest', undefined, '0.4 mol'),
        ],
      },
      many: 1,
    },
    { slip: 'aliquot-left-out', to: 'an aliquot', of: tenth.times(ratio('0.5', 'aliquot')), many: 1 },
    {
      slip: 'aliquot-left-out',
      to: 'a yield beside an aliquot',
      of: theory,
      context: { atHand: [ratio('0.5', 'aliquot')] },
      many: 1,
    },
    {
      slip: 'aliquot-left-out',
      to: 'a yield of an aliquot beside another',
      of: theory.times(ratio('0.5', 'aliquot')),
      context: { atHand: [ratio('0.25', 'aliquot')] },
      many: 1,
    },
    {
      slip: 'aliquot-left-out',
      to: 'an amount beside an aliquot',
      of: tenth,
      context: { atHand: [ratio('0.5', 'aliquot')] },
      many: 0,
    },
    { slip: 'per-cent-place', to: 'a theoretical yield', of: theory, many: 0 },
    {
      slip: 'gravimetric-factor-upside-down',
      to: 'a share of masses',
      of: grams.dividedBy(exact('5 g')).named({ role: 'mass fraction' }),
      many: 0,
    },
    {
      slip: 'ion-for-salt',
      to: 'a mass by way of moles, without a gravimetric factor',
      of: massFromAmount(amountFromMass(grams, 'NaNO3').times(potash), 'KNO3'),
      many: 0,
    },
    { slip: 'ion-for-salt', to: 'no ion in common', of: factorOf('BaSO4', 'Ba'), many: 0 },
    { slip: 'ion-for-salt', to: 'an ion in common by half', of: factorOf('BaSO4', 'Na2S'), many: 0 },
    {
      slip: 'water-on-residue',
      to: 'water on another whole',
      of: water(grams.minus(exact('1 g'))).dividedBy(exact('5 g')),
      many: 0,
    },
    {
      slip: 'water-on-residue',
      to: 'water that was added',
      of: water(grams.plus(exact('1 g'))).dividedBy(grams),
      many: 0,
    },
    {
      slip: 'water-on-residue',
      to: 'water times the sample',
      of: water(exact('0.5').minus(exact('0.2'))).times(exact('0.5')),
      many: 0,
    },
    {
      slip: 'amount-rounded-early',
      to: 'an amount on the way',
      of: thirdMole.named({ role: 'amount' }).times(exact(3)),
      many: 2,
    },
    { slip: 'amount-rounded-early', to: 'an amount without a name', of: thirdMole.times(exact(3)), many: 0 },
    {
      slip: 'amount-rounded-early',
      to: 'an amount that is given',
      of: exact('0.12345 mol', { role: 'amount' }).times(exact(3)),
      many: 0,
    },
    { slip: 'amount-rounded-early', to: 'the answer itself', of: thirdMole.named({ role: 'amount' }), many: 0 },
    {
      slip: 'amount-rounded-early',
      to: 'a mass on the way',
      of: exact('1 g').dividedBy(exact(7)).named({ role: 'amount' }).times(exact(3)),
      many: 0,
    },
    { slip: 'digits-swapped', to: 'a reading of mass', of: quantity('12 g').times(exact(1)), many: 1 },
    { slip: 'digits-swapped', to: 'a mass that is said', of: exact('12 g').times(exact(1)), many: 0 },
    { slip: 'digits-swapped', to: 'a reading of volume', of: quantity('12 mL').times(exact(1)), many: 0 },
    {
      slip: 'digits-swapped',
      to: 'equal digits, and a zero that would stand first',
      of: quantity('1022 g').times(exact(1)),
      many: 1,
    },
    {
      slip: 'digits-swapped',
      to: 'twenty digits, where nine swaps can be seen',
      of: quantity('1.2121212121212121212 g').times(exact(1)),
      many: 9,
    },
    { slip: 'digits-swapped', to: 'one more', of: quantity('1.21212121212121212121 g').times(exact(1)), many: 0 },
    { slip: 'celsius-in-gas-law', to: 'degrees from kelvins', of: exact('300 K').to('degC'), many: 0 },
    { slip: 'celsius-in-gas-law', to: 'kelvins from degrees', of: exact('25 degC').to('K'), many: 1 },
    {
      slip: 'celsius-in-gas-law',
      to: 'both parts of a difference',
      of: exact('25 degC').minus(exact('20 degC')),
      many: 2,
    },
    { slip: 'millilitres-as-litres', to: 'a volume', of: tenMillilitres.times(exact(2)), many: 1 },
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
