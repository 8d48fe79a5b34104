/** Letters of another alphabet that look like Latin ones, and signs that look like those of formulas. */
export interface LookAlikeRow {
  /** The alphabet. */
  readonly alphabet: string
  /** Its letters. */
  readonly letters: string
  /** The Latin letters they look like, in the same order. */
  readonly like: string
  /** Where the row is from. */
  readonly source: string
}

const charts = 'The Unicode Standard, code charts; by eye'

/** Letters that look like letters of element symbols without being them. Wide and ornamented Latin letters need no row. */
export const lookAlikes: readonly LookAlikeRow[] = [
  {
    alphabet: 'Cyrillic',
    letters: 'АВЕЗІЇЈКМНОРСТУХЅԌаеорсухіїјѕһԁԛԝ',
    like: 'ABE3IIJKMHOPCTYXSGaeopcyxiijshdqw',
    source: charts,
  },
  { alphabet: 'Greek', letters: 'ΑΒΕΖΗΙΚΜΝΟΡΤΥΧοικνρυ', like: 'ABEZHIKMNOPTYXoikvpu', source: charts },
  { alphabet: 'Armenian', letters: 'ՕՏՍօհոսց', like: 'OSUohnug', source: charts },
  { alphabet: 'Cherokee', letters: 'ᎪᏴᏟᎬᎻᎥᎫᏦᏞᎷᏢᏒᏚᎢᏙᎳᏃ', like: 'ABCEHiJKLMPRSTVWZ', source: charts },
  { alphabet: 'special Latin', letters: 'ıɑɡɩɪʋʏᴄᴏᴜᴠᴡᴢɴʜꜰ', like: 'iagiIvyCOUVWZNHF', source: charts },
  { alphabet: 'special', letters: '¯ˉ˗⁃﹘➖➕', like: '------+', source: charts },
  { alphabet: 'special', letters: '⸳⋄◦∘°‣ᐧ᛫∗✕⨯', like: '········*××', source: charts },
]
