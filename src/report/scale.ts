import type { Plan } from '../preparation/index.js'
import { exact, type Quantity } from '../quantity/index.js'
import { brief } from './brief.js'
import type { Piece } from './sheet.js'

/** The scale as it was chosen: a mass with its amount beside it, or an amount; of what, where that is to be said. */
export function scalePieces({ recipe, scale }: Plan, of: readonly Piece[] = []): readonly Piece[] {
  const amount: Piece = { quantity: brief(scale.amount) }
  const mass = recipe.scale?.mass
  if (mass === undefined) return [amount, ...of]
  return [{ quantity: exact(mass) as Quantity }, ...of, ' (', amount, ')']
}
