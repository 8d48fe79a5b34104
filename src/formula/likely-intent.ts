import { isAcceptable, isRead } from './acceptable.js'
import { closing, kindAt, signAt } from './characters.js'
import { cleanText } from './clean-text.js'
import type { FormulaCode, FormulaError } from './formula-error.js'
import { withMatchingBrackets, withoutSpaces, withSingleDots } from './mend-text.js'
import {
  withBracketedState,
  withDotBeforeWater,
  withLoweredDigits,
  withOldCharge,
  withoutBonds,
  withoutExclamation,
  withoutGreek,
  withoutMetalCharges,
} from './other-notations.js'
import { respellText, withLetterO } from './respell-text.js'

/** Longest text that is looked through for what was meant. */
const longest = 80

/** What was probably meant by a text that cannot be read, as a hint; nothing where nothing is likely. One hint names two formulas. */
export function likelyIntent(text: string, { code, hint }: FormulaError): string | undefined {
  const trimmed = text.trim()
  if (code === 'formula/missing-dot' && isAcceptable(withoutSpaces(trimmed))) return `${withoutSpaces(trimmed)}?`
  if (hint !== undefined && (code === 'formula/ambiguous-charge' || isRead(hint.slice(0, -1)))) return hint
  if (text.length > longest) return undefined
  const spelled = isSpelling(code) ? respellText(cleanText(trimmed), isAcceptable) : undefined
  const meant = spelled ?? mended(trimmed, code)
  return meant === undefined || meant === trimmed ? undefined : `${meant}?`
}

/** Mistakes with one remedy, where the remedy can be read. */
function mended(text: string, code: FormulaCode): string | undefined {
  const remedy = remedies[code]?.(text)
  return remedy !== undefined && isRead(remedy) ? remedy : undefined
}

const remedies: Partial<Readonly<Record<FormulaCode, (text: string) => string | undefined>>> = {
  'formula/unknown-symbol': withBracketedState,
  'formula/alternatives': withBracketedState,
  'formula/range': withDotBeforeWater,
  'formula/equation': (text) => withDotBeforeWater(text) ?? withoutMetalCharges(text),
  'formula/bond': (text) => (isAcceptable(withOldCharge(text)) ? withOldCharge(text) : withoutBonds(text)),
  'formula/structure-prefix': withoutGreek,
  'formula/look-alike': cleanText,
  'formula/markup': (text) => withDotBeforeWater(text) ?? cleanText(text),
  'formula/control-character': cleanText,
  'formula/unexpected-character': withoutExclamation,
  'formula/isotope-label': (text) => (isAcceptable(withLoweredDigits(text)) ? withLoweredDigits(text) : undefined),
  'formula/leading-zero': withLetterO,
  'formula/misplaced-number': withLetterO,
  'formula/empty-part': withSingleDots,
  'formula/unclosed-bracket': withMatchingBrackets,
  'formula/unopened-bracket': withMatchingBrackets,
  'formula/mismatched-bracket': withMatchingBrackets,
  'formula/bad-charge': withSign,
}

/** A charge without its sign or number: what makes a common ion. */
function withSign(text: string): string | undefined {
  if (signAt(text, text.length - 1) !== 0) return text
  const stop = kindAt(text, text.length - 1) === closing ? text.length - 1 : text.length
  return ['-', '2-', '3-', '+'].map((sign) => text.slice(0, stop) + sign + text.slice(stop)).find(isAcceptable)
}

const spellingCodes: readonly FormulaCode[] = [
  'formula/unknown-symbol',
  'formula/leading-zero',
  'formula/zero-count',
  'formula/misplaced-number',
  'formula/look-alike',
  'formula/markup',
  'formula/control-character',
  'formula/abbreviation',
]

function isSpelling(code: FormulaCode): boolean {
  return spellingCodes.includes(code)
}
