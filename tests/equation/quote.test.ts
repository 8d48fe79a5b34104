import { describe, expect, it } from 'vitest'
import { brief, quote } from '../../src/equation/quote.js'

describe('a text in a message', () => {
  it('has the code of what a screen would not show, and nothing else', () => {
    const hidden = Array.from({ length: 0x10000 }, (_, code) => code).filter(
      (code) => brief(String.fromCharCode(code)) !== String.fromCharCode(code),
    )
    const range = (first: number, last: number) => Array.from({ length: last - first + 1 }, (_, index) => first + index)
    expect(hidden).toEqual([
      ...range(0, 0x1f),
      ...range(0x7f, 0x9f),
      ...range(0x200b, 0x200f),
      ...range(0x2028, 0x202e),
      ...range(0x2060, 0x206f),
      ...range(0xd800, 0xdfff),
      0xfeff,
    ])
    expect(brief('a\u0007b')).toBe('a\\u{0007}b')
    expect(quote('a\u202eb')).toBe('"a\\u{202E}b"')
  })

  it('is cut at 120 characters', () => {
    expect(brief('x'.repeat(120))).toBe('x'.repeat(120))
    expect(brief('x'.repeat(121))).toBe(`${'x'.repeat(117)}...`)
    expect(brief('\u0000'.repeat(1000))).toHaveLength(120)
  })
})
