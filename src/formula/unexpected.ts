import { digit, kindAt, runEnd, small, space, subscript, vulgar } from './characters.js'
import { codePoint, complain, isInvisible } from './complaint.js'
import type { FormulaCode, FormulaError } from './formula-error.js'
import { lookAlike } from './look-alike.js'
import { vacancy } from './reader-complaints.js'
import type { Scan } from './scan.js'
import { strangeLetters } from './strange-letters.js'

/** What stands where a symbol, a bracket, a dot or a charge should. */
export function unexpected(scan: Scan, kind: number): FormulaError {
  if (kind === small) return strangeLetters(scan, scan.at)
  if (kind === digit || kind === subscript || kind === vulgar) return misplacedNumber(scan, kind)
  return strangeCharacter(scan)
}

/** A number that follows neither a symbol nor a dot. */
function misplacedNumber(scan: Scan, kind: number): FormulaError {
  const { text, at: start } = scan
  const end = runEnd(text, start, kind)
  if (kindAt(text, start - 1) !== space) {
    const [says, expected] = ['is a number behind nothing it could count', 'a symbol or a bracket']
    return complain(scan, { code: 'formula/misplaced-number', start, end, says, expected })
  }
  return complain(scan, {
    code: 'formula/missing-dot',
    start,
    end,
    says: 'is a number behind a space: a count, or a new part whose dot is missing',
    expected: 'a count right behind its symbol, or a dot between two parts',
    hint: `${text.slice(0, start).trimEnd()}·${text.slice(start)}?`,
  })
}

/** Single characters that people use in formulas and that have no meaning here, by what they are. */
const strange: readonly {
  readonly characters: string
  readonly code: FormulaCode
  readonly says: string
  readonly expected: string
}[] = [
  {
    characters: ',;|',
    code: 'formula/alternatives',
    says: 'separates elements that share a place',
    expected: 'fixed counts, as in (Mg0.9Fe0.1)2SiO4',
  },
  {
    characters: '=≡#⋯…',
    code: 'formula/bond',
    says: 'is a bond, or belongs to an equation',
    expected: 'one formula without bonds',
  },
  {
    characters: '→←⇌⇄↔⟶⇒↑↓',
    code: 'formula/equation',
    says: 'belongs to an equation',
    expected: 'one formula; parseEquation of saltwright/equation reads equations',
  },
  {
    characters: '<>&$\\_`"\'“”„‘’«»',
    code: 'formula/markup',
    says: 'is markup',
    expected: 'plain text, as in SO4^2-',
  },
  {
    characters: '~≈≤≥±',
    code: 'formula/range',
    says: 'makes a number uncertain',
    expected: 'one number',
  },
  {
    characters: 'αβγδεζηκλμσω∞',
    code: 'formula/structure-prefix',
    says: 'describes a structure',
    expected: 'a formula without prefixes',
  },
]

function strangeCharacter(scan: Scan): FormulaError {
  const { text, at: start } = scan
  const character = String.fromCodePoint(text.codePointAt(start) as number)
  const end = start + character.length
  if ('□◻☐▢⬜'.includes(character)) return vacancy(scan, start, end)
  const like = lookAlike(character)
  if (like !== undefined) return looksAlike(scan, character, `${like.plain}", but is a ${like.kind} character`)
  const known = strange.find(({ characters }) => characters.includes(character))
  if (known !== undefined) return complain(scan, { ...known, start, end })
  return meaningless(scan, character)
}

function looksAlike(scan: Scan, character: string, what: string): FormulaError {
  const { at: start } = scan
  const says = `(U+${codePoint(character)}) looks like "${what}`
  const end = start + character.length
  return complain(scan, {
    code: 'formula/look-alike',
    start,
    end,
    says,
    expected: 'a plain Latin letter, digit or sign',
  })
}

function meaningless(scan: Scan, character: string): FormulaError {
  const { at: start } = scan
  const code = character.codePointAt(0) as number
  const isControl = code < 32 || (code >= 127 && code < 160) || isInvisible(code)
  const says = isControl
    ? `is an invisible character (U+${codePoint(character)})`
    : `(U+${codePoint(character)}) has no meaning in a formula`
  return complain(scan, {
    code: isControl ? 'formula/control-character' : 'formula/unexpected-character',
    start,
    end: start + character.length,
    says,
    expected: 'a symbol, a count, a bracket, a dot or a charge',
  })
}
