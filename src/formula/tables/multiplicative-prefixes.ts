/** A number as a prefix in names. */
export interface PrefixRow {
  readonly number: number
  /** In front of a simple name: `tetraaqua`, `dihydrate`. */
  readonly simple: string
  /** In front of a name in brackets: `tris(oxalato)`. */
  readonly grouped?: string
  /** Where the row is from. */
  readonly source: string
}

const tableIV = 'IUPAC Red Book 2005, Table IV; from memory'

/** Multiplicative prefixes. */
export const multiplicativePrefixes: readonly PrefixRow[] = [
  { number: 1, simple: 'mono', source: tableIV },
  { number: 2, simple: 'di', grouped: 'bis', source: tableIV },
  { number: 3, simple: 'tri', grouped: 'tris', source: tableIV },
  { number: 4, simple: 'tetra', grouped: 'tetrakis', source: tableIV },
  { number: 5, simple: 'penta', grouped: 'pentakis', source: tableIV },
  { number: 6, simple: 'hexa', grouped: 'hexakis', source: tableIV },
  { number: 7, simple: 'hepta', grouped: 'heptakis', source: tableIV },
  { number: 8, simple: 'octa', grouped: 'octakis', source: tableIV },
  { number: 9, simple: 'nona', grouped: 'nonakis', source: tableIV },
  { number: 10, simple: 'deca', grouped: 'decakis', source: tableIV },
  { number: 11, simple: 'undeca', source: tableIV },
  { number: 12, simple: 'dodeca', source: tableIV },
  { number: 13, simple: 'trideca', source: tableIV },
  { number: 14, simple: 'tetradeca', source: tableIV },
  { number: 15, simple: 'pentadeca', source: tableIV },
  { number: 16, simple: 'hexadeca', source: tableIV },
  { number: 17, simple: 'heptadeca', source: tableIV },
  { number: 18, simple: 'octadeca', source: tableIV },
  { number: 19, simple: 'nonadeca', source: tableIV },
  { number: 20, simple: 'icosa', source: tableIV },
  { number: 21, simple: 'henicosa', source: tableIV },
  { number: 22, simple: 'docosa', source: tableIV },
  { number: 23, simple: 'tricosa', source: tableIV },
  { number: 24, simple: 'tetracosa', source: tableIV },
  { number: 25, simple: 'pentacosa', source: tableIV },
  { number: 26, simple: 'hexacosa', source: tableIV },
  { number: 27, simple: 'heptacosa', source: tableIV },
  { number: 28, simple: 'octacosa', source: tableIV },
  { number: 29, simple: 'nonacosa', source: tableIV },
  { number: 30, simple: 'triaconta', source: tableIV },
]
