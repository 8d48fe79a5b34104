import { symbolPlace } from '../element/symbols.js'
import { anions } from './tables/anions.js'
import { cations } from './tables/cations.js'
import { complexIons } from './tables/complex-ions.js'
import { oxidationRanges } from './tables/oxidation-ranges.js'

/** `SO4-2` for every ion of the tables. */
const known: ReadonlySet<string> = /* @__PURE__ */ listKnown()
const metals: ReadonlySet<string> = /* @__PURE__ */ listMetals()
/** Elements whose molecules gain an electron and stay together: `Cl2-`. */
const electronTakers: ReadonlySet<string> = /* @__PURE__ */ new Set(['H', 'D', 'T', 'F', 'Cl', 'Br', 'I'])
/** Elements whose molecules lose one, as in flames, discharges and between the stars: `N2+`, `C3+`. None is a cation by itself. */
const electronGivers: ReadonlySet<string> = /* @__PURE__ */ new Set([...electronTakers, 'N', 'O', 'C', 'S', 'P', 'Se'])

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
  return (direction > 0 ? electronGivers : electronTakers).has(symbol)
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
