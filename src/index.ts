/**
 * The arithmetic of preparing salts from aqueous solution: every topic through one door.
 *
 * @module saltwright
 */
export { type ErrorDetails, isSaltwrightError, type Outcome, SaltwrightError, type Span } from './errors.js'
