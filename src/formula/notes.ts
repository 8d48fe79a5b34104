import { caseSlips } from './case-slips.js'
import { chargeDoubt } from './charge-doubt.js'
import type { FormulaNote } from './formula.js'
import { letterSlips } from './letter-slips.js'
import { oddOxoanions } from './odd-oxoanions.js'
import { tokensOf } from './tokens.js'

/** Longest formula that is looked through; no common salt is longer. */
const longest = 200

/** What is legal in a formula and probably not meant: a slip of writing, or else doubts of chemistry. */
export function notesOn(text: string): readonly FormulaNote[] {
  if (text.length > longest) return []
  const tokens = tokensOf(text)
  const slips = [...caseSlips(tokens), ...letterSlips(tokens)]
  const doubts = slips.length > 0 ? slips : [...oddOxoanions(tokens), ...chargeDoubt(tokens)]
  return Object.freeze(doubts.map((note) => Object.freeze(note)))
}
