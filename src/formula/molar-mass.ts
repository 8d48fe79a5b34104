import type { Decimal } from '../decimal.js'
import { type AtomicWeights, atomicWeight } from '../element/index.js'
import { fractionToDecimal, subtractFractions } from '../fraction.js'
import { exact, type Quantity, weightedSum } from '../quantity/index.js'
import type { Formula } from './formula.js'
import { FormulaError } from './formula-error.js'
import { type FormulaLike, formulaOf } from './formula-of.js'
import { anhydrous, withWater } from './hydrate.js'

/** With what a mass is worked out. */
export interface MolarMassOptions {
  /** Which atomic weights: `"abridged"` unless said. */
  readonly weights?: AtomicWeights | undefined
  /** The number of water molecules where the formula leaves it open (`·xH2O`); not used otherwise. */
  readonly x?: number | string | undefined
}

/**
 * The molar mass of a formula: the sum of the atomic weights of its atoms. Each element is one term, and its atomic weight is the
 * same quantity wherever it is used, so that its uncertainty counts as one. The mass of electrons won or lost is left out.
 *
 * @param formula - A formula or its text; for `3CdSO4·8H2O` the mass of the whole formula unit.
 * @param options - Which atomic weights, and the number for `·xH2O`.
 * @returns The molar mass in g/mol; its last significant place is that of the coarsest atomic weight.
 * @throws {@link FormulaError} `formula/unknown-water` where `x` is missing, `formula/no-mass` for an electron, and whatever
 *   {@link parseFormula} throws for a text; {@link ElementError} `element/no-standard-weight`.
 * @source IUPAC Green Book, 3rd ed., 2.10 (molar mass as sum of atomic weights); places of a sum: OpenStax, Chemistry 2e, 1.5.
 *
 * @example
 * ```ts
 * import { molarMass } from 'saltwright/formula'
 *
 * molarMass('CuSO4·5H2O').toString() // => '249.68 g/mol'
 * molarMass('ZnSO4·7H2O').toString() // => '287.54 g/mol'
 * molarMass('Al2O3·xH2O', { x: 3 }).toString() // => '156.006 g/mol'
 * molarMass('Al2O3·xH2O') // throws formula/unknown-water
 * ```
 */
export function molarMass(formula: FormulaLike, options: MolarMassOptions = {}): Quantity<'molarMass'> {
  const known = withKnownWater(formulaOf(formula), options)
  return massOf(known.composition, known.text, options).named({
    label: `molar mass of ${known.text}`,
    symbol: 'M',
    of: known.text,
    role: 'molar mass',
  })
}

/**
 * The mass fraction of every element in a formula.
 *
 * @param formula - A formula or its text.
 * @param options - Which atomic weights, and the number for `·xH2O`.
 * @returns For each element, in order of appearance, its mass divided by the mass of the whole.
 * @throws {@link FormulaError} `formula/unknown-water`, `formula/no-mass`, and whatever {@link parseFormula} throws for a text;
 *   {@link ElementError} `element/no-standard-weight`.
 * @source OpenStax, Chemistry 2e, section 3.2 (percent composition from formulas).
 *
 * @example
 * ```ts
 * import { massFractions } from 'saltwright/formula'
 *
 * massFractions('ZnSO4·7H2O').get('Zn')?.toString() // => '0.2274'
 * ```
 */
export function massFractions(
  formula: FormulaLike,
  options: MolarMassOptions = {},
): ReadonlyMap<string, Quantity<'ratio'>> {
  const known = withKnownWater(formulaOf(formula), options)
  const whole = molarMass(known, options)
  const fractionOf = ([symbol, count]: readonly [string, Decimal]): readonly [string, Quantity<'ratio'>] => {
    const mass = massOf(new Map([[symbol, count]]), known.text, options)
    const naming = {
      label: `mass fraction of ${symbol} in ${known.text}`,
      symbol: 'w',
      of: symbol,
      role: 'mass fraction',
    } as const
    return [symbol, mass.dividedBy(whole).named(naming)]
  }
  return new Map([...known.composition].map(fractionOf))
}

/**
 * The mass fraction of the water of crystallisation in a formula.
 *
 * @param formula - A formula or its text.
 * @param options - Which atomic weights, and the number for `·xH2O`.
 * @returns Mass of the water between the dots divided by the mass of the whole; an exact 0 where there is none.
 * @throws {@link FormulaError} `formula/unknown-water`, and whatever {@link parseFormula} throws for a text;
 *   {@link ElementError} `element/no-standard-weight`.
 * @source OpenStax, Chemistry 2e, section 3.2 (percent composition from formulas).
 *
 * @example
 * ```ts
 * import { waterFraction } from 'saltwright/formula'
 *
 * waterFraction('ZnSO4·7H2O').toString() // => '0.43856'
 * waterFraction('Zn(OH)2').toString() // => '0'
 * ```
 */
export function waterFraction(formula: FormulaLike, options: MolarMassOptions = {}): Quantity<'ratio'> {
  const known = withKnownWater(formulaOf(formula), options)
  const water = waterCounts(known)
  const label = `mass fraction of water of crystallisation in ${known.text}`
  const naming = { label, symbol: 'w', of: 'H2O', role: 'mass fraction' } as const
  if (water.size === 0) return exact('0').named(naming)
  return massOf(water, known.text, options).dividedBy(molarMass(known, options)).named(naming)
}

/** The formula, with its number of water filled in where it was open. */
function withKnownWater(formula: Formula, options: MolarMassOptions | null): Formula {
  if (formula.hydration !== null) return formula
  const x = options?.x
  const filled = x === undefined ? formula : withWater(formula, x)
  if (filled.hydration === null) throw unknownWater(formula.text)
  return filled
}

/** Atoms of the water of crystallisation: what a formula has more of than its anhydrous rest. */
function waterCounts(formula: Formula): ReadonlyMap<string, Decimal> {
  const dry = anhydrous(formula).counts
  const differences = [...formula.counts].map(([symbol, count]) => {
    const rest = dry.get(symbol)
    return [symbol, fractionToDecimal(rest === undefined ? count : subtractFractions(count, rest))] as const
  })
  return new Map(differences.filter(([, count]) => !count.isZero()))
}

function massOf(
  counts: ReadonlyMap<string, Decimal>,
  text: string,
  options: MolarMassOptions | null,
): Quantity<'molarMass'> {
  if (counts.size === 0) throw noMass(text)
  const weights = options?.weights
  const terms: { readonly times: Decimal; readonly of: Quantity<'molarMass'> }[] = []
  for (const [symbol, times] of counts) terms.push({ times, of: atomicWeight(symbol, weights) })
  return weightedSum(terms)
}

function unknownWater(found: string): FormulaError {
  return new FormulaError({
    code: 'formula/unknown-water',
    message: `The number of water molecules in "${found}" is unknown, so it has no mass.`,
    found,
    expected: 'a number for x',
    hint: `{ x: 1 } as option, or a number in the formula`,
  })
}

function noMass(found: string): FormulaError {
  return new FormulaError({
    code: 'formula/no-mass',
    message: `"${found}" has no atoms, so it has no molar mass here.`,
    found,
    expected: 'a formula with atoms',
  })
}
