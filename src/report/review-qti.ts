import type { PosedQuestion, QuestionSet } from '../review/index.js'
import { reviewReportOf } from './review-guard.js'
import { choiceItem, entryItem, manifestOf, type QtiItem } from './review-qti-item.js'

/** How a question is answered in a learning management system. */
export interface QuestionPackageOptions {
  /** `"choice"` (unless said): the right answer among the wrong ones. `"entry"`: a number is typed in; questions for a substance stay a choice. */
  readonly interaction?: 'choice' | 'entry' | undefined
}

/** A file of a package. */
export interface PackageFile {
  /** Its path in the package. */
  readonly path: string
  /** What is in it. */
  readonly text: string
}

/**
 * Questions as a package by 1EdTech QTI 3.0, the open standard that learning management systems read: an item for each question, with
 * feedback on each wrong answer that a slip gives, and a manifest. Put the files into a zip archive as they are.
 *
 * @param set - The questions.
 * @param options - Whether a number is chosen or typed in.
 * @returns The files: the manifest first.
 * @throws {@link ReportError} `report/not-a-review` for anything but a set of questions.
 * @source 1EdTech, Question and Test Interoperability (QTI) 3.0, Best Practices and Implementation Guide, 2022.
 *
 * @example
 * ```ts
 * import { questionPackage } from 'saltwright/report'
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
 * questionPackage(set).map(({ path }) => path) // => ['imsmanifest.xml', 'items/question-1-1.xml']
 * ```
 */
export function questionPackage(set: QuestionSet, options: QuestionPackageOptions = {}): readonly PackageFile[] {
  return reviewReportOf('saltwright/question-set@1', 'questionSet', set, (document) => {
    const items = itemsOf(document)
    const isEntry = options?.interaction === 'entry'
    const files = items.map((item) => ({ path: `items/${item.identifier}.xml`, text: itemText(item, isEntry) }))
    return [{ path: 'imsmanifest.xml', text: manifestOf(items.map(({ identifier }) => identifier)) }, ...files]
  })
}

function itemText(item: QtiItem, isEntry: boolean): string {
  const { numeric } = item.question
  return isEntry && numeric !== undefined ? entryItem(item, numeric) : choiceItem(item)
}

function itemsOf({ title, variants }: QuestionSet): readonly QtiItem[] {
  return variants.flatMap(({ number, questions, equation, stages }) =>
    questions.map((question: PosedQuestion, index) => ({
      identifier: `question-${number}-${index + 1}`,
      title: `${title}: ${question.asks}`,
      equation,
      stages,
      question,
    })),
  )
}
