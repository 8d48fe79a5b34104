/** A cell of a table for spreadsheets. */
export type Cell = string | number

/**
 * Rows as comma-separated values by RFC 4180: CRLF at the end of each line, quotes where a cell needs them. Text that a
 * spreadsheet would run as a formula gets an apostrophe in front, as OWASP's notes on CSV injection advise.
 */
export function csvOf(rows: readonly (readonly Cell[])[]): string {
  return rows.map((row) => `${row.map(csvCell).join(',')}\r\n`).join('')
}

function csvCell(cell: Cell): string {
  if (typeof cell === 'number') return String(cell)
  const text = startsFormula(cell) ? `'${cell}` : cell
  return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
}

function startsFormula(text: string): boolean {
  return /^[=+\-@\t\r\n＝＋－＠]/.test(text) && !/^[+-]\d+(\.\d+)?(e[+-]?\d+)?$/i.test(text)
}
