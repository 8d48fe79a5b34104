import { Decimal } from '../decimal.js'
import type { Rule } from './rule.js'
import { first, name, number } from './rule-parts.js'
import { fewestFigures, figuresAt, placeAt, type Significant } from './significance.js'
import type { Unit } from './unit.js'

const ln10 = Math.LN10

/** Functions are of one plain ratio, and give one. */
const ofRatio = (operands: readonly Unit[], result: Unit): boolean =>
  operands.length === 1 && operands[0] === '1' && result === '1'

/** As many decimals in a logarithm as figures in its argument: OpenStax, Chemistry 2e, section 14.2 and Appendix B. */
function placeOfLogarithm([argument]: readonly Significant[]): number | null {
  const { value, place } = argument as Significant
  return place === null ? null : -figuresAt(value, place)
}

/** As many figures in an antilogarithm as decimals in the exponent: the same source, read backwards. */
function placeOfAntilogarithm(operands: readonly Significant[], value: Decimal): number | null {
  const { place } = first(operands)
  return place === null ? null : placeAt(value, Math.max(0, -place))
}

/** A whole power keeps the figures, as a product does: OpenStax, Chemistry 2e, section 1.5. */
export const power: Rule = {
  evaluate: (operands, { exponent }) => first(operands).value.pow(exponent as number),
  place: (operands, value) => fewestFigures(operands, value),
  partials: ([base], _result, { exponent }) => [
    exponent === 0 ? 0 : (exponent as number) * (base as number) ** ((exponent as number) - 1),
  ],
  write: (_count, { exponent }) => ({ kind: 'power', base: name(0), exponent: number(String(exponent)) }),
  fits: (operands, result, { exponent }) => ofRatio(operands, result) && exponent !== undefined,
}

/** OpenStax, Chemistry 2e, Appendix B, square roots. */
export const squareRoot: Rule = {
  evaluate: (operands) => first(operands).value.sqrt(),
  place: (operands, value) => fewestFigures(operands, value),
  partials: (_values, result) => [1 / (2 * result)],
  write: () => ({ kind: 'root', of: name(0) }),
  fits: ofRatio,
}

/** To base ten. */
export const logarithm: Rule = {
  evaluate: (operands) => first(operands).value.log(10),
  place: placeOfLogarithm,
  partials: ([x]) => [1 / ((x as number) * ln10)],
  write: () => ({ kind: 'call', name: 'log10', of: name(0) }),
  fits: ofRatio,
}

/** Ten to a power. */
export const antilogarithm: Rule = {
  evaluate: (operands) => new Decimal(10).pow(first(operands).value),
  place: placeOfAntilogarithm,
  partials: (_values, result) => [result * ln10],
  write: () => ({ kind: 'power', base: number('10'), exponent: name(0) }),
  fits: ofRatio,
}

/** To base e; figures as to base ten. */
export const naturalLogarithm: Rule = {
  evaluate: (operands) => first(operands).value.ln(),
  place: placeOfLogarithm,
  partials: ([x]) => [1 / (x as number)],
  write: () => ({ kind: 'call', name: 'ln', of: name(0) }),
  fits: ofRatio,
}

/** e to a power; figures as ten to a power. */
export const exponential: Rule = {
  evaluate: (operands) => first(operands).value.exp(),
  place: placeOfAntilogarithm,
  partials: (_values, result) => [result],
  write: () => ({ kind: 'call', name: 'exp', of: name(0) }),
  fits: ofRatio,
}

/** Of an angle in radians; keeps the figures: common practice, no source. */
export const sine: Rule = {
  evaluate: (operands) => first(operands).value.sin(),
  place: (operands, value) => fewestFigures(operands, value),
  partials: ([x]) => [Math.cos(x as number)],
  write: () => ({ kind: 'call', name: 'sin', of: name(0) }),
  fits: ofRatio,
}

/** Of an angle in radians; keeps the figures: common practice, no source. */
export const cosine: Rule = {
  evaluate: (operands) => first(operands).value.cos(),
  place: (operands, value) => fewestFigures(operands, value),
  partials: ([x]) => [-Math.sin(x as number)],
  write: () => ({ kind: 'call', name: 'cos', of: name(0) }),
  fits: ofRatio,
}
