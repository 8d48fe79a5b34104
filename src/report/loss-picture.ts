import type { LossLine } from '../product/index.js'
import { colours, numbers, type Picture, pictureOf } from './picture.js'
import { drawn, nothingToDraw } from './report-error.js'

/** What each kind of line is drawn in. */
const colourOf: Readonly<Record<LossLine['kind'], string>> = {
  calculated: colours.grey,
  measured: colours.green,
  estimate: colours.orange,
  remainder: colours.red,
}

/**
 * Draws a loss account: a bar for every line, in per cent of the theoretical yield, coloured by whether it is measured, estimated or
 * what remains.
 *
 * @param account - The lines, as `lossAccount` gives them or as an assessment carries them.
 * @returns A Vega-Lite specification.
 * @throws {@link ReportError} `report/nothing-to-show` for anything but a list of lines.
 *
 * @example
 * ```ts
 * import { lossAccount } from 'saltwright/product'
 * import { lossPicture } from 'saltwright/report'
 *
 * const account = lossAccount({ theoretical: '11.56 g', recovered: '7.412 g', leftInLiquor: '3.54 g' })
 * lossPicture(account).description
 * // => 'Of 11.56 g possible: recovered 7.412 g; left in liquor 3.54 g; washed away not known; unexplained 0.61 g.'
 * ```
 */
export function lossPicture(account: readonly LossLine[]): Picture {
  return drawn(account, expected, () => pictureOfLosses(account))
}

const expected = 'the lines of a loss account, as lossAccount gives them'

function pictureOfLosses(account: readonly LossLine[]): Picture {
  const [theoretical, ...parts] = linesOf(account)
  const rows = ordered(parts).map(rowOf)
  const words = {
    title: 'Where the theoretical yield went',
    subtitle: [`${theoretical?.mass} possible`],
    description: `Of ${theoretical?.mass} possible: ${rows.map(({ item, shown }) => `${item} ${shown}`).join('; ')}.`,
  }
  return pictureOf(words, { data: { values: rows }, ...bars })
}

function linesOf(account: readonly LossLine[]): readonly LossLine[] {
  const isAccount = Array.isArray(account) && account[0]?.item === 'theoretical'
  if (isAccount && account.every(isLine)) return account
  throw nothingToDraw(account, expected)
}

function isLine({ item, kind }: LossLine): boolean {
  return typeof item === 'string' && Object.hasOwn(colourOf, kind)
}

/** What was obtained comes first, what nobody can explain last. */
function ordered(parts: readonly LossLine[]): readonly LossLine[] {
  const recovered = parts.filter(({ item }) => item === 'recovered')
  return [...recovered, ...parts.filter(({ item }) => item !== 'recovered')]
}

function rowOf({ item, mass, share, kind }: LossLine): { readonly item: string; readonly shown: string } {
  const percent = share?.to('%').value.toNumber() ?? 0
  return { item, shown: mass?.toString() ?? 'not known', ...{ percent, kind: mass === undefined ? 'not known' : kind } }
}

const kinds: readonly LossLine['kind'][] = ['measured', 'estimate', 'remainder']

const y = { field: 'item', type: 'nominal', title: null, sort: null } as const

const bars: object = {
  height: { step: 34 },
  layer: [
    {
      mark: { type: 'bar', height: 22 },
      encoding: {
        x: numbers('percent', 'per cent of the theoretical yield', { scale: { domainMax: 100 } }),
        y,
        color: {
          field: 'kind',
          type: 'nominal',
          title: null,
          scale: { domain: kinds, range: kinds.map((kind) => colourOf[kind]) },
        },
      },
    },
    {
      mark: { type: 'text', align: 'left', dx: 5, fontSize: 12 },
      encoding: { x: numbers('percent', ''), y, text: { field: 'shown' } },
    },
  ],
}
