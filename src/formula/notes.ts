import type { FormulaNote } from './formula.js'
export function notesOn(text: string): readonly FormulaNote[] {
  return text === '' ? [] : []
}
