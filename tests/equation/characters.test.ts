import { expect, it } from 'vitest'
import {
  isDash,
  isDigit,
  isPlus,
  isSmallLetter,
  isSpace,
  skipDigits,
  skipSpaces,
  trimEnd,
} from '../../src/equation/characters.js'

/** Every character that fits in one code unit and is of a kind, as its code. */
function codesOf(isOfKind: (code: number) => boolean): readonly string[] {
  const codes = Array.from({ length: 0x10000 }, (_, code) => code)
  return codes.filter(isOfKind).map((code) => code.toString(16))
}

const range = (first: number, last: number): readonly string[] =>
  Array.from({ length: last - first + 1 }, (_, index) => (first + index).toString(16))

it('white space is that of every width, and line breaks', () => {
  const rare = ['2028', '2029', '202f', '205f', '3000']
  expect(codesOf(isSpace)).toEqual([...range(0x09, 0x0d), '20', 'a0', ...range(0x2000, 0x200a), ...rare])
})

it('digits are those of ASCII', () => expect(codesOf(isDigit)).toEqual(range(0x30, 0x39)))

it('dashes are hyphens, dashes and minus signs', () => {
  expect(codesOf(isDash)).toEqual(['2d', ...range(0x2010, 0x2015), '2212', 'ff0d'])
})

it('a plus may be of full width', () => expect(codesOf(isPlus)).toEqual(['2b', 'ff0b']))

it('a small letter is one of a to z', () => {
  expect(codesOf((code) => isSmallLetter(String.fromCharCode(code)))).toEqual(range(0x61, 0x7a))
  expect(isSmallLetter('ab')).toBe(false)
})

it('what is skipped lies between two places', () => {
  expect([1, 3, 4].map((end) => skipSpaces('a   b', 1, end))).toEqual([1, 3, 4])
  expect([skipSpaces('a   b', 0, 5), skipSpaces('   ', 0, 3)]).toEqual([0, 3])
  expect([4, 2, 1].map((start) => trimEnd('a   b', start, 4))).toEqual([4, 2, 1])
  expect([trimEnd('a   b', 0, 5), trimEnd('   ', 0, 3)]).toEqual([5, 0])
  expect([1, 3, 4].map((end) => skipDigits('a123b', 1, end))).toEqual([1, 3, 4])
  expect([skipDigits('a123b', 0, 5), skipDigits('123', 0, 3)]).toEqual([0, 3])
})
