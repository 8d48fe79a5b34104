import { showFound } from '../errors.js'
import { ElementError } from './element-error.js'
import { type ElementInfo, elements, namedIsotopes } from './elements.js'

/**
 * Number, symbol and name of an element, or of deuterium (D) and tritium (T).
 *
 * @param symbol - A symbol, exact in its case: Co is cobalt, CO is not a symbol.
 * @returns The element.
 * @throws {@link ElementError} `element/unknown-symbol`.
 * @source Prohaska T. et al., Pure Appl. Chem. 2022, 94(5), 573-600, doi:10.1515/pac-2019-0603, Table 1.
 *
 * @example
 * ```ts
 * import { elementInfo } from 'saltwright/element'
 *
 * elementInfo('Zn') // => { number: 30, symbol: 'Zn', name: 'zinc' }
 * elementInfo('ZN') // throws element/unknown-symbol
 * ```
 */
export function elementInfo(symbol: string): ElementInfo {
  const element = find((known) => known.symbol === symbol)
  if (element === undefined) throw unknownSymbol(symbol)
  return element
}

/** Whether a text is a symbol that stands in formulas. */
export function isElementSymbol(symbol: unknown): symbol is string {
  return find((known) => known.symbol === symbol) !== undefined
}

function find(matches: (element: ElementInfo) => boolean): ElementInfo | undefined {
  return elements.find(matches) ?? namedIsotopes.find(matches)
}

/** A symbol that is none. */
export function unknownSymbol(found: unknown): ElementError {
  const lower = String(typeof found === 'string' ? found : '')
    .trim()
    .toLowerCase()
  const meant = find(({ symbol, name }) => symbol.toLowerCase() === lower || name === lower)
  return new ElementError({
    code: 'element/unknown-symbol',
    message: `${showFound(found)} is not the symbol of an element.`,
    found: showFound(found),
    expected: 'the symbol of an element: "Cu"',
    hint: meant === undefined ? undefined : `${meant.symbol}?`,
  })
}
