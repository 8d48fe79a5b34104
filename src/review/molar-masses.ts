import { type AtomicWeights, atomicWeight } from '../element/index.js'
import { attempt } from '../errors.js'
import { asDimension, type Quantity, weightedSum } from '../quantity/index.js'
import { type Calculation, isDivisor } from './calculation.js'
import type { SlipContext } from './context.js'
import { type AtomChange, type FormulaFacts, formulaFacts } from './formula-facts.js'
import type { Replacement } from './replacement.js'

type MolarMass = Quantity<'molarMass'>

/** A molar mass as a calculation uses it, wherever it does. */
export interface UsedMolarMass {
  /** Of what. */
  readonly of: string
  /** The quantities: one for each time that it was looked up. */
  readonly quantities: readonly MolarMass[]
  /** Whether a mass is divided by it, to give an amount. */
  readonly divides: boolean
  /** What its formula says; nothing where it is none. */
  readonly facts: FormulaFacts
}

/** What was found in a calculation, as long as somebody holds on to it. */
const known: WeakMap<Calculation, readonly UsedMolarMass[]> = /* @__PURE__ */ new WeakMap()

/** The molar masses of a calculation, each formula once. */
export function molarMassesOf(calculation: Calculation): readonly UsedMolarMass[] {
  const found = known.get(calculation) ?? collect(calculation)
  known.set(calculation, found)
  return found
}

function collect(calculation: Calculation): readonly UsedMolarMass[] {
  const byFormula = new Map<string, MolarMass[]>()
  for (const q of calculation.inRole('molar mass')) {
    if (q.dimension !== 'molarMass' || q.naming.of === undefined) continue
    const alike = byFormula.get(q.naming.of) ?? []
    byFormula.set(q.naming.of, [...alike, asDimension(q, 'molarMass')])
  }
  return [...byFormula].map(([of, quantities]) => ({
    of,
    quantities,
    divides: quantities.some((q) => isDivisor(calculation, q)),
    facts: formulaFacts(of) ?? { text: of, water: 0, branches: [] },
  }))
}

/** The molar mass with atoms more or fewer, wherever it is used; nothing where an atomic weight is missing. */
export function withAtoms(
  { quantities }: UsedMolarMass,
  atoms: AtomChange,
  { weights }: SlipContext,
): readonly Replacement[] {
  return quantities.flatMap((q) => replacementBy(q, atoms, weights))
}

function replacementBy(q: MolarMass, atoms: AtomChange, weights: AtomicWeights | undefined): readonly Replacement[] {
  const terms = attempt(() => [...atoms].map(([symbol, times]) => ({ times, of: weightIn(q, symbol, weights) })))
  if (!terms.ok) return []
  const size = q.unit === 'kg/mol' ? 1000 : 1
  const added = terms.value.reduce((total, { times, of }) => total + times * of.value.toNumber(), 0) / size
  return [
    {
      replace: q,
      with: (now) => asDimension(now, 'molarMass').plus(weightedSum(terms.value)).named(q.naming),
      estimate: (value) => value + added,
    },
  ]
}

/** The atomic weight that a molar mass was worked out with, or that of the table. */
function weightIn(q: MolarMass, symbol: string, weights: AtomicWeights | undefined): MolarMass {
  const own = q.operands.find(({ naming }) => naming.role === 'atomic weight' && naming.of === symbol)
  return own === undefined ? atomicWeight(symbol, weights) : asDimension(own, 'molarMass')
}
