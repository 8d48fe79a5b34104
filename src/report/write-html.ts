import { escapeHtml } from '../display.js'
import { formatEquation } from '../equation/index.js'
import { formatFormula } from '../formula/index.js'
import { type Block, type Line, type Piece, piecesOf, quantityText, type Sheet, type Step } from './sheet.js'

/** A sheet as an HTML fragment without styles or scripts; all words escaped. */
export function sheetAsHtml({ title, subtitle, blocks }: Sheet): string {
  const head = `<h1>${escapeHtml(title)}</h1>\n<p>${lineAsHtml(subtitle)}</p>`
  return `<article>\n${[head, ...blocks.map(blockAsHtml)].join('\n')}\n</article>\n`
}

function lineAsHtml(line: Line): string {
  return piecesOf(line).map(pieceAsHtml).join('')
}

function pieceAsHtml(piece: Piece): string {
  if (typeof piece === 'string') return escapeHtml(piece)
  if ('formula' in piece) return formatFormula(piece.formula, 'html')
  if ('equation' in piece) return formatEquation(piece.equation, 'html')
  return escapeHtml(quantityText(piece))
}

function blockAsHtml(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `<h2>${escapeHtml(block.text)}</h2>`
    case 'steps':
      return `<ol>\n${block.steps.map(stepAsHtml).join('\n')}\n</ol>`
    case 'notes':
      return listOf(block.lines.map(lineAsHtml))
    case 'blanks':
      return listOf(block.fields.map(({ label, unit }) => `${escapeHtml(label)}: ______________ ${escapeHtml(unit)}`))
    default:
      return tableAsHtml(block)
  }
}

function listOf(items: readonly string[]): string {
  return `<ul>\n${items.map((item) => `<li>${item}</li>`).join('\n')}\n</ul>`
}

function stepAsHtml({ line, details }: Step): string {
  const inner = details.length === 0 ? '' : `\n${listOf(details.map(lineAsHtml))}`
  return `<li>${lineAsHtml(line)}${inner}</li>`
}

function tableAsHtml({ head, rows, numeric }: Extract<Block, { readonly kind: 'table' }>): string {
  const cell = (tag: 'td' | 'th', content: string, column: number): string =>
    `<${tag}${numeric.includes(column) ? ' align="right"' : ''}>${content}</${tag}>`
  const top = head.map((text, column) => cell('th', escapeHtml(text), column)).join('')
  const body = rows.map((row) => `<tr>${row.map((line, column) => cell('td', lineAsHtml(line), column)).join('')}</tr>`)
  return `<table>\n<thead><tr>${top}</tr></thead>\n<tbody>\n${body.join('\n')}\n</tbody>\n</table>`
}
