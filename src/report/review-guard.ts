import { showFound, unlessForged } from '../errors.js'
import { ReportError } from './report-error.js'

/** Writes a report of a review or of questions, after a look at whether it is one; a forged one that cannot be written is none. */
export function reviewReportOf<T extends { readonly format: string }, R>(
  format: T['format'],
  maker: string,
  document: T,
  write: (document: T) => R,
): R {
  const written = (): R => {
    if (document.format === format) return write(document)
    throw notAReview(document, format, maker)
  }
  return unlessForged(written, (cause) => notAReview(document, format, maker, cause))
}

function notAReview(found: unknown, format: string, maker: string, cause?: unknown): ReportError {
  return new ReportError(
    {
      code: 'report/not-a-review',
      message: `${showFound(found)} is not in the format ${format}, as ${maker} gives it.`,
      found: showFound(found),
      expected: `what ${maker} gives`,
    },
    cause,
  )
}
