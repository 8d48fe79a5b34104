import { formatEquation } from '../equation/index.js'
import { formatFormula } from '../formula/index.js'
import { type Block, type Line, type Piece, piecesOf, quantityText, type Sheet, type Step } from './sheet.js'

/** A sheet as LaTeX for the body of a document; it needs no package beyond the standard ones. */
export function sheetAsLatex({ title, subtitle, blocks }: Sheet): string {
  return `${[`\\section*{${escapeLatex(title)}}`, lineAsLatex(subtitle), ...blocks.map(blockAsLatex)].join('\n\n')}\n`
}

const special: Readonly<Record<string, string>> = {
  '\\': '\\textbackslash{}',
  '~': '\\textasciitilde{}',
  '^': '\\textasciicircum{}',
  '°': '\\textdegree{}',
  '·': '\\textperiodcentered{}',
  '×': '\\texttimes{}',
}

/** Text that LaTeX sets as it is. */
export function escapeLatex(text: string): string {
  return text
    .replace(/\s*\n\s*/g, ' ')
    .replace(/[\\~^°·×]|[&%$#_{}]/g, (character) => special[character] ?? `\\${character}`)
}

function lineAsLatex(line: Line): string {
  return piecesOf(line).map(pieceAsLatex).join('')
}

function pieceAsLatex(piece: Piece): string {
  if (typeof piece === 'string') return escapeLatex(piece)
  if ('formula' in piece) return `$${formatFormula(piece.formula, 'latex')}$`
  if ('equation' in piece) return `$${formatEquation(piece.equation, 'latex')}$`
  return escapeLatex(quantityText(piece))
}

function blockAsLatex(block: Block): string {
  switch (block.kind) {
    case 'heading':
      return `\\subsection*{${escapeLatex(block.text)}}`
    case 'steps':
      return environment('enumerate', block.steps.map(stepAsLatex))
    case 'notes':
      return environment(
        'itemize',
        block.lines.map((line) => `\\item ${lineAsLatex(line)}`),
      )
    case 'blanks':
      return environment(
        'itemize',
        block.fields.map(
          ({ label, unit }) => `\\item ${escapeLatex(label)}: \\underline{\\hspace{4em}} ${escapeLatex(unit)}`,
        ),
      )
    default:
      return tableAsLatex(block)
  }
}

function environment(name: string, lines: readonly string[]): string {
  return [`\\begin{${name}}`, ...lines, `\\end{${name}}`].join('\n')
}

function stepAsLatex({ line, details }: Step): string {
  const inner =
    details.length === 0
      ? ''
      : `\n${environment(
          'itemize',
          details.map((detail) => `\\item ${lineAsLatex(detail)}`),
        )}`
  return `\\item ${lineAsLatex(line)}${inner}`
}

function tableAsLatex({ head, rows, numeric }: Extract<Block, { readonly kind: 'table' }>): string {
  const columns = head.map((_, column) => (numeric.includes(column) ? 'r' : 'l')).join('')
  const line = (cells: readonly string[]): string => `${cells.join(' & ')} \\\\`
  return [
    `\\begin{tabular}{${columns}}`,
    line(head.map(escapeLatex)),
    '\\hline',
    ...rows.map((row) => line(row.map(lineAsLatex))),
    '\\end{tabular}',
  ].join('\n')
}
