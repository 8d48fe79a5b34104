import { type ConstantMass, constantMass, type MassSeries } from '../product/index.js'
import { asDimension, isQuantity, type Quantity, quantity } from '../quantity/index.js'
import { colours, numbers, type Picture, pictureOf } from './picture.js'

/**
 * Draws the weighings while a product dried, with the band in which two successive ones count as the same.
 *
 * @param series - The weighings in their order, and the criterion, as for `constantMass`.
 * @returns A Vega-Lite specification. The band lies around the last weighing but one.
 * @throws {@link ProductError} `product/too-few-weighings` and the other codes of `constantMass`.
 *
 * @example
 * ```ts
 * import { dryingPicture } from 'saltwright/report'
 *
 * const weighings = ['18.771 g', '18.618 g', '18.616 g'] as const
 * dryingPicture({ weighings, criterion: 'two-milligrams' }).description
 * // => 'Weighings: 18.771 g, 18.618 g, 18.616 g. The last two differ by 0.002 g, allowed is 2 mg: constant.'
 * ```
 */
export function dryingPicture(series: MassSeries): Picture {
  const judged = constantMass(series)
  const masses = series.weighings.map(massOf)
  const rows = masses.map((mass, index) => ({ weighing: index + 1, gram: gramsOf(mass), shown: mass.toString() }))
  return pictureOf(words(judged, rows.map(({ shown }) => shown).join(', ')), {
    height: 260,
    layer: [bandOf(masses, judged), ...weighings(rows)],
  })
}

function words(judged: ConstantMass, shown: string): Parameters<typeof pictureOf>[0] {
  const { reached, limit, changes, criterion } = judged
  const size = sizeOf(changes.slice(-1))
  const verdict = reached ? 'constant' : `not constant, still ${judged.trend}`
  return {
    title: reached ? 'Dried to constant mass' : 'Not yet at constant mass',
    subtitle: [`Two weighings within ${limit}: ${criterion.source}`],
    description: `Weighings: ${shown}. The last two differ by ${size}, allowed is ${limit}: ${verdict}.`,
  }
}

/** The size of a change, without its sign. */
function sizeOf(changes: readonly Quantity<'mass'>[]): string {
  const shown = changes.join()
  return shown.startsWith('-') ? shown.slice(1) : shown
}

function massOf(given: MassSeries['weighings'][number]): Quantity<'mass'> {
  return isQuantity(given) ? given : asDimension(quantity(given as string), 'mass')
}

function gramsOf(mass: Quantity<'mass'>): number {
  return mass.to('g').value.toNumber()
}

function bandOf(masses: readonly Quantity<'mass'>[], { limit }: ConstantMass): object {
  const [centre] = masses.slice(-2) as [Quantity<'mass'>]
  const band = { from: gramsOf(centre.minus(limit)), to: gramsOf(centre.plus(limit)) }
  return {
    data: { values: [band] },
    mark: { type: 'rect', color: colours.green, opacity: 0.25 },
    encoding: { y: numbers('from', 'mass, g', { scale: { zero: false } }), y2: { field: 'to' } },
  }
}

function weighings(values: readonly object[]): readonly object[] {
  const x = { field: 'weighing', type: 'ordinal', title: 'weighing', axis: { labelAngle: 0 } }
  const y = numbers('gram', 'mass, g', { scale: { zero: false } })
  return [
    {
      data: { values },
      mark: { type: 'line', color: colours.blue, point: { color: colours.blue, size: 60 } },
      encoding: { x, y },
    },
    {
      data: { values },
      mark: { type: 'text', align: 'left', dx: 8, dy: -8, fontSize: 12 },
      encoding: { x, y, text: { field: 'shown' } },
    },
  ]
}
