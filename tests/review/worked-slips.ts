import { molarMass } from 'saltwright/formula'
import {
  gasVolume,
  gravimetricFactor,
  netMass,
  overallYield,
  percentYield,
  waterOfCrystallisation,
} from 'saltwright/product'
import { asDimension, constant, exact, type Naming, type Quantity, quantity, sum } from 'saltwright/quantity'
import type { ReviewContext } from 'saltwright/review'
import { amountConcentration, amountInVolume, dilution, volumeToDeliver } from 'saltwright/solution'
import { amountFromMass, massFromAmount, moleRatio } from 'saltwright/stoichiometry'

/**
 * A worked example of a slip: the right answer and the stated one. The stated numbers were worked out by hand-written formulas with the
 * abridged atomic weights of the IUPAC, apart from this library, and printed to four figures.
 */
export interface WorkedSlip {
  readonly slip: string
  readonly example: string
  readonly right: string
  readonly stated: string
  readonly expected: () => Quantity
  readonly context?: () => ReviewContext
}

const mol = (text: string, naming: Naming = {}): Quantity<'amount'> =>
  asDimension(exact(text), 'amount').named({ role: 'amount', ...naming })
const gram = (text: string, naming: Naming = {}): Quantity<'mass'> =>
  asDimension(quantity(text), 'mass').named({ role: 'mass', ...naming })
const ratio = (value: string, role: Naming['role'], of = ''): Quantity<'ratio'> =>
  asDimension(exact(value), 'ratio').named({ role: role as 'excess', of })
const factor = (value: string): Quantity<'ratio'> => asDimension(exact(value), 'ratio')
const yieldOf = (amount: Quantity<'amount'>, product: string): Quantity<'mass'> => {
  const made = amount.named({ role: 'theoretical yield', of: product })
  return massFromAmount(made, product).named({ role: 'theoretical yield', of: product })
}

const alumRoute = '2Al + 2KOH + 4H2SO4 + 22H2O -> 2KAl(SO4)2·12H2O + 3H2'
const reactant = (of: string, amount: string, gives: Quantity<'amount'>, mass?: string) => ({
  of,
  amount: mol(amount),
  gives,
  mass: mass === undefined ? undefined : gram(mass),
})
const nitrate = (of: string, mass: string) => {
  const amount = amountFromMass(asDimension(exact(mass), 'mass'), of)
  return { of, amount, gives: amount, mass: asDimension(exact(mass), 'mass') }
}
const metalOrSalt = '2.834 g'

export const workedSlips: readonly WorkedSlip[] = [
  {
    slip: 'hydrate-weighed-as-anhydrous',
    example: 'mass of FeSO4·7H2O for 0.0250 mol',
    right: '6.950 g',
    stated: '3.798 g',
    expected: () => massFromAmount(mol('0.0250 mol'), 'FeSO4·7H2O'),
  },
  {
    slip: 'hydrate-counted-as-anhydrous',
    example: 'moles in 2.00 g of CuSO4·5H2O',
    right: '0.008010 mol',
    stated: '0.01253 mol',
    expected: () => amountFromMass(asDimension(exact('2.00 g'), 'mass'), 'CuSO4·5H2O'),
  },
  {
    slip: 'product-taken-as-anhydrous',
    example: 'theoretical alum from 0.0371 mol of Al',
    right: '17.60 g',
    stated: '9.579 g',
    expected: () => yieldOf(mol('0.0371 mol'), 'KAl(SO4)2·12H2O'),
  },
  {
    slip: 'anhydrous-taken-as-hydrate',
    example: 'mass of anhydrous FeCl3 for 0.0100 mol',
    right: '1.622 g',
    stated: '2.703 g',
    expected: () => massFromAmount(mol('0.0100 mol'), 'FeCl3'),
    context: () => ({ formulas: ['FeCl3·6H2O'] }),
  },
  {
    slip: 'one-water-only',
    example: 'molar mass of KAl(SO4)2·12H2O',
    right: '474.37 g/mol',
    stated: '276.21 g/mol',
    expected: () => molarMass('KAl(SO4)2·12H2O'),
  },
  {
    slip: 'water-number-on-hydrogen',
    example: 'molar mass of KAl(SO4)2·12H2O',
    right: '474.37 g/mol',
    stated: '298.38 g/mol',
    expected: () => molarMass('KAl(SO4)2·12H2O'),
  },
  {
    slip: 'water-multiplied',
    example: 'molar mass of CuSO4·5H2O',
    right: '249.68 g/mol',
    stated: '14376 g/mol',
    expected: () => molarMass('CuSO4·5H2O'),
  },
  {
    slip: 'other-hydrate',
    example: 'molar mass of FeSO4·7H2O taken as the pentahydrate',
    right: '278.01 g/mol',
    stated: '241.98 g/mol',
    expected: () => molarMass('FeSO4·7H2O'),
  },
  {
    slip: 'water-added-again',
    example: 'CuSO4·5H2O for 50.0 mL of 0.500 M',
    right: '6.242 g',
    stated: '8.494 g',
    expected: () => massFromAmount(mol('0.0250 mol'), 'CuSO4·5H2O'),
  },
  {
    slip: 'alum-unit-doubled',
    example: 'moles in 9.49 g of alum',
    right: '0.02001 mol',
    stated: '0.01000 mol',
    expected: () => amountFromMass(asDimension(exact('9.49 g'), 'mass'), 'KAl(SO4)2·12H2O'),
  },
  {
    slip: 'bracket-number-left-out',
    example: 'molar mass of KAl(SO4)2·12H2O',
    right: '474.37 g/mol',
    stated: '378.32 g/mol',
    expected: () => molarMass('KAl(SO4)2·12H2O'),
  },
  {
    slip: 'bracket-number-on-last-atom',
    example: 'molar mass of Al2(SO4)3',
    right: '342.13 g/mol',
    stated: '278.01 g/mol',
    expected: () => molarMass('Al2(SO4)3'),
  },
  {
    slip: 'subscript-left-out',
    example: 'molar mass of H2SO4',
    right: '98.072 g/mol',
    stated: '97.064 g/mol',
    expected: () => molarMass('H2SO4'),
  },
  {
    slip: 'coefficient-in-molar-mass',
    example: 'molar mass of KOH with the coefficient 2',
    right: '56.105 g/mol',
    stated: '112.21 g/mol',
    expected: () => molarMass('KOH'),
    context: () => ({ equations: [alumRoute] }),
  },
  {
    slip: 'formula-of-another-compound',
    example: 'K2[Fe(C2O4)2]·3H2O for K3[Fe(C2O4)3]·3H2O',
    right: '491.24 g/mol',
    stated: '364.12 g/mol',
    expected: () => molarMass('K3[Fe(C2O4)3]·3H2O'),
    context: () => ({ formulas: ['K2[Fe(C2O4)2]·3H2O'] }),
  },
  {
    slip: 'counter-ions-miscounted',
    example: 'K2Fe(C2O4)3·3H2O for K3[Fe(C2O4)3]·3H2O',
    right: '491.24 g/mol',
    stated: '452.14 g/mol',
    expected: () => molarMass('K3[Fe(C2O4)3]·3H2O'),
  },
  {
    slip: 'ratio-left-out',
    example: 'H2SO4 for 0.0371 mol of Al in the alum route',
    right: '0.0742 mol',
    stated: '0.0371 mol',
    expected: () => mol('0.0371 mol').times(moleRatio(alumRoute, 'H2SO4', 'Al')),
  },
  {
    slip: 'ratio-upside-down',
    example: 'NH3 for 0.0801 mol of Cu, 4 : 1',
    right: '0.320 mol',
    stated: '0.0200 mol',
    expected: () => mol('0.0801 mol').times(moleRatio('CuSO4 + 4NH3 + H2O -> [Cu(NH3)4]SO4·H2O', 'NH3', 'CuSO4')),
  },
  {
    slip: 'coefficient-of-neighbour',
    example: 'alum from 0.0200 mol of H2SO4, read as the 3 of hydrogen',
    right: '0.0100 mol',
    stated: '0.0150 mol',
    expected: () => mol('0.0200 mol').times(moleRatio(alumRoute, 'KAl(SO4)2·12H2O', 'H2SO4')),
    context: () => ({ equations: [alumRoute] }),
  },
  {
    slip: 'equation-not-balanced',
    example: 'H2 from 0.0185 mol of Al, 2 : 3 against the printed 1 : 3',
    right: '0.0278 mol',
    stated: '0.0555 mol',
    expected: () => mol('0.0185 mol').times(moleRatio('2Al + 6HCl -> 2AlCl3 + 3H2', 'H2', 'Al')),
  },
  {
    slip: 'one-step-for-all',
    example: 'H2SO4 for 0.0371 mol of Al, the precipitation alone',
    right: '0.0742 mol',
    stated: '0.0186 mol',
    expected: () => mol('0.0371 mol').times(moleRatio(alumRoute, 'H2SO4', 'Al')),
    context: () => ({ atHand: [ratio('0.5', 'mole ratio', 'H2SO4')] }),
  },
  {
    slip: 'leftover-not-counted',
    example: 'H2SO4 really needed for 1 g of Al in 25 mL of 3 M KOH',
    right: '0.09309 mol',
    stated: '0.07412 mol',
    expected: () => {
      const aluminium = amountFromMass(asDimension(exact('1.000 g'), 'mass'), 'Al')
      const need = aluminium.times(factor('2')).named({ role: 'amount', of: 'H2SO4' })
      const alkaliLeft = mol('0.0750 mol').minus(aluminium)
      return need.plus(alkaliLeft.times(factor('0.5')).named({ role: 'amount', of: 'H2SO4' }))
    },
  },
  {
    slip: 'coefficients-on-masses',
    example: 'KCl to match 190 g of NaNO3, 1 : 1',
    right: '166.6 g',
    stated: '190.0 g',
    expected: () => {
      const nitrates = amountFromMass(asDimension(exact('190 g'), 'mass'), 'NaNO3')
      return massFromAmount(nitrates.times(moleRatio('NaNO3 + KCl -> KNO3 + NaCl', 'KCl', 'NaNO3')), 'KCl')
    },
  },
  {
    slip: 'smaller-mass-limits',
    example: '150 g of NaNO3 with 140 g of KCl',
    right: '178.4 g',
    stated: '189.9 g',
    expected: () => yieldOf(nitrate('NaNO3', '150 g').amount, 'KNO3'),
    context: () => ({ reactants: [nitrate('NaNO3', '150 g'), nitrate('KCl', '140 g')] }),
  },
  {
    slip: 'fewer-moles-limits',
    example: '0.0185 mol of Al, 0.0635 mol of oxalic acid, 0.0500 mol of KOH, 2 : 6 : 6',
    right: '0.0167 mol',
    stated: '0.0185 mol',
    expected: () =>
      mol('0.0500 mol').dividedBy(factor('3')).named({ role: 'theoretical yield', of: 'K3[Al(C2O4)3]·3H2O' }),
    context: () => ({
      reactants: [
        reactant('Al', '0.0185 mol', mol('0.0185 mol')),
        reactant('H2C2O4', '0.0635 mol', mol('0.0635 mol').dividedBy(factor('3'))),
        reactant('KOH', '0.0500 mol', mol('0.0500 mol').dividedBy(factor('3'))),
      ],
    }),
  },
  {
    slip: 'excess-reagent-limits',
    example: 'K2[Cu(C2O4)2]·2H2O from 6.20 g of K2C2O4·H2O instead of 2.00 g of CuSO4·5H2O',
    right: metalOrSalt,
    stated: '5.953 g',
    expected: () => yieldOf(copper().amount, oxalatocuprate),
    context: () => ({ reactants: [copper(), oxalate()] }),
  },
  {
    slip: 'reactant-masses-added',
    example: '4 g of CuSO4·5H2O and 2 g of (NH4)2SO4',
    right: '6.05 g',
    stated: '6.00 g',
    expected: () => yieldOf(nitrate('(NH4)2SO4', '2 g').amount, '(NH4)2Cu(SO4)2·6H2O'),
    context: () => ({ reactants: [nitrate('CuSO4·5H2O', '4 g'), nitrate('(NH4)2SO4', '2 g')] }),
  },
  {
    slip: 'excess-on-another-reagent',
    example: 'copper sulfate weighed with the 2.10-fold excess of the oxalate',
    right: '12.48 g',
    stated: '26.22 g',
    expected: () => massFromAmount(mol('0.0500 mol'), 'CuSO4·5H2O'),
    context: () => ({ atHand: [ratio('2.10', 'excess', 'K2C2O4')] }),
  },
  {
    slip: 'excess-on-product',
    example: 'theoretical alum from 0.0371 mol of Al with 2.43-fold acid',
    right: '17.60 g',
    stated: '42.77 g',
    expected: () => yieldOf(mol('0.0371 mol'), 'KAl(SO4)2·12H2O'),
    context: () => ({ atHand: [ratio('2.43', 'excess', 'H2SO4')] }),
  },
  {
    slip: 'excess-per-cent-as-factor',
    example: 'H2C2O4 for 0.0185 mol of Al with 14 % excess',
    right: '0.0633 mol',
    stated: '0.00777 mol',
    expected: () => mol('0.0185 mol').times(factor('3')).times(ratio('1.14', 'excess')),
  },
  {
    slip: 'excess-left-out',
    example: 'KOH for 0.0371 mol of Al at 1.89-fold, 1.4 M',
    right: '50.08 mL',
    stated: '26.50 mL',
    expected: () => volumeToDeliver(mol('0.0371 mol').times(ratio('1.89', 'excess')), '1.4 mol/L').to('mL'),
  },
  {
    slip: 'excess-divided',
    example: 'KOH for 0.0371 mol of Al at 1.89-fold, 1.4 M',
    right: '50.08 mL',
    stated: '14.02 mL',
    expected: () => volumeToDeliver(mol('0.0371 mol').times(ratio('1.89', 'excess')), '1.4 mol/L').to('mL'),
  },
  {
    slip: 'molar-mass-other-way',
    example: 'amount of 4.560 g of zinc',
    right: '0.06975 mol',
    stated: '298.1 mol',
    expected: () => amountFromMass(gram('4.560 g'), 'Zn'),
  },
  {
    slip: 'molar-mass-other-way',
    example: 'mass of 0.0400 mol of zinc oxide',
    right: '3.255 g',
    stated: '0.0004915 g',
    expected: () => massFromAmount(mol('0.0400 mol'), 'ZnO'),
  },
  {
    slip: 'fraction-turned-over',
    example: 'amount of 4.560 g of zinc',
    right: '0.06975 mol',
    stated: '14.34 mol',
    expected: () => amountFromMass(gram('4.560 g'), 'Zn'),
  },
  {
    slip: 'fraction-turned-over',
    example: 'volume of 9.0 M H2SO4 that holds 0.180 mol',
    right: '20.0 mL',
    stated: '50.0 L',
    expected: () => volumeToDeliver('0.180 mol', '9.0 mol/L').to('mL'),
  },
  {
    slip: 'concentration-other-way',
    example: 'volume of 9.0 M H2SO4 that holds 0.180 mol',
    right: '20.0 mL',
    stated: '1.62 L',
    expected: () => volumeToDeliver('0.180 mol', '9.0 mol/L').to('mL'),
  },
  {
    slip: 'density-other-way',
    example: 'concentration of sulfuric acid of 96.0 % and 1.836 g/mL',
    right: '17.97 mol/L',
    stated: '5.332 mol/L',
    expected: () => amountConcentration({ massFraction: '96.0 %', density: '1.836 g/mL', substance: 'H2SO4' }),
  },
  {
    slip: 'density-other-way',
    example: 'the same with its density in grams per litre, reckoned per millilitre',
    right: '17.97 mol/L',
    stated: '5.332 mol/L',
    expected: () => amountConcentration({ massFraction: '96.0 %', density: '1836 g/L', substance: 'H2SO4' }),
  },
  {
    slip: 'millilitres-as-litres',
    example: 'moles in 50 mL of 1.4 M KOH',
    right: '0.0700 mol',
    stated: '70.0 mol',
    expected: () => amountInVolume(exact('50 mL'), '1.4 mol/L'),
  },
  {
    slip: 'litres-as-millilitres',
    example: 'volume of 9.0 M H2SO4 that holds 0.180 mol',
    right: '20.0 mL',
    stated: '0.0200 mL',
    expected: () => volumeToDeliver('0.180 mol', '9.0 mol/L').to('mL'),
  },
  {
    slip: 'milligrams-and-grams',
    example: '50 mg of sulfate',
    right: '0.0500 g',
    stated: '50.0 g',
    expected: () => asDimension(exact('50 mg'), 'mass').to('g'),
  },
  {
    slip: 'millimoles-and-moles',
    example: '2.00 g of CuSO4·5H2O',
    right: '0.00801 mol',
    stated: '8.01 mol',
    expected: () => amountFromMass('2.00 g', 'CuSO4·5H2O'),
  },
  {
    slip: 'moles-as-grams',
    example: '0.0250 mol of FeSO4·7H2O',
    right: '6.95 g',
    stated: '0.0250 g',
    expected: () => massFromAmount('0.0250 mol', 'FeSO4·7H2O'),
  },
  {
    slip: 'per-cent-place',
    example: 'copper recovery of 0.2285 g from 0.2654 g',
    right: '86.1 %',
    stated: '0.0861 %',
    expected: () => percentYield('0.2285 g', '0.2654 g'),
  },
  {
    slip: 'tare-left-in',
    example: 'vial of 13.482 g, gross 21.365 g',
    right: '7.883 g',
    stated: '21.365 g',
    expected: () => netMass({ gross: '21.365 g', tare: '13.482 g' }),
  },
  {
    slip: 'other-tare',
    example: 'the neighbour’s vial of 13.127 g',
    right: '7.883 g',
    stated: '8.238 g',
    expected: () => netMass({ gross: '21.365 g', tare: '13.482 g' }),
    context: () => ({ atHand: [gram('13.127 g', { role: 'tare' })] }),
  },
  {
    slip: 'paper-left-in',
    example: 'a precipitate of 1.251 g on 0.452 g of paper',
    right: '1.251 g',
    stated: '1.703 g',
    expected: () => netMass({ gross: '15.185 g', tare: ['13.482 g', quantity('0.452 g', { label: 'filter paper' })] }),
  },
  {
    slip: 'paper-left-in',
    example: 'the same, the paper at hand and not in the calculation',
    right: '1.251 g',
    stated: '1.703 g',
    expected: () => netMass({ gross: '14.733 g', tare: '13.482 g' }),
    context: () => ({ atHand: [gram('0.452 g', { role: 'tare', label: 'filter paper' })] }),
  },
  {
    slip: 'weighed-too-soon',
    example: '0.680 g of CaCO3 at constant mass, 0.80 g before',
    right: '0.680 g',
    stated: '0.800 g',
    expected: () => netMass({ gross: '10.680 g', tare: '10.000 g' }),
    context: () => ({ atHand: [gram('10.800 g', { role: 'gross' })] }),
  },
  {
    slip: 'amount-rounded-early',
    example: '1.0 g of CaCl2·2H2O as 0.0068 mol, then CaCO3',
    right: '0.6808 g',
    stated: '0.6806 g',
    expected: () => {
      const chloride = amountFromMass(asDimension(exact('1.0 g'), 'mass'), 'CaCl2·2H2O')
      return massFromAmount(chloride.named({ role: 'amount' }), 'CaCO3')
    },
  },
  {
    slip: 'molar-mass-rounded',
    example: 'alum as 474 g/mol',
    right: '11.859 g',
    stated: '11.850 g',
    expected: () => massFromAmount('0.0250 mol', 'KAl(SO4)2·12H2O'),
  },
  {
    slip: 'yield-upside-down',
    example: '7.77 g of 17.58 g of alum',
    right: '44.20 %',
    stated: '226.3 %',
    expected: () => percentYield(exact('7.77 g'), exact('17.58 g')),
  },
  {
    slip: 'yield-on-starting-mass',
    example: '1.274 g of CuSO4 that gave 0.392 g of Cu',
    right: '77.3 %',
    stated: '30.8 %',
    expected: () => percentYield('0.392 g', '0.5072 g'),
    context: () => ({ reactants: [reactant('CuSO4', '0.00798 mol', mol('0.00798 mol'), '1.274 g')] }),
  },
  {
    slip: 'step-yields-averaged',
    example: 'five steps at 95 % each',
    right: '77.4 %',
    stated: '95.0 %',
    expected: () => overallYield(Array.from({ length: 5 }, () => asDimension(exact('95 %'), 'ratio'))),
  },
  {
    slip: 'aliquot-left-out',
    example: '2.0250 g of Al, one third of the filtrate taken',
    right: '11.87 g',
    stated: '35.60 g',
    expected: () => {
      const taken = ratio('1', 'aliquot').dividedBy(factor('3')).named({ role: 'aliquot' })
      return yieldOf(amountFromMass('2.0250 g', 'Al').times(taken), 'KAl(SO4)2·12H2O')
    },
  },
  {
    slip: 'yield-on-the-metal',
    example: 'K3[Fe(C2O4)3]·3H2O from 2.5 g of FeCl3·6H2O with 3.0 g of H2C2O4·2H2O',
    right: '3.897 g',
    stated: '4.544 g',
    expected: () => yieldOf(nitrate('H2C2O4·2H2O', '3.0 g').amount.dividedBy(factor('3')), 'K3[Fe(C2O4)3]·3H2O'),
    context: () => {
      const acid = nitrate('H2C2O4·2H2O', '3.0 g')
      return { reactants: [nitrate('FeCl3·6H2O', '2.5 g'), { ...acid, gives: acid.amount.dividedBy(factor('3')) }] }
    },
  },
  {
    slip: 'other-bottle',
    example: '0.0741 mol of H2SO4 from 9.0 M, worked out with 18 M',
    right: '8.23 mL',
    stated: '4.12 mL',
    expected: () => volumeToDeliver('0.0741 mol', strength('9.0 mol/L', 'H2SO4')).to('mL'),
    context: () => ({ atHand: [strength('18 mol/L', 'H2SO4')] }),
  },
  {
    slip: 'normality-as-molarity',
    example: '222 mL of 6 N H2SO4',
    right: '0.666 mol',
    stated: '1.332 mol',
    expected: () =>
      amountInVolume(
        exact('222 mL'),
        amountConcentration({ normality: '6 N', equivalentsPerMole: 2, substance: 'H2SO4' }),
      ),
  },
  {
    slip: 'dilution-upside-down',
    example: 'HNO3 of 15.7 M for 50 mL of 8 M',
    right: '25.5 mL',
    stated: '98.1 mL',
    expected: () => dilution({ from: '15.7 mol/L', to: '8 mol/L', volume: '50 mL' }).stock,
  },
  {
    slip: 'water-for-solution',
    example: '11.22 g of KOH in 50 mL of water, the solution taken as 53 mL',
    right: '4.00 mol/L',
    stated: '3.77 mol/L',
    expected: () => amountConcentration({ mass: exact('11.22 g'), volume: exact('50 mL'), substance: 'KOH' }),
    context: () => ({ atHand: [asDimension(exact('53 mL'), 'volume').named({ role: 'volume', of: 'H2O' })] }),
  },
  {
    slip: 'per-cent-by-volume',
    example: 'HCl of 37.2 %, 1.18 g/mL',
    right: '12.0 mol/L',
    stated: '10.2 mol/L',
    expected: () => amountConcentration({ massFraction: '37.2 %', density: '1.18 g/mL', substance: 'HCl' }),
  },
  {
    slip: 'millilitres-as-grams',
    example: '20 mL of H2SO4 of 96 %, 1.84 g/mL',
    right: '35.33 g',
    stated: '19.20 g',
    expected: () =>
      asDimension(exact('20 mL'), 'volume')
        .times(asDimension(exact('1.84 g/mL'), 'density').named({ role: 'density' }))
        .times(ratio('96 %', 'assay')),
  },
  {
    slip: 'assay-left-out',
    example: '0.250 mol of KOH from pellets of 85 %',
    right: '16.50 g',
    stated: '14.03 g',
    expected: () => massFromAmount('0.250 mol', 'KOH', { assay: exact('85 %') }),
  },
  {
    slip: 'assay-upside-down',
    example: 'the same pellets',
    right: '16.50 g',
    stated: '11.92 g',
    expected: () => massFromAmount('0.250 mol', 'KOH', { assay: exact('85 %') }),
  },
  {
    slip: 'ammonia-formula-mixed',
    example: 'ammonia of 28 %, 0.90 g/mL',
    right: '14.8 mol/L',
    stated: '7.19 mol/L',
    expected: () =>
      amountConcentration({ massFraction: exact('28.0 %'), density: exact('0.90 g/mL'), substance: 'NH3' }),
  },
  {
    slip: 'next-row-of-table',
    example: 'HCl read as 98 % and 1.22 g/mL',
    right: '12.0 mol/L',
    stated: '32.8 mol/L', // 10 · 98 · 1.22 / 36.458; the table that was read prints 25.9, from yet another density
    expected: () => amountConcentration({ massFraction: '37.2 %', density: '1.18 g/mL', substance: 'HCl' }),
    context: () => ({
      atHand: [
        ratio('98 %', 'mass fraction', 'the next row'),
        asDimension(exact('1.22 g/mL'), 'density').named({ role: 'density', of: 'the next row' }),
      ],
    }),
  },
  {
    slip: 'label-strength',
    example: 'ammonia labelled 15.35 M, really 14.5 M, 30 mL',
    right: '0.435 mol',
    stated: '0.460 mol',
    expected: () => amountInVolume(exact('30 mL'), quantity('14.50 mol/L', { role: 'concentration', of: 'NH3' })),
    context: () => ({ atHand: [strength('15.35 mol/L', 'NH3')] }),
  },
  {
    slip: 'spare-left-out',
    example: '18 pairs at 10 mL and two portions more, prepared without them',
    right: '200 mL',
    stated: '180 mL',
    expected: () =>
      sum(Array.from({ length: 18 }, () => asDimension(exact('10 mL'), 'volume'))).times(
        exact(20).dividedBy(exact(18)).named({ role: 'excess' }),
      ),
  },
  {
    slip: 'printed-amount-kept',
    example: 'alum at half scale with 20 mL of acid kept',
    right: '10.0 mL',
    stated: '20.0 mL',
    expected: () => volumeToDeliver('0.0600 mol', '6.0 mol/L').to('mL').named({ role: 'volume', of: 'H2SO4' }),
    context: () => ({ atHand: [asDimension(exact('20.0 mL'), 'volume').named({ role: 'volume', of: 'H2SO4' })] }),
  },
  {
    slip: 'celsius-in-gas-law',
    example: '0.0556 mol of H2 at 22 °C and 101.325 kPa',
    right: '1.347 L',
    stated: '0.1004 L',
    expected: () => hydrogen().volume,
  },
  {
    slip: 'pressure-units-mixed',
    example: 'the same gas, 101.325 used with R for atmospheres',
    right: '1.347 L',
    stated: '0.01329 L',
    expected: () => hydrogen().volume,
  },
  {
    slip: 'molar-volume-elsewhere',
    example: 'the same gas with 22.414 L/mol',
    right: '1.347 L',
    stated: '1.246 L',
    expected: () => hydrogen().volume,
  },
  {
    slip: 'gravimetric-factor-upside-down',
    example: '0.6168 g of BaSO4 as sulfate',
    right: '0.2539 g',
    stated: '1.499 g',
    expected: () => gram('0.6168 g').times(gravimetricFactor({ weighed: 'BaSO4', sought: 'SO4' })),
  },
  {
    slip: 'ion-for-salt',
    example: 'MgSO4 from 0.6168 g of BaSO4',
    right: '0.3181 g',
    stated: '0.2539 g',
    expected: () => gram('0.6168 g').times(gravimetricFactor({ weighed: 'BaSO4', sought: 'MgSO4' })),
  },
  {
    slip: 'water-on-residue',
    example: 'water of CuSO4·5H2O, in per cent of what is left',
    right: '36.08 %',
    stated: '56.44 %',
    expected: () =>
      waterOfCrystallisation({ hydrate: '249.677 g', residue: '159.602 g', anhydrous: 'CuSO4' }).waterFraction,
  },
  {
    slip: 'purity-left-out',
    example: '8.20 g at 92.0 % purity, 9.87 g possible',
    right: '76.4 %',
    stated: '83.1 %',
    expected: () => percentYield('8.20 g', '9.87 g', { purity: '92.0 %' }),
  },
  {
    slip: 'digits-swapped',
    example: '7.98 g copied as 7.89 g',
    right: '7.98 g',
    stated: '7.89 g',
    expected: () => gram('7.98 g'),
  },
]

const oxalatocuprate = 'K2[Cu(C2O4)2]·2H2O'

function copper() {
  return nitrate('CuSO4·5H2O', '2.00 g')
}

function oxalate() {
  const salt = nitrate('K2C2O4·H2O', '6.20 g')
  return { ...salt, gives: salt.amount.dividedBy(factor('2')) }
}

function strength(text: string, of: string): Quantity<'amountConcentration'> {
  return asDimension(exact(text), 'amountConcentration').named({ role: 'concentration', of })
}

function hydrogen() {
  const at = { temperature: constant('22.00 degC'), pressure: exact('101.325 kPa') }
  return gasVolume({ gas: 'H2', amount: mol('0.0556 mol'), at })
}
