/**
 * Writing what the other topics worked out, as text, Markdown, HTML, LaTeX and as pictures. Computes nothing.
 *
 * @module report
 */
export { assessmentSheet } from './assessment-sheet.js'
export { benchSheet } from './bench-sheet.js'
export { uncertaintyPicture } from './budget-picture.js'
export { classCsv, preparationRoomSheet } from './class-sheet.js'
export { dryingPicture } from './drying-picture.js'
export { lossPicture } from './loss-picture.js'
export type { Picture } from './picture.js'
export { type ReportCode, ReportError } from './report-error.js'
export { classReviewCsv, classReviewSheet } from './review-class-sheet.js'
export { type PackageFile, type QuestionPackageOptions, questionPackage } from './review-qti.js'
export { type QuestionSheetOptions, questionSheet } from './review-questions.js'
export { type ReviewSheetOptions, reviewSheet } from './review-sheet.js'
export type { SheetFormat } from './sheet.js'
export { type CooledBatch, solubilityPicture } from './solubility-picture.js'
export { type WriteWorkingOptions, writeWorking } from './working.js'
export { yieldsPicture } from './yields-picture.js'
