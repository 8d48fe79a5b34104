import { describe, expect, it } from 'vitest'
import {
  calculationJsonSchema,
  calculationSchema,
  quantityJsonSchema,
  quantitySchema,
} from '../../src/preparation/index.js'
import {
  calculationToJSON,
  exact,
  fromReadings,
  mean,
  power,
  type Quantity,
  quantity,
  roundTo,
  toJSON,
  weightedSum,
} from '../../src/quantity/index.js'

const x = quantity('2.50(1)', { symbol: 'x', id: 'x', label: 'a ratio', of: 'ZnO', role: 'excess' })
const all: readonly Quantity[] = [
  x,
  exact('0.0400 mol'),
  quantity('250 mL', { uncertainty: { tolerance: '0.15 mL' } }),
  fromReadings(['1.01 g', '1.03 g', '1.00 g']),
  quantity('25.0(2) degC').to('K'),
  quantity('1.50 h').to('s').to('h'),
  weightedSum([{ times: 0.5, of: x }]),
  power(x, -2),
  mean([x, x]),
  roundTo(x, { figures: 2 }),
  roundTo(x, { place: '0.05', rule: 'half-up' }),
]

describe('the schemas of quantities', () => {
  it.each(all.map((q) => ({ rule: q.rule, q })))('accept what is written of $rule $q', ({ q }) => {
    expect(quantitySchema.safeParse(toJSON(q)).success).toBe(true)
    expect(calculationSchema.safeParse(calculationToJSON([q])).success).toBe(true)
  })

  it.each([
    null,
    {},
    { format: 'saltwright/quantity@2', value: '1', unit: 'g', exact: true },
    { format: 'saltwright/quantity@1', value: 1, unit: 'g', exact: true },
    { format: 'saltwright/quantity@1', value: '1,5', unit: 'g', exact: true },
    { format: 'saltwright/quantity@1', value: '1', unit: 'g', exact: true, label: 'x' },
  ])('refuse as a quantity %j', (json) => expect(quantitySchema.safeParse(json).success).toBe(false))

  it.each([
    null,
    { format: 'saltwright/calculation@1', measurements: [], nodes: [], results: [] },
    { ...toJSON(x, { origin: true }), results: ['0'] },
    { ...toJSON(x, { origin: true }), nodes: [{ value: '1', unit: 'g' }] },
    { ...toJSON(x, { origin: true }), measurements: [{ kind: 'guessed', place: 0 }] },
  ])('refuse as a calculation %j', (json) => expect(calculationSchema.safeParse(json).success).toBe(false))

  it('are JSON Schema, too', () => {
    expect(quantityJsonSchema()).toMatchObject({ type: 'object', required: ['format', 'value', 'unit'] })
    expect(calculationJsonSchema()).toMatchObject({ type: 'object', additionalProperties: false })
  })
})
