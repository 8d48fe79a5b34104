import { closing, kindAt } from './characters.js'
import type { State } from './formula.js'
import { FormulaError } from './formula-error.js'
import { readSegments } from './reader.js'
import { unopened } from './reader-complaints.js'
import { longest, type Scan, startScan, type Token } from './scan.js'
import { checkTotals } from './totals.js'

/** What was read, and the state behind it. */
export interface Reading {
  readonly scan: Scan
  readonly state: State | undefined
}

/** For texts where a full stop between digits is not asked about. */
export function notAsked(): boolean {
  return false
}

/** Reads the whole text; `tokens`, where given, is filled with its pieces. */
export function readText(text: string, isSalt: (text: string) => boolean, tokens?: Token[]): Reading {
  if (text.length > longest) throw tooLong(text)
  const stop = text.trimEnd().length
  const state = stateBefore(text, stop)
  const body = state === undefined ? text.trimEnd() : text.slice(0, stop - state.length - 2).trimEnd()
  const inner = body.trimStart()
  if (inner === '') throw empty(text)
  const scan = startScan(inner, body.length - inner.length, tokens, isSalt)
  readSegments(scan)
  if (kindAt(scan.text, scan.at) === closing) throw unopened(scan)
  checkTotals(scan)
  return { scan, state }
}

/** The state that ends before a place, if any. */
function stateBefore(text: string, end: number): State | undefined {
  if (text.charAt(end - 1) !== ')') return undefined
  for (const state of ['s', 'l', 'g', 'aq'] as const) if (text.endsWith(`(${state})`, end)) return state
  return undefined
}

function tooLong(text: string): FormulaError {
  return new FormulaError({
    code: 'formula/too-long',
    message: `A formula of ${text.length} characters is not read: ${longest} are the limit.`,
    found: `${text.length} characters`,
    expected: `a formula of at most ${longest} characters`,
  })
}

function empty(text: string): FormulaError {
  return new FormulaError({
    code: 'formula/empty',
    message:
      text.trim() === '' ? 'There is no formula: the text is empty.' : 'There is a state, but no formula before it.',
    position: { start: 0, end: text.length },
    found: text.trim() === '' ? 'nothing' : text.trim(),
    expected: 'a formula such as ZnSO4·7H2O',
  })
}
