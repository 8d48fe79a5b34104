/** Metals whose cations are named without a Roman numeral: they have one oxidation number in salts. */
export interface PlainCationRow {
  readonly symbol: string
  readonly charge: number
  /** Where the row is from. */
  readonly source: string
}

const rule = 'IUPAC Red Book 2005, IR-5.4.2.2: the number may be left out where there is no ambiguity; from memory'

/** The metals of one oxidation number. */
export const plainCations: readonly PlainCationRow[] = [
  { symbol: 'Li', charge: 1, source: rule },
  { symbol: 'Na', charge: 1, source: rule },
  { symbol: 'K', charge: 1, source: rule },
  { symbol: 'Rb', charge: 1, source: rule },
  { symbol: 'Cs', charge: 1, source: rule },
  { symbol: 'Fr', charge: 1, source: rule },
  { symbol: 'Ag', charge: 1, source: rule },
  { symbol: 'Be', charge: 2, source: rule },
  { symbol: 'Mg', charge: 2, source: rule },
  { symbol: 'Ca', charge: 2, source: rule },
  { symbol: 'Sr', charge: 2, source: rule },
  { symbol: 'Ba', charge: 2, source: rule },
  { symbol: 'Ra', charge: 2, source: rule },
  { symbol: 'Zn', charge: 2, source: rule },
  { symbol: 'Cd', charge: 2, source: rule },
  { symbol: 'Al', charge: 3, source: rule },
  { symbol: 'Sc', charge: 3, source: rule },
  { symbol: 'Y', charge: 3, source: rule },
  { symbol: 'La', charge: 3, source: rule },
]
