import { formatEquation } from '../equation/index.js'
import { formatFormula } from '../formula/index.js'
import { type Block, type Line, type Piece, piecesOf, quantityText, type Sheet, type Step } from './sheet.js'

/** A sheet as Markdown with tables, as most renderers read them. */
export function sheetAsMarkdown({ title, subtitle, blocks }: Sheet): string {
  return `${[`# ${escaped(title)}`, lineAsMarkdown(subtitle), ...blocks.map(blockAsMarkdown)].join('\n\n')}\n`
}

/** A line as Markdown; formulas with small figures need no markup. */
export function lineAsMarkdown(line: Line): string {
  return piecesOf(line).map(pieceAsMarkdown).join('')
}

function pieceAsMarkdown(piece: Piece): string {
  if (typeof piece === 'string') return escaped(piece)
  if ('formula' in piece) return escaped(formatFormula(piece.formula, 'unicode'))
  if ('equation' in piece) return escaped(formatEquation(piece.equation, 'unicode'))
  return escaped(quantityText(piece))
}

/** Keeps words from being read as markup: a recipe may come from anywhere. */
function escaped(text: string): string {
  return text.replace(/[\\`*_{}[\]<>#|]/g, (character) => `\\${character}`).replace(/\s*\n\s*/g, ' ')
}

function blockAsMarkdown(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `## ${escaped(block.text)}`
    case 'steps':
      return block.steps.map(stepAsMarkdown).join('\n')
    case 'notes':
      return block.lines.map((line) => `- ${lineAsMarkdown(line)}`).join('\n')
    case 'blanks':
      return block.fields
        .map(({ label, unit }) => `- ${escaped(label)}: \\_\\_\\_\\_\\_\\_\\_\\_ ${escaped(unit)}`)
        .join('\n')
    default:
      return tableAsMarkdown(block)
  }
}

function stepAsMarkdown({ line, details }: Step, index: number): string {
  const number = `${index + 1}. `
  const indent = ' '.repeat(number.length)
  return [number + lineAsMarkdown(line), ...details.map((detail) => `${indent}- ${lineAsMarkdown(detail)}`)].join('\n')
}

function tableAsMarkdown({ head, rows, numeric }: Extract<Block, { readonly kind: 'table' }>): string {
  const rule = head.map((_, column) => (numeric.includes(column) ? '---:' : '---'))
  const lines = [head.map(escaped), rule, ...rows.map((row) => row.map(lineAsMarkdown))]
  return lines.map((cells) => `| ${cells.join(' | ')} |`).join('\n')
}
