import { symbolPlace } from '../element/symbols.js'
import { capital, digit, kindAt, opening, runEnd, sign, skipSpaces, small, subscript } from './characters.js'
import { unknownCount } from './charge-complaints.js'
import { complain } from './complaint.js'
import type { FormulaError } from './formula-error.js'
import type { Scan } from './scan.js'
import { abbreviations } from './tables/abbreviations.js'
import { stateWords } from './tables/state-words.js'
import { structurePrefixes } from './tables/structure-prefixes.js'

const states = ['s', 'l', 'g', 'aq']
/** Letters that are no symbol: an unknown count, a state in the wrong place, a short form, a prefix, or a slip. */
export function strangeLetters(scan: Scan, at: number): FormulaError {
  const { text } = scan
  const tail = runEnd(text, at + 1, small)
  const start = wordStart(text, at)
  if (isUnknown(text, at, tail)) return unknownCount(scan, tail - 1, tail)
  const word = text.slice(start, tail)
  return (
    badState(scan, start, tail) ??
    shortForm(scan, start, word) ??
    prefix(scan, start, word) ??
    noSymbol(scan, start, word)
  )
}

/** Where the would-be symbol begins: at its capital, if there is one right before. */
function wordStart(text: string, at: number): number {
  let start = at
  while (kindAt(text, start) === small && kindAt(text, start - 1) === small) start -= 1
  return kindAt(text, start) === small && kindAt(text, start - 1) === capital ? start - 1 : start
}

/** Whether the letters end in one that stands for a number: `NOx`, `(C2H4)n`, `Nax`, `Fe1-x`. */
function isUnknown(text: string, at: number, tail: number): boolean {
  if (!'xnyzm'.includes(text.charAt(tail - 1))) return false
  if (kindAt(text, at) === small) return tail === at + 1 && at > 0 && kindAt(text, at - 1) !== opening
  return tail === at + 2 && symbolPlace(text.charCodeAt(at), 0) > 0
}

function badState(scan: Scan, start: number, end: number): FormulaError | undefined {
  const { text } = scan
  if (text.charAt(start - 1) !== '(' || text.charAt(end) !== ')' || kindAt(text, start) !== small) return undefined
  const word = text.slice(start, end)
  const span = { start: start - 1, end: end + 1 }
  if (states.includes(word)) {
    const says = 'is a state that does not stand at the end'
    return complain(scan, {
      code: 'formula/misplaced-state',
      ...span,
      says,
      expected: 'the state behind everything else',
    })
  }
  if (!isLast(text, end + 1) || isShort(word)) return undefined
  const says = 'is not a state that is known'
  const meant = stateWords.find(({ words }) => words.split(' ').includes(word))?.state
  const hint = meant === undefined ? undefined : `${text.slice(0, start)}${meant}${text.slice(end)}?`
  return complain(scan, { code: 'formula/unknown-state', ...span, says, expected: '(s), (l), (g) or (aq)', hint })
}

function isLast(text: string, at: number): boolean {
  return skipSpaces(text, at) >= text.length
}

function isShort(word: string): boolean {
  return abbreviations.some(({ short }) => short === word)
}

/** `en`, `Et`: the hint has the formula in its place. */
function shortForm(scan: Scan, start: number, word: string): FormulaError | undefined {
  const row = abbreviations.find(({ short }) => short === word)
  if (row === undefined) return undefined
  const { text } = scan
  const end = start + word.length
  return complain(scan, {
    code: 'formula/abbreviation',
    start,
    end,
    says: `is a short form of ${row.formula}, not a formula`,
    expected: `the formula ${row.formula}`,
    hint: `${text.slice(0, start)}${spelledOut(text, end, row.formula)}${text.slice(end)}?`,
  })
}

/** The formula of a short form; in brackets where a count follows that would count its last atoms only. */
function spelledOut(text: string, end: number, formula: string): string {
  const kind = kindAt(text, end)
  return kind === digit || kind === subscript ? `(${formula})` : formula
}

function prefix(scan: Scan, start: number, word: string): FormulaError | undefined {
  const { text } = scan
  const end = start + word.length
  const isPrefix = structurePrefixes.some(({ prefixes }) => prefixes.split(' ').includes(word))
  if (!isPrefix || kindAt(text, end) !== sign) return undefined
  const [says, expected] = ['describes a structure', 'a formula without prefixes']
  const hint = `${text.slice(0, start)}${text.slice(end + 1)}?`
  return complain(scan, { code: 'formula/structure-prefix', start, end: end + 1, says, expected, hint })
}

function noSymbol(scan: Scan, start: number, word: string): FormulaError {
  const says = 'is not an element symbol'
  return complain(scan, {
    code: 'formula/unknown-symbol',
    start,
    end: start + word.length,
    says,
    expected: 'an element symbol',
  })
}
