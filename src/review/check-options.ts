import { showFound } from '../errors.js'
import { isQuantity } from '../quantity/index.js'
import { ReviewError } from './review-error.js'

/** Tells whether a value is what an option takes. */
type Test = (value: unknown) => boolean

const isObject: Test = (value) => typeof value === 'object' && value !== null
const isText: Test = (value) => typeof value === 'string'
const oneOf =
  (...choices: readonly unknown[]): Test =>
  (value) =>
    choices.includes(value)
const listOf =
  (test: Test): Test =>
  (value) =>
    Array.isArray(value) && value.every(test)

const isReactant: Test = (value) => {
  if (!isObject(value)) return false
  const { of, amount, gives, mass } = value as Readonly<Record<string, unknown>>
  const hasMass = mass === undefined || isOf(mass, 'mass')
  return isText(of) && isOf(amount, 'amount') && isOf(gives, 'amount') && hasMass
}

function isOf(value: unknown, dimension: string): boolean {
  return isQuantity(value) && value.dimension === dimension
}

const isSlip: Test = (value) =>
  isObject(value) && typeof (value as { readonly changes?: unknown }).changes === 'function'

/** An option and what it takes. */
interface Expectation {
  readonly fits: Test
  readonly expected: string
}

const expectations: Readonly<Record<string, Expectation>> = {
  ties: { fits: /* @__PURE__ */ oneOf('half-even', 'half-up'), expected: '"half-even" or "half-up"' },
  figures: {
    fits: (value) => isObject(value) || ['at least three', 'justified', 'any'].includes(value as string),
    expected: '"at least three", "justified", "any", { figures: 3 } or { place: "0.01" }',
  },
  wholeNumberZeros: {
    fits: /* @__PURE__ */ oneOf('placeholders', 'significant', 'reject'),
    expected: '"placeholders", "significant" or "reject"',
  },
  pairs: { fits: /* @__PURE__ */ oneOf(true, false), expected: 'true or false' },
  slips: { fits: /* @__PURE__ */ listOf(isSlip), expected: 'a list of slips' },
  bench: { fits: (value) => value === null || isText(value), expected: 'the name of a bench' },
  onProgress: { fits: (value) => typeof value === 'function', expected: 'a function' },
  context: { fits: isObject, expected: '{ atHand, reactants, equations, formulas }' },
}

const contextExpectations: Readonly<Record<string, Expectation>> = {
  atHand: { fits: /* @__PURE__ */ listOf(isQuantity), expected: 'a list of quantities' },
  reactants: {
    fits: /* @__PURE__ */ listOf(isReactant),
    expected: 'a list of { of, amount, gives, mass }, quantities but for of',
  },
  equations: {
    fits: /* @__PURE__ */ listOf((value) => isText(value) || isObject(value)),
    expected: 'a list of equations',
  },
  formulas: { fits: /* @__PURE__ */ listOf(isText), expected: 'a list of formulas' },
}

/** Options, checked as far as JavaScript callers may get them wrong. */
export function checkReviewOptions<T extends object>(options: T): T {
  checkObject(options)
  const given = options as Readonly<Record<string, unknown>>
  check(given, expectations, [])
  if (given.context !== undefined) check(given.context as typeof given, contextExpectations, ['context'])
  return options
}

/** An object, whatever is in it. */
export function checkObject(options: unknown): object {
  if (typeof options === 'object' && options !== null) return options
  throw new ReviewError({
    code: 'review/not-an-object',
    message: `${showFound(options)} does not say how something is reviewed.`,
    found: showFound(options),
    expected: 'options in an object',
  })
}

/** Whether something is the whole of what a person has at hand. */
export function isContext(context: object): boolean {
  return Object.entries(contextExpectations).every(([name, { fits }]) => fits((context as Fields)[name]))
}

type Fields = Readonly<Record<string, unknown>>

function check(
  given: Readonly<Record<string, unknown>>,
  known: Readonly<Record<string, Expectation>>,
  path: readonly string[],
): void {
  for (const [name, { fits, expected }] of Object.entries(known)) {
    const value = given[name]
    if (value === undefined || fits(value)) continue
    throw new ReviewError({
      code: 'review/unknown-option',
      message: `${showFound(value)} is not a choice for ${[...path, name].join('.')}.`,
      path: [...path, name],
      found: showFound(value),
      expected,
    })
  }
}
