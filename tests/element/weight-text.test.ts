import { describe, expect, it } from 'vitest'
import { readWeight } from '../../src/element/weight-text.js'

describe('an atomic weight as printed', () => {
  it.each([
    { written: '63.546', value: '63.546', halfWidth: undefined },
    { written: '63.546 ± 0.003', value: '63.546', halfWidth: '0.003' },
    { written: '63.546±0.003', value: '63.546', halfWidth: '0.003' },
    { written: '63.546 +/- 0.003', value: '63.546', halfWidth: '0.003' },
    { written: '  118.710 ± 0.007 ', value: '118.710', halfWidth: '0.007' },
    { written: '63.546(3)', value: '63.546', halfWidth: '0.003' },
    { written: '173.045(10)', value: '173.045', halfWidth: '0.010' },
    { written: '98(2)', value: '98', halfWidth: '2' },
    { written: '1.0080', value: '1.0080', halfWidth: undefined },
    { written: '40', value: '40', halfWidth: undefined },
    { written: '[1.00784, 1.00811]', value: '1.007975', halfWidth: '0.000135' },
    { written: '[12.0096,12.0116]', value: '12.0106', halfWidth: '0.001' },
    { written: '[1.10, 1.30]', value: '1.20', halfWidth: '0.1' },
    { written: '[1, 2]', value: '1.5', halfWidth: '0.5' },
    { written: '[204.382, 204.385]', value: '204.3835', halfWidth: '0.0015' },
  ])('$written is $value within $halfWidth', ({ written, value, halfWidth }) => {
    expect(readWeight(written)).toEqual({ value, halfWidth })
  })
})

describe('what is not an atomic weight', () => {
  it.each([
    { written: 63.546, code: 'element/not-text', found: '63.546', hint: '"63.546"?' },
    { written: Number.NaN, code: 'element/not-text', found: 'NaN', hint: '"NaN"?' },
    { written: null, code: 'element/not-text', found: 'null', hint: undefined },
    { written: ['63.546'], code: 'element/not-text', found: 'an array', hint: undefined },
    { written: '', code: 'element/bad-weight', found: '""', hint: undefined },
    { written: 'copper', code: 'element/bad-weight', found: '"copper"', hint: undefined },
    { written: '63,546', code: 'element/bad-weight', found: '"63,546"', hint: '"63.546"?' },
    { written: '-63.546', code: 'element/bad-weight', found: '"-63.546"', hint: undefined },
    { written: '0.000', code: 'element/bad-weight', found: '"0.000"', hint: undefined },
    { written: '1000', code: 'element/bad-weight', found: '"1000"', hint: undefined },
    { written: '6.3546e1', code: 'element/bad-weight', found: '"6.3546e1"', hint: undefined },
    { written: '63.', code: 'element/bad-weight', found: '"63."', hint: undefined },
    { written: '.5', code: 'element/bad-weight', found: '".5"', hint: undefined },
    { written: '0x3F', code: 'element/bad-weight', found: '"0x3F"', hint: undefined },
    { written: 'Infinity', code: 'element/bad-weight', found: '"Infinity"', hint: undefined },
    {
      written: '63.546 ± 0.003 ± 0.001',
      code: 'element/bad-weight',
      found: '"63.546 ± 0.003 ± 0.001"',
      hint: undefined,
    },
    { written: '63.546 ± ', code: 'element/bad-weight', found: '"63.546 ±"', hint: undefined },
    { written: '63.546 ± -0.003', code: 'element/bad-weight', found: '"63.546 ± -0.003"', hint: undefined },
    { written: '63.546()', code: 'element/bad-weight', found: '"63.546()"', hint: undefined },
    { written: '63.546(0.003)', code: 'element/bad-weight', found: '"63.546(0.003)"', hint: undefined },
    { written: 'x(3)', code: 'element/bad-weight', found: '"x(3)"', hint: undefined },
    { written: '[1.00784]', code: 'element/bad-weight', found: '"[1.00784]"', hint: undefined },
    { written: '[1.00784, 1.00811', code: 'element/bad-weight', found: '"[1.00784, 1.00811"', hint: undefined },
    { written: '[1, 2, 3]', code: 'element/bad-weight', found: '"[1, 2, 3]"', hint: undefined },
    { written: '[1.00784, x]', code: 'element/bad-weight', found: '"[1.00784, x]"', hint: undefined },
    {
      written: '[98]',
      code: 'element/bad-weight',
      found: '"[98]"',
      hint: '"98" if the mass number is to stand for the atomic weight.',
    },
    {
      written: '(98)',
      code: 'element/bad-weight',
      found: '"(98)"',
      hint: '"98" if the mass number is to stand for the atomic weight.',
    },
    {
      written: '63.546 g/mol',
      code: 'element/bad-weight',
      found: '"63.546 g/mol"',
      hint: 'Leave the unit out: an atomic weight is a bare number.',
    },
    { written: '[1.00811, 1.00784]', code: 'element/bad-bound', found: '"[1.00811, 1.00784]"', hint: undefined },
    { written: '[1.00784, 1.00784]', code: 'element/bad-bound', found: '"[1.00784, 1.00784]"', hint: undefined },
    { written: '1 ± 1', code: 'element/bad-bound', found: '"1 ± 1"', hint: undefined },
    { written: '9(12)', code: 'element/bad-bound', found: '"9 ± 12"', hint: undefined },
  ])('refuses $written as $code', ({ written, code, found, hint }) => {
    expect(() => readWeight(written)).toThrow(expect.objectContaining({ code, found, hint }))
  })

  it('refuses a text of any length at once', () => {
    expect(() => readWeight(`1.${'0'.repeat(1_000_000)}`)).toThrow(
      expect.objectContaining({ code: 'element/bad-weight' }),
    )
  })
})
