import { kindAt, runEnd } from './characters.js'
import { type Complaint, complain } from './complaint.js'
import type { FormulaError } from './formula-error.js'
import type { Scan } from './scan.js'

/** A count of zero. */
export function zeroCount(scan: Scan, start: number, end: number): FormulaError {
  const says = 'is a count of zero'
  return complain(scan, { code: 'formula/zero-count', start, end, says, expected: 'a count above zero' })
}

/** A count that begins with a zero. */
export function leadingZero(scan: Scan, start: number, end: number): FormulaError {
  const says = 'begins with the digit zero'
  return complain(scan, { code: 'formula/leading-zero', start, end, says, expected: 'a count without a leading zero' })
}

/** A fraction whose bottom is zero. */
export function dividesByZero(scan: Scan, start: number, end: number): FormulaError {
  const says = 'divides by zero'
  return complain(scan, { code: 'formula/bad-number', start, end, says, expected: 'a fraction such as 1/2' })
}

/** A number beyond what is read. */
export function outOfRange(scan: Scan, start: number, end: number): FormulaError {
  const expected = 'a count up to 1000000 with up to six decimals; multiplied out up to 1000000000'
  return complain(scan, { code: 'formula/count-out-of-range', start, end, says: 'is out of bounds', expected })
}

/** A comma between digits. */
export function decimalComma(scan: Scan, start: number, comma: number): FormulaError {
  const end = runEnd(scan.text, comma + 1, kindAt(scan.text, comma + 1))
  const [before, after] = [scan.text.slice(0, comma), scan.text.slice(comma + 1)]
  const complaint: Complaint = {
    code: 'formula/decimal-comma',
    start,
    end,
    says: 'has a decimal comma',
    expected: 'a decimal point',
    hint: `${before}.${after}?`,
  }
  return complain(scan, complaint)
}
