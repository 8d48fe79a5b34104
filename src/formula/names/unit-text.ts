import type { Unit } from '../tree.js'

/** The text of pieces of a formula: `Fe(CN)6`. */
export function unitText(units: readonly Unit[]): string {
  return units.map((unit) => innerText(unit) + (unit.count === 1 ? '' : unit.count)).join('')
}

function innerText(unit: Unit): string {
  if (unit.kind === 'atom') return unit.symbol
  const closing = ')]}'.charAt('([{'.indexOf(unit.bracket))
  return `${unit.bracket}${unitText(unit.units)}${closing}`
}
