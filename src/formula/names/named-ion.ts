import { elements } from '../../element/index.js'
import { metalRange } from '../ions.js'
import { anions } from '../tables/anions.js'
import { cations } from '../tables/cations.js'
import { plainCations } from '../tables/plain-cations.js'
import { readComplexName } from './named-complex.js'
import { numberOfRoman, numbersBefore } from './numerals.js'

/** An ion as a word of a name says it. */
export interface NamedIon {
  /** Its formula without charge; a complex in its brackets. */
  readonly formula: string
  readonly charge: number
  /** How many, where a prefix says so. */
  readonly count: number | undefined
}

/** All ions that a word of a name may be: as it stands first, then with a number in front of it. */
export function namedIons(word: string): readonly NamedIon[] {
  const whole = ionsCalled(word).map((ion) => ({ ...ion, count: undefined }))
  const counted = numbersBefore(word)
    .filter(({ rest }) => rest !== word)
    .flatMap(({ number, rest }) => ionsCalled(withoutBrackets(rest)).map((ion) => ({ ...ion, count: number })))
  return [...whole, ...counted]
}

function withoutBrackets(text: string): string {
  return text.startsWith('(') && text.endsWith(')') ? text.slice(1, -1) : text
}

interface Ion {
  readonly formula: string
  readonly charge: number
}

function ionsCalled(word: string): readonly Ion[] {
  const rows = [...cations, ...anions].filter(({ name, also }) => name === word || also?.includes(word)).slice(0, 1)
  if (rows.length > 0) return rows.map(({ formula, charge }) => ({ formula, charge }))
  const metal = metalCalled(word)
  if (metal !== undefined) return [metal]
  const complex = readComplexName(word)
  return complex === undefined ? [] : [complex]
}

/** `zinc`, `copper(II)`. */
function metalCalled(word: string): Ion | undefined {
  const bracket = word.indexOf('(')
  const element = elements.find(({ name }) => name === (bracket < 0 ? word : word.slice(0, bracket)))
  if (element === undefined) return undefined
  const plain = plainCations.find(({ symbol }) => symbol === element.symbol)
  if (bracket < 0) return plain && { formula: plain.symbol, charge: plain.charge }
  const charge = word.endsWith(')') ? chargeIn(word.slice(bracket + 1, -1)) : undefined
  const isCation = metalRange(element.symbol) !== undefined && charge !== undefined && charge > 0
  return isCation ? { formula: element.symbol, charge } : undefined
}

/** `II` and `2+`. */
function chargeIn(text: string): number | undefined {
  return text.endsWith('+') ? Number.parseInt(text, 10) : numberOfRoman(text)
}
