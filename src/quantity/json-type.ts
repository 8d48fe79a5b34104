import type { Distribution, InputKind, Naming } from './input.js'
import type { QuantityJSON } from './quantity.js'
import type { TieRule } from './rounding.js'
import type { RuleName } from './rules.js'
import type { Unit } from './unit.js'

/** A quantity as a document of its own: its number, without its origin. */
export interface QuantityDocument extends QuantityJSON {
  /** What the document is, and its version. */
  readonly format: 'saltwright/quantity@1'
}

/** A measurement, a choice or a constant; what several quantities have in common that are the same one. */
export interface MeasurementJSON {
  /** How it came to be. */
  readonly kind: InputKind
  /** Exponent of ten of the last digit as written. */
  readonly place: number
  /** True where trailing zeros of a whole number left its figures open. */
  readonly ambiguous?: true
  /** What was stated of its uncertainty. */
  readonly uncertainty?: UncertaintyJSON
  /** Its name wherever it is saved. */
  readonly id?: string
}

/** A stated uncertainty. */
export interface UncertaintyJSON {
  /** Standard uncertainty, in the unit of the measurement. */
  readonly standard: string
  /** What the statement was. */
  readonly distribution: Distribution
  /** Degrees of freedom; absent means unlimited. */
  readonly degreesOfFreedom?: number
}

/** What a rule needs beside its operands. */
export interface SettingsJSON {
  /** Conversion: the factor. */
  readonly factor?: string
  /** Conversion: whether the factor divides. */
  readonly inverse?: true
  /** Conversion: what is added afterwards. */
  readonly offset?: string
  /** Weighted sum: how often each operand counts. */
  readonly counts?: readonly string[]
  /** Power: the exponent. */
  readonly exponent?: number
  /** Rounding: to so many figures or to multiples of a step, and what a lone 5 does. */
  readonly rounding?:
    | {
        /** To so many figures. */
        readonly figures: number
        /** What a lone 5 does. */
        readonly ties: TieRule
      }
    | {
        /** To multiples of this, in the unit of the quantity. */
        readonly step: string
        /** What a lone 5 does. */
        readonly ties: TieRule
      }
}

/** A quantity that was known from the start. */
export interface InputNodeJSON extends Naming {
  /** The position of its measurement in the list of those. */
  readonly measurement: number
  /** Its number. */
  readonly value: string
  /** Its unit. */
  readonly unit: Unit
}

/** A quantity that was worked out. */
export interface DerivedNodeJSON extends Naming {
  /** The rule that made it. */
  readonly rule: RuleName
  /** The positions of its operands in the list of nodes, all before its own. */
  readonly operands: readonly number[]
  /** What the rule needs beside them. */
  readonly settings?: SettingsJSON
  /** Its number, to be compared with what the rule gives. */
  readonly value: string
  /** Its unit. */
  readonly unit: Unit
}

/** Quantities with their whole origin. What they share is there once, so that they know it when they are read back. */
export interface CalculationDocument {
  /** What the document is, and its version. */
  readonly format: 'saltwright/calculation@1'
  /** The measurements, choices and constants. */
  readonly measurements: readonly MeasurementJSON[]
  /** All quantities, each after those it was made from. */
  readonly nodes: readonly (InputNodeJSON | DerivedNodeJSON)[]
  /** The positions of the quantities that were saved. */
  readonly results: readonly number[]
}
