/** The sources of the solubility tables. */

export const crc =
  'CRC Handbook of Chemistry and Physics, 98th ed. (2017), Aqueous Solubility of Inorganic Compounds at Various Temperatures (mass percent), read in a public copy'

export const blanchard =
  'Blanchard, Phelan and Davis, Synthetic Inorganic Chemistry, 5th ed. (1936), Table of Solubilities, pp. 364-370 (title and edition from memory)'

export const blanchardDoubleSalt =
  'Blanchard, Phelan and Davis, Synthetic Inorganic Chemistry, 5th ed. (1936), p. 343, Ferrous Ammonium Sulphate'

export const perry =
  "Perry's Chemical Engineers' Handbook, 7th ed. (1997), Table 2-122, Solubilities of Inorganic Compounds in Water"

export const supplier = 'A supplier’s solubility table of compounds in water (web page, no primary source named)'

export const unnamed = 'Data files of a university home page, no primary source named'

export const olderHandbook = 'An older CRC Handbook, physical constants of inorganic compounds: from memory'

export const wikipedia = 'Wikipedia, Solubility table (state of 2019), read in a public copy'

export const polish = 'Physico-chemical tables (Polish), Table 04-26, g anhydrous per 100 g water, read on a web page'

export const lange = "Lange's Handbook of Chemistry, solubility table: from memory"
