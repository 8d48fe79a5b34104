import { describe, expect, it } from 'vitest'
import { checkConcentration, stockReagents } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

const formic = { substance: 'HCOOH', massFraction: '90 %', density: '1.13 g/mL', printed: '23.6 mol/L' } as const

describe('a label that contradicts itself', () => {
  const { calculated, printed, deviation, agrees, findings } = checkConcentration(formic)
  it('is found out', () => expect(agrees).toBe(false))
  it('by so much', () => expect(deviation.value.toFixed(1)).toBe('-6.4'))
  it('with a finding that has the numbers', () => {
    expect(findings).toEqual([
      {
        code: 'concentration-inconsistent',
        severity: 'doubt',
        message:
          '23.6 mol/L is printed for HCOOH, but mass fraction and density give 22 mol/L: one of the three belongs to another solution.',
        numbers: { printed, calculated },
      },
    ])
  })
  it('unless the limit is wide enough', () => {
    expect(checkConcentration({ ...formic, within: '7 %' })).toMatchObject({ agrees: true, findings: [] })
    expect(checkConcentration({ ...formic, within: 0.06 }).agrees).toBe(false)
  })
})

it('the limit itself is still agreement, above and below', () => {
  // by these weights H2SO4 has 64 g/mol: 640 g in a litre are 10 mol/L, 25 % above 8 mol/L and 20 % below 12.5 mol/L
  const weights = { name: 'invented', values: { H: '2', S: '20', O: '10' } }
  const agrees = (printed: `${number} mol/L`, within: `${number} %`) =>
    checkConcentration({ substance: 'H2SO4', massFraction: '64 %', density: '1 g/mL', printed, within, weights }).agrees
  expect([agrees('8 mol/L', '25 %'), agrees('8 mol/L', '24.99 %')]).toEqual([true, false])
  expect([agrees('12.5 mol/L', '20 %'), agrees('12.5 mol/L', '19.99 %')]).toEqual([true, false])
})

it('a label within 1 % agrees', () => {
  const acid = { substance: 'H2SO4', massFraction: '96 %', density: '1.84 g/mL', printed: '18.0 mol/L' } as const
  expect(checkConcentration(acid)).toMatchObject({ agrees: true, findings: [] })
})

it('three strengths of the table of stock reagents contradict themselves by more than 1 %', () => {
  const odd = stockReagents.flatMap(({ formula, strengths }) =>
    strengths
      .filter((strength) => !checkConcentration({ ...strength, substance: formula }).agrees)
      .map(({ massFraction, printed, note }) => ({ formula, massFraction, printed, explained: note !== undefined })),
  )
  expect(odd).toEqual([
    { formula: 'HClO4', massFraction: '61.3 %', printed: '9.5 mol/L', explained: true },
    { formula: 'NH3', massFraction: '28.0 %', printed: '14.5 mol/L', explained: true },
    { formula: 'HCOOH', massFraction: '90 %', printed: '23.6 mol/L', explained: true },
  ])
})

it.each([
  { label: null, code: 'solution/not-an-object' },
  { label: { ...formic, printed: undefined }, code: 'quantity/not-text' },
  { label: { ...formic, printed: '0 mol/L' }, code: 'solution/not-above-zero' },
  { label: { ...formic, printed: '23.6 g' }, code: 'quantity/wrong-dimension' },
  { label: { ...formic, within: 0 }, code: 'solution/not-above-zero' },
  { label: { ...formic, massFraction: undefined }, code: 'quantity/not-text' },
])('$label is refused: $code', ({ label, code }) => {
  expect(refusal(() => checkConcentration(label as never)).code).toBe(code)
})
