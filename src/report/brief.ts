import { type Dimension, type Quantity, roundTo } from '../quantity/index.js'

/** Figures that a planned amount is shown with: enough to check it, few enough to read. */
const shownFigures = 4

/** A quantity as a sheet shows it: what was written stays as written, what was worked out gets no more figures than are useful. */
export function brief<D extends Dimension>(q: Quantity<D>, figures: number = shownFigures): Quantity<D> {
  if (q.rule === 'input') return q
  if (q.value.isZero()) return roundTo(q, { place: '1' })
  const known = q.significantFigures
  return known !== null && known <= figures ? q : roundTo(q, { figures })
}

/** A quantity as an assessment shows it: what rests on a reading with the figures that it has, a bare plan briefly. */
export function asKnown<D extends Dimension>(q: Quantity<D>): Quantity<D> {
  return q.significantFigures === null ? brief(q) : q
}

/** Equivalents, wherever they stand. */
export function briefEquivalents(q: Quantity): Quantity {
  return brief(q, 3)
}
