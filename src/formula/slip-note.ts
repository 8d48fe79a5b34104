import type { FormulaNote, FormulaNoteCode } from './formula.js'
import { plainText } from './plain-text.js'
import type { Token } from './scan.js'

/** A note on a stretch of the text, with what was probably meant. */
export function slipNote(
  code: FormulaNoteCode,
  message: string,
  start: number,
  end: number,
  meant: readonly Token[],
): FormulaNote {
  const suggestion = plainText(meant)
  return { code, message: `${message} Was ${suggestion} meant?`, position: { start, end }, suggestion }
}
