import type { PosedQuestion, QuestionSet, QuestionVariant } from '../review/index.js'
import { reviewReportOf } from './review-guard.js'
import type { Block, Line, Piece, Sheet, SheetFormat, Step } from './sheet.js'
import { stageLine } from './stage-notes.js'
import { writeWorking } from './working.js'
import { writeSheet } from './write-sheet.js'

/** What is written of questions. */
export interface QuestionSheetOptions {
  /** `"hidden"` (unless said): the questions alone. `"shown"`: with answers, wrong answers with their slips, and worked solutions. */
  readonly answers?: 'hidden' | 'shown' | undefined
}

/**
 * Writes questions on a recipe, a sheet for each variant; with answers and worked solutions for whoever teaches.
 *
 * @param set - The questions.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (fragments, escaped) or `"latex"` (for the body of a document that uses
 *   amsmath).
 * @param options - Whether answers are shown.
 * @returns The sheets one after another, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`; `report/not-a-review` for anything but a set of questions.
 *
 * @example
 * ```ts
 * import { questionSheet } from 'saltwright/report'
 * import { questionSet } from 'saltwright/review'
 *
 * const set = questionSet(
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
 *   { seed: 1, questions: ['theoretical-yield'] },
 * )
 * questionSheet(set).includes('11.502 g') // => false
 * questionSheet(set, 'text', { answers: 'shown' }).includes('11.502 g') // => true
 * ```
 */
export function questionSheet(
  set: QuestionSet,
  format: SheetFormat = 'text',
  options: QuestionSheetOptions = {},
): string {
  return reviewReportOf('saltwright/question-set@1', 'questionSet', set, ({ title, variants }) =>
    variants.map((variant) => variantText(title, variant, format, options?.answers === 'shown')).join('\n'),
  )
}

function variantText(title: string, variant: QuestionVariant, format: SheetFormat, isShown: boolean): string {
  const questions = writeSheet(questionsOf(title, variant), format)
  if (!isShown) return questions
  return [questions, ...variant.questions.map((question, index) => solution(question, index, format))].join('\n')
}

function questionsOf(title: string, { number, equation, stages, questions }: QuestionVariant): Sheet {
  return {
    title,
    subtitle: [`Questions, variant ${number}: `, { equation }],
    blocks: [...stageBlocks(stages), { kind: 'steps', steps: questions.map(stepOf) }],
  }
}

/** The stages, where there are several: what goes into which can only be told by them. */
function stageBlocks(stages: QuestionVariant['stages']): readonly Block[] {
  if (stages.length < 2) return []
  return [
    { kind: 'heading', text: 'Stages' },
    { kind: 'notes', lines: stages.map(stageLine) },
    { kind: 'heading', text: 'Questions' },
  ]
}

function stepOf({ asks, given }: PosedQuestion): Step {
  return { line: asks, details: given.length === 0 ? [] : [givenLine(given)] }
}

function givenLine(given: PosedQuestion['given']): Line {
  const pieces = given.flatMap(({ label, quantity }, index): Piece[] => [
    `${index === 0 ? 'Given: ' : '; '}${label} `,
    { quantity },
  ])
  return [...pieces, '.']
}

/** The answer to a question, how it is worked out, and what slips give. */
function solution({ asks, answer, working, distractors }: PosedQuestion, index: number, format: SheetFormat): string {
  const lines = distractors.map(({ text, slip }) => (slip === undefined ? text : `${text}: ${slip}`))
  const sheet: Sheet = {
    title: `Answer ${index + 1}: ${answer}`,
    subtitle: asks,
    blocks: lines.length === 0 ? [] : [{ kind: 'notes', lines }],
  }
  return working === undefined
    ? writeSheet(sheet, format)
    : `${writeSheet(sheet, format)}\n${writeWorking(working, format)}`
}
