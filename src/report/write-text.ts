import { formatEquation } from '../equation/index.js'
import { formatFormula } from '../formula/index.js'
import { type Block, type Line, type Piece, piecesOf, quantityText, type Sheet, type Step } from './sheet.js'

/** The width that sentences are wrapped to. */
const width = 78

/** A sheet as aligned plain text, in characters of one width each. */
export function sheetAsText({ title, subtitle, blocks }: Sheet): string {
  const head = [
    title,
    lineAsText(subtitle),
    '='.repeat(Math.min(width, Math.max(title.length, lineAsText(subtitle).length))),
  ]
  return `${[...head, ...blocks.flatMap((block) => blockAsText(block))].join('\n')}\n`
}

/** A line as plain text, formulas with small figures. */
export function lineAsText(line: Line): string {
  return piecesOf(line).map(pieceAsText).join('')
}

function pieceAsText(piece: Piece): string {
  if (typeof piece === 'string') return piece
  if ('formula' in piece) return formatFormula(piece.formula, 'unicode')
  if ('equation' in piece) return formatEquation(piece.equation, 'unicode')
  return quantityText(piece)
}

function blockAsText(block: Block): readonly string[] {
  switch (block.kind) {
    case 'heading':
      return ['', block.text, '-'.repeat(block.text.length)]
    case 'steps':
      return block.steps.flatMap(stepAsText)
    case 'notes':
      return block.lines.flatMap((line) => wrapped(lineAsText(line), '- ', '  '))
    case 'blanks':
      return blanksAsText(block.fields)
    default:
      return tableAsText(block)
  }
}

function stepAsText({ line, details }: Step, index: number): readonly string[] {
  const number = `${index + 1}. `
  const indent = ' '.repeat(number.length)
  return [
    ...wrapped(lineAsText(line), number, indent),
    ...details.flatMap((detail) => wrapped(lineAsText(detail), indent, indent)),
  ]
}

function blanksAsText(fields: Extract<Block, { readonly kind: 'blanks' }>['fields']): readonly string[] {
  const longest = fields.reduce((most, { label }) => Math.max(most, label.length), 0)
  return fields.map(({ label, unit }) => `${label.padEnd(longest)}  ______________ ${unit}`)
}

function tableAsText({ head, rows, numeric }: Extract<Block, { readonly kind: 'table' }>): readonly string[] {
  const cells = [head, ...rows.map((row) => row.map(lineAsText))]
  const widths = head.map((_, column) =>
    cells.reduce((most, row) => Math.max(most, lengthOf(row[column] as string)), 0),
  )
  return cells.map((row) =>
    row
      .map((cell, column) => pad(cell, widths[column] as number, numeric.includes(column)))
      .join('  ')
      .trimEnd(),
  )
}

/** Characters, not code units: subscripts and dots take one place each. */
function lengthOf(text: string): number {
  return [...text].length
}

function pad(cell: string, size: number, toTheRight: boolean): string {
  const space = ' '.repeat(size - lengthOf(cell))
  return toTheRight ? space + cell : cell + space
}

function wrapped(text: string, first: string, rest: string): readonly string[] {
  const lines: string[] = []
  let line = first
  for (const word of text.split(' ')) {
    if (line !== first && lengthOf(line) + 1 + lengthOf(word) > width) {
      lines.push(line)
      line = rest
    }
    line += line === first || line === rest ? word : ` ${word}`
  }
  return [...lines, line]
}
