import { describe, expect, it } from 'vitest'
import { type SolubilityTable, solubilityOf } from '../../src/crystallisation/index.js'
import { refusal } from '../quantity/refusal.js'

const phase = { crystal: 'KNO3', celsius: [0, 20], printed: ['13.3', '31.6'] }
const table: SolubilityTable = {
  salt: 'KNO3',
  name: 'potassium nitrate',
  per: '100 g of water',
  source: 'the wall of Bench 1',
  phases: [phase],
}

describe('a table of one’s own', () => {
  it('is used with its source', () => {
    const { massRatio, source, evidence } = solubilityOf('KNO3', '10 degC', { table })
    expect(massRatio.toString()).toBe('0.224')
    expect(source).toBe('the wall of Bench 1')
    expect(evidence).toBeUndefined()
  })

  it.each([
    { per: '100 g of water', printed: '50', shown: '0.50' },
    { per: '100 g of solution', printed: '50', shown: '1.0' },
    { per: '100 g of water, weighed as crystals', printed: '50', shown: '0.27' },
  ] as const)('may count per $per', ({ per, printed, shown }) => {
    const one = { crystal: 'CuSO4·5H2O', celsius: [20], printed: [printed] }
    const own: SolubilityTable = { salt: 'CuSO4', name: 'copper(II) sulfate', per, source: 'invented', phases: [one] }
    expect(solubilityOf('CuSO4', '20 degC', { table: own, crystal: 'CuSO4·5H2O' }).massRatio.toString()).toBe(shown)
  })

  it('may have temperatures with decimals', () => {
    const own = { ...table, phases: [{ ...phase, celsius: [0, 32.38] }] }
    expect(solubilityOf('KNO3', '32.38 degC', { table: own }).massRatio.toString()).toBe('0.316')
    expect(refusal(() => solubilityOf('KNO3', '10 degC', { table: own })).code).toBe(
      'crystallisation/points-too-far-apart',
    )
  })

  it.each([
    { what: 'no object', own: 7, path: [] },
    { what: 'nothing', own: null, path: [] },
    { what: 'a salt that is no text', own: { ...table, salt: 7 }, path: ['salt'] },
    { what: 'no source', own: { ...table, source: undefined }, path: ['source'] },
    { what: 'another basis', own: { ...table, per: '1 L' }, path: ['per'] },
    { what: 'no list of solids', own: { ...table, phases: {} }, path: ['phases'] },
    { what: 'no solid', own: { ...table, phases: [] }, path: ['phases'] },
    { what: 'a solid that is none', own: { ...table, phases: ['KNO3'] }, path: ['phases', 0] },
    { what: 'a crystal that is no text', own: withPhase({ crystal: 1 }), path: ['phases', 0, 'crystal'] },
    { what: 'temperatures as text', own: withPhase({ celsius: ['0', '20'] }), path: ['phases', 0, 'celsius'] },
    { what: 'no temperatures', own: withPhase({ celsius: [] }), path: ['phases', 0, 'celsius'] },
    { what: 'temperatures that are no list', own: withPhase({ celsius: 0 }), path: ['phases', 0, 'celsius'] },
    { what: 'falling temperatures', own: withPhase({ celsius: [20, 0] }), path: ['phases', 0, 'celsius'] },
    { what: 'an endless temperature', own: withPhase({ celsius: [0, Infinity] }), path: ['phases', 0, 'celsius'] },
    { what: 'too few numbers', own: withPhase({ printed: ['13.3'] }), path: ['phases', 0, 'printed'] },
    { what: 'numbers that are no list', own: withPhase({ printed: '13.3' }), path: ['phases', 0, 'printed'] },
    { what: 'a JavaScript number', own: withPhase({ printed: ['13.3', 31.6] }), path: ['phases', 0, 'printed', 1] },
    { what: 'a number below zero', own: withPhase({ printed: ['-1', '31.6'] }), path: ['phases', 0, 'printed', 0] },
    {
      what: 'more salt than solution',
      own: { ...withPhase({ printed: ['13.3', '100'] }), per: '100 g of solution' },
      path: ['phases', 0, 'printed', 1],
    },
  ])('is refused with $what', ({ own, path }) => {
    const error = refusal(() => solubilityOf('KNO3', '10 degC', { table: own as SolubilityTable }))
    expect(error).toMatchObject({ code: 'crystallisation/bad-table', path })
    expect(error.expected).toBeTruthy()
  })
})

function withPhase(change: object): object {
  return { ...table, phases: [{ ...phase, ...change }] }
}
