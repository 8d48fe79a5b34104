import { Decimal } from '../decimal.js'
import { addFractions, type Fraction, fraction, multiplyFractions } from '../fraction.js'
import { exact, type Quantity } from '../quantity/index.js'
import { exactFraction } from '../stoichiometry/exact-fraction.js'

/** One term of an amount: an exact multiple of an amount that went in. */
interface FormTerm {
  /** The amount that went in. */
  readonly source: Quantity<'amount'>
  /** How many moles of it there are per mole of the source; below zero where it was used up. */
  readonly ratio: Fraction
}

/**
 * An amount of substance as exact multiples of the amounts that went in. Stages only ever add and take away such multiples, so
 * nothing is rounded on the way and what is used up is exactly gone.
 */
export type Form = readonly FormTerm[]

/** Nothing of a substance. */
export const nothing: Form = []

/** The whole of an amount that went in. */
export function formOf(source: Quantity<'amount'>): Form {
  return [{ source, ratio: fraction(1n) }]
}

/** a + times · b. */
export function addForms(a: Form, b: Form, times: Fraction): Form {
  const terms = new Map(a.map((term) => [term.source, term.ratio]))
  for (const { source, ratio } of b) {
    const product = multiplyFractions(ratio, times)
    const known = terms.get(source)
    terms.set(source, known === undefined ? product : addFractions(known, product))
  }
  return [...terms].filter(([, ratio]) => ratio.numerator !== 0n).map(([source, ratio]) => ({ source, ratio }))
}

/** times · a. */
export function scaleForm(a: Form, times: Fraction): Form {
  return addForms(nothing, a, times)
}

/** The number of moles, unrounded. */
export function molesOf(form: Form): Decimal {
  return form.reduce((total, { source, ratio }) => total.plus(multiple(inMoles(source), ratio)), new Decimal(0))
}

/** The number of moles that went in: a scale may be chosen in millimoles beside a supply that is printed in moles. */
export function inMoles(source: Quantity<'amount'>): Decimal {
  return source.unit === 'mol' ? source.value : source.to('mol').value
}

function multiple(value: Decimal, { numerator, denominator }: Fraction): Decimal {
  if (numerator === denominator) return value
  return value.times(numerator.toString()).div(denominator.toString())
}

/** The amount as a quantity that remembers what it was made from: what came in, less what was used up. */
export function amountOf(form: Form, of: string): Quantity<'amount'> {
  const [first, ...more] = form.filter(({ ratio }) => ratio.numerator > 0n).map((term) => termAmount(term, of))
  if (first === undefined) return exact('0 mol')
  const cameIn = more.reduce((total, amount) => total.plus(amount), first)
  const usedUp = form.filter(({ ratio }) => ratio.numerator < 0n).map((term) => termAmount(term, of))
  return usedUp.reduce((total, amount) => total.minus(amount), cameIn)
}

/** The size of a term, whichever way it counts. */
function termAmount({ source, ratio }: FormTerm, of: string): Quantity<'amount'> {
  const size = { ...ratio, numerator: ratio.numerator < 0n ? -ratio.numerator : ratio.numerator }
  if (size.numerator === size.denominator) return source
  return source.times(moleRatio(size, of, source.naming.of as string))
}

/** An exact mole ratio, named after what it is of and per what. */
export function moleRatio(ratio: Fraction, of: string, per: string): Quantity<'ratio'> {
  return exactFraction(ratio, { role: 'mole ratio', symbol: 'r', label: `moles of ${of} per mole of ${per}`, of })
}
