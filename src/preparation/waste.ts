import { parseFormula } from '../formula/index.js'
import type { Fraction } from '../fraction.js'
import { exact, type Quantity, sum } from '../quantity/index.js'
import { exactFraction } from '../stoichiometry/exact-fraction.js'
import type { MetalWaste } from './class-type.js'
import type { Plan } from './plan-type.js'

/** Elements that are no metals, or not collected as metal waste: alkali metals go with the salt solutions. */
const otherElements: readonly string[] =
  /* @__PURE__ */ 'H D T He B C N O F Ne Si P S Cl Ar Ge As Se Br Kr Te I Xe At Rn Li Na K Rb Cs'.split(' ')

function isMetal(symbol: string): boolean {
  return !otherElements.includes(symbol)
}

/** What leaves of each metal, at most, over all benches. */
export function metalWaste(plans: readonly Plan[]): readonly MetalWaste[] {
  const metals = new Set(plans.flatMap((plan) => metalsIn(plan)))
  return [...metals].map((metal) => {
    const used = total(
      plans.flatMap(({ supplies }) => supplies.flatMap(({ substance, amount }) => atoms(amount, substance, metal))),
    )
    const inProduct = total(
      plans.flatMap(({ theoretical, product }) => atoms(theoretical.amount, product.formula, metal)),
    )
    return {
      metal,
      used: used.named({ symbol: 'n', of: metal, label: `${metal} that goes in` }),
      inProduct: inProduct.named({ symbol: 'n', of: metal, label: `${metal} in the product` }),
      inLiquor: used.minus(inProduct).named({ symbol: 'n', of: metal, label: `${metal} left in the liquors` }),
    }
  })
}

function metalsIn({ supplies }: Plan): readonly string[] {
  return supplies.flatMap(({ substance }) => [...parseFormula(substance).counts.keys()].filter(isMetal))
}

function atoms(amount: Quantity<'amount'>, substance: string, metal: string): readonly Quantity<'amount'>[] {
  const count = parseFormula(substance).counts.get(metal)
  return count === undefined ? [] : [timesCount(amount, count, metal, substance)]
}

function timesCount(amount: Quantity<'amount'>, count: Fraction, metal: string, substance: string): Quantity<'amount'> {
  if (count.numerator === count.denominator) return amount
  return amount.times(exactFraction(count, { label: `${metal} atoms in ${substance}` }))
}

function total(amounts: readonly Quantity<'amount'>[]): Quantity<'amount'> {
  return amounts.length === 0 ? exact('0 mol') : sum(amounts)
}
