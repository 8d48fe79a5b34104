import type { Formula } from '../../src/formula/index.js'
import { formatFraction } from '../../src/fraction.js'

/** `K Al S2 O20 H24`: the atoms of a formula in one line, in order of appearance. */
export function atoms({ counts }: Pick<Formula, 'counts'>): string {
  return [...counts]
    .map(([symbol, count]) => symbol + (formatFraction(count) === '1' ? '' : formatFraction(count)))
    .join(' ')
}
