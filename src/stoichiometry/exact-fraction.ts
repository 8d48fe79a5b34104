import { type Fraction, fractionToDecimal } from '../fraction.js'
import { exact, type Naming, type Quantity } from '../quantity/index.js'

/** An exact ratio: one number where its decimals end, else the quotient of two, so that 2/3 stays 2/3 on paper. */
export function exactFraction(value: Fraction, naming: Naming): Quantity<'ratio'> {
  const { numerator, denominator } = value
  if (tenToTwenty % denominator === 0n) return exactRatio(fractionToDecimal(value).toFixed(), naming)
  return exactRatio(`${numerator}`, {})
    .dividedBy(exactRatio(`${denominator}`, {}))
    .named(naming)
}

/** Every denominator that divides it gives a decimal of at most twenty places. */
const tenToTwenty = 100_000_000_000_000_000_000n

function exactRatio(text: string, naming: Naming): Quantity<'ratio'> {
  return exact(text as `${number}`, naming)
}
