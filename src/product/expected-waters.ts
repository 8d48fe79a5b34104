import type { Formula } from '../formula/index.js'
import { divideFractions, type Fraction, fraction, multiplyFractions, subtractFractions } from '../fraction.js'
import { isOfWater } from '../stoichiometry/of-water.js'
import { ratioBySharedElements } from './gravimetric-factor.js'
import { ProductError } from './product-error.js'

/**
 * Water of a hydrate per formula unit of its anhydrous salt, exact: what its formula holds beyond the salt has to be water. So a doubled
 * formula counts per single unit, and 3CdSO4·8H2O holds 8/3.
 */
export function watersPerUnit(hydrate: Formula, salt: Formula): Fraction {
  const units = ratioBySharedElements(hydrate, salt)
  const beyond = (symbol: string): Fraction =>
    subtractFractions(countOf(hydrate, symbol), multiplyFractions(countOf(salt, symbol), units))
  const others = [...hydrate.counts.keys(), ...salt.counts.keys()].filter((symbol) => !isOfWater(symbol))
  const [hydrogen, oxygen] = [beyond('H'), beyond('O')]
  const isWater = subtractFractions(hydrogen, multiplyFractions(oxygen, fraction(2n))).numerator === 0n
  const isRelated = others.every((symbol) => beyond(symbol).numerator === 0n)
  if (isWater && isRelated && oxygen.numerator >= 0n) return divideFractions(oxygen, units)
  throw new ProductError({
    code: 'product/no-mole-ratio',
    message: `${hydrate.text} is no hydrate of ${salt.text}.`,
    found: hydrate.text,
    expected: `a formula with the elements of ${salt.text} in the same ratio, and water`,
  })
}

function countOf({ counts }: Formula, symbol: string): Fraction {
  return counts.get(symbol) ?? fraction(0n)
}
