import { attempt } from '../errors.js'
import { type Fraction, formatFraction, fraction } from '../fraction.js'
import { notAsked, readText } from './read.js'
import type { Token } from './scan.js'
import { styles } from './styles.js'

/** A formula in its one plain spelling, which can be read again: `Cr9/2H2O` where `Cr4.5H2O` would be a hydrate. */
export function plainText(tokens: readonly Token[]): string {
  const text = written(tokens)
  const isAmbiguous = tokens.some(isDecimal) && dotsIn(text) > tokens.filter(isDot).length
  return isAmbiguous ? written(tokens.map(asFraction)) : text
}

function written(tokens: readonly Token[]): string {
  return tokens.map(styles.plain.write).join('')
}

function isDecimal({ kind, text }: Token): boolean {
  return kind === 'count' && text.includes('.')
}

function isDot({ kind }: Token): boolean {
  return kind === 'dot'
}

/** How many dots a text has between its parts when it is read, as far as it can be. */
function dotsIn(text: string): number {
  const tokens: Token[] = []
  attempt(() => readText(text, notAsked, tokens))
  return tokens.filter(isDot).length
}

function asFraction(token: Token): Token {
  return isDecimal(token) ? { ...token, text: formatFraction(decimalFraction(token.text)) } : token
}

/** `4.5` as 9/2. */
function decimalFraction(text: string): Fraction {
  const decimals = text.slice(text.indexOf('.') + 1)
  return fraction(BigInt(text.replace('.', '')), 10n ** BigInt(decimals.length))
}
