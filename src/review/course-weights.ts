import { type AtomicWeights, atomicWeight } from '../element/index.js'
import { molarMass } from '../formula/index.js'
import { type Quantity, reconsider } from '../quantity/index.js'

/** The calculation with another table of atomic weights: one by one, and in molar masses that were put in as a number. */
export function withWeights(result: Quantity, weights: AtomicWeights | undefined): Quantity {
  if (weights === undefined) return result
  return reconsider(result, [
    {
      replace: { role: 'atomic weight' },
      with: (q) => (q.naming.of === undefined ? q : atomicWeight(q.naming.of, weights)),
    },
    { replace: isPutIn, with: (q) => molarMass(q.naming.of as string, { weights }) },
  ])
}

function isPutIn({ input, naming }: Quantity): boolean {
  return input !== undefined && naming.role === 'molar mass' && naming.of !== undefined
}
