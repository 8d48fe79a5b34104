import {
  type Correlation,
  correlationCoefficient,
  correlationOfReadings,
  exact,
  fromReadings,
  type Quantity,
  quantity,
  type SingleStatement,
} from '../../src/quantity/index.js'
import type { Component, Inputs } from './data/uncertainty.js'
import { evaluateModel } from './model.js'

type Ratio = Quantity<'ratio'>
type Readings = Readonly<Record<string, readonly string[]>>

/** A result, with the correlations that its inputs have beyond sharing. Units are left out: the numbers are those of the source. */
export interface Result {
  readonly result: Ratio
  readonly inputs: Readonly<Record<string, Ratio>>
  readonly correlations: readonly Correlation[]
}

/** A component as the library takes it. */
export function statementOf(component: Component): SingleStatement {
  if ('halfWidth' in component) return { halfWidth: component.halfWidth, distribution: component.distribution }
  if ('expanded' in component) return { expanded: component.expanded, coverageFactor: component.coverageFactor }
  const { standard, meanOf } = component
  return meanOf === undefined ? { standard } : { standardDeviation: standard, readings: meanOf }
}

function inputsOf(inputs: Inputs): Readonly<Record<string, Ratio>> {
  const entries = Object.entries(inputs).map(([name, { value, uncertainty, degreesOfFreedom }]) => {
    if (uncertainty === undefined) return [name, exact(value as '1')] as const
    const statements = uncertainty.map(statementOf).map((statement) => withDegrees(statement, degreesOfFreedom))
    return [name, quantity(value as '1', { uncertainty: statements, label: name })] as const
  })
  return Object.fromEntries(entries)
}

function withDegrees(statement: SingleStatement, degreesOfFreedom: number | undefined): SingleStatement {
  if (degreesOfFreedom === undefined || typeof statement === 'string') return statement
  return 'standard' in statement ? { ...statement, degreesOfFreedom } : statement
}

/** The result of a model, its inputs independent or correlated as stated: all fully, or pair by pair. */
export function resultOf(model: string, given: Inputs, stated: 'all' | Readonly<Record<string, string>> = {}): Result {
  const inputs = inputsOf(given)
  const correlations = pairsOf(Object.keys(inputs)).flatMap(([a, b]): readonly Correlation[] => {
    const coefficient = stated === 'all' ? 1 : Number(stated[`${a},${b}`] ?? 0)
    return coefficient === 0 ? [] : [{ between: [inputs[a] as Ratio, inputs[b] as Ratio], coefficient }]
  })
  return { result: evaluateModel(model, inputs), inputs, correlations }
}

/** The result of a model from readings that were taken together, so that the means are correlated as the readings are. */
export function resultOfReadings(model: string, readings: Readings): Result {
  const inputs = Object.fromEntries(
    Object.entries(readings).map(([name, texts]) => [name, fromReadings(texts as readonly '1'[], { label: name })]),
  )
  const correlations = pairsOf(Object.keys(readings)).map(([a, b]) => ({
    between: [inputs[a], inputs[b]] as [Ratio, Ratio],
    coefficient: correlationOfReadings(readings[a] ?? [], readings[b] ?? []),
  }))
  return { result: evaluateModel(model, inputs), inputs, correlations }
}

/** The mean of a model worked out for each set of readings: the second treatment of JCGM 100:2008, H.2.4. */
export function meanOfSets(model: string, readings: Readings): Ratio {
  const [first = []] = Object.values(readings)
  const results = first.map((_, index) => {
    const set = Object.entries(readings).map(([name, texts]) => [name, quantity(texts[index] as '1')] as const)
    return evaluateModel(model, Object.fromEntries(set))
  })
  return fromReadings(results)
}

/** How two results of the same inputs vary together. */
export function correlationOf(a: string, b: string, from: { inputs: Inputs } | { readings: Readings }): number {
  const make = 'readings' in from ? resultOfReadings : undefined
  const one = make
    ? make(a, (from as { readings: Readings }).readings)
    : resultOf(a, (from as { inputs: Inputs }).inputs)
  return correlationCoefficient(one.result, evaluateModel(b, one.inputs), { correlations: one.correlations })
}

function pairsOf(names: readonly string[]): readonly (readonly [string, string])[] {
  return names.flatMap((a, index) => names.slice(index + 1).map((b) => [a, b] as const))
}
