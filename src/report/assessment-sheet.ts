import type { Assessment, UsedSupply } from '../preparation/index.js'
import { brief } from './brief.js'
import { findingLines } from './finding-lines.js'
import type { Block, Line, Sheet, SheetFormat } from './sheet.js'
import { writeSheet } from './write-sheet.js'

/**
 * Writes an assessment: what went in, what could have come out, what did, and what to look at.
 *
 * @param assessment - An assessment.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document).
 * @returns The sheet, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`.
 *
 * @example
 * ```ts
 * import { assessPreparation } from 'saltwright/preparation'
 * import { assessmentSheet } from 'saltwright/report'
 *
 * const assessment = assessPreparation(
 *   {
 *     format: 'saltwright/recipe@1',
 *     title: 'Zinc sulfate heptahydrate',
 *     product: 'ZnSO4·7H2O',
 *     scale: { of: 'ZnO', amount: '0.0400 mol' },
 *     stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *     supplies: [
 *       { form: 'solid', substance: 'ZnO' },
 *       { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *     ],
 *   },
 *   { format: 'saltwright/records@1', product: { gross: '20.317 g', tare: '11.204 g' } },
 * )
 * assessmentSheet(assessment).includes('9.113 g') // => true
 * ```
 */
export function assessmentSheet(assessment: Assessment, format: SheetFormat = 'text'): string {
  return writeSheet(assessmentSheetOf(assessment), format)
}

/** The assessment sheet apart from how it is written. */
export function assessmentSheetOf(assessment: Assessment): Sheet {
  const { title, bench, product, findings, atomicWeights } = assessment
  return {
    title,
    subtitle: [`Assessment${bench === undefined ? '' : ` of ${bench}`}: `, { formula: product.formula }],
    blocks: [
      { kind: 'heading', text: 'Used' },
      usedTable(assessment.used),
      { kind: 'heading', text: 'Yield' },
      yieldTable(assessment),
      ...(findings.length === 0
        ? []
        : ([
            { kind: 'heading', text: 'Look at' },
            { kind: 'notes', lines: findingLines(findings) },
          ] satisfies Block[])),
      { kind: 'heading', text: 'Origin' },
      { kind: 'notes', lines: [`Relative atomic masses: ${atomicWeights}.`, ...(assessment.records.notes ?? [])] },
    ],
  }
}

function usedTable(used: readonly UsedSupply[]): Block {
  return {
    kind: 'table',
    head: ['', 'used', 'amount', 'equivalents', ''],
    numeric: [1, 2, 3],
    rows: used.map(({ name, measure, amount, excess, recorded }) => [
      name,
      { quantity: brief(measure) },
      { quantity: brief(amount) },
      excess === undefined ? 'not needed' : { quantity: brief(excess.equivalents, 3) },
      recorded ? 'recorded' : 'as planned',
    ]),
  }
}

function yieldTable({ theoretical, actual, percentYield, correctedYield, limiting }: Assessment): Block {
  const rows: (readonly Line[])[] = [
    ['theoretical', { quantity: theoretical.mass }, { quantity: brief(theoretical.amount) }],
    ['obtained', { quantity: actual.mass }, { quantity: brief(actual.amount) }],
    [
      'percent yield',
      { quantity: percentYield },
      limiting.flatMap((formula, index): Line[] => [index === 0 ? 'of what ' : ' and ', { formula }]).flat() as Line,
    ],
  ]
  if (correctedYield !== undefined) rows.push(['corrected for purity', { quantity: correctedYield }, ''])
  return { kind: 'table', head: ['', 'mass', 'amount'], numeric: [1, 2], rows }
}
