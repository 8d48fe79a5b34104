import { type Contribution, isQuantity, type UncertaintyBudget, writeWithUncertainty } from '../quantity/index.js'
import { colours, numbers, type Picture, pictureOf } from './picture.js'
import { drawn, nothingToDraw } from './report-error.js'

/** More bars than these say nothing more. */
const most = 12

/**
 * Draws an uncertainty budget: how much each input contributes to the variance of the result, the largest first.
 *
 * @param budget - The budget, as `uncertaintyBudget` gives it.
 * @returns A Vega-Lite specification with at most twelve bars; smaller contributions are left out.
 * @throws {@link ReportError} `report/nothing-to-show` for anything but a budget with contributions.
 *
 * @example
 * ```ts
 * import { quantity, uncertaintyBudget } from 'saltwright/quantity'
 * import { uncertaintyPicture } from 'saltwright/report'
 *
 * const mass = quantity('3.9772(30) g', { label: 'mass' })
 * const volume = quantity('100.00(4) mL', { label: 'volume' })
 * uncertaintyPicture(uncertaintyBudget(mass.dividedBy(volume))).description
 * // => 'Shares of the variance of 0.039772(34) g/mL: mass 78 %; volume 22 %.'
 * ```
 */
export function uncertaintyPicture(budget: UncertaintyBudget): Picture {
  return drawn(budget, expected, () => pictureOfBudget(budget))
}

const expected = 'an uncertainty budget with at least one contribution, as uncertaintyBudget gives it'

function pictureOfBudget(budget: UncertaintyBudget): Picture {
  const contributions = contributionsOf(budget).slice(0, most)
  const rows = contributions.map(rowOf)
  const result = writeWithUncertainty(budget.quantity, { uncertainty: budget.standardUncertainty })
  const words = {
    title: 'Where the uncertainty comes from',
    subtitle: [`${budget.quantity.naming.label ?? 'result'}: ${result}`],
    description: `Shares of the variance of ${result}: ${rows.map(({ input, shown }) => `${input} ${shown}`).join('; ')}.`,
  }
  return pictureOf(words, { data: { values: rows }, ...bars })
}

function contributionsOf(budget: UncertaintyBudget): readonly Contribution[] {
  const contributions = Array.from(budget.contributions) // in which a hole is undefined
  const areShares = contributions.every(({ input, share }) => isQuantity(input) && Number.isFinite(share))
  if (contributions.length > 0 && areShares) return contributions
  throw nothingToDraw(budget, expected)
}

interface Row {
  readonly input: string
  readonly percent: number
  readonly shown: string
}

function rowOf({ input, share }: Contribution, index: number): Row {
  const percent = 100 * share
  return {
    input: input.naming.label ?? `input ${index + 1}`,
    percent,
    shown: `${percent.toFixed(percent < 1 ? 1 : 0)} %`,
  }
}

const y = { field: 'input', type: 'nominal', title: null, sort: null, axis: { labelLimit: 220 } } as const

const bars: object = {
  height: { step: 28 },
  layer: [
    {
      mark: { type: 'bar', height: 18, color: colours.blue },
      encoding: { x: numbers('percent', 'share of the variance, per cent'), y },
    },
    {
      mark: { type: 'text', align: 'left', dx: 5, fontSize: 12 },
      encoding: { x: numbers('percent', ''), y, text: { field: 'shown' } },
    },
  ],
}
