import type { Quantity } from '../quantity/index.js'
import type { Finding } from './finding.js'
import { problemsError } from './read-json.js'
import type { ProductRecord } from './records.js'
import { reading } from './supply.js'

/** Mass by difference. Below zero where the two were swapped. */
export function netMass(gross: string, tare: string, of: string): Quantity<'mass'> {
  const filled = reading(gross, 'mass').named({ role: 'gross', symbol: 'm', label: `${of} with its vessel` })
  const empty = reading(tare, 'mass').named({ role: 'tare', symbol: 'm', label: 'empty vessel' })
  return filled.minus(empty).named({ role: 'net', symbol: 'm', of, label: `mass of ${of}` })
}

/** Actual over theoretical yield in per cent, as found. */
export function percentOf(actual: Quantity<'mass'>, theoretical: Quantity<'mass'>): Quantity<'ratio'> {
  return actual.dividedBy(theoretical).to('%').named({ role: 'percent yield', label: 'percent yield' })
}

/** The product as weighed, and what is to be said of the weighing. */
export function weighProduct(product: ProductRecord): {
  readonly mass: Quantity<'mass'>
  readonly findings: readonly Finding[]
} {
  const gross = product.series?.at(-1) ?? product.gross
  const findings = constancyFindings(product)
  const names = { role: 'actual yield', symbol: 'm', label: 'product obtained' } as const
  if (gross === undefined && product.mass !== undefined)
    return { mass: reading(product.mass, 'mass').named(names), findings }
  if (gross === undefined || product.tare === undefined) throw notWeighed()
  const mass = netMass(gross, product.tare, 'product').named(names)
  return { mass, findings: mass.value.lt(0) ? [...findings, grossBelowTare(['product'], mass)] : findings }
}

/** That a vessel weighs more empty than filled. */
export function grossBelowTare(path: Finding['path'], mass: Quantity<'mass'>): Finding {
  return {
    code: 'gross-below-tare',
    severity: 'problem',
    message:
      'The vessel weighs less filled than empty: gross and tare are probably swapped, or belong to different vessels.',
    numbers: { difference: mass },
    path,
  }
}

/** The last two weighings of a series against the criterion of the records. */
function constancyFindings({ series, constantWithin }: ProductRecord): readonly Finding[] {
  const [before, last] = (series ?? []).slice(-2)
  if (before === undefined || last === undefined || constantWithin === undefined) return []
  const change = reading(last, 'mass').minus(reading(before, 'mass'))
  const limit = reading(constantWithin, 'mass')
  if (change.value.abs().lte(limit.to(change.unit as 'g').value)) return []
  return [
    {
      code: 'not-constant-mass',
      severity: 'doubt',
      message: 'The last two weighings still differ by more than the criterion: the product was not yet dry.',
      numbers: { change, limit },
      path: ['product', 'series'],
    },
  ]
}

function notWeighed(): Error {
  return problemsError('records', [
    {
      code: 'preparation/nothing-weighed',
      message: 'product: nothing says how much product was obtained.',
      path: ['product'],
      found: 'no weighing',
      expected: 'gross and tare, or a series and a tare, or mass',
    },
  ])
}
