import { attempt } from '../errors.js'
import { anhydrous, type Formula, formulaOf } from '../formula/index.js'

/** What is asked of a formula at hand. */
export interface FormulaAtHand {
  /** The formula. */
  readonly text: string
  /** Water of crystallisation per formula unit. */
  readonly water: number
  /** The formula without that water. */
  readonly salt: string
  /** Its elements without that water, in order of the alphabet. */
  readonly elements: string
}

/** What was read of lists of formulas, as long as somebody holds on to them. */
const known: WeakMap<readonly string[], readonly FormulaAtHand[]> = /* @__PURE__ */ new WeakMap()

/** The formulas of a list that can be read, read once. */
export function formulasAtHand(formulas: readonly string[]): readonly FormulaAtHand[] {
  const found = known.get(formulas) ?? formulas.flatMap(formulaAtHand)
  known.set(formulas, found)
  return found
}

/** What is asked of a formula that a calculation uses: it usually stands in the list. */
export function formulaAmong(list: readonly FormulaAtHand[], text: string): FormulaAtHand | undefined {
  return list.find((formula) => formula.text === text) ?? formulaAtHand(text)[0]
}

/** A formula as a list of one, or of none where it cannot be read or does not say how much water it has. */
export function formulaAtHand(text: string): readonly FormulaAtHand[] {
  const read = attempt(() => {
    const formula = formulaOf(text)
    return { water: formula.hydration, dry: anhydrous(formula) }
  })
  if (!read.ok || read.value.water === null) return []
  const { water, dry } = read.value
  return [{ text, water: water.toNumber(), salt: dry.text, elements: elementsOf(dry) }]
}

function elementsOf({ counts }: Formula): string {
  return [...counts.keys()].sort().join(' ')
}
