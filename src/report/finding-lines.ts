import type { Finding } from '../preparation/index.js'
import { brief } from './brief.js'
import type { Line, Piece } from './sheet.js'

const words: Readonly<Record<Finding['severity'], string>> = {
  problem: 'Problem',
  doubt: 'To check',
  remark: 'Note',
}

/** Findings as lines, the gravest first, each with the numbers behind it. */
export function findingLines(findings: readonly Finding[]): readonly Line[] {
  const order = Object.keys(words)
  const sorted = [...findings].sort((a, b) => order.indexOf(a.severity) - order.indexOf(b.severity))
  return sorted.map(({ severity, message, numbers }) => [`${words[severity]}: ${message}`, ...numberPieces(numbers)])
}

/** The numbers behind a sentence, in brackets. */
export function numberPieces(numbers: Finding['numbers']): readonly Piece[] {
  const entries = Object.entries(numbers)
  if (entries.length === 0) return []
  const pieces = entries.flatMap(([name, quantity], index): Piece[] => [
    `${index === 0 ? '' : ', '}${spoken(name)} `,
    { quantity: brief(quantity) },
  ])
  return [' (', ...pieces, ')']
}

/** `percentYield` as `percent yield`. */
function spoken(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
}
