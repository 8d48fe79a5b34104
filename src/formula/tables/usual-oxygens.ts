/** How many oxygen atoms the oxoanions of an element have. */
export interface UsualOxygensRow {
  readonly symbol: string
  /** The usual numbers. */
  readonly oxygens: readonly number[]
  /** Where the row is from. */
  readonly source: string
}

const acids = 'IUPAC Red Book 2005, Table IR-8.1; from memory'

/** The nonmetals whose oxoanions have fixed numbers of oxygen atoms. */
export const usualOxygens: readonly UsualOxygensRow[] = [
  { symbol: 'S', oxygens: [3, 4], source: acids },
  { symbol: 'N', oxygens: [2, 3], source: acids },
  { symbol: 'C', oxygens: [3], source: acids },
  { symbol: 'P', oxygens: [3, 4], source: acids },
  { symbol: 'Cl', oxygens: [1, 2, 3, 4], source: acids },
  { symbol: 'Br', oxygens: [1, 2, 3, 4], source: acids },
  { symbol: 'I', oxygens: [1, 2, 3, 4], source: acids },
]
