import type { Piece } from './sheet.js'

/** What a supply is called; a formula is written as one. */
export function nameOf({ name, substance }: { readonly name: string; readonly substance: string }): Piece {
  return name === substance ? { formula: substance } : name
}
