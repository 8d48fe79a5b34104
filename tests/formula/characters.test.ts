import { describe, expect, it } from 'vitest'
import * as characters from '../../src/formula/characters.js'
import { cleanText } from '../../src/formula/clean-text.js'
import { isInvisible } from '../../src/formula/complaint.js'

const { closingOf, digitValue, kindAt, plainDigits, runEnd, signAt, skipSpaces, vulgarAt, ...kinds } = characters
const kindsByName: Readonly<Record<string, number>> = kinds
const all = Array.from({ length: 0x10000 }, (_, code) => String.fromCharCode(code))
const ofKind = (kind: number): string => all.filter((one) => kindAt(one, 0) === kind).join('')

describe('what a character can be', () => {
  it.each([
    ['capital', 'ABCDEFGHIJKLMNOPQRSTUVWXYZ'],
    ['small', 'abcdefghijklmnopqrstuvwxyz'],
    ['digit', '0123456789'],
    ['subscript', '₀₁₂₃₄₅₆₇₈₉'],
    ['opening', '([{'],
    ['closing', ')]}'],
    ['caret', '^'],
    ['superscript', '²³¹⁰⁴⁵⁶⁷⁸⁹⁺⁻'],
    ['sign', '+-‐‑‒–—―−'],
    ['dot', '*.:·×˙\u0387•‧∙⋅●⸱・ꞏ･'],
    ['space', ' \u00a0\u2000\u2001\u2002\u2003\u2004\u2005\u2006\u2007\u2008\u2009\u200a\u202f\u205f\u3000'],
    ['vulgar', '¼½¾⅐⅑⅒⅓⅔⅕⅖⅗⅘⅙⅚⅛⅜⅝⅞'],
    ['end', ''],
  ] as const)('%s: %s', (kind, expected) => expect(ofKind(kindsByName[kind] as number)).toBe(expected))

  it('behind the last one is the end', () => expect(kindAt('O', 1)).toBe(kinds.end))
})

describe('as the Unicode standard has it', () => {
  it('a fraction is its numerator and denominator', () => {
    const pairs = all.flatMap((one) => vulgarAt(one, 0)?.join('⁄') ?? [])
    expect(pairs).toEqual([...ofKind(kinds.vulgar)].map((one) => one.normalize('NFKD')))
    expect(vulgarAt('constructor', 0)).toBeUndefined()
  })

  it('a lowered or raised digit is the digit', () => {
    const digits = all.filter((one) => digitValue(one, 0) >= 0)
    expect(digits.join('')).toBe('0123456789²³¹⁰⁴⁵⁶⁷⁸⁹₀₁₂₃₄₅₆₇₈₉')
    for (const one of digits) expect([one, String(digitValue(one, 0))]).toEqual([one, one.normalize('NFKD')])
    expect(digitValue('4', 1)).toBe(-1)
  })
})

/** What the standard calls ignorable or a separator of lines, halves of characters, the braille blank, marks of annotation. */
it('what nobody sees has neither width nor ink by the Unicode standard', () => {
  const unseen = /[\p{Default_Ignorable_Code_Point}\p{Zl}\p{Zp}\p{Cs}\u2800\ufff9-\ufffb]/u
  const ofShorthandOrMusic = /[\u{1bca0}-\u{1bca3}\u{1d173}-\u{1d17a}]/u
  const codes = Array.from({ length: 0x110000 }, (_, code) => code)
  const wrong = codes.filter((code) => isInvisible(code) !== unseen.test(String.fromCodePoint(code)))
  expect(wrong.filter((code) => !ofShorthandOrMusic.test(String.fromCodePoint(code)))).toEqual([])
})

it('signs count up or down', () => {
  expect(all.filter((one) => signAt(one, 0) === 1).join('')).toBe('+⁺')
  expect(all.filter((one) => signAt(one, 0) === -1).join('')).toBe('-‐‑‒–—―⁻−')
  expect(signAt('+', 1)).toBe(0)
})

it('runs end where another kind begins', () => {
  expect([skipSpaces('a \u00a0 b', 1), skipSpaces('ab', 1), skipSpaces('a ', 1)]).toEqual([4, 1, 2])
  expect([runEnd('12a', 0, kinds.digit), runEnd('12a', 1, kinds.small), runEnd('12', 0, kinds.digit)]).toEqual([
    2, 1, 2,
  ])
})

it('digits are written on the line', () => expect(plainDigits('₁²⁄₃∕4x')).toBe('12/3/4x'))

it('each bracket has one that closes it', () => expect([...'([{'].map(closingOf).join('')).toBe(')]}'))

describe('text without markup', () => {
  it.each([
    ['H<sub>2</sub>O', 'H2O'],
    ['Fe<sup>3+</sup>', 'Fe^3+'],
    ['CuSO4&middot;5H2O', 'CuSO4·5H2O'],
    ['Cu&nbsp;O', 'Cu O'],
    ['CuSO_4\\cdot5H_{2}O', 'CuSO4·5H2O'],
    ['\\ce{CuSO4}', 'CuSO4'],
    ['$\\mathrm{CuO}$', 'CuO'],
    ['Cu\\,O', 'CuO'],
    ['\\alpha', 'alpha'],
    ['<b>Cu</b><i>O</i>', 'CuO'],
    ['"CuO"', 'CuO'],
    ["'CuO'", 'CuO'],
    ['`CuO`', 'CuO'],
    ['“CuO”', 'CuO'],
    ['„CuO“', 'CuO'],
    ['‘CuO’', 'CuO'],
    ['«CuO»', 'CuO'],
    ['Cu\u0000\u001f\u007f\u009fO', 'CuO'],
    ['Cu\u0300\u036f\u20d0\u20ffO', 'CuO'],
    ['{CuO}', '{CuO}'],
    ['CuO}', 'CuO'],
    ['}CuO}{Cu}', 'CuO{Cu}'],
    ['СuSО4', 'CuSO4'],
    // what stands beside the ranges that are left out
    ['Cu ~\u00a0O', 'Cu ~\u00a0O'],
    ['Cu\u02ff\u0370\u20cfO', 'Cu\u02ff\u0370\u20cfO'],
    ['Cu\u0080O', 'CuO'],
    ['{Cu}}O{K}', '{Cu}O{K}'],
  ])('%s is %s', (text, clean) => expect(cleanText(text)).toBe(clean))
})
