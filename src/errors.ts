/** Where in a text something stands: offsets from 0, end not included. */
export interface Span {
  /** Offset of the first character. */
  readonly start: number
  /** Offset after the last character. */
  readonly end: number
}

/** What every error of the library says. */
export interface ErrorDetails<Code extends string = string> {
  /** Stable name of the mistake: folder, slash, words. Branch on this. */
  readonly code: Code
  /** One sentence for a person; may be reworded in any release. */
  readonly message: string
  /** Where in the text that was read. */
  readonly position?: Span | undefined
  /** Where in the object that was read, as keys and indices from its root. */
  readonly path?: readonly (string | number)[] | undefined
  /** What stood there. */
  readonly found?: string | undefined
  /** What would be right. */
  readonly expected?: string | undefined
  /** The likely intent, only where there is one. */
  readonly hint?: string | undefined
  /** Every mistake of an object that has several, each with its own path. */
  readonly problems?: readonly ErrorDetails[] | undefined
}

/** An error as plain data. */
export interface ErrorJSON<Code extends string = string> extends ErrorDetails<Code> {
  /** The name of its class, such as `FormulaError`. */
  readonly name: string
}

/**
 * The one error family of the library: every error it throws on purpose is one of these, and carries data a program can read.
 *
 * @example
 * ```ts
 * import { isSaltwrightError, parseFormula } from 'saltwright'
 *
 * try {
 *   parseFormula('cuso4')
 * } catch (error) {
 *   if (isSaltwrightError(error)) error.code // => 'formula/unknown-symbol'
 * }
 * ```
 */
export class SaltwrightError<Code extends string = string> extends Error implements ErrorDetails<Code> {
  /** Stable name of the mistake: folder, slash, words. */
  readonly code: Code
  /** Where in the text that was read. */
  readonly position: Span | undefined
  /** Where in the object that was read, as keys and indices from its root. */
  readonly path: readonly (string | number)[] | undefined
  /** What stood there. */
  readonly found: string | undefined
  /** What would be right. */
  readonly expected: string | undefined
  /** The likely intent, only where there is one. */
  readonly hint: string | undefined
  /** Every mistake of an object that has several, each with its own path. */
  readonly problems: readonly ErrorDetails[] | undefined

  /**
   * @param details - The code, the sentence, and where it applies position, path, found, expected, hint.
   * @param cause - The error that led to this one, if one did.
   */
  constructor(details: ErrorDetails<Code>, cause?: unknown) {
    super(details.message, cause === undefined ? undefined : { cause })
    this.name = new.target.name
    this.code = details.code
    this.position = details.position
    this.path = details.path
    this.found = details.found
    this.expected = details.expected
    this.hint = details.hint
    this.problems = details.problems
  }

  /** @returns The error as plain data, without a stack: what another program or a log needs. */
  toJSON(): ErrorJSON<Code> {
    const { name, code, message, position, path, found, expected, hint, problems } = this
    return { name, code, message, position, path, found, expected, hint, problems }
  }
}

/**
 * Tells an error of the library from any other, also across module formats, where `instanceof` fails.
 *
 * @param value - Anything, usually what a `catch` caught.
 * @returns True for every error of the `SaltwrightError` family.
 *
 * @example
 * ```ts
 * import { isSaltwrightError } from 'saltwright'
 *
 * isSaltwrightError(new Error('something else')) // => false
 * ```
 */
export function isSaltwrightError(value: unknown): value is SaltwrightError {
  return value instanceof Error && 'code' in value && typeof value.code === 'string' && 'problems' in value
}

/** What a reader that never throws gives back. */
export type Outcome<T, E extends SaltwrightError = SaltwrightError> =
  | {
      /** The text or object was read. */
      readonly ok: true
      /** What it says. */
      readonly value: T
    }
  | {
      /** It could not be read. */
      readonly ok: false
      /** Why not, as the throwing twin would have thrown it. */
      readonly error: E
    }

/** Runs a throwing reader; a mistake of the text becomes data, a bug of ours still throws. */
export function attempt<T, E extends SaltwrightError>(read: () => T): Outcome<T, E> {
  try {
    return { ok: true, value: read() }
  } catch (error) {
    if (error instanceof SaltwrightError) return { ok: false, error: error as E }
    throw error
  }
}

/** Goes through a value that may be forged; what its parts make go wrong is told as a refusal of the whole. */
export function unlessForged<T>(read: () => T, refusal: (cause: unknown) => SaltwrightError): T {
  try {
    return read()
  } catch (error) {
    throw isSaltwrightError(error) ? error : refusal(error)
  }
}

/** Shows whatever was handed over in an error message: short, one line, never throwing. */
export function showFound(value: unknown): string {
  if (typeof value === 'string') return shorten(JSON.stringify(value))
  if (typeof value === 'object' && value !== null) return isList(value) ? 'an array' : 'an object'
  if (typeof value === 'function') return 'a function'
  return shorten(String(value))
}

function isList(value: object): boolean {
  try {
    return Array.isArray(value)
  } catch {
    return false // a proxy that was revoked
  }
}

function shorten(text: string): string {
  return text.length <= 60 ? text : `${text.slice(0, 57)}...`
}
