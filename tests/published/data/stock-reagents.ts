/** Why a printed amount concentration is not what the library gives for the mass fraction and density beside it. */
export interface PrintedOtherwise {
  readonly substance: string
  readonly massFraction: string
  readonly printed: string
  /** What ours is. */
  readonly ours: string
  /** Why. */
  readonly differs: string
  /** The molar mass that gives the printed value, where one does. */
  readonly molarMass?: `${number} g/mol`
}

const ownNumbers = 'by the mass fraction and density that stand beside it, the concentration is another'
const wrongDensity = 'the density that stands beside it belongs to another strength'
const otherBasis = 'it fits the 56.6 % of NH4OH that stand beside it, which are 27.5 % of NH3'
const twoDecimals = 'the page calculated with a molar mass of two decimals, which gives its value'
const handbookMass = 'the handbook calculated with another molar mass, which gives its value'

export const printedOtherwise: readonly PrintedOtherwise[] = [
  {
    substance: 'H2SO4',
    massFraction: '95 %',
    printed: '17.822 mol/L',
    ours: '17.82 mol/L',
    differs: twoDecimals,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '96 %',
    printed: '17.966 mol/L',
    ours: '17.97 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '98 %',
    printed: '18.346 mol/L',
    ours: '18.35 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  { substance: 'HCl', massFraction: '37.2 %', printed: '12.1 mol/L', ours: '12.0 mol/L', differs: ownNumbers },
  { substance: 'HCl', massFraction: '36 %', printed: '11.6 mol/L', ours: '11.7 mol/L', differs: ownNumbers },
  {
    substance: 'HCl',
    massFraction: '37 %',
    printed: '12.178 mol/L',
    ours: '12.18 mol/L',
    differs: twoDecimals,
    molarMass: '36.46 g/mol',
  },
  {
    substance: 'HCl',
    massFraction: '32 %',
    printed: '10.175 mol/L',
    ours: '10.18 mol/L',
    differs: handbookMass,
    molarMass: '36.461 g/mol',
  },
  {
    substance: 'HCl',
    massFraction: '36 %',
    printed: '11.642 mol/L',
    ours: '11.64 mol/L',
    differs: handbookMass,
    molarMass: '36.46 g/mol',
  },
  {
    substance: 'HCl',
    massFraction: '38 %',
    printed: '12.388 mol/L',
    ours: '12.39 mol/L',
    differs: handbookMass,
    molarMass: '36.46 g/mol',
  },
  {
    substance: 'HNO3',
    massFraction: '70 %',
    printed: '15.698 mol/L',
    ours: '15.697 mol/L',
    differs: twoDecimals,
    molarMass: '63.01 g/mol',
  },
  { substance: 'H3PO4', massFraction: '85.5 %', printed: '14.8 mol/L', ours: '14.9 mol/L', differs: ownNumbers },
  {
    substance: 'H3PO4',
    massFraction: '85 %',
    printed: '14.615 mol/L',
    ours: '14.616 mol/L',
    differs: twoDecimals,
    molarMass: '98.00 g/mol',
  },
  { substance: 'HClO4', massFraction: '70 %', printed: '11.65 mol/L', ours: '11.64 mol/L', differs: ownNumbers },
  { substance: 'HClO4', massFraction: '61.3 %', printed: '9.5 mol/L', ours: '10.2 mol/L', differs: wrongDensity },
  { substance: 'HF', massFraction: '49 %', printed: '28.9 mol/L', ours: '29.1 mol/L', differs: ownNumbers },
  { substance: 'NH3', massFraction: '28.0 %', printed: '14.5 mol/L', ours: '14.8 mol/L', differs: otherBasis },
  { substance: 'NaOH', massFraction: '50.5 %', printed: '19.4 mol/L', ours: '19.3 mol/L', differs: ownNumbers },
  {
    substance: 'NaOH',
    massFraction: '50.0 %',
    printed: '18.938 mol/L',
    ours: '18.939 mol/L',
    differs: twoDecimals,
    molarMass: '40.00 g/mol',
  },
  { substance: 'KOH', massFraction: '45 %', printed: '11.7 mol/L', ours: '11.6 mol/L', differs: ownNumbers },
  {
    substance: 'KOH',
    massFraction: '45.0 %',
    printed: '11.677 mol/L',
    ours: '11.678 mol/L',
    differs: twoDecimals,
    molarMass: '56.11 g/mol',
  },
  { substance: 'HCOOH', massFraction: '90 %', printed: '23.6 mol/L', ours: '22.1 mol/L', differs: wrongDensity },
  {
    substance: 'HCOOH',
    massFraction: '95 %',
    printed: '25.179 mol/L',
    ours: '25.182 mol/L',
    differs: twoDecimals,
    molarMass: '46.03 g/mol',
  },
  {
    substance: 'HCOOH',
    massFraction: '70 %',
    printed: '17.619 mol/L',
    ours: '17.621 mol/L',
    differs: handbookMass,
    molarMass: '46.03 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '40 %',
    printed: '5.313 mol/L',
    ours: '5.314 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '60 %',
    printed: '9.168 mol/L',
    ours: '9.169 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '66 %',
    printed: '10.529 mol/L',
    ours: '10.53 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '70 %',
    printed: '11.494 mol/L',
    ours: '11.50 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '76 %',
    printed: '13.026 mol/L',
    ours: '13.03 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '80 %',
    printed: '14.088 mol/L',
    ours: '14.09 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '84 %',
    printed: '15.153 mol/L',
    ours: '15.15 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '90 %',
    printed: '16.649 mol/L',
    ours: '16.65 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '92 %',
    printed: '17.109 mol/L',
    ours: '17.11 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'H2SO4',
    massFraction: '100 %',
    printed: '18.663 mol/L',
    ours: '18.66 mol/L',
    differs: handbookMass,
    molarMass: '98.08 g/mol',
  },
  {
    substance: 'C2H5OH',
    massFraction: '60 %',
    printed: '11.605 mol/L',
    ours: '11.606 mol/L',
    differs: handbookMass,
    molarMass: '46.07 g/mol',
  },
  {
    substance: 'C2H5OH',
    massFraction: '96 %',
    printed: '16.697 mol/L',
    ours: '16.698 mol/L',
    differs: handbookMass,
    molarMass: '46.07 g/mol',
  },
]

/**
 * Volume of concentrated reagent for 1 L of a 1 mol/L solution, to the nearest 0.5 mL, from the supplier’s table of the usual
 * strengths: the first strength of each reagent in `src/solution/stock-reagent-data.ts`.
 */
export const volumesForOneMolar: readonly { readonly substance: string; readonly printed: `${number} mL` }[] = [
  { substance: 'H2SO4', printed: '55.5 mL' },
  { substance: 'HCl', printed: '82.5 mL' },
  { substance: 'HNO3', printed: '64.0 mL' },
  { substance: 'H3PO4', printed: '67.5 mL' },
  { substance: 'CH3COOH', printed: '57.5 mL' },
  { substance: 'HClO4', printed: '85.5 mL' },
  { substance: 'HF', printed: '34.5 mL' },
  { substance: 'NH3', printed: '69.0 mL' },
  { substance: 'NaOH', printed: '51.5 mL' },
  { substance: 'KOH', printed: '85.5 mL' },
  { substance: 'HCOOH', printed: '42.5 mL' },
]
