import * as z from 'zod/mini'
import type { ErrorDetails } from '../errors.js'
import { showFound } from '../errors.js'
import { PreparationError } from './preparation-error.js'

type Issue = z.core.$ZodIssue

/** Reads plain JSON by a schema; every mistake found becomes a problem of one error. */
export function readJson<T>(schema: z.ZodMiniType<T>, input: unknown, what: string): T {
  const problems: ErrorDetails[] = []
  const value = safely(what, input, () => {
    const result = z.safeParse(schema, input)
    if (result.success) return result.data
    for (const issue of result.error.issues) for (const found of problemsOf(issue, input)) problems.push(found) // any number
    return undefined
  })
  if (value === undefined) throw problemsError(what, problems)
  return value
}

/** One error for all mistakes of a document; it says the first and counts the rest. */
export function problemsError(what: string, problems: readonly ErrorDetails[]): PreparationError {
  const [first, ...rest] = problems as readonly [ErrorDetails, ...ErrorDetails[]]
  const more = rest.length === 0 ? '' : ` (and ${rest.length} more)`
  return new PreparationError({
    code: 'preparation/invalid',
    message: `The ${what} cannot be used: ${first.message}${more}`,
    path: first.path,
    position: first.position,
    found: first.found,
    expected: first.expected,
    hint: first.hint,
    problems,
  })
}

/** A getter or a proxy in the input may throw whatever it likes; that is the input's mistake, not a crash of ours. */
function safely<T>(what: string, input: unknown, read: () => T): T {
  try {
    return read()
  } catch {
    throw new PreparationError({
      code: 'preparation/unreadable',
      message: `The ${what} cannot be read: looking at it fails.`,
      found: showFound(input),
      expected: 'plain JSON',
    })
  }
}

function problemsOf(issue: Issue, input: unknown): readonly ErrorDetails[] {
  const path = issue.path.map((key) => (typeof key === 'number' ? key : String(key)))
  if (issue.code === 'unrecognized_keys') return issue.keys.map((key) => unknownKey([...path, key], key))
  if (issue.code === 'custom')
    return [{ ...(issue.params as unknown as ErrorDetails), message: `${at(path)}${issue.message}`, path }]
  if (issue.code === 'invalid_key') return [shapeProblem(issue.issues[0] as Issue, path, path.at(-1))]
  return [shapeProblem(issue, path, valueAt(input, path))]
}

function unknownKey(path: readonly (string | number)[], key: string): ErrorDetails {
  return {
    code: 'preparation/unknown-key',
    message: `${at(path)}no such key.`,
    path,
    found: showFound(key),
    expected: 'only the keys of the format',
  }
}

function shapeProblem(issue: Issue, path: readonly (string | number)[], value: unknown): ErrorDetails {
  const expected = expectedOf(issue)
  if (value === undefined) {
    return {
      code: 'preparation/missing',
      message: `${at(path)}missing; expected ${expected}.`,
      path,
      found: 'nothing',
      expected,
    }
  }
  const found = showFound(value)
  const isChoice = issue.code === 'invalid_value' || issue.code === 'invalid_union'
  const code = isChoice ? 'preparation/unknown-choice' : 'preparation/wrong-type'
  return { code, message: `${at(path)}${found} is not ${expected}.`, path, found, expected }
}

function expectedOf(issue: Issue): string {
  switch (issue.code) {
    case 'invalid_type':
      return typeNames[issue.expected] ?? 'an object'
    case 'invalid_value':
      return issue.values.map((value) => JSON.stringify(value)).join(' or ')
    case 'invalid_union':
      return optionsOf(issue)
    case 'too_small':
      if (issue.origin !== 'number') return 'something that is not empty'
      return `${issue.inclusive ? 'at least' : 'above'} ${issue.minimum}`
    default: {
      const { origin, maximum } = issue as TooBig // our schemas have no other issues
      return `${longOnes[origin] ?? 'at most'} ${maximum}`
    }
  }
}

type TooBig = Extract<Issue, { readonly code: 'too_big' }>

/** What a schema calls a type, in words; the numbers of our documents count something. */
const typeNames: Readonly<Record<string, string>> = {
  string: 'text',
  array: 'a list',
  number: 'a whole number',
  int: 'a whole number',
}

const longOnes: Readonly<Record<string, string>> = { string: 'text no longer than', array: 'a list no longer than' }

function optionsOf(issue: Extract<Issue, { readonly code: 'invalid_union' }>): string {
  const { options } = issue as { readonly options?: readonly unknown[] }
  if (options !== undefined) return options.map((option) => JSON.stringify(option)).join(' or ')
  return 'one of the shapes that the format allows'
}

function valueAt(input: unknown, path: readonly (string | number)[]): unknown {
  return path.reduce<unknown>((value, key) => (value as Record<string | number, unknown> | undefined)?.[key], input)
}

function at(path: readonly (string | number)[]): string {
  return path.length === 0 ? '' : `${writePath(path)}: `
}

/** `stages[0].equation`. */
export function writePath(path: readonly (string | number)[]): string {
  return path.map((key, index) => (typeof key === 'number' ? `[${key}]` : index === 0 ? key : `.${key}`)).join('')
}
