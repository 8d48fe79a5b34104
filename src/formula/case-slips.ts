import { symbolPlace } from '../element/symbols.js'
import { isPlausible } from './balance.js'
import type { FormulaNote } from './formula.js'
import { metalRange } from './ions.js'
import type { Token } from './scan.js'
import { slipNote } from './slip-note.js'

/** Two capitals side by side that are two elements and, as one, make a likely salt: `CUSO4`, `COI2`, `NI^2+`. */
export function caseSlips(tokens: readonly Token[]): readonly FormulaNote[] {
  if (isPlausible(tokens) || isOrganic(tokens)) return []
  for (const [index, second] of tokens.entries()) {
    const first = tokens[index - 1]
    if (first === undefined || !isPair(first, second)) continue
    const merged = { ...first, end: second.end, text: first.text + second.text.toLowerCase() }
    const meant = [...tokens.slice(0, index - 1), merged, ...tokens.slice(index + 1)]
    const range = metalRange(merged.text)
    if (range !== undefined && isLikely(meant, merged.text, range)) return [noteOn(first, second, meant)]
  }
  return []
}

function isPair(first: Token, second: Token): boolean {
  const areSymbols = first.kind === 'symbol' && second.kind === 'symbol'
  if (!areSymbols || first.text.length > 1 || second.text.length > 1) return false
  const place = symbolPlace(first.text.charCodeAt(0), second.text.toLowerCase().charCodeAt(0))
  return place > 0 && place <= uranium + 2
}

const uranium = 92

/** Whether carbon carries hydrogen: then two capitals are nothing special. */
export function isOrganic(tokens: readonly Token[]): boolean {
  return tokens.some(({ text }, index) => {
    const before = tokens[index - 1]?.kind === 'count' ? tokens[index - 2] : tokens[index - 1]
    return text === 'H' && before?.text === 'C'
  })
}

/** A plausible salt, or the metal alone with one of its usual charges. */
function isLikely(meant: readonly Token[], metal: string, [least, greatest]: readonly [number, number]): boolean {
  const [first, charge, ...more] = meant
  if (first?.text !== metal || charge?.kind !== 'charge' || more.length > 0) return isPlausible(meant)
  const value = Number.parseInt(charge.text, 10)
  return charge.text.endsWith('+') && value >= Math.max(least, 2) && value <= greatest
}

function noteOn(first: Token, second: Token, meant: readonly Token[]): FormulaNote {
  const [one, other] = [first.text, second.text]
  const message = `"${one}${other}" is read as ${one} and ${other}, two elements.`
  return slipNote('likely-case-slip', message, first.start, second.end, meant)
}
