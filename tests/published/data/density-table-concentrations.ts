/**
 * Amount concentrations that the handbook prints beside the densities of the table in `src/solution/density-data.ts`.
 *
 * Source: CRC Handbook of Chemistry and Physics, 102nd edition (2021), Concentrative Properties of Aqueous Solutions, 20 °C, read in
 * a public copy.
 */
export interface PrintedConcentration {
  readonly substance: string
  readonly massFraction: `${number} %`
  readonly printed: `${number} mol/L`
}

export const printedConcentrations: readonly PrintedConcentration[] = [
  { substance: 'H2SO4', massFraction: '1 %', printed: '0.102 mol/L' },
  { substance: 'H2SO4', massFraction: '5 %', printed: '0.526 mol/L' },
  { substance: 'H2SO4', massFraction: '10 %', printed: '1.087 mol/L' },
  { substance: 'H2SO4', massFraction: '20 %', printed: '2.324 mol/L' },
  { substance: 'H2SO4', massFraction: '30 %', printed: '3.729 mol/L' },
  { substance: 'H2SO4', massFraction: '40 %', printed: '5.313 mol/L' },
  { substance: 'H2SO4', massFraction: '50 %', printed: '7.113 mol/L' },
  { substance: 'H2SO4', massFraction: '60 %', printed: '9.168 mol/L' },
  { substance: 'H2SO4', massFraction: '66 %', printed: '10.529 mol/L' },
  { substance: 'H2SO4', massFraction: '70 %', printed: '11.494 mol/L' },
  { substance: 'H2SO4', massFraction: '76 %', printed: '13.026 mol/L' },
  { substance: 'H2SO4', massFraction: '80 %', printed: '14.088 mol/L' },
  { substance: 'H2SO4', massFraction: '84 %', printed: '15.153 mol/L' },
  { substance: 'H2SO4', massFraction: '90 %', printed: '16.649 mol/L' },
  { substance: 'H2SO4', massFraction: '92 %', printed: '17.109 mol/L' },
  { substance: 'H2SO4', massFraction: '94 %', printed: '17.55 mol/L' },
  { substance: 'H2SO4', massFraction: '96 %', printed: '17.966 mol/L' },
  { substance: 'H2SO4', massFraction: '98 %', printed: '18.346 mol/L' },
  { substance: 'H2SO4', massFraction: '100 %', printed: '18.663 mol/L' },
  { substance: 'KOH', massFraction: '1 %', printed: '0.179 mol/L' },
  { substance: 'KOH', massFraction: '5 %', printed: '0.929 mol/L' },
  { substance: 'KOH', massFraction: '10 %', printed: '1.938 mol/L' },
  { substance: 'KOH', massFraction: '15 %', printed: '3.032 mol/L' },
  { substance: 'KOH', massFraction: '20 %', printed: '4.213 mol/L' },
  { substance: 'KOH', massFraction: '24 %', printed: '5.223 mol/L' },
  { substance: 'KOH', massFraction: '30 %', printed: '6.851 mol/L' },
  { substance: 'KOH', massFraction: '36 %', printed: '8.626 mol/L' },
  { substance: 'KOH', massFraction: '40 %', printed: '9.896 mol/L' },
  { substance: 'KOH', massFraction: '44 %', printed: '11.239 mol/L' },
  { substance: 'KOH', massFraction: '46 %', printed: '11.938 mol/L' },
  { substance: 'KOH', massFraction: '50 %', printed: '13.389 mol/L' },
  { substance: 'C2H5OH', massFraction: '1 %', printed: '0.216 mol/L' },
  { substance: 'C2H5OH', massFraction: '5 %', printed: '1.074 mol/L' },
  { substance: 'C2H5OH', massFraction: '10 %', printed: '2.131 mol/L' },
  { substance: 'C2H5OH', massFraction: '20 %', printed: '4.205 mol/L' },
  { substance: 'C2H5OH', massFraction: '30 %', printed: '6.212 mol/L' },
  { substance: 'C2H5OH', massFraction: '40 %', printed: '8.12 mol/L' },
  { substance: 'C2H5OH', massFraction: '50 %', printed: '9.919 mol/L' },
  { substance: 'C2H5OH', massFraction: '60 %', printed: '11.605 mol/L' },
  { substance: 'C2H5OH', massFraction: '70 %', printed: '13.183 mol/L' },
  { substance: 'C2H5OH', massFraction: '80 %', printed: '14.649 mol/L' },
  { substance: 'C2H5OH', massFraction: '90 %', printed: '15.98 mol/L' },
  { substance: 'C2H5OH', massFraction: '96 %', printed: '16.697 mol/L' },
  { substance: 'C2H5OH', massFraction: '100 %', printed: '17.133 mol/L' },
]
