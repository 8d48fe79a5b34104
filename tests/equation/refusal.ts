import { isSaltwrightError, type SaltwrightError } from '../../src/errors.js'

/** The error that a call is refused with; anything else that happens fails the test. */
export function refusal(call: () => unknown): SaltwrightError & { readonly basis?: readonly string[] | undefined } {
  try {
    call()
  } catch (error) {
    if (isSaltwrightError(error)) return error
    throw error
  }
  throw new Error('the call was not refused')
}

/** The text at the position of an error. */
export function pointedAt(text: string, { position }: SaltwrightError): string {
  return position === undefined ? 'nothing' : text.slice(position.start, position.end)
}
