/** A cation of several atoms. */
export interface CationRow {
  /** Its formula without the charge. */
  readonly formula: string
  /** Its charge. */
  readonly charge: number
  /** Its name in salts. The first row of a name is how the cation is written. */
  readonly name: string
  /** Other names that are read. */
  readonly also?: readonly string[]
  /** Where the name is from. */
  readonly source: string
}

const tableIX = 'IUPAC Red Book 2005, Table IX; from memory'
const common = 'Common practice, no source.'

/** The cations of several atoms whose letters in a formula are known. */
export const cations: readonly CationRow[] = [
  { formula: 'NH4', charge: 1, name: 'ammonium', source: tableIX },
  { formula: 'H3O', charge: 1, name: 'oxidanium', also: ['oxonium', 'hydronium'], source: tableIX },
  { formula: 'H5O2', charge: 1, name: 'diaquahydrogen(1+)', source: tableIX },
  { formula: 'NH3OH', charge: 1, name: 'hydroxylammonium', source: tableIX },
  { formula: 'N2H5', charge: 1, name: 'hydrazinium', also: ['diazanium'], source: tableIX },
  { formula: 'PH4', charge: 1, name: 'phosphanium', source: tableIX },
  { formula: 'Hg2', charge: 2, name: 'mercury(I)', also: ['dimercury(2+)'], source: tableIX },
  { formula: 'NO', charge: 1, name: 'nitrosyl', source: tableIX },
  { formula: 'NO2', charge: 1, name: 'nitryl', source: tableIX },
  {
    formula: 'UO2',
    charge: 2,
    name: 'dioxidouranium(VI)',
    also: ['dioxidouranium(2+)', 'uranyl', 'uranyl(VI)'],
    source: tableIX,
  },
  { formula: 'UO2', charge: 1, name: 'dioxidouranium(V)', also: ['dioxidouranium(1+)', 'uranyl(V)'], source: tableIX },
  { formula: 'VO', charge: 2, name: 'oxidovanadium(IV)', also: ['vanadyl', 'vanadyl(IV)'], source: tableIX },
  { formula: 'VO2', charge: 1, name: 'dioxidovanadium(V)', source: tableIX },
  { formula: 'NpO2', charge: 1, name: 'dioxidoneptunium(V)', source: tableIX },
  { formula: 'NpO2', charge: 2, name: 'dioxidoneptunium(VI)', source: tableIX },
  { formula: 'PuO2', charge: 1, name: 'dioxidoplutonium(V)', source: tableIX },
  { formula: 'PuO2', charge: 2, name: 'dioxidoplutonium(VI)', source: tableIX },
  { formula: 'TiO', charge: 2, name: 'oxidotitanium(IV)', also: ['titanyl'], source: common },
  { formula: 'ZrO', charge: 2, name: 'oxidozirconium(IV)', also: ['zirconyl'], source: common },
  { formula: 'BiO', charge: 1, name: 'oxidobismuth(III)', also: ['bismuthyl'], source: common },
  { formula: 'SbO', charge: 1, name: 'oxidoantimony(III)', also: ['antimonyl'], source: common },
]
