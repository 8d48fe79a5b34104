import { assessPreparation, type Recipe, type Records } from 'saltwright/preparation'
import { describe, expect, it } from 'vitest'
import { zincSulfate } from './recipes.js'

const recipe = { ...zincSulfate, scale: { of: 'ZnO', amount: '0.0400 mol' } }
const findings = (supplies: NonNullable<Records['supplies']>): readonly string[] =>
  assessPreparation(recipe, { format: 'saltwright/records@1', supplies, product: { mass: '5.1 g' } })
    .findings.filter(({ code }) => code === 'other-limits')
    .map(({ message }) => message)
const said = 'By what was used, H2SO4 limits, not ZnO as planned; the theoretical yield counts it so.'

describe('what limits by the records', () => {
  it.each([
    { what: 'as planned', supplies: [], found: [] },
    {
      what: 'the acid, of which too little was taken',
      supplies: [{ substance: 'H2SO4', volume: '10.0 mL' }],
      found: [said],
    },
    { what: 'the acid by less than a per cent', supplies: [{ substance: 'H2SO4', volume: '13.25 mL' }], found: [] },
    {
      what: 'the acid, because far too much oxide was taken',
      supplies: [{ substance: 'ZnO', mass: '5.000 g' }],
      found: [said],
    },
  ])('$what', ({ supplies, found }) => expect(findings(supplies)).toEqual(found))

  it('never what only clears a leftover, however little of it was taken', () => {
    const cleared: Recipe = {
      ...recipe,
      stages: [...recipe.stages, { name: 'use up the acid', equation: 'MgO + H2SO4 -> MgSO4 + H2O', clears: 'H2SO4' }],
      supplies: [...recipe.supplies, { form: 'solid', substance: 'MgO' }],
    }
    const {
      used,
      limiting,
      findings: all,
    } = assessPreparation(cleared, {
      format: 'saltwright/records@1',
      supplies: [
        { substance: 'ZnO', mass: '3.255 g' },
        { substance: 'MgO', mass: '0.08 g' }, // 0.002 mol for 0.004 mol of acid
      ],
      product: { mass: '5.1 g' },
    })
    expect(used[2]?.excess?.equivalents.toString()).toBe('0.5')
    expect(limiting).toEqual(['ZnO'])
    expect(all).toEqual([])
  })
})
