import {
  asDimension,
  type Dimension,
  exact,
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
  return read(naming, () => asDimension(isQuantity(value) ? value : exact(value as string), dimension))
}

/** Reads what somebody measured, or a table prints: text is measured, its digits say how well. */
export function measured<D extends Dimension>(value: Given<D>, dimension: D, naming: Labels): Quantity<D> {
  return read(naming, () => asDimension(isQuantity(value) ? value : quantity(value as string), dimension))
}

/** Names a quantity where it has no name of its own yet. */
export function labelled<D extends Dimension>(q: Quantity<D>, naming: Naming): Quantity<D> {
  return q.named({ ...naming, ...q.naming })
}

/** Of several numbers in one call, an error says which it is about. */
function read<D extends Dimension>(naming: Labels, reader: () => Quantity<D>): Quantity<D> {
  try {
    return labelled(reader(), naming)
  } catch (error) {
    if (!(error instanceof QuantityError)) throw error
    throw new QuantityError({ ...error.toJSON(), message: `${error.message} It was read as ${naming.label}.` })
  }
}
