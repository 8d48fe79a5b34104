/** A letter or two that stand for any of several elements or groups in general formulas. */
export interface StandInRow {
  readonly letters: string
  /** What it stands for. */
  readonly meaning: string
  /** Where the row is from. */
  readonly source: string
}

const red = 'IUPAC Red Book 2005, general formulas throughout, such as M and X in IR-4; from memory'
const common = 'Common practice, no source.'

/** What general formulas are written with. */
export const standIns: readonly StandInRow[] = [
  { letters: 'M', meaning: 'any metal', source: red },
  { letters: 'X', meaning: 'any halogen or anion', source: red },
  { letters: 'L', meaning: 'any ligand', source: red },
  { letters: 'R', meaning: 'any organic group or rare earth', source: common },
  { letters: 'A', meaning: 'any cation or acid rest', source: common },
  { letters: 'Ln', meaning: 'any lanthanoid', source: common },
]
