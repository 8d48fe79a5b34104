import { symbolPlace } from '../element/symbols.js'
import { isPlausible } from './balance.js'
import type { FormulaNote } from './formula.js'
import { metalRange, type Range } from './ions.js'
import type { Token } from './scan.js'
import { slipNote } from './slip-note.js'

/** Two capitals side by side that are two elements and, as one, make a likely salt: `CUSO4`, `COI2`, `NI^2+`. */
export function caseSlips(tokens: readonly Token[]): readonly FormulaNote[] {
  if (isPlausible(tokens) || isOrganic(tokens)) return []
  for (const [index, second] of tokens.entries()) {
    const first = tokens[index - 1]
    if (first === undefined) continue
    const merged = { ...first, end: second.end, text: first.text + second.text.toLowerCase() }
    const meant = [...tokens.slice(0, index - 1), merged, ...tokens.slice(index + 1)]
    const range = usualRange(merged.text)
    if (range !== undefined && isLikely(meant, range)) return [noteOn(first, second, meant)]
  }
  return []
}

/** The usual charges of a metal that anybody has in a bottle: up to plutonium. */
function usualRange(metal: string): Range | undefined {
  const place = symbolPlace(metal.charCodeAt(0), metal.charCodeAt(1))
  return place <= plutonium ? metalRange(metal) : undefined
}

const plutonium = 94

/** Whether carbon carries hydrogen: then two capitals are nothing special. */
export function isOrganic(tokens: readonly Token[]): boolean {
  return tokens.some(({ text }, index) => {
    const before = tokens[index - 1]?.kind === 'count' ? tokens[index - 2] : tokens[index - 1]
    return text === 'H' && before?.text === 'C'
  })
}

/** A plausible salt, or the metal alone with one of its usual charges. */
function isLikely(meant: readonly Token[], [least, greatest]: Range): boolean {
  const [, charge, ...more] = meant
  if (charge?.kind !== 'charge' || more.length > 0) return isPlausible(meant)
  const value = Number.parseInt(charge.text, 10)
  return charge.text.endsWith('+') && value >= least && value <= greatest
}

function noteOn(first: Token, second: Token, meant: readonly Token[]): FormulaNote {
  const [one, other] = [first.text, second.text]
  const message = `"${one}${other}" is read as ${one} and ${other}, two elements.`
  return slipNote('likely-case-slip', message, first.start, second.end, meant)
}
