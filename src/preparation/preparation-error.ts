import { SaltwrightError } from '../errors.js'

/** Everything that stops a preparation from being planned or assessed. */
export type PreparationCode =
  | 'preparation/unreadable'
  | 'preparation/invalid'
  | 'preparation/missing'
  | 'preparation/unknown-key'
  | 'preparation/wrong-type'
  | 'preparation/unknown-choice'
  | 'preparation/wrong-dimension'
  | 'preparation/not-positive'
  | 'preparation/unbalanced-stage'
  | 'preparation/product-not-made'
  | 'preparation/scale-not-in-stages'
  | 'preparation/two-amount-rules'
  | 'preparation/no-amount-rule'
  | 'preparation/unknown-stage'
  | 'preparation/unused-supply'
  | 'preparation/unrelated-substance'
  | 'preparation/stage-twice'
  | 'preparation/printed-at-one-scale'
  | 'preparation/supply-twice'
  | 'preparation/missing-supply'
  | 'preparation/nothing-limits'
  | 'preparation/clears-nothing'
  | 'preparation/removes-nothing'
  | 'preparation/stages-not-linked'
  | 'preparation/stages-contradict'
  | 'preparation/unknown-supply'
  | 'preparation/nothing-weighed'
  | 'preparation/weighed-twice'
  | 'preparation/no-product-possible'

/**
 * A recipe, records or a class list that cannot be worked with; `problems` lists every mistake found.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 *
 * planPreparation({} as never) // throws preparation/invalid
 * ```
 */
export class PreparationError extends SaltwrightError<PreparationCode> {}
