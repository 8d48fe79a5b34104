import { describe, expect, it } from 'vitest'
import {
  attempt,
  type ErrorDetails,
  isSaltwrightError,
  SaltwrightError,
  showFound,
  unlessForged,
} from '../src/errors.js'

const details: ErrorDetails = {
  code: 'formula/unknown-symbol',
  message: 'There is no element Xx.',
  position: { start: 2, end: 4 },
  path: ['supplies', 0, 'substance'],
  found: '"Xx"',
  expected: 'the symbol of an element',
  hint: 'Xe',
  problems: [{ code: 'formula/unknown-symbol', message: 'There is no element Xx.' }],
}
class FormulaMistake extends SaltwrightError {}

describe('an error of the library', () => {
  it('carries what it was told, under the name of its class', () => {
    const error = new FormulaMistake(details)
    expect(error).toBeInstanceOf(Error)
    expect(error).toMatchObject({ ...details, name: 'FormulaMistake' })
    expect(String(error)).toBe('FormulaMistake: There is no element Xx.')
  })

  it('is plain data as JSON', () => {
    expect(new FormulaMistake(details).toJSON()).toStrictEqual({ ...details, name: 'FormulaMistake' })
    expect(JSON.parse(JSON.stringify(new SaltwrightError({ code: 'a/b', message: 'No.' })))).toEqual({
      name: 'SaltwrightError',
      code: 'a/b',
      message: 'No.',
    })
  })

  it.each([
    { what: 'one of a subclass', value: new FormulaMistake(details), isOurs: true },
    {
      what: 'one of another copy of the library',
      value: Object.assign(new Error('No.'), { code: 'a/b', problems: undefined }),
      isOurs: true,
    },
    { what: 'an error of the system', value: Object.assign(new Error('No.'), { code: 'ENOENT' }), isOurs: false },
    {
      what: 'an error with a number for a code',
      value: Object.assign(new Error('No.'), { code: 5, problems: [] }),
      isOurs: false,
    },
    { what: 'an error without a code', value: Object.assign(new Error('No.'), { problems: [] }), isOurs: false },
    { what: 'plain data', value: new FormulaMistake(details).toJSON(), isOurs: false },
    { what: 'a text', value: 'No.', isOurs: false },
    { what: 'nothing', value: undefined, isOurs: false },
    { what: 'null', value: null, isOurs: false },
  ])('is told from others: $what', ({ value, isOurs }) => expect(isSaltwrightError(value)).toBe(isOurs))
})

describe('an attempt', () => {
  it('gives what was read', () => expect(attempt(() => 5)).toStrictEqual({ ok: true, value: 5 }))

  it('gives an error of the library as data', () => {
    const error = new FormulaMistake(details)
    const outcome = attempt(() => {
      throw error
    })
    expect(outcome).toStrictEqual({ ok: false, error })
  })

  it('does not hide any other', () => {
    const bug = new TypeError('A bug.')
    const act = () =>
      attempt(() => {
        throw bug
      })
    expect(act).toThrow(bug)
  })
})

describe('a value that may be forged', () => {
  const refused = (error: unknown): unknown => {
    const read = () =>
      unlessForged(
        () => {
          throw error
        },
        (cause) => new FormulaMistake(details, cause),
      )
    try {
      return read()
    } catch (thrown) {
      return thrown
    }
  }

  it('is refused as a whole, with what went wrong as the cause', () => {
    const bare = new TypeError('parts is null')
    expect(refused(bare)).toBeInstanceOf(FormulaMistake)
    expect(refused(bare)).toHaveProperty('cause', bare)
  })

  it('and errors of the library stay as they are, without a cause', () => {
    const ours = new FormulaMistake(details)
    expect(refused(ours)).toBe(ours)
    expect(ours).not.toHaveProperty('cause')
  })

  it('what can be read is read', () =>
    expect(
      unlessForged(
        () => 5,
        () => new FormulaMistake(details),
      ),
    ).toBe(5))
})

describe('what was found is shown', () => {
  it.each<[found: unknown, shown: string]>([
    ['two\nlines', '"two\\nlines"'],
    ['', '""'],
    [{}, 'an object'],
    [[1, 2], 'an array'],
    [null, 'null'],
    [undefined, 'undefined'],
    [() => 5, 'a function'],
    [class {}, 'a function'],
    [-0.5, '-0.5'],
    [5n, '5'],
    [true, 'true'],
    [Symbol('mass'), 'Symbol(mass)'],
  ])('%# as %2$s', (found, shown) => expect(showFound(found)).toBe(shown))

  it('even where it lets nobody look', () => {
    const { proxy, revoke } = Proxy.revocable([], {})
    revoke()
    expect(showFound(proxy)).toBe('an object')
  })

  it('whole up to sixty characters, and cut to as many beyond', () => {
    expect(showFound('x'.repeat(58))).toBe(`"${'x'.repeat(58)}"`)
    expect(showFound('x'.repeat(59))).toBe(`"${'x'.repeat(56)}...`)
    expect(showFound(10n ** 59n)).toBe(`1${'0'.repeat(59)}`)
    expect(showFound(10n ** 60n)).toBe(`1${'0'.repeat(56)}...`)
  })
})
