import type { Assessment, Plan } from '../preparation/index.js'
import type { Quantity } from '../quantity/index.js'
import type { ReviewContext } from './context.js'

/** A question whose answer is a number with its unit. */
export interface QuantityQuestion {
  /** `quantity`. */
  readonly kind: 'quantity'
  /** Its name in a filled worksheet: `mass-of-ZnO`. */
  readonly id: string
  /** What is asked. */
  readonly asks: string
  /** The right answer, unrounded, with all that it is made from. */
  readonly expected: Quantity
  /** What the bench recorded of it, as right as what was planned; absent where it recorded nothing. */
  readonly recorded?: Quantity | undefined
  /** Exponent of ten of the last digit that the instrument shows; absent where none is read. */
  readonly readableTo: number | undefined
  /** The step of what it is weighed or measured with: the right answer rounded to it is right as well. Absent where none is read. */
  readonly step?: Quantity | undefined
}

/** A question whose answer is one of several substances. */
export interface ChoiceQuestion {
  /** `choice`. */
  readonly kind: 'choice'
  /** Its name in a filled worksheet. */
  readonly id: string
  /** What is asked. */
  readonly asks: string
  /** What can be chosen, as formulas and as they are called. */
  readonly choices: readonly {
    /** As a formula. */
    readonly formula: string
    /** As it is called. */
    readonly name: string
    /** What else it is called, and what is weighed for it, as formulas; nothing unless said. */
    readonly others?: readonly string[] | undefined
  }[]
  /** The right ones, as formulas: usually one. */
  readonly right: readonly string[]
}

/** A question of a worksheet. */
export type Question = QuantityQuestion | ChoiceQuestion

/** The questions that a plan answers, in the order in which they are worked through. */
export interface Worksheet {
  /** What is prepared. */
  readonly title: string
  /** The questions. */
  readonly questions: readonly Question[]
  /** What is at hand beside them. */
  readonly context: ReviewContext
}

/** What a worksheet is made from beside the plan. */
export interface WorksheetOptions {
  /** What the bench recorded: it decides what limits and what can be had at most, and adds the mass of product and the per cent yield. */
  readonly assessment?: Assessment | undefined
  /** The same preparation as it is printed, where the plan is at another scale. */
  readonly printed?: Plan | undefined
}

/** A worksheet as it was handed in, as plain JSON. */
export interface FilledWorksheet {
  /** `saltwright/worksheet@1`. */
  readonly format: 'saltwright/worksheet@1'
  /** Whose it is: `Bench 1`. */
  readonly bench?: string
  /** Answers by the names of their questions, as written: `"3.255 g"`. What was left empty is left out, or an empty text. */
  readonly answers: Readonly<Record<string, string>>
}
