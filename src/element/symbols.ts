import { elements, namedIsotopes } from './elements.js'

/** Every symbol that stands in a formula: the 118 elements in order of atomic number, then D and T. */
export const symbols: readonly string[] = /* @__PURE__ */ listSymbols()

const places = /* @__PURE__ */ placeSymbols()

/**
 * The place of a symbol in {@link symbols}, counted from 1: an atomic number, or one of the two that follow for D and T.
 *
 * @param first - Character code of a capital letter.
 * @param second - Character code of a small letter, or 0 for a symbol of one letter.
 * @returns The place; 0 where there is no such symbol.
 */
export function symbolPlace(first: number, second: number): number {
  return places[slot(first, second)] ?? 0
}

function listSymbols(): string[] {
  return [...elements, ...namedIsotopes].map(({ symbol }) => symbol)
}

/** A row of 27 for each capital: alone, then followed by a to z. */
function placeSymbols(): Uint8Array {
  const table = new Uint8Array(26 * 27)
  for (const [index, symbol] of symbols.entries()) {
    table[slot(symbol.charCodeAt(0), symbol.charCodeAt(1) || 0)] = index + 1
  }
  return table
}

function slot(capital: number, small: number): number {
  return (capital - 65) * 27 + (small === 0 ? 0 : small - 96)
}
