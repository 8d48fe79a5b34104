import type { HazardCode, Pictogram } from './hazard-statements.js'

/** In what form a substance is at hand; metals as `powder` or in larger `pieces`: foil, wire, granules, turnings. */
export type SubstanceForm = 'solid' | 'powder' | 'pieces' | 'solution' | 'liquid' | 'gas'

/** A general caution that a substance calls for by itself. */
export type CalledFor = 'acid-into-water' | 'fumes' | 'hydrogen-peroxide' | 'light-sensitive'

/** The classification of a substance in one form. */
export interface SubstanceHazard {
  /** Its formula, as it is classified: the hydrate, if that is. */
  readonly formula: string
  /** Its name. */
  readonly name: string
  /** In what form. */
  readonly form: SubstanceForm
  /** A solution: from this mass fraction up, in per cent. */
  readonly from?: number
  /** A solution: below this mass fraction, in per cent; no upper limit unless said. */
  readonly below?: number
  /** Pictograms; none where it is not classified. */
  readonly pictograms: readonly Pictogram[]
  /** Signal word: `none` has none, unsaid is not assigned by the source. */
  readonly signalWord?: 'Danger' | 'Warning' | 'none'
  /** Hazard statements; empty is not classified to the source's knowledge, which is not the same as harmless. */
  readonly statements: readonly HazardCode[]
  /** General cautions it calls for by itself. */
  readonly calls?: readonly CalledFor[]
  /** Who classifies it so. */
  readonly source: string
  /** True where nobody looked it up again in the source. */
  readonly fromMemory?: true
  /** What else is known of the classification. */
  readonly note?: string
}
