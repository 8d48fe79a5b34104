/** The sources of the classifications. */

export const gestis =
  'GESTIS substance database of the German Social Accident Insurance (state of 2020), CLP classification, read in a public copy'

export const annexVi =
  'EU CLP, Regulation (EC) No 1272/2008, Annex VI Table 3 (harmonised classification) and what suppliers add to it: from memory'

export const suppliers = 'Safety data sheets of suppliers (no harmonised classification): from memory'

export const publisher = 'Hazard list of a textbook publisher (Elemente Chemie 1, 2013)'

export const instruction = 'Operating instruction of a university for a first-year practical'

export const gasList = 'A public list of gases with numbers of the GESTIS substance database'
