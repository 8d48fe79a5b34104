import type { Expression } from '../quantity/index.js'

/** How closely a piece of an expression holds together: what stands in a product or over a fraction bar may need brackets. */
export const rank = {
  /** A number below zero. */
  signed: 0,
  /** A sum or a difference. */
  sum: 1,
  /** A fraction written in one line. */
  quotient: 2,
  /** A number with a unit that is a quotient itself, or with a power of ten. */
  compound: 3,
  /** A product. */
  product: 4,
  /** A number with its unit, a power. */
  tight: 5,
  /** A name, a bare number, whatever brackets itself. */
  atom: 6,
} as const

/** A piece that is written, and how closely it holds together. */
export interface Written {
  /** As it stands in the text. */
  readonly text: string
  /** One of {@link rank}. */
  readonly rank: number
}

/** How expressions are written in one kind of text. */
export interface Notation {
  /** Puts brackets around. */
  readonly group: (inner: string) => string
  /** The sign between terms that are added. */
  readonly plus: string
  /** The sign between a term and what is taken from it. */
  readonly minus: string
  /** The sign between factors. */
  readonly times: string
  /** A number that belongs to the formula. */
  readonly number: (text: string) => string
  /** A fraction. */
  readonly fraction: (top: string, bottom: string) => string
  /** Whether a fraction has a bar of its own, so that nothing in it needs brackets. */
  readonly hasBar: boolean
  /** A power. */
  readonly power: (base: string, exponent: string) => string
  /** A square root. */
  readonly root: (of: string) => string
  /** A function. */
  readonly call: (name: string, of: string) => string
}

type Kind<K extends Expression['kind']> = Extract<Expression, { readonly kind: K }>
type Writers = { readonly [K in Expression['kind']]: (part: Kind<K>, to: Writer) => Written }

/** What a part of an expression needs to write its own parts. */
interface Writer {
  readonly notation: Notation
  readonly operand: (index: number) => Written
  readonly all: (part: Expression) => Written
}

/** Writes an expression, with brackets where they are needed and nowhere else. */
export function writeExpression(
  expression: Expression,
  notation: Notation,
  operand: (index: number) => Written,
): Written {
  const writer: Writer = { notation, operand, all: (part) => writeExpression(part, notation, operand) }
  return (writers[expression.kind] as (part: Expression, to: Writer) => Written)(expression, writer)
}

const writers: Writers = {
  name: ({ operand }, to) => to.operand(operand),
  number: ({ text }, { notation }) => ({ text: notation.number(text), rank: rank.atom }),
  sum: ({ terms }, to) => {
    const written = terms.map((term) => bracketed(term, rank.sum, to))
    return { text: written.join(to.notation.plus), rank: rank.sum }
  },
  difference: ({ left, right }, to) => {
    const text = bracketed(left, rank.sum, to) + to.notation.minus + bracketed(right, rank.sum + 1, to)
    return { text, rank: rank.sum }
  },
  product: ({ factors }, to) => {
    const written = factors.map((factor) => bracketed(factor, rank.compound, to))
    return { text: written.join(to.notation.times), rank: rank.product }
  },
  fraction: ({ top, bottom }, to) => {
    const { fraction, hasBar } = to.notation
    if (hasBar) return { text: fraction(to.all(top).text, to.all(bottom).text), rank: rank.atom }
    return { text: fraction(bracketed(top, rank.product, to), bracketed(bottom, rank.tight, to)), rank: rank.quotient }
  },
  power: ({ base, exponent }, to) => {
    const raised = to.notation.hasBar ? to.all(exponent).text : bracketed(exponent, rank.atom, to)
    return { text: to.notation.power(bracketed(base, rank.atom, to), raised), rank: rank.tight }
  },
  root: ({ of }, to) => ({ text: to.notation.root(to.all(of).text), rank: rank.atom }),
  call: ({ name, of }, to) => ({ text: to.notation.call(name, to.all(of).text), rank: rank.atom }),
}

function bracketed(part: Expression, least: number, { notation, all }: Writer): string {
  const written = all(part)
  return written.rank >= least ? written.text : notation.group(written.text)
}
