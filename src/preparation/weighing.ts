import { attempt, type ErrorDetails } from '../errors.js'
import { type ConstantMass, constantMass, netMass, type Weighing } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import type { Finding } from './finding.js'
import { type Path, problem } from './problem.js'
import { problemsError, writePath } from './read-json.js'
import type { ConstancyRecord, ProductRecord, VesselRecord } from './records.js'
import { chosen, reading } from './supply.js'

/** The product as weighed. */
export interface ProductWeighing {
  /** Its mass. */
  readonly mass: Quantity<'mass'>
  /** How the series came to rest, where there is one and the records say when it counts as constant. */
  readonly constancy: ConstantMass | undefined
  /** What is to be said of the weighing. */
  readonly findings: readonly Finding[]
}

/** The product as weighed, and what is to be said of the weighing. */
export function weighProduct(record: ProductRecord): ProductWeighing {
  const mass = massOf(record).named({ role: 'actual yield', symbol: 'm', label: 'product obtained' })
  const constancy = constancyOf(record, mass)
  const below = mass.value.lt(0) ? [grossBelowTare(['product'], mass)] : []
  return { mass, constancy, findings: [...below, ...constancyFindings(constancy)] }
}

function massOf({ mass, gross, series, tare, vessels }: ProductRecord): Quantity<'mass'> {
  const ways = [mass && 'mass', vessels && 'vessels', tare && series && 'series', tare && gross && 'gross'].filter(
    (way) => way !== undefined,
  )
  if (ways.length > 1) throw problemsError('records', [weighedTwice(['product'], ways)])
  if (vessels !== undefined) return netMass(vessels.map((vessel) => weighingOf(vessel)))
  const last = series?.at(-1) ?? gross
  if (last !== undefined && tare !== undefined) return netMass(weighingOf({ gross: last, tare }))
  if (mass !== undefined) return reading(mass, 'mass')
  throw notWeighed()
}

/** A weighing of the records as readings. */
export function weighingOf({ gross, tare }: VesselRecord, of = 'product'): Weighing {
  const empty = typeof tare === 'string' ? reading(tare, 'mass') : tare.map((part) => reading(part, 'mass'))
  return { gross: reading(gross, 'mass'), tare: empty, of }
}

function constancyOf(record: ProductRecord, obtained: Quantity<'mass'>): ConstantMass | undefined {
  const { series, constancy } = record
  if (series === undefined || constancy === undefined) return undefined
  const weighings = series.map((mass) => reading(mass, 'mass'))
  const judged = attempt(() =>
    constantMass({ weighings, criterion: criterionOf(constancy), taken: takenOf(record, obtained) }),
  )
  return judged.ok ? judged.value : undefined // nobody can say of one weighing, nor of nothing per gram
}

/** The substance at the first weighing, without its vessel; nothing where the vessel weighs more empty. */
function takenOf({ series, tare }: ProductRecord, obtained: Quantity<'mass'>): Quantity<'mass'> | undefined {
  const [gross] = series as readonly [string]
  const taken = tare === undefined ? obtained : netMass(weighingOf({ gross, tare }))
  return taken.value.gt(0) ? taken : undefined
}

function criterionOf(constancy: ConstancyRecord): Parameters<typeof constantMass>[0]['criterion'] {
  if (typeof constancy === 'string') return constancy
  return { within: reading(constancy.within, 'mass'), source: 'The records' }
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

function constancyFindings(constancy: ConstantMass | undefined): readonly Finding[] {
  if (constancy === undefined) return []
  const { reached, changes, limit, trend, mass } = constancy
  const path = ['product', 'series']
  if (!reached)
    return [
      {
        code: 'not-constant-mass',
        severity: 'doubt',
        message: `The last two weighings still differ by more than the criterion allows; the series is ${trend}.`,
        numbers: { change: changes.at(-1) as Quantity<'mass'>, limit },
        path,
      },
    ]
  const step = stepOf(mass)
  if (step.compare(limit) <= 0) return []
  return [
    {
      code: 'criterion-below-readability',
      severity: 'doubt',
      message: `The balance shows steps of ${step}, so it cannot tell whether two weighings agree to ${limit}.`,
      numbers: { step, limit },
      path,
    },
  ]
}

/** The step between two readings that were written to the same place. */
function stepOf({ place, unit }: Quantity<'mass'>): Quantity<'mass'> {
  return chosen(`1e${place} ${unit}`, 'mass')
}

/** More than one way of saying a mass: nobody can tell which counts. */
export function weighedTwice(path: Path, ways: readonly string[]): ErrorDetails {
  const found = ways.join(', ')
  return problem(
    'preparation/weighed-twice',
    path,
    `${writePath(path)}: it is weighed in several ways.`,
    found,
    'one of them',
  )
}

function notWeighed(): Error {
  return problemsError('records', [
    {
      code: 'preparation/nothing-weighed',
      message: 'product: nothing says how much product was obtained.',
      path: ['product'],
      found: 'no weighing',
      expected: 'gross and tare, a series and a tare, vessels, or mass',
    },
  ])
}
