import { describe, expect, it } from 'vitest'
import { readUncertainty } from '../../src/quantity/statement.js'
import { refusal } from './refusal.js'

describe('statements of uncertainty, as a standard uncertainty in the unit of the input', () => {
  it.each([
    { statement: '0.03 mL', standard: '0.03', distribution: 'normal', degrees: undefined },
    { statement: '30 uL', standard: '0.03', distribution: 'normal', degrees: undefined },
    { statement: '0 mL', standard: '0', distribution: 'normal', degrees: undefined },
    { statement: { standard: '0.03 mL', degreesOfFreedom: 4 }, standard: '0.03', distribution: 'normal', degrees: 4 },
    { statement: { expanded: '0.06 mL', coverageFactor: '2' }, standard: '0.03', distribution: 'normal' },
    {
      statement: { expanded: '0.06 mL', coverageFactor: '2', degreesOfFreedom: 25.6 },
      standard: '0.03',
      distribution: 'normal',
      degrees: 25.6,
    },
    {
      statement: { halfWidth: '0.06 mL', distribution: 'rectangular' },
      standard: '0.0346410',
      distribution: 'rectangular',
    },
    {
      statement: { halfWidth: '0.06 mL', distribution: 'triangular' },
      standard: '0.0244949',
      distribution: 'triangular',
    },
    {
      statement: { halfWidth: '0.06 mL', distribution: 'arcsine', degreesOfFreedom: 2 },
      standard: '0.0424264',
      distribution: 'arcsine',
      degrees: 2,
    },
    { statement: { tolerance: '0.06 mL' }, standard: '0.0244949', distribution: 'triangular' },
    {
      statement: { tolerance: '0.06 mL', distribution: 'rectangular' },
      standard: '0.0346410',
      distribution: 'rectangular',
    },
    { statement: { readability: '0.02 mL' }, standard: '0.0057735', distribution: 'rectangular' },
    { statement: { standardDeviation: '0.06 mL', readings: 4 }, standard: '0.03', distribution: 'normal', degrees: 3 },
    {
      statement: { standardDeviation: '0.06 mL', readings: 4, degreesOfFreedom: 24 },
      standard: '0.03',
      distribution: 'normal',
      degrees: 24,
    },
    { statement: ['0.03 mL', '0.04 mL'], standard: '0.05', distribution: 'normal', degrees: undefined },
    {
      statement: [{ standard: '0.03 mL', degreesOfFreedom: 9 }, '0.04 mL'],
      standard: '0.05',
      distribution: 'normal',
      degrees: 69.4444,
    },
    { statement: ['0 mL', { standard: '0 mL', degreesOfFreedom: 9 }], standard: '0', distribution: 'normal' },
  ])('$statement', ({ statement, standard, distribution, degrees }) => {
    const stated = readUncertainty(statement, 'mL')
    expect(stated.standard.toNumber()).toBeCloseTo(Number(standard), 7)
    expect(stated.distribution).toBe(distribution)
    if (degrees === undefined) expect('degreesOfFreedom' in stated).toBe(false)
    else expect(stated.degreesOfFreedom).toBeCloseTo(degrees, 4)
    expect(Object.isFrozen(stated)).toBe(true)
  })

  it('a difference of temperatures is as many kelvins as degrees Celsius', () => {
    expect(readUncertainty('0.2 K', 'degC').standard.toString()).toBe('0.2')
    expect(readUncertainty('0.2 degC', 'K').standard.toString()).toBe('0.2')
  })

  it('a unit that does not terminate is divided', () => {
    expect(readUncertainty('36 s', 'h').standard.toString()).toBe('0.01')
  })
})

describe('what states no uncertainty', () => {
  it.each([
    { statement: null, code: 'quantity/bad-uncertainty' },
    { statement: undefined, code: 'quantity/bad-uncertainty' },
    { statement: 0.03, code: 'quantity/bad-uncertainty' },
    { statement: () => '0.03 mL', code: 'quantity/bad-uncertainty' },
    { statement: {}, code: 'quantity/bad-uncertainty' },
    { statement: Object.create({ standard: '0.03 mL' }), code: 'quantity/bad-uncertainty' },
    { statement: [], code: 'quantity/bad-uncertainty' },
    { statement: [[]], code: 'quantity/bad-uncertainty' },
    { statement: '', code: 'quantity/empty' },
    { statement: '0.03 g', code: 'quantity/wrong-dimension' },
    { statement: '0.03', code: 'quantity/wrong-dimension' },
    { statement: '-0.03 mL', code: 'quantity/bad-uncertainty' },
    { statement: '0,03 mL', code: 'quantity/decimal-comma' },
    { statement: { standard: 0.03 }, code: 'quantity/javascript-number' },
    { statement: { standard: '0.03 mL', degreesOfFreedom: 0 }, code: 'quantity/bad-uncertainty' },
    { statement: { standard: '0.03 mL', degreesOfFreedom: Number.NaN }, code: 'quantity/bad-uncertainty' },
    { statement: { standard: '0.03 mL', degreesOfFreedom: '9' }, code: 'quantity/bad-uncertainty' },
    { statement: { expanded: '0.06 mL' }, code: 'quantity/not-text' },
    { statement: { expanded: '0.06 mL', coverageFactor: 2 }, code: 'quantity/javascript-number' },
    { statement: { expanded: '0.06 mL', coverageFactor: '0' }, code: 'quantity/bad-uncertainty' },
    { statement: { expanded: '0.06 mL', coverageFactor: '2 mL' }, code: 'quantity/bad-uncertainty' },
    { statement: { halfWidth: '0.06 mL' }, code: 'quantity/bad-uncertainty' },
    { statement: { halfWidth: '0.06 mL', distribution: 'normal' }, code: 'quantity/bad-uncertainty' },
    { statement: { halfWidth: '0.06 mL', distribution: 'constructor' }, code: 'quantity/bad-uncertainty' },
    { statement: { tolerance: '0.06 mL', distribution: '__proto__' }, code: 'quantity/bad-uncertainty' },
    { statement: { standardDeviation: '0.06 mL' }, code: 'quantity/bad-uncertainty' },
    { statement: { standardDeviation: '0.06 mL', readings: 0 }, code: 'quantity/bad-uncertainty' },
    { statement: { standardDeviation: '0.06 mL', readings: 1 }, code: 'quantity/bad-uncertainty' },
    { statement: { standardDeviation: '0.06 mL', readings: 2.5 }, code: 'quantity/bad-uncertainty' },
  ])('$statement is $code', ({ statement, code }) => {
    expect(refusal(() => readUncertainty(statement, 'mL')).code).toBe(code)
  })
})
