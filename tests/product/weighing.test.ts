import { describe, expect, it } from 'vitest'
import { buoyancyIgnored, netMass } from '../../src/product/index.js'
import { quantity, standardUncertainty } from '../../src/quantity/index.js'
import { refusal } from '../quantity/refusal.js'

describe('a net mass', () => {
  it.each([
    { what: 'of one vessel', weighing: { gross: '18.632 g', tare: '11.204 g' }, net: '7.428 g' },
    {
      what: 'with cap and label weighed apart',
      weighing: { gross: '20.102 g', tare: ['11.204 g', '1.352 g', '0.118 g'] },
      net: '7.428 g',
    },
    { what: 'with a tare of one part', weighing: { gross: '18.632 g', tare: ['11.204 g'] }, net: '7.428 g' },
    { what: 'with a coarser filter paper', weighing: { gross: '8.632 g', tare: ['0.51 g', '1.352 g'] }, net: '6.77 g' },
    { what: 'of one container in a list', weighing: [{ gross: '5.00 g', tare: '1.00 g' }], net: '4.00 g' },
    {
      what: 'of two containers',
      weighing: [
        { gross: '5.00 g', tare: '1.00 g' },
        { gross: '6.00 g', tare: '2.50 g' },
      ],
      net: '7.50 g',
    },
    { what: 'below zero, as found', weighing: { gross: '11.204 g', tare: '18.632 g' }, net: '-7.428 g' },
    { what: 'of milligrams and grams', weighing: { gross: '250.5 mg', tare: '0.1502 g' }, net: '100.3 mg' },
  ] as const)('$what is $net', ({ weighing, net }) => {
    expect(netMass(weighing).toString()).toBe(net)
  })

  it('gives its parts their roles, and keeps names they have', () => {
    const gross = quantity('18.632 g', { label: 'vial 7, full' })
    const net = netMass({ gross, tare: ['11.204 g', '1.000 g'], of: 'ZnSO4·7H2O' })
    expect(net.naming).toEqual({ label: 'net mass of ZnSO4·7H2O', symbol: 'm', role: 'net', of: 'ZnSO4·7H2O' })
    const [full, tare] = net.operands
    expect(full?.naming).toMatchObject({ label: 'vial 7, full', role: 'gross' })
    expect(tare?.naming).toMatchObject({ role: 'tare', label: 'tare mass of ZnSO4·7H2O' })
    expect(tare?.operands.map(({ naming }) => naming.role)).toEqual(['tare', 'tare'])
  })

  it('takes a tare of one part as it is', () => {
    const tare = quantity('1.00 g', { label: 'vial 7' })
    expect(netMass({ gross: '5.00 g', tare: [tare] }).operands[1]?.input).toBe(tare.input)
    expect(netMass({ gross: '5.00 g', tare: [tare] }).operands[1]?.naming.label).toBe('vial 7')
  })

  it('names a sum of containers by their number', () => {
    const one = { gross: '5.00 g', tare: '1.00 g', of: 'KNO3' } as const
    expect(netMass([one]).naming.label).toBe('net mass of KNO3')
    expect(netMass([one, one, one]).naming).toMatchObject({
      label: 'net mass in 3 containers',
      of: 'KNO3',
      role: 'net',
    })
  })

  it('counts the uncertainty of a tare used twice once', () => {
    const tare = quantity('11.2040(2) g')
    const [full, more] = [quantity('18.6320(2) g'), quantity('19.6320(2) g')]
    const twice = netMass([
      { gross: full, tare },
      { gross: more, tare },
    ])
    expect(standardUncertainty(twice).value.toFixed(6)).toBe('0.000490') // not 0.000400, as four readings would give
  })

  it.each([
    { what: 'no container', call: () => netMass([]), code: 'product/nothing-weighed' },
    { what: 'no tare', call: () => netMass({ gross: '5 g', tare: [] }), code: 'product/nothing-weighed' },
    { what: 'no weighing', call: () => netMass(null as never), code: 'product/not-an-object' },
    { what: 'a weighing that is text', call: () => netMass(['5 g'] as never), code: 'product/not-an-object' },
    {
      what: 'a name that is no text',
      call: () => netMass({ gross: '5 g', tare: '1 g', of: 5 } as never),
      code: 'product/not-text',
    },
    {
      what: 'a volume',
      call: () => netMass({ gross: '5 mL', tare: '1 g' } as never),
      code: 'quantity/wrong-dimension',
    },
    {
      what: 'a bare number',
      call: () => netMass({ gross: 5, tare: '1 g' } as never),
      code: 'quantity/javascript-number',
    },
  ])('is refused for $what', ({ call, code }) => expect(refusal(call).code).toBe(code))

  it.each([
    { call: () => netMass([]), found: 'no container' },
    { call: () => netMass({ gross: '5 g', tare: [] }), found: 'no tare' },
    { call: () => netMass(null as never), found: 'null' },
    { call: () => netMass({ gross: '5 g', tare: '1 g', of: 5 } as never), found: '5' },
  ])('says what was found: $found', ({ call, found }) => expect(refusal(call).found).toBe(found))

  it('comes with a sentence on buoyancy', () => expect(buoyancyIgnored).toContain('not corrected'))
})
