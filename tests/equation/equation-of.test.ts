import { describe, expect, it } from 'vitest'
import { EquationError, equationOf, isEquation, parseEquation } from '../../src/equation/index.js'
import { isSaltwrightError } from '../../src/errors.js'
import { refusal } from './refusal.js'

const text = 'ZnSO4(aq) + 7 H2O(l) -> ZnSO4·7H2O(s)'

describe('an equation or its text', () => {
  it('is the equation itself', () => {
    const equation = parseEquation(text)
    expect(equationOf(equation)).toBe(equation)
  })

  it('is the equation that the text says', () => expect(equationOf(text).right[0]?.state).toBe('s'))

  it('is read again where another copy of the library has read it', () => {
    const { left, right, arrow } = parseEquation(text)
    expect(equationOf({ text, left, right, arrow } as never)).toEqual(parseEquation(text))
    expect(refusal(() => equationOf({ text: 'H2', left, right, arrow } as never)).code).toBe('equation/missing-arrow')
  })

  it.each([undefined, null, 5, true, {}, [], () => text, { text }, { text, left: [], right: [] }, new Map()])(
    '%s is neither',
    (value) => {
      expect(isEquation(value)).toBe(false)
      expect(refusal(() => equationOf(value as never)).code).toBe('equation/not-text')
    },
  )

  it('is told from a text', () => {
    expect([isEquation(text), isEquation(parseEquation(text))]).toEqual([false, true])
  })
})

describe('an error', () => {
  it('belongs to the family, and carries data', () => {
    const error = refusal(() => parseEquation('H2 +'))
    expect([error instanceof EquationError, isSaltwrightError(error), error.name]).toEqual([
      true,
      true,
      'EquationError',
    ])
    expect(JSON.parse(JSON.stringify(error))).toMatchObject({ name: 'EquationError', code: 'equation/missing-arrow' })
  })
})
