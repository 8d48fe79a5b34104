import { inspect } from 'node:util'
import { isSaltwrightError } from 'saltwright'
import { randomOf } from './random.mjs'

/** Every error of the library names a code of this shape. */
const codeShape = /^[a-z]+\/[a-z-]+$/

/**
 * Feeds a reader with inputs by chance. Nothing but an error of the library may come out of it, what it accepts has to hold, and
 * it has to be quick. An input that was slow is tried again, as the machine may have been busy.
 *
 * @returns How many inputs there were, how many were accepted, and every finding with its seed.
 */
export function fuzz(reader, { count, seed, findingsAtMost = 10 }) {
  const findings = []
  let accepted = 0
  let slowest = 0
  for (let index = 0; index < count && findings.length < findingsAtMost; index += 1) {
    const own = (seed + index * 2654435761) >>> 0
    const result = once(reader, reader.input(randomOf(own)))
    if (result.accepted) accepted += 1
    slowest = Math.max(slowest, result.spent)
    if (result.finding !== undefined) findings.push({ seed: own, ...result.finding })
  }
  return { name: reader.name, accepted, slowest, findings, polluted: 'polluted' in {} }
}

function once(reader, input) {
  const first = timed(reader, input)
  const finding = judged(reader, input, first) ?? tooSlow(reader, input, first.spent)
  return { accepted: first.ok, spent: first.spent, finding }
}

function timed({ read }, input) {
  const start = performance.now()
  try {
    const value = read(input)
    return { ok: true, value, spent: performance.now() - start }
  } catch (error) {
    return { ok: false, error, spent: performance.now() - start }
  }
}

function judged({ check }, input, { ok, value, error }) {
  if (!ok) return refusedWell(error, input) ? undefined : { what: 'threw', error, input }
  try {
    check(value, input)
    return undefined
  } catch (failure) {
    return { what: 'does not hold', error: failure, input }
  }
}

/** A refusal names its code, says something, and points into the text. */
function refusedWell(error, input) {
  if (!isSaltwrightError(error) || !codeShape.test(error.code) || error.message === '') return false
  const { position } = error
  if (position === undefined || typeof input !== 'string') return true
  return position.start >= 0 && position.end >= position.start && position.end <= input.length
}

function tooSlow(reader, input, spent) {
  const size = sizeOf(input)
  const allowed = reader.limit.fixed + reader.limit.perCharacter * size
  if (spent <= allowed) return undefined
  const best = Math.min(...[1, 2, 3, 4, 5].map(() => timed(reader, input).spent))
  if (best <= allowed) return undefined
  return { what: `took ${best.toFixed(1)} ms for ${size} characters`, error: undefined, input }
}

function sizeOf(input) {
  if (typeof input === 'string') return input.length
  try {
    return JSON.stringify(input)?.length ?? 0
  } catch {
    return 0
  }
}

/** A finding as a person can read it. */
export function describeFinding({ seed, what, error, input }, longest = 3000) {
  const told = error === undefined ? '' : `: ${error.stack ?? error}`
  return `seed ${seed}: ${what}${told}\n  input: ${shown(input, longest)}`
}

function shown(input, longest) {
  try {
    const text = typeof input === 'string' ? JSON.stringify(input) : inspect(input, { depth: 6, breakLength: Infinity })
    return text.length > longest ? `${text.slice(0, longest)}... (${text.length} characters)` : text
  } catch {
    return 'cannot be shown'
  }
}
