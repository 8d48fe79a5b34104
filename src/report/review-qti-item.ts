import { escapeHtml } from '../display.js'
import { type Equation, formatEquation } from '../equation/index.js'
import type { Distractor, NumericAnswer, PosedQuestion, QuestionVariant } from '../review/index.js'
import { stageLine } from './stage-notes.js'
import { lineAsText } from './write-text.js'

/** A question with what an item needs beside it. */
export interface QtiItem {
  /** Its name in the package. */
  readonly identifier: string
  /** Its title. */
  readonly title: string
  /** The equation of the preparation. */
  readonly equation: Equation
  /** The stages of it; a list of them is written where there are several. */
  readonly stages: QuestionVariant['stages']
  /** The question. */
  readonly question: PosedQuestion
}

const itemSpace = 'http://www.imsglobal.org/xsd/imsqtiasi_v3p0'
const itemSchema = 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqti_asiv3p0p1_v1p0.xsd'
const packageSpace = 'http://www.imsglobal.org/xsd/qti/qtiv3p0/imscp_v1p1'
const packageSchema = 'https://purl.imsglobal.org/spec/qti/v3p0/schema/xsd/imsqtiv3p0_imscpv1p2_v1p0.xsd'
const instance = 'http://www.w3.org/2001/XMLSchema-instance'
const declaration = '<?xml version="1.0" encoding="UTF-8"?>'

/** Text as XML shows it; characters that XML cannot hold become spaces. */
function xml(text: string): string {
  return escapeHtml([...text].map((character) => (isAllowed(character) ? character : ' ')).join(''))
}

/** Tab, line breaks, and everything from the space on but surrogates and the two last of the plane: XML 1.0, section 2.2. */
function isAllowed(character: string): boolean {
  const code = character.codePointAt(0) as number
  if (code < 0x20) return code === 0x9 || code === 0xa || code === 0xd
  return !(code >= 0xd800 && code <= 0xdfff) && code !== 0xfffe && code !== 0xffff
}

/** The contents of a package. */
export function manifestOf(identifiers: readonly string[]): string {
  return lines([
    declaration,
    `<manifest xmlns="${packageSpace}" xmlns:xsi="${instance}" xsi:schemaLocation="${packageSpace} ${packageSchema}" identifier="questions">`,
    '  <metadata><schema>QTI Package</schema><schemaversion>3.0.1</schemaversion></metadata>',
    '  <organizations/>',
    '  <resources>',
    ...identifiers.map(
      (name) =>
        `    <resource identifier="${name}" type="imsqti_item_xmlv3p0" href="items/${name}.xml"><file href="items/${name}.xml"/></resource>`,
    ),
    '  </resources>',
    '</manifest>',
  ])
}

/** A choice between the right answer and the wrong ones. */
export function choiceItem(item: QtiItem): string {
  const { answer, distractors } = item.question
  const choices = [
    `<qti-simple-choice identifier="right">${xml(answer)}</qti-simple-choice>`,
    ...distractors.map(
      ({ text }, index) => `<qti-simple-choice identifier="${slipName(index)}">${xml(text)}</qti-simple-choice>`,
    ),
  ]
  return itemOf(item, {
    response: { baseType: 'identifier', correct: 'right' },
    body: [
      '    <qti-choice-interaction response-identifier="RESPONSE" shuffle="true" max-choices="1">',
      `      <qti-prompt>${xml(item.question.asks)}</qti-prompt>`,
      ...choices.map((choice) => `      ${choice}`),
      '    </qti-choice-interaction>',
    ],
    processing: [
      ...branch('if', match('right'), [score]),
      '    </qti-response-condition>',
      `    ${outcome('FEEDBACK', '<qti-variable identifier="RESPONSE"/>')}`,
    ],
  })
}

/** A number to be typed in, right within its tolerance; numbers that slips give get their feedback. */
export function entryItem(item: QtiItem, { value, unit, tolerance }: NumericAnswer): string {
  const { asks, distractors } = item.question
  return itemOf(item, {
    response: { baseType: 'float', correct: value },
    body: [
      `    <p>${xml(asks)}</p>`,
      `    <p><qti-text-entry-interaction response-identifier="RESPONSE" expected-length="12"/> ${xml(unit)}</p>`,
    ],
    processing: [
      ...branch('if', near(value, tolerance), [score, feedback('right')]),
      ...distractors.flatMap((distractor, index) =>
        branch('else-if', near(distractor.value as string, tolerance), [feedback(slipName(index))]),
      ),
      '    </qti-response-condition>',
    ],
  })
}

/** What one kind of item has of its own. */
interface Parts {
  readonly response: { readonly baseType: string; readonly correct: string }
  readonly body: readonly string[]
  readonly processing: readonly string[]
}

function itemOf(
  { identifier, title, equation, stages, question }: QtiItem,
  { response, body, processing }: Parts,
): string {
  return lines([
    declaration,
    `<qti-assessment-item xmlns="${itemSpace}" xmlns:xsi="${instance}" xsi:schemaLocation="${itemSpace} ${itemSchema}"`,
    `  identifier="${identifier}" title="${xml(title)}" adaptive="false" time-dependent="false" xml:lang="en">`,
    `  <qti-response-declaration identifier="RESPONSE" cardinality="single" base-type="${response.baseType}">`,
    `    <qti-correct-response><qti-value>${response.correct}</qti-value></qti-correct-response>`,
    '  </qti-response-declaration>',
    '  <qti-outcome-declaration identifier="SCORE" cardinality="single" base-type="float" normal-maximum="1">',
    '    <qti-default-value><qti-value>0</qti-value></qti-default-value>',
    '  </qti-outcome-declaration>',
    '  <qti-outcome-declaration identifier="FEEDBACK" cardinality="single" base-type="identifier"/>',
    '  <qti-item-body>',
    `    <p>${xml(formatEquation(equation, 'unicode'))}</p>`,
    ...listOf(stages.length < 2 ? [] : stages.map((stage) => lineAsText(stageLine(stage)))),
    ...listOf(question.given.map(({ label, quantity }) => `${label}: ${quantity.toString()}`)),
    ...body,
    '  </qti-item-body>',
    '  <qti-response-processing>',
    '    <qti-response-condition>',
    ...processing,
    '  </qti-response-processing>',
    ...feedbacks(question.distractors),
    '</qti-assessment-item>',
  ])
}

function listOf(entries: readonly string[]): readonly string[] {
  if (entries.length === 0) return []
  return ['    <ul>', ...entries.map((entry) => `      <li>${xml(entry)}</li>`), '    </ul>']
}

function feedbacks(distractors: readonly Distractor[]): readonly string[] {
  const texts = [
    ['right', 'This agrees.'],
    ...distractors.map(({ advice }, index) => [slipName(index), advice]),
  ] as const
  return texts.map(
    ([name, text]) =>
      `  <qti-modal-feedback outcome-identifier="FEEDBACK" show-hide="show" identifier="${name}"><qti-content-body><p>${xml(text as string)}</p></qti-content-body></qti-modal-feedback>`,
  )
}

function slipName(index: number): string {
  return `slip-${index + 1}`
}

function branch(kind: 'if' | 'else-if', condition: string, outcomes: readonly string[]): readonly string[] {
  const tag = `qti-response-${kind}`
  return [`      <${tag}>`, ...[condition, ...outcomes].map((line) => `        ${line}`), `      </${tag}>`]
}

function match(identifier: string): string {
  return `<qti-match><qti-variable identifier="RESPONSE"/><qti-base-value base-type="identifier">${identifier}</qti-base-value></qti-match>`
}

function near(value: string, tolerance: string): string {
  return `<qti-equal tolerance-mode="absolute" tolerance="${tolerance} ${tolerance}"><qti-base-value base-type="float">${value}</qti-base-value><qti-variable identifier="RESPONSE"/></qti-equal>`
}

function outcome(identifier: string, value: string): string {
  return `<qti-set-outcome-value identifier="${identifier}">${value}</qti-set-outcome-value>`
}

const score: string = /* @__PURE__ */ outcome('SCORE', '<qti-base-value base-type="float">1</qti-base-value>')

function feedback(name: string): string {
  return outcome('FEEDBACK', `<qti-base-value base-type="identifier">${name}</qti-base-value>`)
}

function lines(list: readonly string[]): string {
  return `${list.join('\n')}\n`
}
