/** A ligand of a simple complex. */
export interface LigandRow {
  /** Its formula; the first row of a name is how it is written. */
  readonly formula: string
  readonly charge: number
  /** Its name inside the name of a complex. */
  readonly name: string
  /** Other names that are read. */
  readonly also?: readonly string[]
  /** Whether its number is bis, tris ... with brackets around the name. */
  readonly isGrouped?: boolean
  /** Where the name is from. */
  readonly source: string
}

const tableIX = 'IUPAC Red Book 2005, Table IX and IR-9.2.2.3; from memory'
const organic = 'IUPAC Red Book 2005, IR-9.2.2.3 and Table VII; from memory'

/** The ligands that are named. */
export const ligands: readonly LigandRow[] = [
  { formula: 'H2O', charge: 0, name: 'aqua', also: ['aquo'], source: tableIX },
  { formula: 'OH2', charge: 0, name: 'aqua', source: tableIX },
  { formula: 'NH3', charge: 0, name: 'ammine', source: tableIX },
  { formula: 'CO', charge: 0, name: 'carbonyl', source: tableIX },
  { formula: 'NO', charge: 0, name: 'nitrosyl', source: tableIX },
  { formula: 'F', charge: -1, name: 'fluorido', also: ['fluoro'], source: tableIX },
  { formula: 'Cl', charge: -1, name: 'chlorido', also: ['chloro'], source: tableIX },
  { formula: 'Br', charge: -1, name: 'bromido', also: ['bromo'], source: tableIX },
  { formula: 'I', charge: -1, name: 'iodido', also: ['iodo'], source: tableIX },
  { formula: 'H', charge: -1, name: 'hydrido', source: tableIX },
  { formula: 'OH', charge: -1, name: 'hydroxido', also: ['hydroxo'], source: tableIX },
  { formula: 'N', charge: -3, name: 'nitrido', source: tableIX },
  { formula: 'O', charge: -2, name: 'oxido', also: ['oxo'], source: tableIX },
  { formula: 'CN', charge: -1, name: 'cyanido', also: ['cyano'], source: tableIX },
  { formula: 'N3', charge: -1, name: 'azido', source: tableIX },
  { formula: 'NO3', charge: -1, name: 'nitrato', source: tableIX },
  { formula: 'NO2', charge: -1, name: 'nitrito-κN', also: ['nitro', 'nitrito-N'], isGrouped: true, source: tableIX },
  { formula: 'ONO', charge: -1, name: 'nitrito-κO', also: ['nitrito', 'nitrito-O'], isGrouped: true, source: tableIX },
  { formula: 'SCN', charge: -1, name: 'thiocyanato-κS', also: ['thiocyanato'], isGrouped: true, source: tableIX },
  { formula: 'NCS', charge: -1, name: 'thiocyanato-κN', also: ['isothiocyanato'], isGrouped: true, source: tableIX },
  { formula: 'SO4', charge: -2, name: 'sulfato', source: tableIX },
  { formula: 'SO3', charge: -2, name: 'sulfito', source: tableIX },
  { formula: 'S2O3', charge: -2, name: 'thiosulfato', isGrouped: true, source: tableIX },
  { formula: 'CO3', charge: -2, name: 'carbonato', source: tableIX },
  { formula: 'C2O4', charge: -2, name: 'oxalato', isGrouped: true, source: organic },
  { formula: 'CH3COO', charge: -1, name: 'acetato', isGrouped: true, source: organic },
  { formula: 'C2H3O2', charge: -1, name: 'acetato', isGrouped: true, source: organic },
  {
    formula: 'C2H8N2',
    charge: 0,
    name: 'ethane-1,2-diamine',
    also: ['ethylenediamine'],
    isGrouped: true,
    source: organic,
  },
  { formula: 'NH2CH2CH2NH2', charge: 0, name: 'ethane-1,2-diamine', isGrouped: true, source: organic },
  { formula: 'C5H5N', charge: 0, name: 'pyridine', isGrouped: true, source: organic },
  { formula: 'C10H8N2', charge: 0, name: "2,2'-bipyridine", also: ['bipyridine'], isGrouped: true, source: organic },
  { formula: 'C12H8N2', charge: 0, name: '1,10-phenanthroline', isGrouped: true, source: organic },
  {
    formula: 'C5H7O2',
    charge: -1,
    name: 'pentane-2,4-dionato',
    also: ['acetylacetonato'],
    isGrouped: true,
    source: organic,
  },
]
