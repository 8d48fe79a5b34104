import { caseSlips } from './case-slips.js'
import { chargeDoubt } from './charge-doubt.js'
import type { FormulaNote } from './formula.js'
import { letterSlips } from './letter-slips.js'
import { oddOxoanions } from './odd-oxoanions.js'
import { tokensOf } from './tokens.js'

/** Longest formula that is looked through; no common salt is longer. */
const longest = 200

/** What is legal in a formula and probably not meant: the likeliest slip of writing, or else a doubt of chemistry. */
export function notesOn(text: string): readonly FormulaNote[] {
  if (text.length > longest) return Object.freeze([])
  const tokens = tokensOf(text)
  const [first] = [...caseSlips(tokens), ...letterSlips(tokens), ...oddOxoanions(tokens), ...chargeDoubt(tokens)]
  return Object.freeze(first === undefined ? [] : [Object.freeze(first)])
}
