import type { Line, Piece } from './sheet.js'

/** A supply as far as a sheet names it. */
interface Named {
  /** What it is called. */
  readonly name: string
  /** The substance. */
  readonly substance: string
  /** The stage it goes into. */
  readonly stage: string
}

/** What a supply is called; a formula is written as one. */
function nameOf({ name, substance }: Pick<Named, 'name' | 'substance'>): Piece {
  return name === substance ? { formula: substance } : name
}

/** What a supply is called among others: with its stage, where the substance goes in twice. */
export function nameAmong(supply: Named, supplies: readonly Named[]): Line {
  return [nameOf(supply), ...stageAmong(supply, supplies)]
}

/** The same in words alone, for a spreadsheet or a line to fill in. */
export function wordsAmong(supply: Named, supplies: readonly Named[]): string {
  return [supply.name, ...stageAmong(supply, supplies)].join('')
}

function stageAmong({ substance, stage }: Named, supplies: readonly Named[]): readonly string[] {
  return supplies.filter((other) => other.substance === substance).length > 1 ? [` (${stage})`] : []
}

/** Those that a list of formulas names, each substance once, joined by "and". */
export function namesOf(supplies: readonly Omit<Named, 'stage'>[], formulas: readonly string[]): readonly Piece[] {
  const named = new Map(supplies.map((supply) => [supply.substance, nameOf(supply)]))
  const pieces = [...named].filter(([substance]) => formulas.includes(substance)).map(([, name]) => name)
  return pieces.flatMap((piece, index) => (index === 0 ? [piece] : [' and ', piece]))
}
