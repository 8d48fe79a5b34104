import type { Assessment, UsedSupply } from '../preparation/index.js'
import { buoyancyIgnored, type Explanation, type LossLine } from '../product/index.js'
import { asKnown, brief, briefEquivalents } from './brief.js'
import { findingLines, numberPieces } from './finding-lines.js'
import { assessmentKind, reportOf } from './guard.js'
import { nameAmong, namesOf } from './name-of.js'
import type { Block, Line, Sheet, SheetFormat } from './sheet.js'
import { writeSheet } from './write-sheet.js'

/**
 * Writes an assessment: what went in, what could have come out, what did, and what to look at.
 *
 * @param assessment - An assessment.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document).
 * @returns The sheet, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`; `report/not-an-assessment` for anything but an assessment.
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
  return reportOf(assessmentKind, assessment, () => writeSheet(assessmentSheetOf(assessment), format))
}

/** The assessment sheet apart from how it is written. */
function assessmentSheetOf(assessment: Assessment): Sheet {
  const { title, bench, product, findings, explanations, atomicWeights, records } = assessment
  return {
    title,
    subtitle: [`Assessment${bench === undefined ? '' : ` of ${bench}`}: `, { formula: product.formula }],
    blocks: [
      { kind: 'heading', text: 'Used' },
      usedTable(assessment.used),
      { kind: 'heading', text: 'Yield' },
      yieldTable(assessment),
      { kind: 'notes', lines: [basisLine(assessment)] },
      { kind: 'heading', text: 'Where it went' },
      lossTable(assessment.losses),
      ...notesUnder('Look at', findingLines(findings, asKnown)),
      ...notesUnder('What would explain it', explanations.map(explanationLine)),
      ...notesUnder('Origin', [`Relative atomic masses: ${atomicWeights}.`, buoyancyIgnored, ...(records.notes ?? [])]),
    ],
  }
}

function notesUnder(heading: string, lines: readonly Line[]): readonly Block[] {
  if (lines.length === 0) return []
  return [
    { kind: 'heading', text: heading },
    { kind: 'notes', lines },
  ]
}

function usedTable(used: readonly UsedSupply[]): Block {
  return {
    kind: 'table',
    head: ['', 'used', 'amount', 'equivalents', ''],
    numeric: [1, 2, 3],
    rows: used.map((supply) => {
      const { measure, amount, excess, recorded } = supply
      const shown = recorded ? asKnown : brief
      return [
        nameAmong(supply, used),
        { quantity: shown(measure) },
        { quantity: shown(amount) },
        excess === undefined ? 'not needed' : { quantity: briefEquivalents(excess.equivalents) },
        recorded ? 'recorded' : 'as planned',
      ]
    }),
  }
}

function yieldTable({ theoretical, actual, percentYield, correctedYield }: Assessment): Block {
  const rows: (readonly Line[])[] = [
    ['theoretical', { quantity: asKnown(theoretical.mass) }, { quantity: asKnown(theoretical.amount) }],
    ['obtained', { quantity: actual.mass }, { quantity: asKnown(actual.amount) }],
    ['percent yield', { quantity: asKnown(percentYield) }, ''],
  ]
  if (correctedYield !== undefined) rows.push(['corrected for purity', { quantity: asKnown(correctedYield) }, ''])
  return { kind: 'table', head: ['', 'mass', 'amount'], numeric: [1, 2], rows }
}

/** From what the theoretical yield follows. */
function basisLine({ used, limiting }: Assessment): Line {
  return ['The theoretical yield follows from ', ...namesOf(used, limiting), '.']
}

/** The theoretical yield, what became of it, and what nobody can account for. */
function lossTable(losses: readonly LossLine[]): Block {
  return {
    kind: 'table',
    head: ['', 'mass', 'of the theoretical yield', ''],
    numeric: [1, 2],
    rows: losses.map(({ item, mass, share, kind }) => [
      item,
      mass === undefined ? 'not known' : { quantity: asKnown(mass) },
      share === undefined ? '' : { quantity: asKnown(share) },
      kind === 'estimate' && mass !== undefined ? 'estimate' : '',
    ]),
  }
}

function explanationLine({ support, message, numbers }: Explanation): Line {
  return [
    `${support === 'supported' ? 'The numbers speak for it' : 'Possible'}: ${message}`,
    ...numberPieces(numbers, asKnown),
  ]
}
