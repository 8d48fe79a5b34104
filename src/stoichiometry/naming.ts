import type { Quantity } from '../quantity/index.js'
import type { Labels } from './given.js'

/** An amount of substance under its usual names. */
export function namedAmount(amount: Quantity<'amount'>, of: string, label = `amount of ${of}`): Quantity<'amount'> {
  return amount.named(amountNaming(of, label))
}

/** The usual names of an amount of substance. */
export function amountNaming(of: string, label = `amount of ${of}`): Labels {
  return { label, symbol: 'n', of, role: 'amount' }
}

/** The usual names of a mass. */
export function massNaming(of: string, label = `mass of ${of}`): Labels {
  return { label, symbol: 'm', of, role: 'mass' }
}
