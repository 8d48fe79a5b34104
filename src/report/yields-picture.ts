import type { Assessment } from '../preparation/index.js'
import { isQuantity } from '../quantity/index.js'
import { coloured, colours, numbers, type Picture, pictureOf } from './picture.js'
import { drawn, nothingToDraw } from './report-error.js'

/**
 * Draws the percent yields of a class, a point per bench, with a line at 100 %. Nothing is cut off there.
 *
 * @param assessments - What was assessed, in the order in which it is drawn.
 * @returns A Vega-Lite specification. Benches with a finding that spoils the result are marked.
 * @throws {@link ReportError} `report/nothing-to-show` for anything but a list of at least one assessment.
 *
 * @example
 * ```ts
 * import { assessPreparation } from 'saltwright/preparation'
 * import { yieldsPicture } from 'saltwright/report'
 *
 * const recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * } as const
 * const benches = [{ bench: 'Bench 1', mass: '7.412 g' }, { bench: 'Bench 2', mass: '8.101 g' }]
 * const assessments = benches.map(({ bench, mass }) =>
 *   assessPreparation(recipe, { format: 'saltwright/records@1', bench, product: { mass } }),
 * )
 * yieldsPicture(assessments).description // => 'Percent yields: Bench 1 64.44 %; Bench 2 70.43 %.'
 * ```
 */
export function yieldsPicture(assessments: readonly Assessment[]): Picture {
  return drawn(assessments, expected, () => pictureOfYields(assessments))
}

const expected = 'a list of assessments, as assessPreparation gives them'

function pictureOfYields(assessments: readonly Assessment[]): Picture {
  const [first] = assessed(assessments)
  const rows = assessments.map(rowOf)
  const words = {
    title: 'Yields of the class',
    subtitle: [first.title],
    description: `Percent yields: ${rows.map(({ bench, shown }) => `${bench} ${shown}`).join('; ')}.`,
  }
  return pictureOf(words, { height: { step: 28 }, layer: [hundred, ...points(rows)] })
}

function assessed(assessments: readonly Assessment[]): readonly [Assessment, ...Assessment[]] {
  const list: readonly (Assessment | undefined)[] = Array.isArray(assessments) ? Array.from(assessments) : []
  const areAll = list.every(isAssessed) // a copy, in which a hole is undefined
  if (list.length > 0 && areAll) return assessments as readonly [Assessment, ...Assessment[]]
  throw nothingToDraw(assessments, expected)
}

function isAssessed(each: Assessment | undefined): boolean {
  return isQuantity(each?.percentYield) && ['string', 'undefined'].includes(typeof each?.bench)
}

interface Row {
  readonly bench: string
  readonly percent: number
  readonly shown: string
  readonly state: string
}

const states = ['no problem found', 'problem found'] as const

function rowOf({ bench, percentYield, findings }: Assessment, index: number): Row {
  const spoilt = findings.some(({ severity }) => severity === 'problem')
  return {
    bench: bench ?? `Bench ${index + 1}`,
    percent: percentYield.to('%').value.toNumber(),
    shown: percentYield.toString(),
    state: states[spoilt ? 1 : 0],
  }
}

const hundred: object = {
  data: { values: [{ percent: 100 }] },
  mark: { type: 'rule', color: colours.grey, strokeDash: [5, 4] },
  encoding: { x: numbers('percent', 'percent yield', { scale: { zero: true } }) },
}

function points(values: readonly Row[]): readonly object[] {
  const x = numbers('percent', 'percent yield')
  const y = { field: 'bench', type: 'nominal', title: null, sort: null }
  return [
    {
      data: { values },
      mark: { type: 'point', filled: true, size: 90 },
      encoding: {
        x,
        y,
        color: coloured('state', null, states, [colours.blue, colours.red]),
        shape: {
          field: 'state',
          type: 'nominal',
          title: null,
          scale: { domain: states, range: ['circle', 'diamond'] },
        },
      },
    },
    {
      data: { values },
      mark: { type: 'text', align: 'left', dx: 9, fontSize: 12 },
      encoding: { x, y, text: { field: 'shown' } },
    },
  ]
}
