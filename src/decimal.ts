import { Decimal as Shared } from 'decimal.js'

/** A decimal number of the library: 34 significant digits, as in the IEEE 754 format decimal128. */
export type Decimal = Shared

/**
 * The library's own constructor. The one that decimal.js shares can be reconfigured by anybody; this one is ours alone.
 * Exponents are kept within what a double can hold, so that derivatives never overflow.
 */
export const Decimal: typeof Shared = /* @__PURE__ */ Shared.clone({
  defaults: true,
  precision: 34,
  rounding: 6, // half to even; ties in what is shown are decided where it is shown
  toExpNeg: -7,
  toExpPos: 21,
})
