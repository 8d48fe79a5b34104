import { symbolPlace } from '../element/symbols.js'
import { anions } from './tables/anions.js'
import { cations } from './tables/cations.js'
import { complexIons } from './tables/complex-ions.js'
import { oxidationRanges } from './tables/oxidation-ranges.js'

/** `SO4-2` for every ion of the tables. */
const known: ReadonlySet<string> = /* @__PURE__ */ listKnown()
const metals: ReadonlySet<string> = /* @__PURE__ */ listMetals()
/** Elements whose molecules lose or gain an electron and stay together: `N2+`, `Cl2-`. */
const diatomic: ReadonlySet<string> = /* @__PURE__ */ new Set(['H', 'D', 'T', 'N', 'O', 'F', 'Cl', 'Br', 'I'])

/** Whether the formula, with plain digits, and the charge are a common ion; of a single metal only its table rows count. */
export function isKnownIon(formula: string, charge: number): boolean {
  return known.has(formula + charge)
}

/** Whether the text is the symbol of a metal or metalloid, alone. */
export function isMetal(text: string): boolean {
  return metals.has(text)
}

/** Whether the text is the symbol of an element, alone. */
export function isElement(text: string): boolean {
  const isSymbol = text.length === 1 || (text.length === 2 && text.charAt(1) >= 'a')
  return isSymbol && symbolPlace(text.charCodeAt(0), text.charCodeAt(1) || 0) > 0
}

/** Whether molecules of this element alone are usual as ions of this sign. */
export function isMolecularIon(symbol: string, direction: number): boolean {
  return diatomic.has(symbol) && (direction > 0 || (symbol !== 'O' && symbol !== 'N'))
}

function listKnown(): Set<string> {
  const simple = [...anions, ...cations].map(({ formula, charge }) => formula + charge)
  return new Set([
    ...simple,
    ...complexIons.flatMap(({ formula, charges }) => charges.map((charge) => formula + charge)),
  ])
}

function listMetals(): Set<string> {
  return new Set([...oxidationRanges.flatMap(({ symbols }) => symbols.split(' ')), 'B', 'Si', 'As', 'Te'])
}
