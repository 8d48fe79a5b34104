/** A molecule that joins salts in addition compounds. */
export interface GuestRow {
  readonly formula: string
  readonly name: string
  /** Where the name is from. */
  readonly source: string
}

const additions = 'IUPAC Red Book 2005, IR-5.5, examples'
const organic = 'IUPAC Blue Book 2013; from memory'

/** The molecules that addition compounds are named with, besides salts. */
export const guests: readonly GuestRow[] = [
  { formula: 'H2O', name: 'water', source: additions },
  { formula: 'NH3', name: 'ammonia', source: additions },
  { formula: 'H2O2', name: 'hydrogen peroxide', source: additions },
  { formula: 'CH3OH', name: 'methanol', source: organic },
  { formula: 'C2H5OH', name: 'ethanol', source: organic },
]
