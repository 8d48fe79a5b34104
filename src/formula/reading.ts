import { attempt } from '../errors.js'
import { isPlausible } from './balance.js'
import { notAsked, type Reading, readText } from './read.js'
import type { Token } from './scan.js'

/** Reads a formula with its state; `tokens`, where given, is filled with its pieces. */
export function readFormulaText(text: string, tokens?: Token[]): Reading {
  return readText(text, isSalt, tokens)
}

/** Whether a stretch of text is by itself a salt whose usual charges add up to zero. */
function isSalt(text: string): boolean {
  const tokens: Token[] = []
  return attempt(() => readText(text, notAsked, tokens)).ok && isPlausible(tokens)
}
