import { SaltwrightError, showFound, unlessForged } from '../errors.js'
import type { Picture } from './picture.js'

/** Everything that stops a report from being written. */
export type ReportCode =
  | 'report/unknown-format'
  | 'report/not-a-plan'
  | 'report/not-an-assessment'
  | 'report/not-a-working'
  | 'report/not-a-review'
  | 'report/nothing-to-show'

/**
 * A report that cannot be written.
 *
 * @example
 * ```ts
 * import { quantity, working } from 'saltwright/quantity'
 * import { writeWorking } from 'saltwright/report'
 *
 * const lines = working(quantity('3.255 g'))
 * writeWorking(lines, 'papyrus' as never) // throws report/unknown-format
 * ```
 */
export class ReportError extends SaltwrightError<ReportCode> {}

/** A format that no writer knows. */
export function unknownFormat(found: unknown, known: readonly string[]): ReportError {
  return new ReportError({
    code: 'report/unknown-format',
    message: `${showFound(found)} is not a format that reports are written in.`,
    found: showFound(found),
    expected: known.join(', '),
  })
}

/** Something that there is no picture of. */
export function nothingToDraw(found: unknown, expected: string, cause?: unknown): ReportError {
  const details = { message: `${showFound(found)} cannot be drawn.`, found: showFound(found), expected }
  return new ReportError({ code: 'report/nothing-to-show', ...details }, cause)
}

/** Draws what may be forged: what cannot be drawn after all is refused as a whole. */
export function drawn(found: unknown, expected: string, draw: () => Picture): Picture {
  return unlessForged(draw, (cause) => nothingToDraw(found, expected, cause))
}
