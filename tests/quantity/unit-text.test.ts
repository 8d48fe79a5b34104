import { describe, expect, it } from 'vitest'
import { unitFor } from '../../src/quantity/unit-text.js'
import { refusal } from './refusal.js'

describe('a unit by its name', () => {
  it('is found in any spelling, spaces aside', () => expect(unitFor(' cm³ ', 'volume')).toBe('mL'))

  it.each([
    { text: 'gm', code: 'quantity/unknown-unit', expected: 'g, kg, mg, ug' },
    { text: 'mL', code: 'quantity/wrong-dimension', expected: 'g, kg, mg, ug' },
    { text: 5, code: 'quantity/unknown-unit', expected: 'g, kg, mg, ug' },
    { text: undefined, code: 'quantity/unknown-unit', expected: 'g, kg, mg, ug' },
    { text: '__proto__', code: 'quantity/unknown-unit', expected: 'g, kg, mg, ug' },
  ])('$text is refused as $code', ({ text, code, expected }) => {
    expect(refusal(() => unitFor(text, 'mass'))).toMatchObject({ code, expected })
  })
})
