import type { Quantity, RuleSettings } from '../quantity/index.js'
import { type Calculation, partsOf } from './calculation.js'
import { type NumericRule, numericRules } from './numeric-rules.js'
import type { Replacement } from './replacement.js'

/** One result of a calculation, ready to be worked out on doubles. */
interface Step {
  readonly rule: NumericRule
  readonly places: readonly number[]
  readonly settings: RuleSettings
}

interface Sketch {
  readonly values: Float64Array
  readonly steps: readonly (Step | undefined)[]
}

/** The doubles of calculations, as long as somebody holds on to them. */
const known: WeakMap<Calculation, Sketch> = /* @__PURE__ */ new WeakMap()

function sketchOf(calculation: Calculation): Sketch {
  const found = known.get(calculation) ?? sketch(calculation)
  known.set(calculation, found)
  return found
}

function sketch(calculation: Calculation): Sketch {
  const { quantities } = calculation
  return {
    values: Float64Array.from(quantities, ({ value }) => value.toNumber()),
    steps: quantities.map((q) => stepOf(calculation, q)),
  }
}

function stepOf(calculation: Calculation, q: Quantity): Step | undefined {
  if (q.rule === 'input') return undefined
  const places = partsOf(q).map((part) => calculation.placeOf(part) as number)
  return { rule: numericRules[q.rule], places, settings: q.settings }
}

/** The result that a calculation would have with some of its quantities replaced, as a double. */
export function estimate(calculation: Calculation, replacements: readonly Replacement[]): number {
  const { values, steps } = sketchOf(calculation)
  const changes = new Map<number, Replacement>()
  for (const replacement of replacements) {
    const place = calculation.placeOf(replacement.replace)
    if (place !== undefined) changes.set(place, replacement)
  }
  return changes.size === 0 ? (values.at(-1) as number) : rework(values, steps, changes)
}

function rework(
  values: Float64Array,
  steps: readonly (Step | undefined)[],
  changes: ReadonlyMap<number, Replacement>,
): number {
  const now = values.slice()
  for (let place = Math.min(...changes.keys()); place < now.length; place += 1) {
    const step = steps[place]
    const isMoved = step?.places.some((below) => now[below] !== values[below])
    if (step !== undefined && isMoved) now[place] = step.rule(now, step.places, step.settings)
    const change = changes.get(place)
    if (change !== undefined) now[place] = change.estimate(now[place] as number)
  }
  return now.at(-1) as number
}
