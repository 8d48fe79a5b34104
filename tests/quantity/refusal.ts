import { isSaltwrightError, type SaltwrightError } from '../../src/errors.js'

/** The error that a call is refused with; anything else that happens fails the test. */
export function refusal(call: () => unknown): SaltwrightError {
  try {
    call()
  } catch (error) {
    if (isSaltwrightError(error)) return error
    throw error
  }
  throw new Error('the call was not refused')
}
