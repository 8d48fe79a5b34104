/** Every remark there is about a solubility or a crop. */
export type CrystallisationNoteCode =
  | 'table-from-memory'
  | 'solid-from-memory'
  | 'about-the-table'
  | 'tables-differ'
  | 'pure-water'
  | 'upper-estimate'
  | 'unsaturated'

/** What a person should know about a solubility or a crop. */
export interface CrystallisationNote {
  /** Stable name. */
  readonly code: CrystallisationNoteCode
  /** One plain sentence or two. */
  readonly message: string
}

/** A remark. */
export function note(code: CrystallisationNoteCode, message: string): CrystallisationNote {
  return { code, message }
}
