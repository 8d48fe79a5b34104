import type { Recipe } from 'saltwright/preparation'

/** A mass as the scale, a hydrate that is weighed, an assay. */
export const doubleSalt: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Ammonium nickel sulfate hexahydrate',
  product: '(NH4)2Ni(SO4)2·6H2O',
  scale: { of: '(NH4)2Ni(SO4)2·6H2O', mass: '15.0 g' },
  stages: [{ name: 'Mix', equation: 'NiSO4 + (NH4)2SO4 + 6H2O -> (NH4)2Ni(SO4)2·6H2O' }],
  supplies: [
    { form: 'solid', substance: 'NiSO4', weighedAs: 'NiSO4·6H2O', assay: '98.5 %', name: 'nickel sulfate' },
    { form: 'solid', substance: '(NH4)2SO4', excessFactor: '1.08' },
  ],
}

/** One acid in two stages, moles per mole, what is taken away. */
export const oxalate: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Potassium trisoxalatoferrate(III) trihydrate',
  product: 'K3[Fe(C2O4)3]·3H2O',
  scale: { of: '(NH4)2Fe(SO4)2·6H2O', mass: '9.80 g' },
  stages: [
    {
      name: 'Precipitate',
      equation: '(NH4)2Fe(SO4)2·6H2O + H2C2O4 -> FeC2O4 + H2SO4 + (NH4)2SO4 + 6H2O',
    },
    {
      name: 'Oxidise',
      equation: '6FeC2O4 + 3H2O2 + 6K2C2O4 -> 4K3[Fe(C2O4)3] + 2Fe(OH)3',
      removes: ['H2SO4', '(NH4)2SO4'],
    },
    { name: 'Dissolve', equation: '2Fe(OH)3 + 3K2C2O4 + 3H2C2O4 -> 2K3[Fe(C2O4)3] + 6H2O' },
    { name: 'Crystallise', equation: 'K3[Fe(C2O4)3] + 3H2O -> K3[Fe(C2O4)3]·3H2O' },
  ],
  supplies: [
    { form: 'solid', substance: '(NH4)2Fe(SO4)2·6H2O' },
    { form: 'solution', substance: 'H2C2O4', concentration: '1.00 mol/L', stage: 'Precipitate', excessFactor: '1.10' },
    { form: 'solid', substance: 'K2C2O4', weighedAs: 'K2C2O4·H2O', stage: 'Oxidise', excessFactor: '1.20' },
    { form: 'stock', substance: 'H2O2', massFraction: '6.0 %', density: '1.02 g/mL', molesPerMole: '2' },
    { form: 'solution', substance: 'H2C2O4', concentration: '1.50 mol/L', stage: 'Dissolve' },
  ],
}

/** An amount as the scale, a solution by molality. */
export const molal: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Nickel chloride hexahydrate',
  product: 'NiCl2·6H2O',
  scale: { of: 'NiCl2·6H2O', amount: '0.0650 mol' },
  stages: [{ name: 'Dissolve', equation: 'NiCO3 + 2HCl + 5H2O -> NiCl2·6H2O + CO2' }],
  supplies: [
    { form: 'solid', substance: 'NiCO3', assay: '97 %' },
    { form: 'molal', substance: 'HCl', molality: '6.50 mol/kg', density: '1.098 g/mL', excessFactor: '1.05' },
  ],
}

/** The mass of a supply as the scale, normality, a balance of two places, water that is boiled off. */
export const normal: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Magnesium sulfate heptahydrate',
  product: 'MgSO4·7H2O',
  scale: { of: 'MgCO3', mass: '4.20 g' },
  stages: [
    { name: 'Dissolve', equation: 'MgCO3 + H2SO4 -> MgSO4 + CO2 + H2O' },
    { name: 'Crystallise', equation: 'MgSO4 + 7H2O -> MgSO4·7H2O' },
  ],
  supplies: [
    { form: 'solid', substance: 'MgCO3' },
    { form: 'normal', substance: 'H2SO4', normality: '4.0 mol/L', equivalentsPerMole: '2', excessFactor: '1.02' },
  ],
  crystallisation: { temperature: '10 degC', water: '27 g', evaporated: '15 g' },
  instruments: { balance: '0.01 g' },
}

/** Half of the filtrate goes on, and acid clears what alkali is in it. */
export const halfOfIt: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Potassium alum from half of the filtrate',
  product: 'KAl(SO4)2·12H2O',
  scale: { of: 'Al', mass: '1.000 g' },
  stages: [
    { name: 'Dissolve', equation: '2Al + 2KOH + 6H2O -> 2K[Al(OH)4] + 3H2' },
    { name: 'Neutralise', equation: '2KOH + H2SO4 -> K2SO4 + 2H2O', clears: 'KOH', aliquot: '0.5' },
    { name: 'Acidify', equation: 'K[Al(OH)4] + 2H2SO4 -> KAl(SO4)2 + 4H2O' },
    { name: 'Crystallise', equation: 'KAl(SO4)2 + 12H2O -> KAl(SO4)2·12H2O' },
  ],
  supplies: [
    { form: 'solid', substance: 'Al' },
    { form: 'solution', substance: 'KOH', concentration: '1.40 mol/L', excessFactor: '1.6' },
    { form: 'solution', substance: 'H2SO4', concentration: '9.0 mol/L', excessFactor: '1.05' },
  ],
}

/** Everything as a manual prints it: a hydrate by mass, a liquid by volume, a gas in water by its label. */
export const printed: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Tetraamminecopper(II) sulfate monohydrate as printed',
  product: '[Cu(NH3)4]SO4·H2O',
  stages: [{ name: 'Complex', equation: 'CuSO4 + 4NH4OH -> [Cu(NH3)4]SO4·H2O + 3H2O' }],
  supplies: [
    { form: 'solid', substance: 'CuSO4', weighedAs: 'CuSO4·5H2O', asPrinted: '12.5 g' },
    {
      form: 'stock',
      substance: 'NH4OH',
      statedAs: 'NH3',
      massFraction: '25 %',
      density: '0.91 g/mL',
      asPrinted: '20 mL',
    },
  ],
}
