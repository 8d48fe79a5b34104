import type { FormulaLike } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { chosen, type Given, measured } from '../stoichiometry/given.js'
import { aboveZero, aFraction } from './bounds.js'
import { byDensity, byMassFraction, columnOf, interpolate, isBetween, tableOf } from './density-rows.js'
import { densityNaming, massFractionNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

/**
 * The density of an aqueous solution at 20 °C, from a table by mass fraction: of sulfuric acid, potassium hydroxide or ethanol.
 * Between two rows it is taken to change evenly; with rows 10 % apart that is right to about 0.1 %.
 *
 * @param substance - The solute: `H2SO4`, `KOH` or `C2H5OH`.
 * @param massFraction - Mass of solute by mass of solution; text is exact.
 * @returns The density in g/mL.
 * @throws {@link SolutionError} `solution/no-density-table` for another solute; `solution/outside-table` outside the rows;
 *   `solution/not-a-fraction`; {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source CRC Handbook of Chemistry and Physics, 102nd edition (2021), Concentrative Properties of Aqueous Solutions.
 *
 * @example
 * ```ts
 * import { densityOf } from 'saltwright/solution'
 *
 * densityOf('H2SO4', '70 %').toString() // => '1.6105 g/mL'
 * densityOf('KOH', '38 %').toString() // => '1.3662 g/mL'
 * densityOf('KOH', '60 %') // throws solution/outside-table
 * ```
 */
export function densityOf(substance: FormulaLike, massFraction: Given<'ratio'>): Quantity<'density'> {
  const { of, intervals } = tableOf(substance)
  const w = aFraction(chosen(massFraction, 'ratio', massFractionNaming(of))).to('%')
  const interval = intervals.find(([low, high]) => isBetween(w, low.w, high.w))
  if (interval === undefined) throw outside(of, w, columnOf(intervals, 'w'))
  return interpolate(w, byMassFraction(interval)).named(densityNaming(of))
}

/**
 * The mass fraction of an aqueous solution at 20 °C, from its density by the same tables as {@link densityOf}.
 *
 * @param substance - The solute: `H2SO4`, `KOH` or `C2H5OH`.
 * @param density - The density of the solution, as a hydrometer shows it; text is measured.
 * @returns Mass of solute by mass of solution, in per cent.
 * @throws {@link SolutionError} `solution/ambiguous-density` for a density that two mass fractions share, as above 92 % of sulfuric
 *   acid; `solution/no-density-table`, `solution/outside-table`, `solution/not-above-zero`; {@link FormulaError} and
 *   {@link QuantityError} for what cannot be read.
 * @source CRC Handbook of Chemistry and Physics, 102nd edition (2021), Concentrative Properties of Aqueous Solutions.
 *
 * @example
 * ```ts
 * import { massFractionAt } from 'saltwright/solution'
 *
 * massFractionAt('KOH', '1.3500 g/mL').toString() // => '36.51 %'
 * massFractionAt('H2SO4', '1.835 g/mL') // throws solution/ambiguous-density
 * ```
 */
export function massFractionAt(substance: FormulaLike, density: Given<'density'>): Quantity<'ratio'> {
  const { of, intervals } = tableOf(substance)
  const rho = aboveZero(measured(density, 'density', densityNaming(of))).to('g/mL')
  const matching = intervals.filter(([low, high]) => isBetween(rho, low.density, high.density))
  const [first, ...others] = matching.map((interval) => interpolate(rho, byDensity(interval)))
  if (first === undefined) throw outside(of, rho, columnOf(intervals, 'density'))
  const other = others.find((w) => !w.equals(first))
  if (other !== undefined) throw ambiguous(of, rho, [first, other])
  return first.named(massFractionNaming(of))
}

function outside<D extends 'ratio' | 'density'>(
  of: string,
  x: Quantity<D>,
  known: readonly Quantity<D>[],
): SolutionError {
  const sorted = [...known].sort((a, b) => a.compare(b))
  return new SolutionError({
    code: 'solution/outside-table',
    message: `${x.toString()} is outside the table of densities for ${of}, and nothing is extrapolated.`,
    found: x.toString(),
    expected: `${sorted[0]} to ${sorted.at(-1)}`,
  })
}

function ambiguous(of: string, rho: Quantity<'density'>, both: readonly Quantity<'ratio'>[]): SolutionError {
  return new SolutionError({
    code: 'solution/ambiguous-density',
    message: `Two solutions of ${of} have the density ${rho.toString()}, so it does not tell the mass fraction.`,
    found: rho.toString(),
    expected: `a mass fraction: ${both.join(' or ')}`,
  })
}
