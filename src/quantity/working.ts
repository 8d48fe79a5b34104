import { Decimal } from '../decimal.js'
import { showFound } from '../errors.js'
import { putIn } from './expressions.js'
import { convert, type Node, nodeOf } from './node.js'
import { type Outline, outlineOf } from './outline.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { Expression } from './rule.js'
import { type RuleName, rules } from './rules.js'
import { unitText, writeNumber } from './show.js'
import { keyOf, type SubjectKey } from './subject.js'
import { workingNames } from './working-names.js'
import type { Working, WorkingName, WorkingNumber, WorkingStep, WorkingTerm } from './working-type.js'

/** How a calculation is written down. */
export interface WorkingOptions {
  /**
   * How many digits beyond the significant ones results are carried with, from 0 to 10; 2 unless said. Each result is rounded from all its
   * digits, once (ISO 80000-1:2009, B.4).
   */
  readonly guardDigits?: number
}

/**
 * The worked lines of a calculation: what is sought, the formula, the numbers put in, the result. Results with a name get a line of their
 * own, and one line however often they are used; what has no name is written out where it is used.
 *
 * @param q - The result of a calculation whose quantities have symbols or labels.
 * @param options - With how many guard digits.
 * @returns The lines as data, in reading order; `saltwright/report` writes them as text, Markdown, LaTeX and HTML.
 * @throws {@link QuantityError} `quantity/not-a-quantity`, `quantity/unknown-option`.
 *
 * @example
 * ```ts
 * import { quantity, working } from 'saltwright/quantity'
 *
 * const mass = quantity('3.255 g', { symbol: 'm', of: 'ZnO' })
 * const molarMass = quantity('81.379 g/mol', { symbol: 'M', of: 'ZnO' })
 * const [step] = working(mass.dividedBy(molarMass).named({ symbol: 'n', of: 'ZnO' })).steps
 * step?.terms.map(({ value }) => value.number) // => ['3.255', '81.379']
 * step?.unrounded // => { number: '0.0399980', unit: 'mol' }
 * step?.shown // => { number: '0.04000', unit: 'mol' }
 * ```
 */
export function working(q: Quantity, options: WorkingOptions = {}): Working {
  const root = nodeOf(q)
  const guard = readGuardDigits(options)
  const outline = outlineOf(root)
  const last = outline.subjectOf(root)
  const lastKey = keyOf(last)
  const names = workingNames(outline, lastKey)
  const context: Context = { outline, names, guard }
  const lines = last.rule === 'input' && root !== last ? [lastKey] : [...outline.lines]
  const steps = lines.map((key) => {
    const node = outline.quantities.get(key) as Node
    return stepOf(node, key === lastKey ? root : node, context)
  })
  const given = [...names].flatMap(([key, name]) => {
    const node = outline.quantities.get(key) as Node
    return node.rule === 'input' ? [{ ...termOf(node, context), name }] : []
  })
  return { given, steps }
}

interface Context {
  readonly outline: Outline
  readonly names: ReadonlyMap<SubjectKey, WorkingName>
  readonly guard: number
}

/** The quantities of a formula in the order in which they occur, each with its position. */
type Terms = Map<Node, { readonly term: WorkingTerm; readonly position: number }>

/** The line of a result; `form` is the same in the unit, and to the digits, in which it was asked for. */
function stepOf(node: Node, form: Node, context: Context): WorkingStep {
  const terms: Terms = new Map()
  const formula = node.rule === 'input' ? operandWritten(node, terms, context) : ruleWritten(node, terms, context)
  const carried = isRoundedBetween(node, form) ? node : form
  const shown = numberOf(form)
  const exact = convert(node, form.unit).value
  return {
    name: context.names.get(keyOf(node)),
    formula,
    terms: [...terms.values()].map(({ term }) => term),
    unrounded: carriedNumber(carried, context.guard),
    shown,
    rounded: !exact.eq(new Decimal(shown.number)),
    quantity: form,
  }
}

/** Whether a form of a result was rounded on purpose. */
function isRoundedBetween(node: Node, form: Node): boolean {
  for (let one = form; one.operands !== node.operands; one = one.operands[0] as Node)
    if (one.settings.rounding !== undefined) return true
  return false
}

/** The rule of a node with its operands, which are collected as terms. */
function ruleWritten(node: Node, terms: Terms, context: Context): Expression {
  const { write } = rules[node.rule as RuleName]
  return putIn(write(node.operands.length, node.settings), (index) =>
    operandWritten(node.operands[index] as Node, terms, context),
  )
}

function operandWritten(operand: Node, terms: Terms, context: Context): Expression {
  const subject = context.outline.subjectOf(operand)
  if (subject.rule !== 'input' && !context.outline.lines.has(keyOf(subject)))
    return ruleWritten(subject, terms, context)
  const term = termOf(operand, context)
  const isOne = term.name === undefined && term.value.number === '1' && term.value.unit === ''
  return isOne ? { kind: 'number', text: '1' } : { kind: 'name', operand: positionOf(operand, term, terms) }
}

/** Where a term stands among the terms; the same quantity in the same unit is put in once. */
function positionOf(node: Node, term: WorkingTerm, terms: Terms): number {
  const position = terms.get(node)?.position ?? terms.size
  terms.set(node, { term, position })
  return position
}

function termOf(node: Node, { outline, names, guard }: Context): WorkingTerm {
  const subject = outline.subjectOf(node)
  const value = subject.rule === 'input' ? numberOf(node) : carriedNumber(node, guard)
  return { name: names.get(keyOf(subject)), value, quantity: node }
}

function numberOf(node: Node): WorkingNumber {
  return { number: writeNumber(node), unit: unitText(node.unit) }
}

/** A number with guard digits, as far as it has any. */
function carriedNumber(node: Node, guard: number): WorkingNumber {
  const { value, unit, place } = node
  if (place === null) return numberOf(node)
  const finest = Math.min(place, -value.dp())
  const carried = { value, unit, place: Math.max(finest, place - guard), input: undefined }
  return { number: writeNumber(carried), unit: unitText(unit) }
}

const mostGuardDigits = 10

function readGuardDigits(options: unknown): number {
  if (typeof options !== 'object' || options === null) throw unknownOption(options, '{ guardDigits: 2 }')
  const { guardDigits: guard = 2 } = options as { guardDigits?: unknown }
  if (Number.isInteger(guard) && (guard as number) >= 0 && (guard as number) <= mostGuardDigits) return guard as number
  throw unknownOption(guard, `a whole number from 0 to ${mostGuardDigits}`)
}

function unknownOption(found: unknown, expected: string): QuantityError {
  return new QuantityError({
    code: 'quantity/unknown-option',
    message: `${showFound(found)} does not say how many guard digits are written.`,
    path: ['guardDigits'],
    found: showFound(found),
    expected,
  })
}
