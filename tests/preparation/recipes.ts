import type { Recipe } from 'saltwright/preparation'

/** Zinc oxide in dilute acid: two stages, one of them the water of crystallisation. */
export const zincSulfate: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Zinc sulfate heptahydrate',
  product: 'ZnSO4·7H2O',
  scale: { of: 'ZnSO4·7H2O', amount: '0.0400 mol' },
  stages: [
    { name: 'dissolve', equation: 'ZnO + H2SO4 -> ZnSO4 + H2O' },
    { name: 'crystallise', equation: 'ZnSO4 + 7H2O -> ZnSO4·7H2O' },
  ],
  supplies: [
    { form: 'solid', substance: 'ZnO', name: 'zinc oxide' },
    { form: 'solution', substance: 'H2SO4', name: 'sulfuric acid', concentration: '3.00 mol/L', excessFactor: '1.10' },
  ],
}

/** Alum from the metal: the alkali left from dissolving is neutralised before the acid does its own work. */
export const alum: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Potassium aluminium sulfate dodecahydrate',
  product: 'KAl(SO4)2·12H2O',
  scale: { of: 'Al', amount: '0.025 mol' },
  stages: [
    { name: 'dissolve', equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2(g)' },
    { name: 'neutralise', equation: '2KOH + H2SO4 -> K2SO4 + 2H2O', clears: 'KOH' },
    { name: 'precipitate', equation: '2K[Al(OH)4] + H2SO4 -> 2Al(OH)3 + K2SO4 + 2H2O' },
    { name: 'redissolve', equation: '2Al(OH)3 + 3H2SO4 -> Al2(SO4)3 + 6H2O' },
    { name: 'crystallise', equation: 'Al2(SO4)3 + K2SO4 + 24H2O -> 2KAl(SO4)2·12H2O' },
  ],
  supplies: [
    { form: 'solid', substance: 'Al' },
    { form: 'solution', substance: 'KOH', concentration: '2 mol/L', molesPerMole: '2' },
    { form: 'solution', substance: 'H2SO4', concentration: '6 mol/L' },
  ],
}

/** The double salt from its two simple salts, as a manual prints it. */
export const doubleSaltAsPrinted: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Ammonium iron(II) sulfate hexahydrate',
  product: '(NH4)2Fe(SO4)2·6H2O',
  stages: [{ name: 'crystallise', equation: 'FeSO4 + (NH4)2SO4 + 6H2O -> (NH4)2Fe(SO4)2·6H2O' }],
  supplies: [
    { form: 'solid', substance: 'FeSO4', weighedAs: 'FeSO4·7H2O', asPrinted: '13.9 g' },
    { form: 'solid', substance: '(NH4)2SO4', asPrinted: '7.0 g' },
  ],
}

/** Iron in excess leaves no acid, so that there is nothing for the carbonate to take up. */
export const withCarbonate: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Iron(II) sulfate heptahydrate',
  product: 'FeSO4·7H2O',
  scale: { of: 'H2SO4', amount: '0.0500 mol' },
  stages: [
    { name: 'dissolve', equation: 'Fe + H2SO4 -> FeSO4 + H2(g)' },
    { name: 'use up the acid', equation: 'FeCO3 + H2SO4 -> FeSO4 + CO2(g) + H2O', clears: 'H2SO4' },
    { name: 'crystallise', equation: 'FeSO4 + 7H2O -> FeSO4·7H2O' },
  ],
  supplies: [
    { form: 'solid', substance: 'Fe', excessFactor: '1.10' },
    { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L' },
    { form: 'solid', substance: 'FeCO3', asPrinted: '5 g' },
    { form: 'unlimited', substance: 'O2', name: 'air' },
  ],
  claims: [{ of: 'FeCO3', excess: '10 %' }],
}
