import { severityWords } from '../preparation/finding.js'
import type { Finding } from '../preparation/index.js'
import type { Quantity } from '../quantity/index.js'
import { brief, briefEquivalents } from './brief.js'
import type { Line, Piece } from './sheet.js'

/** With how many figures a number is shown. */
type Show = (q: Quantity) => Quantity

/** Findings as lines, the gravest first, each with the numbers behind it. */
export function findingLines(findings: readonly Finding[], show: Show = brief): readonly Line[] {
  const order = Object.keys(severityWords)
  const sorted = [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
  return sorted.map(({ severity, message, numbers }) => [
    `${severityWords[severity]}: ${message}`,
    ...numberPieces(numbers, show),
  ])
}

/** The numbers behind a sentence, in brackets; as the rest of the sheet shows them. */
export function numberPieces(numbers: Finding['numbers'], show: Show): readonly Piece[] {
  const entries = Object.entries(numbers)
  if (entries.length === 0) return []
  const pieces = entries.flatMap(([name, quantity], index): Piece[] => [
    `${index === 0 ? '' : ', '}${spoken(name)} `,
    { quantity: name === 'equivalents' ? briefEquivalents(quantity) : show(quantity) },
  ])
  return [' (', ...pieces, ')']
}

/** `percentYield` as `percent yield`. */
function spoken(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
}
