import type { Equation } from '../equation/index.js'
import { type Line, type Piece, piecesOf } from './sheet.js'

/** What a stage says of itself beside its equation. */
export interface StageFacts {
  /** For a stage that only removes what an earlier one left: of what. */
  readonly clears: string | undefined
  /** The fraction of the solution that goes on into it; absent where all of it does. */
  readonly aliquot: string | undefined
  /** What is taken away before it. */
  readonly removes: readonly string[]
}

/** What goes before a stage: the share that goes on, what is taken away; and that it only clears a leftover. */
export function stageNotes({ clears, aliquot, removes }: StageFacts): readonly Line[] {
  const share = aliquot === undefined ? [] : [`Take ${aliquot} of the solution on; the rest takes no part from here.`]
  const away: Line[] = removes.length === 0 ? [] : [['Before anything goes in, take away ', ...listed(removes), '.']]
  const only: Line[] =
    clears === undefined ? [] : [['This only removes the ', { formula: clears }, ' left from before.']]
  return [...share, ...away, ...only]
}

/** A stage in one line: its name, its equation, and what is to be known of it. */
export function stageLine(stage: StageFacts & { readonly name: string; readonly equation: Equation }): Line {
  const notes = stageNotes(stage).flatMap((note): Piece[] => ['  ', ...piecesOf(note)])
  return [`${stage.name}:  `, { equation: stage.equation }, ...notes]
}

/** Formulas one after another. */
function listed(formulas: readonly string[]): readonly Piece[] {
  return formulas.flatMap((formula, index): Piece[] => {
    if (index === 0) return [{ formula }]
    return [index === formulas.length - 1 ? ' and ' : ', ', { formula }]
  })
}
