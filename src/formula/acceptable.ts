import { attempt } from '../errors.js'
import { isPlausible } from './balance.js'
import { isOrganic } from './case-slips.js'
import { isElement, isKnownIon, isMetal } from './known-ions.js'
import { hasTooMuchHydrogen } from './organic.js'
import { plainText } from './plain-text.js'
import { readFormulaText } from './reading.js'
import type { Token } from './scan.js'

/** Whether a text can be read as a formula. */
export function isRead(text: string): boolean {
  return attempt(() => readFormulaText(text)).ok
}

/** Whether a text can be read as something common: a salt, a molecule, an organic substance, an ion, an element. */
export function isAcceptable(text: string): boolean {
  const tokens: Token[] = []
  if (!attempt(() => readFormulaText(text, tokens)).ok) return false
  const last = tokens.at(-1)
  if (last?.kind === 'charge') return isCommonIon(tokens, last.text)
  return isPlausible(tokens) || isElement(plainText(tokens)) || isCommonOrganic(tokens)
}

function isCommonIon(tokens: readonly Token[], charge: string): boolean {
  const body = plainText(tokens.slice(0, -1))
  const size = (Number.parseInt(charge, 10) || 1) * (charge.endsWith('-') ? -1 : 1)
  return isKnownIon(body, size) || (isMetal(body) && size > 0 && size <= 4) || body === 'H'
}

const organicSymbols = ['C', 'H', 'N', 'O', 'S', 'F', 'Cl', 'Br', 'I']

function isCommonOrganic(tokens: readonly Token[]): boolean {
  const symbols = tokens.filter(({ kind }) => kind === 'symbol')
  return isOrganic(tokens) && !hasTooMuchHydrogen(tokens) && symbols.every(({ text }) => organicSymbols.includes(text))
}
