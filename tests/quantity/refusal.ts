import { isSaltwrightError, type SaltwrightError } from '../../src/errors.js'

/** The error that a call is refused with; anything else that happens fails the test. */
export function refusal(call: () => unknown): SaltwrightError {
  try {
    call()
  } catch (error) {
    if (isSaltwrightError(error)) return complete(error)
    throw error
  }
  throw new Error('the call was not refused')
}

/** Whatever an error says, it says in words: no part of it is there and empty. (At the end of a text nothing is found.) */
function complete(error: SaltwrightError): SaltwrightError {
  const { message, expected, hint, position, problems = [] } = error
  const found = position === undefined ? error.found : undefined
  for (const [part, text] of Object.entries({ message, expected, hint, found })) {
    if (text?.trim() === '') throw new Error(`${error.code} has nothing to say for ${part}`)
  }
  if (/ {2}|^ | $/.test(expected ?? '')) throw new Error(`${error.code} lacks a word: "${expected}"`)
  for (const problem of problems) if (problem.message.trim() === '') throw new Error(`${problem.code} says nothing`)
  return error
}
