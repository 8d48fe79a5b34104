import { showFound } from '../errors.js'
import { asDimension, constant, type Quantity } from '../quantity/index.js'
import { abridgedWeights } from './abridged-weights.js'
import { type AtomicWeightSet, type AtomicWeights, checkSet } from './atomic-weight-set.js'
import { ElementError } from './element-error.js'
import { isElementSymbol, unknownSymbol } from './element-info.js'
import { standardWeights } from './standard-weights.js'
import { readWeight } from './weight-text.js'

type AtomicWeight = Quantity<'molarMass'>

/** The quantities made so far, by set: a memo, so that an atomic weight used twice is the same measurement. */
const made: WeakMap<AtomicWeightSet, Map<string, AtomicWeight>> = /* @__PURE__ */ new WeakMap()

/**
 * The atomic weight of an element, as the molar mass of its atoms in g/mol. The same element of the same set is always the same
 * object, so that its uncertainty counts as one wherever it is used.
 *
 * A value with a bound, or an interval, has a rectangular uncertainty: every value within is as likely. Its standard uncertainty is
 * half the width of the range divided by the square root of 3.
 *
 * @param symbol - A symbol, exact in its case; also D and T.
 * @param weights - Which atomic weights: `"abridged"` unless said, `"standard"`, or a set of one's own.
 * @returns The atomic weight in g/mol, with its figures as printed; the midpoint of an interval.
 * @throws {@link ElementError} `element/unknown-symbol`; `element/no-standard-weight` for a radioactive element without one;
 *   `element/not-in-set` for an element the set leaves out; `element/unknown-set`, `element/invalid-set`.
 * @source Values: {@link abridgedWeights}, {@link standardWeights}. Interval as rectangular distribution: van der Veen A. M. H. et
 *   al., Interpretation and use of standard atomic weights (IUPAC Technical Report), Pure Appl. Chem. 2021, 93(5), 629-646,
 *   doi:10.1515/pac-2017-1002; the same for a value with a bound: Eurachem/CITAC Guide CG 4, Example A2.
 *
 * @example
 * ```ts
 * import { atomicWeight } from 'saltwright/element'
 *
 * atomicWeight('S').toString() // => '32.06 g/mol'
 * atomicWeight('H', 'standard').toString() // => '1.007975 g/mol'
 * atomicWeight('Tc') // throws element/no-standard-weight
 * ```
 */
export function atomicWeight(symbol: string, weights: AtomicWeights = 'abridged'): AtomicWeight {
  const set = setOf(weights)
  const known = knownOf(set)
  const remembered = known.get(symbol)
  if (remembered !== undefined) return remembered
  const found = find(symbol, set)
  known.set(symbol, found)
  return found
}

function setOf(weights: AtomicWeights): AtomicWeightSet {
  if (weights === 'abridged') return abridgedWeights
  if (weights === 'standard') return standardWeights
  if (typeof weights === 'string') throw unknownSet(weights)
  return weights
}

/** The memo of a set; a set that is not known yet is checked first, for it may come from a file. */
function knownOf(set: AtomicWeightSet): Map<string, AtomicWeight> {
  const known = made.get(set)
  if (known !== undefined) return known
  checkSet(set)
  const fresh = new Map<string, AtomicWeight>()
  made.set(set, fresh)
  return fresh
}

function find(symbol: string, set: AtomicWeightSet): AtomicWeight {
  if (!isElementSymbol(symbol)) throw unknownSymbol(symbol)
  const written = Object.hasOwn(set.values, symbol) ? set.values[symbol] : undefined
  if (written !== undefined) return makeWeight(symbol, written, set.name)
  if (set.extends !== undefined) return atomicWeight(symbol, set.extends)
  throw Object.hasOwn(standardWeights.values, symbol) ? notInSet(symbol, set.name) : noStandardWeight(symbol)
}

function makeWeight(symbol: string, written: string, set: string): AtomicWeight {
  const { value, halfWidth } = readWeight(written)
  const uncertainty = halfWidth && ({ halfWidth: `${halfWidth} g/mol`, distribution: 'rectangular' } as const)
  const text: string = `${value} g/mol`
  const weight = constant(text, {
    label: `atomic weight of ${symbol}`,
    symbol: 'M', // in g/mol it is the molar mass of the atoms
    of: symbol,
    role: 'atomic weight',
    id: `${set}: Ar(${symbol}) = ${written}`,
    wholeNumberZeros: 'significant',
    ...(uncertainty && { uncertainty }),
  })
  return asDimension(weight, 'molarMass')
}

function unknownSet(found: string): ElementError {
  return new ElementError({
    code: 'element/unknown-set',
    message: `${showFound(found)} is not a set of atomic weights.`,
    found: showFound(found),
    expected: '"abridged", "standard" or a set of your own: { name, values }',
  })
}

function notInSet(symbol: string, set: string): ElementError {
  return new ElementError({
    code: 'element/not-in-set',
    message: `The atomic weights ${showFound(set)} have none for ${symbol}.`,
    found: symbol,
    expected: `an element of ${showFound(set)}`,
    hint: `Add ${symbol} to its values, or let it extend "abridged".`,
  })
}

function noStandardWeight(symbol: string): ElementError {
  return new ElementError({
    code: 'element/no-standard-weight',
    message: `${symbol} is radioactive and has no standard atomic weight: no isotope of it is stable or typical of the Earth.`,
    found: symbol,
    expected: 'an element with a standard atomic weight',
    hint: 'A set of your own can give the weight of the isotope at hand.',
  })
}
