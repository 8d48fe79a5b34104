import { Decimal } from '../decimal.js'
import type { Quantity } from '../quantity/index.js'
import type { Reactant } from './limiting-reagent.js'
import { ratioBetween } from './mole-ratio.js'
import { namedAmount } from './naming.js'
import type { Participant } from './reaction.js'

/** How much of a reactant goes with all of the limiting reagent. */
export function amountUsed(reactant: Participant, limiting: Reactant): Quantity<'amount'> {
  const { formula } = reactant
  const used = reactant.key === limiting.key ? limiting.amount : limiting.amount.times(ratioBetween(reactant, limiting))
  return namedAmount(used, formula, `amount of ${formula} that reacts`)
}

/** How much of a product all of the limiting reagent makes. */
export function amountMade(product: Participant, limiting: Reactant): Quantity<'amount'> {
  const { formula } = product
  return namedAmount(limiting.amount.times(ratioBetween(product, limiting)), formula, `amount of ${formula} that forms`)
}

/** What is left: nothing where the two agree to thirty digits, so that a mole ratio such as 1/3 leaves no crumbs. */
export function remaining(amount: Quantity<'amount'>, used: Quantity<'amount'>): Quantity<'amount'> {
  const left = amount.minus(used)
  return left.value.abs().lte(amount.value.times(crumb)) ? amount.minus(amount) : left
}

const crumb: Decimal = /* @__PURE__ */ new Decimal('1e-30')
