/** A point of a picture: degrees Celsius, and grams of the anhydrous salt for 100 g of water. */
export interface CurvePoint {
  readonly celsius: number
  readonly grams: number
}

/**
 * What a liquor does while it cools: nothing until it meets the solubility, then along it. A liquor that holds more than is soluble at
 * the start drops onto the curve there.
 *
 * @param grams - What the liquor holds when cooling begins.
 * @param curve - Solubilities from the start of cooling to its end, by falling temperature; at least one.
 * @returns The corners of the path.
 */
export function coolingPath(grams: number, curve: readonly CurvePoint[]): readonly CurvePoint[] {
  const path = curve.slice(0, 1).map(({ celsius }) => ({ celsius, grams }))
  for (const [index, point] of curve.entries()) {
    if (point.grams >= grams) continue
    const before = curve[index - 1]
    if (before !== undefined && before.grams >= grams) path.push(meeting(grams, before, point))
    path.push(point)
  }
  const [end] = curve.slice(-1)
  return end !== undefined && end.grams >= grams ? [...path, { celsius: end.celsius, grams }] : path
}

/** Where the straight line between two points holds just so much. */
function meeting(grams: number, above: CurvePoint, below: CurvePoint): CurvePoint {
  const share = (grams - below.grams) / (above.grams - below.grams)
  return { celsius: below.celsius + share * (above.celsius - below.celsius), grams }
}
