import { attempt, type ErrorDetails, showFound } from '../errors.js'
import { ElementError } from './element-error.js'
import { isElementSymbol, unknownSymbol } from './element-info.js'
import { readWeight } from './weight-text.js'

type Path = readonly (string | number)[]
type Problems = readonly ErrorDetails[]

/** How far sets may extend one another; also what stops a set that extends itself. */
const deepest = 20

/** Every mistake in what claims to be a set of atomic weights, each with its path; none where it is one. */
export function problemsOfSet(set: unknown, path: Path = []): Problems {
  if (!isRecord(set)) return [problem(path, set, 'a set of atomic weights: { name, values }')]
  if (path.length > deepest) return [problem(path, set, `no more than ${deepest} sets that extend one another`)]
  return [...textProblems(set, path), ...valuesProblems(set.values, path), ...extendsProblems(set.extends, path)]
}

function textProblems(set: Readonly<Record<string, unknown>>, path: Path): Problems {
  const isText = (value: unknown): boolean => typeof value === 'string' && value.trim() !== ''
  const wrong = (['name', 'edition', 'source'] as const).filter(
    (key) => !isText(set[key]) && (key === 'name' || set[key] !== undefined),
  )
  return wrong.map((key) => problem([...path, key], set[key], 'a text that is not empty'))
}

function valuesProblems(values: unknown, path: Path): Problems {
  if (!isRecord(values)) return [problem([...path, 'values'], values, 'atomic weights by symbol: { Cu: "63.546" }')]
  return Object.entries(values).flatMap(([symbol, weight]) => {
    const at = [...path, 'values', symbol]
    if (!isElementSymbol(symbol)) return [{ ...unknownSymbol(symbol).toJSON(), path: at }]
    const read = attempt<unknown, ElementError>(() => readWeight(weight))
    return read.ok ? [] : [{ ...read.error.toJSON(), path: at }]
  })
}

function extendsProblems(base: unknown, path: Path): Problems {
  if (base === undefined || base === 'abridged' || base === 'standard') return []
  if (isRecord(base)) return problemsOfSet(base, [...path, 'extends'])
  return [problem([...path, 'extends'], base, '"abridged", "standard" or another set')]
}

function isRecord(value: unknown): value is Readonly<Record<string, unknown>> {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function problem(path: Path, found: unknown, expected: string): ErrorDetails {
  const where = path.length === 0 ? 'This' : path.join('.')
  return {
    code: 'element/invalid-set',
    message: `${where} is ${showFound(found)} where ${expected} was expected.`,
    path,
    found: showFound(found),
    expected,
  }
}

/** One error for all mistakes of a set. */
export function invalidSet(problems: Problems): ElementError {
  const messages = problems.map(({ message }) => message)
  const rest = messages.length > 1 ? ` (and ${messages.length - 1} more)` : ''
  return new ElementError({
    code: 'element/invalid-set',
    message: `This is not a set of atomic weights: ${messages[0]}${rest}`,
    path: problems[0]?.path,
    problems,
  })
}
