import { exact, quantity, standardUncertainty } from '../../src/quantity/index.js'
import type { PublishedRow } from './check.js'
import { unroundedTo } from './written-as.js'

interface Instead {
  /** What ours is. */
  readonly ours: string
  /** The printed value again, from the slip or convention of the source, where that is known. */
  readonly explained?: () => string
}

const quadrature = (...components: readonly string[]): string =>
  unroundedTo(
    '0.01',
    standardUncertainty(quantity('0.0', { uncertainty: components.map((standard) => ({ standard })) })),
  )

/** By what is printed, for the cases that differ; printed values of theirs that are not here agree. */
const instead: Readonly<Record<string, Instead>> = {
  '0.13': { ours: '0.12', explained: () => quadrature('0.09', '0.09') },
  '0.00016': { ours: '0.00019' },
  '0.0016': { ours: '0.0019' },
  '1.70': { ours: '1.69' },
  '0.058': { ours: '0.059' },
  '0.36': {
    ours: '0.27',
    explained: () =>
      exact('12.0')
        .times(exact('0.02').plus(exact('0.01')))
        .toString(),
  },
  '12 ± 457': { ours: '0 ± 500' },
  '1 ± 1': { ours: '0.8 ± 1.0' },
}

/** How a printed value of a case that differs compares with ours. */
export function differenceOf(differs: string, printed: string): PublishedRow['agrees'] {
  const found = instead[printed]
  return found === undefined ? true : { ...found, differs }
}
