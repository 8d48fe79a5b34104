/** A usual short form of a ligand, group or acid rest. */
export interface AbbreviationRow {
  /** As it is written. */
  readonly short: string
  /** Its formula. */
  readonly formula: string
  /** Where the row is from. */
  readonly source: string
}

const tableVII = 'IUPAC Red Book 2005, Table VII; from memory'
const common = 'Common practice, no source.'

/** Short forms that stand in formulas of complexes and organic compounds, with what they mean. */
export const abbreviations: readonly AbbreviationRow[] = [
  { short: 'en', formula: 'C2H8N2', source: tableVII },
  { short: 'pn', formula: 'C3H10N2', source: tableVII },
  { short: 'dien', formula: 'C4H13N3', source: tableVII },
  { short: 'trien', formula: 'C6H18N4', source: tableVII },
  { short: 'py', formula: 'C5H5N', source: tableVII },
  { short: 'bpy', formula: 'C10H8N2', source: tableVII },
  { short: 'bipy', formula: 'C10H8N2', source: tableVII },
  { short: 'phen', formula: 'C12H8N2', source: tableVII },
  { short: 'acac', formula: 'C5H7O2', source: tableVII },
  { short: 'ox', formula: 'C2O4', source: tableVII },
  { short: 'edta', formula: 'C10H12N2O8', source: tableVII },
  { short: 'gly', formula: 'C2H4NO2', source: tableVII },
  { short: 'thf', formula: 'C4H8O', source: tableVII },
  { short: 'dmso', formula: 'C2H6OS', source: tableVII },
  { short: 'dmf', formula: 'C3H7NO', source: tableVII },
  { short: 'tu', formula: 'CH4N2S', source: tableVII },
  { short: 'ur', formula: 'CH4N2O', source: tableVII },
  { short: 'ac', formula: 'C2H3O2', source: common },
  { short: 'Me', formula: 'CH3', source: tableVII },
  { short: 'Et', formula: 'C2H5', source: tableVII },
  { short: 'Bu', formula: 'C4H9', source: tableVII },
  { short: 'Ph', formula: 'C6H5', source: tableVII },
]
