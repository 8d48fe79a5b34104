import { describe, expect, it } from 'vitest'
import {
  calculationToJSON,
  exact,
  type Quantity,
  quantity,
  roundTo,
  toJSON,
  weightedSum,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

describe('a quantity as a document', () => {
  it.each<{ q: Quantity; json: object }>([
    { q: quantity('3.980 g'), json: { value: '3.980', unit: 'g', significantFigures: 4 } },
    { q: exact('0.0400 mol'), json: { value: '0.0400', unit: 'mol', exact: true } },
    {
      q: quantity('25.00(3) mL').to('L'),
      json: { value: '0.02500', unit: 'L', significantFigures: 4, uncertainty: '0.00003' },
    },
    {
      q: quantity('3.0(1)').minus(quantity('4.0(2)')),
      json: { value: '-1.0', unit: '1', significantFigures: 2, uncertainty: '0.223606797749979' },
    },
    { q: quantity('3.0(1)').minus(quantity('4.0')), json: { value: '-1.0', unit: '1', significantFigures: 2 } },
    { q: exact(2).times(exact(3)), json: { value: '6', unit: '1', exact: true } },
  ])('$json', ({ q, json }) => {
    expect(toJSON(q)).toEqual({ format: 'saltwright/quantity@1', ...json })
    expect(toJSON(q, { origin: false })).toEqual(toJSON(q))
  })

  it('with its origin, where what is shared is once', () => {
    const tare = quantity('11.204(2) g', { label: 'tare', role: 'tare', id: 'w1' })
    const net = quantity('18.632 g', { uncertainty: { standard: '0.001 g', degreesOfFreedom: 9 } }).minus(tare)
    const half = weightedSum([{ times: 0.5, of: net }]).named({ symbol: 'm' })
    const rounded = roundTo(half.to('mg'), { figures: 3 })
    expect(toJSON(rounded, { origin: true })).toEqual({
      format: 'saltwright/calculation@1',
      measurements: [
        {
          kind: 'measured',
          place: -3,
          uncertainty: { standard: '0.001', distribution: 'normal', degreesOfFreedom: 9 },
        },
        { kind: 'measured', place: -3, uncertainty: { standard: '0.002', distribution: 'normal' }, id: 'w1' },
      ],
      nodes: [
        { measurement: 0, value: '18.632', unit: 'g' },
        { measurement: 1, value: '11.204', unit: 'g', label: 'tare', role: 'tare' },
        { rule: 'difference', operands: [0, 1], value: '7.428', unit: 'g' },
        { rule: 'weightedSum', operands: [2], settings: { counts: ['0.5'] }, value: '3.714', unit: 'g', symbol: 'm' },
        { rule: 'conversion', operands: [3], settings: { factor: '1000' }, value: '3714', unit: 'mg' },
        {
          rule: 'rounded',
          operands: [4],
          settings: { rounding: { figures: 3, ties: 'half-even' } },
          value: '3710',
          unit: 'mg',
        },
      ],
      results: [5],
    })
  })

  it('several with what they share', () => {
    const tare = quantity('11.204 g')
    const [a, b] = [quantity('18.632 g').minus(tare), quantity('19.110 g').minus(tare)]
    const document = calculationToJSON([a, b, tare])
    expect(document.measurements.length).toBe(3)
    expect(document.nodes.length).toBe(5)
    expect(document.results).toEqual([2, 4, 1])
  })

  it.each([
    { call: () => toJSON(5 as never) },
    { call: () => toJSON(null as never, { origin: true }) },
    { call: () => calculationToJSON([]) },
    { call: () => calculationToJSON('q' as never) },
    { call: () => calculationToJSON([5] as never) },
  ])('refuses $call', ({ call }) => expect(refusal(call).code).toBe('quantity/not-a-quantity'))
})
