import { difference, mean, product, quotient, sum, weightedSum } from './arithmetic-rules.js'
import { conversion, rounded } from './form-rules.js'
import {
  antilogarithm,
  cosine,
  exponential,
  logarithm,
  naturalLogarithm,
  power,
  sine,
  squareRoot,
} from './function-rules.js'
import type { Rule } from './rule.js'

/** The name of a rule. */
export type RuleName =
  | 'sum'
  | 'difference'
  | 'product'
  | 'quotient'
  | 'conversion'
  | 'mean'
  | 'weightedSum'
  | 'power'
  | 'squareRoot'
  | 'logarithm'
  | 'antilogarithm'
  | 'naturalLogarithm'
  | 'exponential'
  | 'sine'
  | 'cosine'
  | 'rounded'

/** Every rule by its name. To add one, add a row; nothing else asks for a rule by name. */
export const rules: Readonly<Record<RuleName, Rule>> = {
  sum,
  difference,
  product,
  quotient,
  conversion,
  mean,
  weightedSum,
  power,
  squareRoot,
  logarithm,
  antilogarithm,
  naturalLogarithm,
  exponential,
  sine,
  cosine,
  rounded,
}
