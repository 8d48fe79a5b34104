import {
  addFractions,
  compareFractions,
  divideFractions,
  type Fraction,
  fraction,
  multiplyFractions,
  subtractFractions,
} from '../fraction.js'
import { netMoles, type StageChemistry } from './chemistry.js'
import type { RecipeFacts, SupplyFacts } from './facts.js'
import type { SubstanceKey } from './substance.js'

const zero: Fraction = /* @__PURE__ */ fraction(0n)

/**
 * Moles of the scale substance per unit of the multipliers: what goes in of a supply, else its net change, or what its first stage
 * uses where it comes back.
 */
function scaleMoles(facts: RecipeFacts): Fraction {
  const { stages, multipliers, scaleKey } = facts
  const supplied = facts.supplies
    .filter(({ key }) => key === scaleKey)
    .reduce((total, supply) => addFractions(total, shareOf(facts, supply).need), zero)
  if (supplied.numerator !== 0n) return supplied
  const net = netMoles(stages, multipliers, scaleKey)
  if (net.numerator !== 0n) return magnitude(net)
  const index = stages.findIndex(({ changes, clears }) => clears === undefined && changes.has(scaleKey))
  return magnitude(
    multiplyFractions(movesIn(stages[index] as StageChemistry, scaleKey), multipliers[index] as Fraction),
  )
}

/** A supply in the main stages, in moles per mole of the scale substance. */
export interface SupplyShare {
  /** What they need of it, counted when it goes in. */
  readonly need: Fraction
  /** What earlier stages have made of it by then, which the need counts on. */
  readonly made: Fraction
}

/** What the main stages need of a supply, and make of it before. */
export function sharePerScale(facts: RecipeFacts, supply: SupplyFacts): SupplyShare {
  const { need, made } = shareOf(facts, supply)
  const scale = scaleMoles(facts)
  return { need: divideFractions(need, scale), made: divideFractions(made, scale) }
}

/** The same per unit of the multipliers. */
function shareOf(facts: RecipeFacts, supply: SupplyFacts): SupplyShare {
  const { stages, multipliers } = facts
  const { key, stage: first } = supply
  const made = madeBefore(facts, supply)
  let stock = made
  let need = zero
  let share = fraction(1n)
  for (let index = first; index < nextStage(facts, supply); index += 1) {
    const stage = stages[index] as StageChemistry
    if (index > first) {
      stock = goneOn(stock, stage, key)
      share = multiplyFractions(share, stage.aliquot)
    }
    stock = addFractions(stock, multiplyFractions(movesIn(stage, key), multipliers[index] as Fraction))
    if (compareFractions(stock, zero) < 0) {
      need = subtractFractions(need, divideFractions(stock, share))
      stock = zero
    }
  }
  return { need, made }
}

/** What earlier stages have made of a supply and not used again when it goes in. */
function madeBefore({ stages, multipliers }: RecipeFacts, { key, stage: first }: SupplyFacts): Fraction {
  const stock = stages.slice(0, first).reduce((before, stage, index) => {
    const change = multiplyFractions(movesIn(stage, key), multipliers[index] as Fraction)
    const after = addFractions(goneOn(before, stage, key), change)
    return compareFractions(after, zero) < 0 ? zero : after
  }, zero)
  return goneOn(stock, stages[first] as StageChemistry, key)
}

/** What goes on into a stage. */
function goneOn(stock: Fraction, { removes, aliquot }: StageChemistry, key: SubstanceKey): Fraction {
  return removes.has(key) ? zero : multiplyFractions(stock, aliquot)
}

/** The stage at which the next supply of the same substance takes over, or what is left of this one is taken away. */
export function nextStage({ supplies, stages }: RecipeFacts, { key, stage }: SupplyFacts): number {
  const isNext = (index: number): boolean => supplies.some((other) => other.key === key && other.stage === index)
  const end = stages.findIndex(({ removes }, index) => index > stage && (removes.has(key) || isNext(index)))
  return end < 0 ? stages.length : end
}

function movesIn(stage: StageChemistry, key: SubstanceKey): Fraction {
  return stage.changes.get(key)?.moles ?? zero
}

function magnitude(f: Fraction): Fraction {
  return f.numerator < 0n ? { numerator: -f.numerator, denominator: f.denominator } : f
}
