import { escapeHtml } from '../display.js'
import { showFound, unlessForged } from '../errors.js'
import type { Working, WorkingGiven, WorkingNumber, WorkingStep } from '../quantity/index.js'
import { rank, type Written, writeExpression } from './expression.js'
import { ReportError, unknownFormat } from './report-error.js'
import type { SheetFormat } from './sheet.js'
import { type WorkingNotation, workingNotations } from './working-notation.js'
import { escapeLatex } from './write-latex.js'
import { lineAsMarkdown } from './write-markdown.js'

/** How a calculation is written. */
export interface WriteWorkingOptions {
  /** Whether what was known from the start is listed first; it is not unless said. */
  readonly given?: boolean
}

/**
 * Writes the worked lines of a calculation, each as what is sought, its formula, the numbers put in, the result with guard digits and the
 * result rounded, as a solution in a textbook.
 *
 * @param worked - What `working` gives.
 * @param format - `"text"` (the default), `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document that uses
 *   amsmath, and for KaTeX or MathJax).
 * @param options - Whether the given quantities are listed.
 * @returns The lines.
 * @throws {@link ReportError} `report/unknown-format`, `report/not-a-working`.
 *
 * @example
 * ```ts
 * import { quantity, working } from 'saltwright/quantity'
 * import { writeWorking } from 'saltwright/report'
 *
 * const mass = quantity('3.255 g', { symbol: 'm', of: 'ZnO' })
 * const molarMass = quantity('81.379 g/mol', { symbol: 'M', of: 'ZnO' })
 * const amount = mass.dividedBy(molarMass).named({ symbol: 'n', of: 'ZnO', label: 'amount of zinc oxide' })
 * console.log(writeWorking(working(amount)))
 * ```
 *
 * It prints
 *
 * ```text prints
 * Amount of zinc oxide
 * n(ZnO) = m(ZnO) / M(ZnO)
 *        = 3.255 g / (81.379 g/mol)
 *        = 0.0399980 mol
 *        ≈ 0.04000 mol
 * ```
 */
export function writeWorking(worked: Working, format: SheetFormat = 'text', options: WriteWorkingOptions = {}): string {
  const layout = typeof format === 'string' && Object.hasOwn(layouts, format) ? layouts[format] : undefined
  if (layout === undefined) throw unknownFormat(format, Object.keys(layouts))
  const written = (): string => layout(linesOf(worked, workingNotations[format], options?.given === true))
  return unlessForged(written, (cause) => notAWorking(worked, cause))
}

function linesOf({ steps, given }: Working, notation: WorkingNotation, listsGiven: boolean): readonly Line[] {
  const listed = listsGiven || steps.length === 0 ? given : []
  return [...listed.map((term) => givenLine(term, notation)), ...steps.map((step) => stepLine(step, notation))]
}

/** A line of working, its parts written, not yet laid out. */
interface Line {
  /** What is sought, in words. */
  readonly label: string | undefined
  /** What is sought, by its symbol. */
  readonly left: string | undefined
  /** What it equals, each with the sign before it. */
  readonly right: readonly { readonly sign: '=' | '≈'; readonly text: string }[]
}

function givenLine({ name, value }: WorkingGiven, notation: WorkingNotation): Line {
  return { label: name.label, left: notation.name(name), right: [{ sign: '=', text: notation.value(value) }] }
}

function stepLine(step: WorkingStep, notation: WorkingNotation): Line {
  const { name, terms, unrounded, shown } = step
  const hasNames = terms.some((term) => term.name !== undefined)
  const texts = [
    ...(hasNames ? [formulaText(step, notation)] : []),
    numbersText(step, notation),
    notation.value(unrounded),
  ]
  const left = name === undefined ? undefined : notation.name(name)
  const told = texts.filter((text, index) => text !== (index === 0 ? left : texts[index - 1]))
  const equal = told.map((text) => ({ sign: '=', text }) as const)
  const last = notation.value(shown)
  const end = last === equal.at(-1)?.text ? [] : [{ sign: step.rounded ? '≈' : '=', text: last } as const]
  return {
    label: name?.label,
    left,
    right: [...equal, ...end],
  }
}

function formulaText({ formula, terms }: WorkingStep, { expression, dot, name, value }: WorkingNotation): string {
  const written = terms.map((term) => (term.name === undefined ? numberOf(term.value, value) : atom(name(term.name))))
  return writeExpression(formula, { ...expression, times: dot }, (index) => written[index] as Written).text
}

function numbersText({ formula, terms }: WorkingStep, { expression, value }: WorkingNotation): string {
  const written = terms.map((term) => numberOf(term.value, value))
  return writeExpression(formula, expression, (index) => written[index] as Written).text
}

function atom(text: string): Written {
  return { text, rank: rank.atom }
}

/** A number that is put in: the more is in it, the sooner it needs brackets. */
function numberOf(value: WorkingNumber, write: WorkingNotation['value']): Written {
  const text = write(value)
  if (value.number.startsWith('-')) return { text, rank: rank.signed }
  if (/[/ ]/.test(value.unit) || value.number.includes('e')) return { text, rank: rank.compound }
  return { text, rank: value.unit === '' ? rank.atom : rank.tight }
}

const layouts: Readonly<Record<SheetFormat, (lines: readonly Line[]) => string>> = {
  text: (lines) => lines.map(asText).join('\n'),
  markdown: (lines) => lines.map(asMarkdown).join('\n'),
  html: (lines) => `<div>\n${lines.map(asHtml).join('\n')}\n</div>\n`,
  latex: (lines) => lines.map(asLatex).join('\n'),
}

/** The parts of a line one below the other; what is sought stands before the first. */
function lined({ left, right }: Line, signs: Signs, indent = ''): readonly string[] {
  return right.map(({ sign, text }, index) => {
    if (index > 0) return `${indent}${signs[sign]} ${text}`
    return left === undefined ? `${signs.none}${text}` : `${left} ${signs[sign]} ${text}`
  })
}

type Signs = Readonly<Record<'=' | '≈' | 'none', string>>

const plainSigns: Signs = { '=': '=', '≈': '≈', none: '' }
const latexSigns: Signs = { '=': '&=', '≈': '&\\approx', none: '&\\phantom{=} ' }

/** The signs stand below each other. */
function asText(line: Line): string {
  const indent = line.left === undefined ? '' : ' '.repeat([...line.left].length + 1)
  return `${[...heading(line.label), ...lined(line, plainSigns, indent)].join('\n')}\n`
}

function heading(label: string | undefined): readonly string[] {
  return label === undefined ? [] : [label.charAt(0).toUpperCase() + label.slice(1)]
}

function asMarkdown(line: Line): string {
  const title = heading(line.label).map((words) => `**${lineAsMarkdown(words)}**\n\n`)
  return `${title.join('')}${lined(line, plainSigns).join(' \\\n')}\n`
}

function asHtml(line: Line): string {
  const title = heading(line.label).map((words) => `<p><b>${escapeHtml(words)}</b></p>\n`)
  return `${title.join('')}<p>${lined(line, plainSigns).join('<br>\n')}</p>`
}

function asLatex(line: Line): string {
  const title = heading(line.label).map((words) => `${escapeLatex(words)}\n`)
  const rows = lined(line, latexSigns).join(' \\\\\n')
  return `${title.join('')}\\[\\begin{aligned}\n${rows}\n\\end{aligned}\\]\n`
}

function notAWorking(found: unknown, cause: unknown): ReportError {
  const message = `${showFound(found)} is no calculation that was written down.`
  const details = { message, found: showFound(found), expected: 'what working(q) gives' }
  return new ReportError({ code: 'report/not-a-working', ...details }, cause)
}
