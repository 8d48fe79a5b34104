import type { State } from '../formula.js'

/** Words in brackets behind a formula that mean one of the four states. */
export interface StateWordsRow {
  /** The words, separated by spaces. */
  readonly words: string
  readonly state: State
  /** Where the row is from. */
  readonly source: string
}

const green = 'IUPAC Green Book, section 2.10.1, symbols of states of aggregation; from memory'
const common = 'Common practice, no source.'

/** Other symbols of states, with the state they are or include. */
export const stateWords: readonly StateWordsRow[] = [
  { words: 'cr am vit', state: 's', source: green },
  { words: 'solid c a gl ppt', state: 's', source: common },
  { words: 'liq liquid', state: 'l', source: common },
  { words: 'gas v vap vapour vapor', state: 'g', source: common },
  { words: 'aqu solv', state: 'aq', source: common },
]
