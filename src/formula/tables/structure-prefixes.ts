/** Words and letters that stand with a hyphen in front of a formula and tell of its structure. */
export interface StructurePrefixRow {
  /** The prefixes, separated by spaces. */
  readonly prefixes: string
  /** Where the row is from. */
  readonly source: string
}

/** What is passed over by nobody: a formula has a composition, its prefix does not. */
export const structurePrefixes: readonly StructurePrefixRow[] = [
  { prefixes: 'cis trans fac mer rac meso catena cyclo', source: 'IUPAC Red Book 2005, Tables IV and V; from memory' },
  { prefixes: 'alpha beta gamma delta', source: 'IUPAC Red Book 2005, IR-3.5.3 (allotropes), spelled; from memory' },
  { prefixes: 'ortho meta para iso tert sec n i s t c l o m p d', source: 'Common practice, no source.' },
]
