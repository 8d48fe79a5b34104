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

/** Moles of the scale substance per unit of the multipliers: its net change, or what its first stage uses where it comes back. */
function scaleMoles({ stages, multipliers, scaleKey }: RecipeFacts): Fraction {
  const net = netMoles(stages, multipliers, scaleKey)
  if (net.numerator !== 0n) return magnitude(net)
  const index = stages.findIndex(({ changes, clears }) => clears === undefined && changes.has(scaleKey))
  return magnitude(
    multiplyFractions(movesIn(stages[index] as StageChemistry, scaleKey), multipliers[index] as Fraction),
  )
}

/** Moles of a supply that the main stages need per mole of the scale substance, counted when it goes in. */
export function needPerScale(facts: RecipeFacts, supply: SupplyFacts): Fraction {
  const { stages, multipliers } = facts
  const until = nextStage(facts, supply)
  let stock = zero
  let need = zero
  let share = fraction(1n)
  for (let index = 0; index < until; index += 1) {
    const stage = stages[index] as StageChemistry
    if (index > supply.stage) share = multiplyFractions(share, stage.aliquot)
    stock = addFractions(
      stage.removes.has(supply.key) ? zero : multiplyFractions(stock, stage.aliquot),
      multiplyFractions(movesIn(stage, supply.key), multipliers[index] as Fraction),
    )
    if (compareFractions(stock, zero) >= 0) continue
    if (index >= supply.stage) need = subtractFractions(need, divideFractions(stock, share))
    stock = zero
  }
  return divideFractions(need, scaleMoles(facts))
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
