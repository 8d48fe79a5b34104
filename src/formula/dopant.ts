import { kindAt, small } from './characters.js'
import { complain } from './complaint.js'
import { isElement } from './known-ions.js'
import type { Scan } from './scan.js'

/**
 * Behind a colon stands a part, as in `CaSO4:2H2O`; an element alone, with its charge or without, is a dopant whose amount is
 * missing, as in `ZnS:Ag` and `Y2O3:Eu^3+`.
 */
export function checkDopant(scan: Scan, colon: number, first: number): void {
  const part = scan.text.slice(colon + 1, scan.at).trim()
  const symbol = part.slice(0, kindAt(part, 1) === small ? 2 : 1)
  const isAlone = scan.chargeAt < 0 ? part === symbol : scan.places.length === first + 2
  if (!isAlone || !isElement(symbol)) return
  throw complain(scan, {
    code: 'formula/placeholder',
    start: colon,
    end: scan.at,
    says: 'is an element behind a colon: a dopant without its amount',
    expected: 'the amounts of all elements, as in Zn0.99Ag0.01S',
  })
}
