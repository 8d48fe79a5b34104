import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { spreadIn } from './combine.js'
import { combinedDegrees } from './degrees-of-freedom.js'
import type { Distribution, StatedUncertainty } from './input.js'
import { QuantityError } from './quantity-error.js'
import { readQuantityText } from './text.js'
import { type Unit, units, unitsOf } from './unit.js'

/**
 * One statement about the uncertainty of an input. Texts are a number with a unit of the dimension of the input: `"0.03 mL"`.
 * Degrees of freedom that are not said are unlimited.
 */
export type SingleStatement =
  /** A standard uncertainty. */
  | string
  | {
      /** A standard uncertainty. */
      readonly standard: string
      /** Its degrees of freedom. */
      readonly degreesOfFreedom?: number
    }
  | {
      /** An expanded uncertainty: JCGM 100:2008, 4.3.3. */
      readonly expanded: string
      /** How many standard uncertainties it is, as text: `"2"`. */
      readonly coverageFactor: string
      /** Its degrees of freedom. */
      readonly degreesOfFreedom?: number
    }
  | {
      /** Half the width of the range that the value lies in: JCGM 100:2008, 4.3.7, 4.3.9 and H.1.3.4. */
      readonly halfWidth: string
      /** How likely the values within are. */
      readonly distribution: Exclude<Distribution, 'normal'>
      /** Its degrees of freedom: JCGM 100:2008, G.4.2. */
      readonly degreesOfFreedom?: number
    }
  | {
      /** The tolerance of a class of glassware, as printed on it, without its sign. */
      readonly tolerance: string
      /**
       * Triangular unless said: a vessel is more likely near its nominal volume than at the limits (Eurachem/CITAC QUAM, 3rd ed.,
       * Example A1). Rectangular where nothing is known of that (JCGM 100:2008, 4.3.7).
       */
      readonly distribution?: 'triangular' | 'rectangular'
    }
  | {
      /** The smallest step of a digital display: rectangular over one step (JCGM 100:2008, F.2.2.1). */
      readonly readability: string
    }
  | {
      /** The experimental standard deviation of one reading, from this series or pooled from earlier ones. */
      readonly standardDeviation: string
      /** Of how many readings the value is the mean: JCGM 100:2008, 4.2.3. */
      readonly readings: number
      /** Those of the standard deviation; one less than the readings unless said. */
      readonly degreesOfFreedom?: number
    }

/** What is known of the uncertainty of an input: one statement, or independent components that add in quadrature. */
export type UncertaintyStatement = SingleStatement | readonly SingleStatement[]

/** Half-width squared over variance: JCGM 100:2008, 4.3.7 (rectangular), 4.3.9 (triangular) and H.1.3.4 (arcsine). */
const divisors: ReadonlyMap<unknown, number> = /* @__PURE__ */ new Map([
  ['rectangular', 3],
  ['triangular', 6],
  ['arcsine', 2],
])

type Fields = Readonly<Record<string, unknown>>
type Reader = (fields: Fields, unit: Unit) => StatedUncertainty

/** Each kind of statement by the field that only it has. */
const readers: Readonly<Record<string, Reader>> = {
  standard: ({ standard, degreesOfFreedom }, unit) => stated(readSpread(standard, unit), 'normal', degreesOfFreedom),
  expanded: ({ expanded, coverageFactor, degreesOfFreedom }, unit) =>
    stated(readSpread(expanded, unit).div(readFactor(coverageFactor)), 'normal', degreesOfFreedom),
  halfWidth: ({ halfWidth, distribution, degreesOfFreedom }, unit) =>
    spreadOver(readSpread(halfWidth, unit), distribution, degreesOfFreedom),
  tolerance: ({ tolerance, distribution = 'triangular' }, unit) =>
    spreadOver(readSpread(tolerance, unit), distribution),
  readability: ({ readability }, unit) => spreadOver(readSpread(readability, unit).div(2), 'rectangular'),
  standardDeviation: readTypeA,
}

/** The stated uncertainty of an input, as a standard uncertainty in the unit of the input. */
export function readUncertainty(statement: unknown, unit: Unit): StatedUncertainty {
  if (!Array.isArray(statement)) return readSingle(statement, unit)
  if (statement.length === 0) throw badUncertainty(statement, 'at least one component')
  const parts = Array.from(statement, (part) => readSingle(part, unit)) // not map, which would pass over the holes of a list
  const variance = parts.reduce((total, { standard }) => total.plus(standard.times(standard)), new Decimal(0))
  const degrees = combinedDegrees(
    parts.map(({ standard, degreesOfFreedom }) => ({ standard: standard.toNumber(), degreesOfFreedom })),
  )
  return stated(variance.sqrt(), 'normal', degrees === Number.POSITIVE_INFINITY ? undefined : degrees)
}

function readSingle(statement: unknown, unit: Unit): StatedUncertainty {
  if (typeof statement === 'string') return stated(readSpread(statement, unit), 'normal')
  if (typeof statement !== 'object' || statement === null) throw badUncertainty(statement, 'text such as "0.03 mL"')
  const kind = Object.keys(readers).find((key) => Object.hasOwn(statement, key))
  const reader = kind === undefined ? undefined : readers[kind]
  if (reader === undefined) throw badUncertainty(statement, `an object with ${Object.keys(readers).join(' or ')}`)
  return reader(statement as Fields, unit)
}

function readTypeA({ standardDeviation, readings, degreesOfFreedom }: Fields, unit: Unit): StatedUncertainty {
  if (!Number.isSafeInteger(readings) || (readings as number) < 1)
    throw badUncertainty(readings, 'a whole number of readings')
  const count = readings as number
  const standard = readSpread(standardDeviation, unit).div(new Decimal(count).sqrt())
  return stated(standard, 'normal', degreesOfFreedom ?? count - 1)
}

function spreadOver(halfWidth: Decimal, distribution: unknown, degrees?: unknown): StatedUncertainty {
  const divisor = divisors.get(distribution)
  if (divisor === undefined) throw badUncertainty(distribution, [...divisors.keys()].join(', '))
  return stated(halfWidth.div(new Decimal(divisor).sqrt()), distribution as Distribution, degrees)
}

function stated(standard: Decimal, distribution: Distribution, degrees?: unknown): StatedUncertainty {
  if (degrees === undefined) return Object.freeze({ standard, distribution })
  if (typeof degrees !== 'number' || !Number.isFinite(degrees) || degrees <= 0)
    throw badUncertainty(degrees, 'degrees of freedom above zero')
  return Object.freeze({ standard, distribution, degreesOfFreedom: degrees })
}

/** A spread in the unit of the input. A difference of temperatures is as many kelvins as degrees Celsius. */
function readSpread(text: unknown, unit: Unit): Decimal {
  const { numeral, unit: written } = readQuantityText(text)
  if (units[written].dimension !== units[unit].dimension) throw wrongUnit(written, unit)
  if (numeral.value.isNegative()) throw badUncertainty(text, 'an uncertainty of zero or more')
  return spreadIn(numeral.value, written, unit)
}

/** A coverage factor above zero, from text. */
export function readFactor(text: unknown): Decimal {
  const { numeral, unit } = readQuantityText(text)
  if (unit !== '1' || !numeral.value.gt(0)) throw badUncertainty(text, 'a coverage factor above zero, as text: "2"')
  return numeral.value
}

/** The error for whatever does not state an uncertainty. */
export function badUncertainty(
  found: unknown,
  expected: string,
  says = 'does not state an uncertainty',
): QuantityError {
  return new QuantityError({
    code: 'quantity/bad-uncertainty',
    message: `${showFound(found)} ${says}.`,
    found: showFound(found),
    expected,
  })
}

function wrongUnit(written: Unit, unit: Unit): QuantityError {
  const expected = unitsOf(units[unit].dimension).join(', ')
  return new QuantityError({
    code: 'quantity/wrong-dimension',
    message: `An uncertainty in ${written} does not go with a number in ${unit}.`,
    found: written,
    expected,
  })
}
