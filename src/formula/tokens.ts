import { readFormulaText } from './reading.js'
import type { Token } from './scan.js'

/** The pieces of a formula that was read before, in order. */
export function tokensOf(text: string): readonly Token[] {
  const tokens: Token[] = []
  readFormulaText(text, tokens)
  return tokens
}
