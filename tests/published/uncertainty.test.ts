import {
  coverageFactor,
  degreesOfFreedomFromReliability,
  effectiveDegreesOfFreedom,
  exact,
  expandedUncertainty,
  fromReadings,
  type Quantity,
  quantity,
  standardUncertainty,
  uncertaintyBudget,
  writeWithUncertainty,
} from '../../src/quantity/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { type PrintedResult, type UncertaintyRow, uncertaintySources } from './data/uncertainty.js'
import {
  correlationOf,
  meanOfSets,
  type Result,
  resultOf,
  resultOfReadings,
  statementOf,
} from './uncertainty-calculations.js'
import { differenceOf } from './uncertainty-differences.js'
import { unroundedTo } from './written-as.js'

type Ratio = Quantity<'ratio'>
type Of<K extends UncertaintyRow['kind']> = Extract<UncertaintyRow, { readonly kind: K }>
/** One printed number: what it is, how it is printed, what ours is. */
type Value = readonly [what: string, printed: string, ours: () => string]

/** A number in the notation of the library, to the digits of a printed one. */
const like =
  (printed: string, ours: () => Ratio): (() => string) =>
  () =>
    unroundedTo(plain(printed), ours())
const number = (value: number): Ratio => exact(value.toPrecision(15) as '1')
/** 0.23e-6 as 2.3e-7, so that both are written alike. */
const plain = (printed: string): string => quantity(printed as '1').toString()

function resultValues(what: string, printed: PrintedResult, make: () => Result): readonly Value[] {
  const budget = (): ReturnType<typeof uncertaintyBudget<'ratio'>> => {
    const { result, correlations } = make()
    return uncertaintyBudget(result, { correlations })
  }
  const u = (): Ratio => budget().standardUncertainty
  const value = (): Ratio => make().result
  const { contributions = {} } = printed
  return [
    ...one(what, printed.value, value),
    ...one(`the standard uncertainty of ${what}`, printed.standard, u),
    ...one(`the relative standard uncertainty of ${what}`, printed.relative, () => u().dividedBy(value())),
    ...one(`the expanded uncertainty of ${what}`, printed.expanded, () => expanded(make())),
    ...one(`the effective degrees of freedom of ${what}`, printed.effectiveDegrees, () =>
      number(budget().degreesOfFreedom ?? Number.NaN),
    ),
    ...Object.entries(contributions).flatMap(([input, size]) =>
      one(`what ${input} contributes to ${what}`, size, () => contributionOf(input, budget())),
    ),
  ]
}

function one(what: string, printed: string | undefined, ours: () => Ratio): readonly Value[] {
  return printed === undefined ? [] : [[what, printed, like(printed, ours)]]
}

/** All published expanded uncertainties of models have the coverage factor 2. */
function expanded({ result, correlations }: Result): Ratio {
  return expandedUncertainty(result, { coverageFactor: '2' }, { correlations }).expandedUncertainty
}

function contributionOf(input: string, budget: ReturnType<typeof uncertaintyBudget<'ratio'>>): Ratio {
  const found = budget.contributions.find((contribution) => contribution.input.naming.label === input)
  return (found?.standardUncertainty ?? exact('0')) as Ratio
}

function combinedValue({ components, printed }: Of<'combine'>): readonly Value[] {
  const ours = (): Ratio => standardUncertainty(quantity('0.0', { uncertainty: components.map(statementOf) }))
  return [
    [components.length === 1 ? 'the standard uncertainty' : 'the combined uncertainty', printed, like(printed, ours)],
  ]
}

function readingsValues({ readings, printed }: Of<'readings'>): readonly Value[] {
  const mean = (): Ratio => fromReadings(readings as readonly '1'[])
  const u = (): Ratio => standardUncertainty(mean())
  return [
    ['the mean', printed.mean, like(printed.mean, mean)],
    ['its standard uncertainty', printed.standard, like(printed.standard, u)],
    [
      'the standard deviation of one reading',
      printed.deviation,
      like(printed.deviation, () => number(u().value.toNumber() * Math.sqrt(readings.length))),
    ],
    ['its degrees of freedom', printed.degreesOfFreedom, () => String(mean().input?.uncertainty?.degreesOfFreedom)],
  ]
}

function degreesValues(row: Of<'effective degrees'>): readonly Value[] {
  const components = row.standard.map((standard, index) => ({
    standard: Number(standard),
    degreesOfFreedom: Number(row.degreesOfFreedom[index]),
  }))
  const combined = row.combinedSquared === undefined ? Number(row.combined) : Math.sqrt(Number(row.combinedSquared))
  const effective = (): number => effectiveDegreesOfFreedom(components, combined)
  const k = (): number => coverageFactor(Number(row.level), Math.floor(effective()))
  const { effectiveDegrees, coverageFactor: factor, expanded: U } = row.printed
  return [
    ['the effective degrees of freedom', effectiveDegrees, like(effectiveDegrees, () => number(effective()))],
    ['the coverage factor', factor, like(factor, () => number(k()))],
    ['the expanded uncertainty', U, like(U, () => number(k() * Number(row.combined)))],
  ]
}

function writtenValue(row: Of<'write'>): readonly Value[] {
  const { value, standard, digits = 2, unit, printed, shown } = row
  const q = (): Quantity => quantity(inUnit(value, unit), { uncertainty: inUnit(standard, unit) })
  if (printed.endsWith(' g')) return [['the result', printed, () => writeWithUncertainty(q(), { digits })]]
  const plusMinus = (): string => writeWithUncertainty(q(), { digits, form: 'plus-minus' })
  if (shown?.standard === undefined)
    return [['the value beside its uncertainty', String(shown?.value), () => String(plusMinus().split(' ')[0])]]
  return [[`${value}, uncertain by ${standard},`, `${shown.value} ± ${shown.standard}`, plusMinus]]
}

/** Units the library does not have, such as the ohm, are left out. */
const inUnit = (text: string, unit: string | undefined): string => (unit === 'g' ? `${text} g` : text)

function roundedValue({ standard, digits, upwards, printed }: Of<'round uncertainty'>): readonly Value[] {
  const rounding = upwards ? 'up' : 'nearest'
  const ours = (): string =>
    writeWithUncertainty(quantity('0.0', { uncertainty: standard }), { digits, rounding, form: 'plus-minus' })
  return [[`${standard} as an uncertainty`, printed, () => String(ours().split(' ± ')[1])]]
}

function readValue({ text, implied, printed }: Of<'read'>): readonly Value[] {
  const q = (): Ratio => quantity(text as '1')
  const options = implied ? ({ unstated: 'last-digit' } as const) : {}
  return [
    [`the number of ${text}`, printed.value, like(printed.value, q)],
    [`the uncertainty of ${text}`, printed.standard, like(printed.standard, () => standardUncertainty(q(), options))],
  ]
}

function correlationValues(row: Of<'correlation of results'>): readonly Value[] {
  const from = row.readings === undefined ? { inputs: row.inputs ?? {} } : { readings: row.readings }
  return Object.entries(row.printed).map(([pair, printed]) => {
    const [a = '', b = ''] = pair.split(',').map((name) => row.models[name] ?? '')
    return [`the correlation of ${a} and ${b}`, printed, like(printed, () => number(correlationOf(a, b, from)))]
  })
}

function readingCorrelations({ readings, printed }: Of<'correlation of readings'>): readonly Value[] {
  return Object.entries(printed).map(([pair, r]) => {
    const [a = '', b = ''] = pair.split(',')
    return [`the correlation of ${a} and ${b}`, r, like(r, () => number(correlationOf(a, b, { readings })))]
  })
}

function setsValues({ model, readings, printed }: Of<'results of sets'>): readonly Value[] {
  const mean = (): Ratio => meanOfSets(model, readings)
  return [
    [`the mean of ${model}`, printed.mean, like(printed.mean, mean)],
    ['its standard uncertainty', printed.standard, like(printed.standard, () => standardUncertainty(mean()))],
  ]
}

function pooledValue({ deviation, meanOf, printed }: Of<'pooled'>): readonly Value[] {
  const uncertainty = { standardDeviation: deviation, readings: meanOf }
  return [
    ['the uncertainty of a mean', printed, like(printed, () => standardUncertainty(quantity('0.0', { uncertainty })))],
  ]
}

/** The numbers that a row prints. */
function valuesOf(row: UncertaintyRow): readonly Value[] {
  switch (row.kind) {
    case 'combine':
      return combinedValue(row)
    case 'propagate':
      return resultValues(row.model, row.printed, () => resultOf(row.model, row.inputs))
    case 'correlated':
      return resultValues(row.model, row.printed, () => resultOf(row.model, row.inputs, row.correlations))
    case 'correlated readings':
      return resultValues(row.model, row.printed, () => resultOfReadings(row.model, row.readings))
    case 'correlation of results':
      return correlationValues(row)
    case 'correlation of readings':
      return readingCorrelations(row)
    case 'results of sets':
      return setsValues(row)
    case 'readings':
      return readingsValues(row)
    case 'pooled':
      return pooledValue(row)
    case 'effective degrees':
      return degreesValues(row)
    case 'reliability':
      return [
        [
          'the degrees of freedom',
          row.printed,
          () => String(degreesOfFreedomFromReliability(Number(row.percent) / 100)),
        ],
      ]
    case 'coverage factor':
      return [
        [
          `t for ${row.degreesOfFreedom} degrees of freedom at ${row.level}`,
          row.printed,
          like(row.printed, () => number(coverageFactor(Number(row.level), row.degreesOfFreedom))),
        ],
      ]
    case 'write':
      return writtenValue(row)
    case 'round uncertainty':
      return roundedValue(row)
    case 'read':
      return readValue(row)
  }
}

function rowsOf(row: UncertaintyRow, index: number): readonly PublishedRow[] {
  return valuesOf(row).map(([what, printed, ours]) => ({
    at: `case ${index + 1}`,
    what,
    published: /^[-\d.e]+$/.test(printed) ? plain(printed) : printed,
    ours,
    agrees: row.differs === undefined ? true : differenceOf(row.differs, printed),
  }))
}

for (const { source, rows } of uncertaintySources) checkPublished(source, rows.flatMap(rowsOf))
