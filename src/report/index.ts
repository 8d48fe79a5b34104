/**
 * Writing what the other topics worked out, as text, Markdown, HTML and LaTeX. Computes nothing.
 *
 * @module report
 */
export { assessmentSheet } from './assessment-sheet.js'
export { benchSheet } from './bench-sheet.js'
export { classCsv, preparationRoomSheet } from './class-sheet.js'
export { type ReportCode, ReportError } from './report-error.js'
export type { SheetFormat } from './sheet.js'
export { type WriteWorkingOptions, writeWorking } from './working.js'
