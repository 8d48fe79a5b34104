import { closing, kindAt, small } from './characters.js'
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
  const trimmed = text.trim()
  const state = stateBehind(trimmed)
  const inner = state === undefined ? trimmed : trimmed.slice(0, -2 - state.length).trimEnd()
  if (inner === '') throw empty(text)
  const scan = startScan(inner, text.length - text.trimStart().length, tokens, isSalt)
  readSegments(scan)
  if (kindAt(scan.text, scan.at) === closing) throw unopened(scan)
  checkTotals(scan)
  return { scan, state }
}

const states: readonly State[] = ['s', 'l', 'g', 'aq']

/** The state at the end of a text, if any. */
function stateBehind(text: string): State | undefined {
  if (text.charCodeAt(text.length - 1) !== 41 || kindAt(text, text.length - 2) !== small) return undefined
  return states.find((state) => text.endsWith(`(${state})`))
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
