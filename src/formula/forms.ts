import type { DisplayForms } from '../display.js'
import { type FormulaStyle, styles } from './styles.js'
import { tokensOf } from './tokens.js'

/** How a notebook shows a formula. */
export function formsOf(text: string): DisplayForms {
  const tokens = tokensOf(text)
  const written = (style: FormulaStyle): string => styles[style].frame(tokens.map(styles[style].write).join(''))
  return { 'text/plain': written('unicode'), 'text/html': written('html'), 'text/latex': `$${written('latex')}$` }
}
