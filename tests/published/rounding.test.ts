import {
  antilogarithm,
  countFigures,
  exact,
  logarithm,
  mean,
  type Quantity,
  quantity,
  roundTo,
  squareRoot,
} from '../../src/quantity/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { type RoundingRow, roundingSources } from './data/rounding.js'
import { writtenAs } from './written-as.js'

type Ratio = Quantity<'ratio'>
type Of<K extends RoundingRow['kind']> = Extract<RoundingRow, { readonly kind: K }>

const ratio = (text: string): Ratio => quantity(text) as Ratio
const product = (factors: readonly Ratio[]): Ratio => factors.reduce((a, b) => a.times(b), exact(1))

/** Mixed expressions, as the source has them. What it takes as exact is exact here. */
const mixed: Readonly<Record<string, () => Ratio>> = {
  '69.658/(22.4-13.5)': () => ratio('69.658').dividedBy(ratio('22.4').minus(ratio('13.5'))),
  '(13.2+12.252)*(1.35*2.1)': () =>
    ratio('13.2')
      .plus(ratio('12.252'))
      .times(ratio('1.35').times(ratio('2.1'))),
  '2*13.5+10.2': () => exact(2).times(ratio('13.5')).plus(ratio('10.2')),
  '125/28.349': () => ratio('125').dividedBy(ratio('28.349')),
  'pi*(3.102/2)^2': () => {
    const radius = ratio('3.102').dividedBy(exact(2))
    return exact('3.14159265358979323846').times(radius.times(radius))
  },
}

const logarithms: Readonly<Record<Of<'logarithm'>['function'], (value: Ratio) => Ratio>> = {
  log: (value) => logarithm(value),
  '-log': (value) => exact(0).minus(logarithm(value)),
  '10^': (value) => antilogarithm(value),
  '10^-': (value) => antilogarithm(exact(0).minus(value)),
}

function count(row: Of<'count'>): string {
  const text = row.text.replaceAll(',', '') // groups of three; the library asks for spaces
  return String(countFigures(text, { wholeNumberZeros: row.zeros }).figures)
}

function openCount({ text }: Of<'open count'>): string {
  const [least, most] = (['placeholders', 'significant'] as const).map((zeros) =>
    countFigures(text, { wholeNumberZeros: zeros }),
  )
  if (!least?.ambiguous || !most?.ambiguous) return 'settled'
  return Array.from({ length: most.figures - least.figures + 1 }, (_, index) => least.figures + index).join(', ')
}

function rounded(row: Of<'round'>): Ratio {
  const value = ratio(row.value)
  return 'figures' in row
    ? roundTo(value, { figures: row.figures, rule: row.ties })
    : roundTo(value, { place: row.step, rule: row.ties })
}

function againstLimit({ value, step, limit, comparison, printed }: Of<'limit'>): string {
  const shown = roundTo(ratio(value), { place: step, rule: 'half-up' })
  const order = shown.compare(ratio(limit))
  const conforms = comparison === '>=' ? order >= 0 : order <= 0
  return `${writtenAs(printed.split(',')[0] ?? '', shown)}, ${conforms ? 'yes' : 'no'}`
}

function multiplied({ numerator, denominator, exact: known = [] }: Of<'product'>): Ratio {
  const read = (text: string): Ratio => (known.includes(text) ? (exact(text) as Ratio) : ratio(text))
  return product(numerator.map(read)).dividedBy(product(denominator.map(read)))
}

function productShown(row: Of<'product'>): Ratio {
  const result = multiplied(row)
  return row.ties === undefined ? result : roundTo(result, { figures: result.significantFigures ?? 0, rule: row.ties })
}

/** What is checked, what is printed, and what ours is. */
function rowOf(row: RoundingRow): Omit<PublishedRow, 'at' | 'agrees'> {
  switch (row.kind) {
    case 'count':
      return { what: `figures of ${row.text}, zeros ${row.zeros}`, published: row.printed, ours: () => count(row) }
    case 'open count':
      return { what: `possible figures of ${row.text}`, published: row.figures.join(', '), ours: () => openCount(row) }
    case 'exponent form':
      return written(`${row.text} in exponent form`, row.printed, () => ratio(row.text))
    case 'round': {
      const to = 'figures' in row ? `${row.figures} figures` : `multiples of ${row.step}`
      return written(`${row.value} to ${to}, ${row.ties}`, row.printed, () => rounded(row))
    }
    case 'limit':
      return {
        what: `${row.value} % against a limit ${row.comparison} ${row.limit} %`,
        published: row.printed,
        ours: () => againstLimit(row),
      }
    case 'sum':
      return written(`${row.terms.join(' + ')}`, row.printed, () => row.terms.map(ratio).reduce((a, b) => a.plus(b)))
    case 'product':
      return written([row.numerator, row.denominator].map((f) => f.join(' · ')).join(' / '), row.printed, () =>
        productShown(row),
      )
    case 'logarithm':
      return written(`${row.function}(${row.value})`, row.printed, () => logarithms[row.function](ratio(row.value)))
    case 'mixed':
      return written(row.expression, row.printed, () => (mixed[row.expression] as () => Ratio)())
    case 'mean':
      return written(`mean of ${row.values.join(', ')}`, row.printed, () =>
        roundTo(mean(row.values.map(ratio)), { figures: row.figures, rule: row.ties }),
      )
    case 'root':
      return written(`square root of ${row.value}`, row.printed, () => squareRoot(ratio(row.value)))
  }
}

function written(what: string, published: string, ours: () => Ratio): Omit<PublishedRow, 'at' | 'agrees'> {
  return { what, published, ours: () => writtenAs(published, ours()) }
}

const figuresOf = (text: string): string => String(countFigures(text, { wholeNumberZeros: 'significant' }).figures)

const inStages = (value: string, ...steps: readonly string[]): string =>
  steps.reduce((q, place) => roundTo(q, { place, rule: 'half-up' }), ratio(value)).toString()

/** By its first number: what ours is instead, and the published value with its reason put in, where that can be done. */
const differences: Readonly<Record<string, { readonly ours: string; readonly explained?: () => string }>> = {
  '100': { ours: '1', explained: () => figuresOf('100') },
  '1,020': { ours: '3', explained: () => figuresOf('1020') },
  '3.4665': { ours: '3.466' },
  '0.345': { ours: '0.3', explained: () => inStages('0.345', '0.01', '0.1') },
  '36': { ours: '11', explained: () => roundTo(exact('36').times(exact('0.3048')), { figures: 3 }).toString() },
  '1.5e2': { ours: '40', explained: () => exact('150').dividedBy(exact(4)).toString() },
  '4.126': { ours: '2.55' },
}

function agreement(row: RoundingRow): PublishedRow['agrees'] {
  if (!('differs' in row) || row.differs === undefined) return true
  const difference = differences[firstNumber(row)]
  if (difference === undefined) throw new Error(`no difference known for ${firstNumber(row)}`)
  return { ...difference, differs: row.differs }
}

function firstNumber(row: RoundingRow): string {
  if ('text' in row) return row.text
  return 'value' in row ? row.value : 'numerator' in row ? String(row.numerator[0]) : ''
}

for (const { source, rows } of roundingSources) {
  checkPublished(
    source,
    rows.map((row, index) => ({ at: `value ${index + 1}`, ...rowOf(row), agrees: agreement(row) })),
  )
}
