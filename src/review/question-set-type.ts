import type { Equation } from '../equation/index.js'
import type { Recipe } from '../preparation/index.js'
import type { Quantity, Working } from '../quantity/index.js'

/** From where to where a number of a recipe is varied, both included: `0.0200 mol` to `0.0600 mol`. Its digits say in what steps. */
export interface Range {
  /** Least. */
  readonly from: string
  /** Greatest, in the same unit. */
  readonly to: string
}

/** What is varied, and what is asked. */
export interface QuestionSetOptions {
  /** A whole number from 0 to a million: the same seed gives the same questions. */
  readonly seed: number
  /** How many variants; one unless said. */
  readonly variants?: number | undefined
  /** The amount or mass of the scale; as the recipe says unless given. */
  readonly scale?: Range | undefined
  /** Amount concentrations of solutions, by substance. */
  readonly strengths?: Readonly<Record<string, Range>> | undefined
  /** Mass fractions of solids and liquids, by substance. */
  readonly assays?: Readonly<Record<string, Range>> | undefined
  /** Excess factors, by substance. */
  readonly excessFactors?: Readonly<Record<string, Range>> | undefined
  /** Which questions, by the names that `worksheetOf` gives them; all unless said. */
  readonly questions?: readonly string[] | undefined
  /** How many wrong answers to each, at most; three unless said. */
  readonly distractors?: number | undefined
}

/** A wrong answer that a slip gives. */
export interface Distractor {
  /** As it would be written. */
  readonly text: string
  /** Its number, as text, in the unit of the right answer; absent where another substance is chosen. */
  readonly value: string | undefined
  /** The slip; absent where another substance is chosen. */
  readonly slip: string | undefined
  /** What to look at, for whoever chooses it. */
  readonly advice: string
}

/** The number of an answer, for a program that marks it. */
export interface NumericAnswer {
  /** The number, as text. */
  readonly value: string
  /** Its unit; empty for a plain ratio. */
  readonly unit: string
  /** How far off it may be, as text: one in the last digit, `1e-3`. */
  readonly tolerance: string
}

/** A number that is given with a question. */
export interface GivenNumber {
  /** What it is. */
  readonly label: string
  /** The number. */
  readonly quantity: Quantity
}

/** A question as it is posed. */
export interface PosedQuestion {
  /** The name of the question. */
  readonly id: string
  /** What is asked. */
  readonly asks: string
  /** What is given beside the equations: every number that the recipe chooses and the answer follows from. */
  readonly given: readonly GivenNumber[]
  /** The right answer, with the figures it should have. */
  readonly answer: string
  /** The same for a program; absent where a substance is asked for. */
  readonly numeric: NumericAnswer | undefined
  /** The worked solution; absent where a substance is asked for. */
  readonly working: Working | undefined
  /** Wrong answers, the best known slips first. */
  readonly distractors: readonly Distractor[]
}

/** A stage of the preparation, as far as a question needs it. */
export interface PosedStage {
  /** Its name. */
  readonly name: string
  /** Its equation. */
  readonly equation: Equation
  /** For a stage that only removes what an earlier one left: of what, as a formula. */
  readonly clears: string | undefined
  /** The fraction of the solution that goes on into it; absent where all of it does. */
  readonly aliquot: string | undefined
  /** What is taken away before it, as formulas. */
  readonly removes: readonly string[]
}

/** One variant of the questions on a recipe. */
export interface QuestionVariant {
  /** Its number, from 1. */
  readonly number: number
  /** The recipe with its numbers. */
  readonly recipe: Recipe
  /** The equation of the whole preparation. */
  readonly equation: Equation
  /** The stages that it is made of. */
  readonly stages: readonly PosedStage[]
  /** The questions. */
  readonly questions: readonly PosedQuestion[]
}

/** Questions on a recipe, in variants. `JSON.stringify` gives the whole of it. */
export interface QuestionSet {
  /** `saltwright/question-set@1`. */
  readonly format: 'saltwright/question-set@1'
  /** What is prepared. */
  readonly title: string
  /** The seed it was made with. */
  readonly seed: number
  /** The variants. */
  readonly variants: readonly QuestionVariant[]
}
