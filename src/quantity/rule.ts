import type { Decimal } from '../decimal.js'
import type { Rounding } from './rounding.js'
import type { Significant } from './significance.js'
import type { Unit } from './unit.js'

/** What a rule needs beside its operands. */
export interface RuleSettings {
  /** Conversion: what the number is multiplied by (or divided by, where `inverse`). */
  readonly factor?: Decimal
  /** Conversion: whether the factor divides. One of the two is always a terminating decimal. */
  readonly inverse?: boolean
  /** Conversion: what is added afterwards, for the degree Celsius. */
  readonly offset?: Decimal
  /** Weighted sum: how often each operand counts. */
  readonly counts?: readonly Decimal[]
  /** Power: the whole exponent. */
  readonly exponent?: number
  /** Rounding: to what, and what a lone 5 does. */
  readonly rounding?: Rounding
}

/** How a calculation is written: a small tree that a report lays out as text, Markdown, LaTeX or HTML. */
export type Expression =
  | {
      /** An operand, by the name it has. */
      readonly kind: 'name'
      /** Its position among the operands, from 0. */
      readonly operand: number
    }
  | {
      /** A number that is written as it is. */
      readonly kind: 'number'
      /** The number. */
      readonly text: string
    }
  | {
      /** Terms with plus signs between them. */
      readonly kind: 'sum'
      /** The terms. */
      readonly terms: readonly Expression[]
    }
  | {
      /** Two terms with a minus sign between them. */
      readonly kind: 'difference'
      /** What is subtracted from. */
      readonly left: Expression
      /** What is subtracted. */
      readonly right: Expression
    }
  | {
      /** Factors side by side. */
      readonly kind: 'product'
      /** The factors. */
      readonly factors: readonly Expression[]
    }
  | {
      /** One above the other. */
      readonly kind: 'fraction'
      /** The numerator. */
      readonly top: Expression
      /** The denominator. */
      readonly bottom: Expression
    }
  | {
      /** A base with a raised exponent. */
      readonly kind: 'power'
      /** What is raised. */
      readonly base: Expression
      /** To what. */
      readonly exponent: Expression
    }
  | {
      /** A square root. */
      readonly kind: 'root'
      /** What stands under it. */
      readonly of: Expression
    }
  | {
      /** A function of one argument. */
      readonly kind: 'call'
      /** Its name, such as `log10`. */
      readonly name: string
      /** The argument. */
      readonly of: Expression
    }

/** One way to make a number from others, said once; every reader of the calculation graph looks here. */
export interface Rule {
  /** The value, from those of the operands. */
  readonly evaluate: (operands: readonly Significant[], settings: RuleSettings) => Decimal
  /** The place of the last significant digit; `null` where the result is exact. */
  readonly place: (operands: readonly Significant[], value: Decimal, settings: RuleSettings) => number | null
  /** Partial derivatives by each operand, for the law of propagation of uncertainty (JCGM 100:2008, 5.1.2). */
  readonly partials: (values: readonly number[], result: number, settings: RuleSettings) => readonly number[]
  /** How it is written out, operands by their position; the operand alone where the result is the same quantity in another form. */
  readonly write: (count: number, settings: RuleSettings) => Expression
  /** Whether operands in these units, with these settings, give a result in this unit. Asked where a calculation comes from outside. */
  readonly fits: (operands: readonly Unit[], result: Unit, settings: RuleSettings) => boolean
}
