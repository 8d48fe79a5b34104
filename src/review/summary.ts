import type { Summary } from '../display.js'
import type { Review } from './review.js'

/** What a notebook shows of a review. The right answer is not part of it: it can be asked for. */
export function reviewSummary({ stated, verdict, candidates, advice }: Review): Summary {
  return {
    title: `Review of ${stated}: ${verdict}`,
    rows: candidates.map(({ slips, reason }) => [slips.join(' and '), reason] as const),
    notes: [advice],
  }
}
