/** How a central atom is called in an anionic complex. */
export interface CentralAtomRow {
  readonly symbol: string
  readonly ate: string
  /** Where the name is from. */
  readonly source: string
}

const tableX = 'IUPAC Red Book 2005, Table X (element names with the ending -ate); from memory'

/** The central atoms of complexes that are named. */
export const centralAtoms: readonly CentralAtomRow[] = [
  { symbol: 'Al', ate: 'aluminate', source: tableX },
  { symbol: 'Ti', ate: 'titanate', source: tableX },
  { symbol: 'V', ate: 'vanadate', source: tableX },
  { symbol: 'Cr', ate: 'chromate', source: tableX },
  { symbol: 'Mn', ate: 'manganate', source: tableX },
  { symbol: 'Fe', ate: 'ferrate', source: tableX },
  { symbol: 'Co', ate: 'cobaltate', source: tableX },
  { symbol: 'Ni', ate: 'nickelate', source: tableX },
  { symbol: 'Cu', ate: 'cuprate', source: tableX },
  { symbol: 'Zn', ate: 'zincate', source: tableX },
  { symbol: 'Ga', ate: 'gallate', source: tableX },
  { symbol: 'Zr', ate: 'zirconate', source: tableX },
  { symbol: 'Nb', ate: 'niobate', source: tableX },
  { symbol: 'Mo', ate: 'molybdate', source: tableX },
  { symbol: 'Ru', ate: 'ruthenate', source: tableX },
  { symbol: 'Rh', ate: 'rhodate', source: tableX },
  { symbol: 'Pd', ate: 'palladate', source: tableX },
  { symbol: 'Ag', ate: 'argentate', source: tableX },
  { symbol: 'Cd', ate: 'cadmate', source: tableX },
  { symbol: 'In', ate: 'indate', source: tableX },
  { symbol: 'Sn', ate: 'stannate', source: tableX },
  { symbol: 'Sb', ate: 'antimonate', source: tableX },
  { symbol: 'Ce', ate: 'cerate', source: tableX },
  { symbol: 'Hf', ate: 'hafnate', source: tableX },
  { symbol: 'Ta', ate: 'tantalate', source: tableX },
  { symbol: 'W', ate: 'tungstate', source: tableX },
  { symbol: 'Re', ate: 'rhenate', source: tableX },
  { symbol: 'Os', ate: 'osmate', source: tableX },
  { symbol: 'Ir', ate: 'iridate', source: tableX },
  { symbol: 'Pt', ate: 'platinate', source: tableX },
  { symbol: 'Au', ate: 'aurate', source: tableX },
  { symbol: 'Hg', ate: 'mercurate', source: tableX },
  { symbol: 'Tl', ate: 'thallate', source: tableX },
  { symbol: 'Pb', ate: 'plumbate', source: tableX },
  { symbol: 'Bi', ate: 'bismuthate', source: tableX },
  { symbol: 'Th', ate: 'thorate', source: tableX },
  { symbol: 'U', ate: 'uranate', source: tableX },
]
