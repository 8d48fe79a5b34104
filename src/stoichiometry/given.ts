import {
  asDimension,
  type Dimension,
  exact,
  type InputOptions,
  isQuantity,
  type Naming,
  type Quantity,
  QuantityError,
  quantity,
  type UnitSpellings,
} from '../quantity/index.js'

type SpellingOf<D extends Dimension> = {
  readonly [S in keyof UnitSpellings]: UnitSpellings[S] extends D ? S : never
}[keyof UnitSpellings]

/** A numeral and a unit of one dimension as text, so that an editor marks `"0.25 mL"` where an amount is asked for. */
export type TextOf<D extends Dimension> = D extends 'ratio'
  ? `${number}` | `${number} %` | `${number}%` | `${number} ${SpellingOf<D>}`
  : `${number} ${SpellingOf<D>}`

/**
 * A quantity, or the text of one: short calls in a notebook need no more than text. Whether the text is exact (what somebody
 * chose: an amount wanted, a volume to make, the nominal concentration of a solution to plan with) or measured (what somebody
 * read: a mass, a density, a mass fraction) stands with each parameter. Where it should be the other, pass `quantity(...)` or
 * `exact(...)`.
 */
export type Given<D extends Dimension> = Quantity<D> | TextOf<D>

/** Names for a number that is read: at least in words. */
export type Labels = Naming & { readonly label: string }

/** A choice may also be a plain number: it is exact. */
export type Choice = Given<'ratio'> | number

/** Reads what somebody chose: text and numbers are exact. */
export function chosen<D extends Dimension>(value: Given<D> | number, dimension: D, naming: Labels): Quantity<D> {
  const read = (): Quantity<D> => asDimension(isQuantity(value) ? value : exact(value as string), dimension)
  return labelled(told(naming.label, read), naming)
}

/** Reads what somebody measured, or a table prints: text is measured, its digits say how well. */
export function measured<D extends Dimension>(
  value: Given<D>,
  dimension: D,
  naming: Labels,
  options: Pick<InputOptions, 'wholeNumberZeros'> = {},
): Quantity<D> {
  const read = (): Quantity<D> => asDimension(isQuantity(value) ? value : quantity(value as string, options), dimension)
  return labelled(told(naming.label, read), naming)
}

/** Reads a strength as a label prints it, where `90 %` is known to 1 %: the zeros of its whole numbers are significant. */
export function onLabel(value: Given<'ratio'>, naming: Labels): Quantity<'ratio'> {
  return measured(value, 'ratio', naming, { wholeNumberZeros: 'significant' })
}

/** Names a quantity where it has no name of its own yet. */
export function labelled<D extends Dimension>(q: Quantity<D>, naming: Naming): Quantity<D> {
  return q.named({ ...naming, ...q.naming })
}

/** Reads one of several numbers of a call: an error tells which one it is about. */
export function told<T>(label: string, read: () => T): T {
  try {
    return read()
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
    throw new QuantityError({ ...error.toJSON(), message: `${error.message} It was read as the ${label}.` })
  }
}
