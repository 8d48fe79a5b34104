import { capital, closing, digit, dot, kindAt, opening, runEnd, superscript } from './characters.js'
import { isotopeLabel, isRange, notCharge, rangeInside } from './charge-complaints.js'
import { complain } from './complaint.js'
import type { FormulaError } from './formula-error.js'
import { deepest, type Scan } from './scan.js'

/** More brackets inside one another than are read. */
export function tooDeep(scan: Scan): FormulaError {
  const says = 'is one bracket inside too many others'
  const expected = `at most ${deepest} brackets inside one another`
  return complain(scan, { code: 'formula/too-deep', start: scan.at, end: scan.at + 1, says, expected })
}

/** A bracket without its partner: nothing closes it, or another kind does. */
export function unclosed(scan: Scan, start: number, wanted: string): FormulaError {
  const { text, at } = scan
  if (kindAt(text, at) === closing) {
    const says = `closes the "${text.charAt(start)}" at character ${scan.offset + start + 1}`
    return complain(scan, {
      code: 'formula/mismatched-bracket',
      start: at,
      end: at + 1,
      says,
      expected: `the closing bracket "${wanted}"`,
    })
  }
  const [says, expected] = ['is not closed', `the closing bracket "${wanted}" further on`]
  return complain(scan, { code: 'formula/unclosed-bracket', start, end: start + 1, says, expected })
}

/** A closing bracket that closes nothing. */
export function unopened(scan: Scan): FormulaError {
  const [says, expected] = ['closes no bracket', 'an opening bracket before it']
  return complain(scan, { code: 'formula/unopened-bracket', start: scan.at, end: scan.at + 1, says, expected })
}

/** A part without anything in it. */
export function emptySegment(scan: Scan, from: number): FormulaError {
  const { text, at } = scan
  if (at > from) return loneNumber(scan, from)
  if (scan.depth > 0 && kindAt(text, at) === closing) return emptyBracket(scan)
  if (kindAt(text, at) === closing) return unopened(scan)
  const last = text.slice(0, at).trimEnd().length - 1
  if (kindAt(text, last) === opening) return unclosed(scan, last, ')]}'.charAt('([{'.indexOf(text.charAt(last))))
  const says = kindAt(text, at) === dot ? 'has no part in front of it' : 'has no part behind its last dot'
  const expected = 'a formula on both sides of every dot'
  const end = kindAt(text, at) === dot ? at + 1 : at
  const hint =
    text.charAt(at) === '.' && kindAt(text, at + 1) === digit && at > 0
      ? `${text.slice(0, at)}0${text.slice(at)}?`
      : undefined
  return complain(scan, { code: 'formula/empty-part', start: at, end, says, expected, hint })
}

function loneNumber(scan: Scan, from: number): FormulaError {
  const [says, expected] = ['is a number with nothing behind it', 'a symbol or a bracket']
  return complain(scan, { code: 'formula/misplaced-number', start: from, end: scan.at, says, expected })
}

function emptyBracket(scan: Scan): FormulaError {
  const { text, at } = scan
  const start = text.lastIndexOf(text.charAt(at) === ')' ? '(' : text.charAt(at) === ']' ? '[' : '{', at)
  if (text.charAt(at) === ']') return vacancy(scan, Math.max(start, 0), at + 1)
  const [says, expected] = ['is an empty bracket', 'symbols between the brackets']
  return complain(scan, { code: 'formula/empty-bracket', start: Math.max(start, 0), end: at + 1, says, expected })
}

/** A sign for a site without an atom. */
export function vacancy(scan: Scan, start: number, end: number): FormulaError {
  const says = 'stands for an empty site'
  const expected = 'only what has a mass; leave the site out'
  return complain(scan, { code: 'formula/vacancy', start, end, says, expected })
}

/** A number right behind an opening bracket. */
export function numeralInBrackets(scan: Scan): FormulaError {
  const { text, at } = scan
  const end = Math.max(runEnd(text, at, digit), at + 1)
  const letters = runEnd(text, end, capital)
  if (kindAt(text, letters) === closing && text.charAt(at - 1) === '[') return isotopeLabel(scan, at, end)
  const [says, expected] = ['is a number right behind a bracket', 'a symbol; a number stands in front of the bracket']
  return complain(scan, { code: 'formula/misplaced-number', start: at, end, says, expected })
}

/** A charge with uncharged atoms behind it. */
export function misplacedCharge(scan: Scan): FormulaError {
  const { text, chargeAt: start } = scan
  const says = 'is a charge in the middle, and atoms without a charge follow it'
  const expected = 'a charge at the end, or one behind every ion; no oxidation numbers'
  return complain(scan, {
    code: 'formula/misplaced-charge',
    start,
    end: Math.min(start + 3, text.length),
    says,
    expected,
  })
}

/** A charge with nothing in front of it, or a mass number. */
export function loneCharge(scan: Scan): FormulaError {
  const { text, at: start } = scan
  if (isRange(text, start)) return rangeInside(scan, start)
  const strange = notCharge(scan, start)
  if (kindAt(text, start) !== digit && strange.code !== 'formula/bad-charge') return strange
  if (kindAt(text, start) === superscript && kindAt(text, start + 1) === capital)
    return isotopeLabel(scan, start, start + 1)
  const [says, expected] = ['is a charge with nothing that carries it', 'a symbol, a bracket or an electron e^-']
  return complain(scan, { code: 'formula/misplaced-charge', start, end: start + 1, says, expected })
}

/** An electron that is not written as one. */
export function bareElectron(scan: Scan): FormulaError {
  const { text } = scan
  const start = text.lastIndexOf('e', scan.at)
  const [says, expected] = ['is not an electron with its charge', 'e^-']
  const end = Math.max(start + 1, scan.at)
  const hint = kindAt(text, start + 1) === digit ? undefined : 'e^-?'
  return complain(scan, { code: 'formula/bare-electron', start, end, says, expected, hint })
}
