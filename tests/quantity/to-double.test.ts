import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { Decimal } from '../../src/decimal.js'
import { toDouble } from '../../src/quantity/to-double.js'

describe('a decimal as a double', () => {
  it.each(['0', '-0', '1', '-1', '0.5', '3.977', '81.379', '1e22', '1e-22', '12345678901234'])(
    '%s is the same as by way of text',
    (text) => {
      expect(toDouble(new Decimal(text))).toBe(new Decimal(text).toNumber())
    },
  )

  it('of up to fourteen digits and a moderate size is the same as by way of text', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: -9_999_999, max: 9_999_999 }),
        fc.integer({ min: -14, max: 14 }),
        (digits, power) => {
          const decimal = new Decimal(`${digits}e${power}`)
          expect(toDouble(decimal)).toBe(decimal.toNumber())
        },
      ),
    )
  })

  it('of any other is within a unit of the last digit', () => {
    fc.assert(
      fc.property(fc.bigInt({ min: 1n, max: 10n ** 34n }), fc.integer({ min: -140, max: 140 }), (digits, power) => {
        const decimal = new Decimal(`${digits}e${power}`)
        expect(Math.abs(toDouble(decimal) / decimal.toNumber() - 1)).toBeLessThanOrEqual(4 * Number.EPSILON)
      }),
    )
  })
})
