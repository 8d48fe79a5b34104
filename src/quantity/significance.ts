import type { Decimal } from '../decimal.js'

/** What the classroom rules need to know of a number. */
export interface Significant {
  /** Unrounded. */
  readonly value: Decimal
  /** Exponent of ten of its last significant digit; `null` for exact. */
  readonly place: number | null
}

/** Figures of a number whose last significant digit is at `place`, counted as it would be shown (9.96 at 0.1 is 10.0). */
export function figuresAt(value: Decimal, place: number): number {
  if (value.isZero()) return 1
  const plain = value.e - place + 1
  if (plain < 1) return roundsUpInto(value, place) ? 1 : 0
  return startsWithNine(value) && value.toSignificantDigits(plain).e > value.e ? plain + 1 : plain
}

/** Place of the last significant digit of a number shown with so many figures (9.96 with two is 10). */
export function placeAt(value: Decimal, figures: number): number {
  if (figures < 1) return value.e + 1
  const carried = startsWithNine(value) && value.toSignificantDigits(figures).e > value.e
  return value.e - figures + (carried ? 2 : 1)
}

function roundsUpInto(value: Decimal, place: number): boolean {
  return value.e - place === -1 && value.abs().times(`2e${-place}`).gt(1)
}

/** Whether the first digit is a 9; decimal.js keeps digits by sevens, the first lot as far as they go. */
function startsWithNine({ d: [first], e }: Decimal): boolean {
  return Math.floor((first as number) / 10 ** (((e % 7) + 7) % 7)) === 9
}

/** Sums and differences: the coarsest last place of the terms. OpenStax, Chemistry 2e, section 1.5. */
export function coarsestPlace(terms: readonly Significant[]): number | null {
  return coarsest(terms.map(({ place }) => place))
}

/** The coarsest of several places; `null` where all are exact. */
export function coarsest(places: readonly (number | null)[]): number | null {
  let found: number | null = null
  for (const place of places) if (place !== null && (found === null || place > found)) found = place
  return found
}

/**
 * Products and quotients: the fewest figures of the factors. OpenStax, Chemistry 2e, section 1.5. At least one: a factor that is below its
 * own last place, such as a difference of 4 g known to tens, has none to hand on, and no rule makes nothing of a number.
 */
export function fewestFigures(factors: readonly Significant[], value: Decimal): number | null {
  let fewest: number | null = null
  for (const factor of factors) {
    if (factor.place === null) continue
    const figures = figuresAt(factor.value, factor.place)
    if (fewest === null || figures < fewest) fewest = figures
  }
  if (fewest === null) return null
  return value.isZero() ? placeOfZero(factors) : placeAt(value, Math.max(1, fewest))
}

/** A product is zero because a factor is: as finely known as that factor, times the size of the others. */
function placeOfZero(factors: readonly Significant[]): number | null {
  let place = 0
  for (const factor of factors) {
    if (!factor.value.isZero()) place += factor.value.e
    else if (factor.place === null) return null
    else place += factor.place
  }
  return place
}
