import { unknownFormat } from './report-error.js'
import type { Sheet, SheetFormat } from './sheet.js'
import { sheetAsHtml } from './write-html.js'
import { sheetAsLatex } from './write-latex.js'
import { sheetAsMarkdown } from './write-markdown.js'
import { sheetAsText } from './write-text.js'

const writers: Readonly<Record<SheetFormat, (sheet: Sheet) => string>> = {
  text: sheetAsText,
  markdown: sheetAsMarkdown,
  html: sheetAsHtml,
  latex: sheetAsLatex,
}

/** Writes a sheet in one of the formats. */
export function writeSheet(sheet: Sheet, format: SheetFormat): string {
  const write = typeof format === 'string' && Object.hasOwn(writers, format) ? writers[format] : undefined
  if (write !== undefined) return write(sheet)
  throw unknownFormat(format, Object.keys(writers))
}
