import { assessPreparation, planPreparation, type Recipe } from 'saltwright/preparation'
import { exact, type Quantity } from 'saltwright/quantity'
import { contextOf, type ReviewContext, reviewAnswer, worksheetOf } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { alum, zincSulfate } from '../preparation/recipes.js'
import { alumPlan, zincAssessment, zincPlan } from './worksheets.js'

const atHand = ({ atHand: all = [] }: ReviewContext) =>
  all.map((q: Quantity) => `${q.naming.role} of ${q.naming.of ?? '-'}: ${q}`)

describe('what is at hand beside a plan', () => {
  it('the reactants, and how much product each would give', () => {
    const { reactants } = contextOf(zincPlan)
    expect(reactants?.map(({ of, amount, gives, mass }) => [of, `${amount}`, `${gives}`, mass && `${mass}`])).toEqual([
      ['ZnO', '0.04 mol', '0.04 mol', '3.255 g'],
      ['H2SO4', '0.044 mol', '0.044 mol', undefined],
    ])
  })

  it('as much product as the one that is short lets there be', () => {
    const [oxide, acid] = zincSulfate.supplies
    const short = { ...zincSulfate, supplies: [oxide!, { ...acid!, excessFactor: '0.90' } as typeof acid & object] }
    const given = contextOf(planPreparation(short)).reactants?.map(({ of, gives }) => [of, gives.value.toNumber()])
    expect(given).toEqual([
      ['ZnO', 0.04],
      ['H2SO4', 0.036],
    ])
  })

  it('the equations, the overall one first, and every formula once', () => {
    const { equations, formulas } = contextOf(zincPlan)
    expect(equations?.map(String)).toEqual([
      'ZnO + H2SO4 + 6 H2O -> ZnSO4·7H2O',
      'ZnO + H2SO4 -> ZnSO4 + H2O',
      'ZnSO4 + 7H2O -> ZnSO4·7H2O',
    ])
    expect(formulas).toEqual(['ZnO', 'H2SO4', 'H2O', 'ZnSO4·7H2O', 'ZnSO4'])
  })

  it('excess factors, strengths, and the ratios of steps where several use a supply', () => {
    expect(atHand(contextOf(zincPlan))).toEqual(['excess of H2SO4: 1.10', 'concentration of H2SO4: 3.00 mol/L'])
    expect(atHand(contextOf(alumPlan)).filter((line) => line.startsWith('mole ratio of H2SO4'))).toEqual([
      'mole ratio of H2SO4: 0.5',
      'mole ratio of H2SO4: 0.5',
      'mole ratio of H2SO4: 1.5',
    ])
  })

  const withStocks: Recipe = {
    ...zincSulfate,
    supplies: [
      { form: 'solid', substance: 'ZnO' },
      {
        form: 'solution',
        substance: 'H2SO4',
        concentration: '3 mol/L',
        madeFrom: { massFraction: '96 %', density: '1.84 g/mL' },
      },
    ],
  }

  it('what solutions are made from, and what the labels of stocks say', () => {
    expect(atHand(contextOf(planPreparation(withStocks)))).toEqual([
      'concentration of H2SO4: 3 mol/L',
      'mass fraction of H2SO4: 96 %',
      'density of H2SO4: 1.84 g/mL',
      expect.stringMatching(/^concentration of H2SO4: 18\.0/),
    ])
    const [oxide] = withStocks.supplies
    const stock = { form: 'stock', substance: 'H2SO4', massFraction: '96 %', density: '1.84 g/mL' } as const
    expect(atHand(contextOf(planPreparation({ ...withStocks, supplies: [oxide!, stock] })))).toContain(
      'mass fraction of H2SO4: 96 %',
    )
    const from = (madeFrom: object) =>
      planPreparation({ ...withStocks, supplies: [oxide!, { ...withStocks.supplies[1]!, madeFrom } as never] })
    expect(atHand(contextOf(from({ concentration: '6 mol/L' })))).toContain('concentration of H2SO4: 6 mol/L')
    expect(atHand(contextOf(from({ solid: 'H2SO4' })))).toHaveLength(1)
  })

  it('an aliquot', () => {
    const [dissolve, crystallise] = zincSulfate.stages
    const half = planPreparation({ ...zincSulfate, stages: [dissolve!, { ...crystallise!, aliquot: '0.5' }] })
    expect(atHand(contextOf(half))).toContain('aliquot of -: 0.5')
    const { groups } = reviewAnswer(half.theoretical.mass, '23.00 g', { context: contextOf(half) })
    expect(groups[0]?.slips).toContain('aliquot-left-out')
  })

  it('what was weighed: other tares, earlier weighings, and what was really used', () => {
    const context = contextOf(zincPlan, { assessment: zincAssessment })
    expect(atHand(context).slice(2)).toEqual([
      'tare of -: 11.000 g',
      'tare of -: 0.204 g',
      'tare of -: 2.100 g',
      'gross of -: 20.800 g',
    ])
    expect(context.reactants?.[0]?.mass?.toString()).toBe('3.255 g')
  })

  it('the tares of several vessels, or none where only masses are recorded', () => {
    const vessels = assessPreparation(zincPlan, {
      format: 'saltwright/records@1',
      supplies: [{ substance: 'ZnO', mass: '3.255 g' }],
      product: {
        vessels: [
          { gross: '12.000 g', tare: '8.000 g' },
          { gross: '13.000 g', tare: ['8.1 g', '0.1 g'] },
        ],
      },
    })
    const tares = atHand(contextOf(zincPlan, { assessment: vessels })).filter((line) => line.startsWith('tare'))
    expect(tares).toEqual(['tare of -: 8.000 g', 'tare of -: 8.1 g', 'tare of -: 0.1 g'])
    const bare = assessPreparation(zincPlan, { format: 'saltwright/records@1', product: { mass: '9.113 g' } })
    expect(atHand(contextOf(zincPlan, { assessment: bare }))).toHaveLength(2)
  })

  it('what is printed for another scale', () => {
    const larger = planPreparation({ ...zincSulfate, scale: { of: 'ZnSO4·7H2O', amount: '0.0800 mol' } })
    const context = contextOf(larger, { printed: zincPlan })
    const volume = larger.supplies[1]!.exactMeasure as Quantity
    expect(reviewAnswer(volume, '14.7 mL', { context }).candidates[0]?.slips).toEqual(['printed-amount-kept'])
  })

  it('no reactants where one of them is not there at all', () => {
    const [first, ...others] = zincAssessment.used
    const absent = { equivalents: exact('0'), percentExcess: exact('-100 %') }
    const none = { ...zincAssessment, used: [{ ...first!, excess: absent }, ...others] }
    expect(contextOf(zincPlan, { assessment: none }).reactants).toEqual([])
  })

  it('none either where nothing has a need', () => {
    const plan = planPreparation({ ...alum, supplies: alum.supplies.map((supply) => ({ ...supply })) })
    const withoutNeed = { ...plan, supplies: plan.supplies.map((supply) => ({ ...supply, excess: undefined })) }
    expect(contextOf(withoutNeed).reactants).toEqual([])
    const unused = { ...zincAssessment, used: zincAssessment.used.map((each) => ({ ...each, excess: undefined })) }
    expect(contextOf(zincPlan, { assessment: unused }).reactants).toEqual([])
  })

  it('at a scale of nothing there are no ratios of steps', () => {
    const nothing = {
      ...alumPlan,
      scale: { ...alumPlan.scale, amount: alumPlan.scale.amount.minus(alumPlan.scale.amount) },
    }
    expect(atHand(contextOf(nothing)).filter((line) => line.startsWith('mole ratio'))).toEqual([])
  })

  it.each([undefined, null, {}, 'plan', JSON.parse(JSON.stringify(zincPlan))])('%# is no plan', (plan) => {
    expect(() => contextOf(plan as never)).toThrowError(expect.objectContaining({ code: 'review/not-a-plan' }))
  })

  it.each([
    { recipe: null },
    { stages: [null] },
    { overall: { left: [], right: 5 } },
    { scale: { amount: '1 g' } },
    { supplies: [{ ...zincPlan.supplies[0], amount: '0.04 mol' }] },
    { supplies: zincPlan.supplies.map((each) => ({ ...each, excess: { equivalents: 5 } })) },
    { supplies: [{ ...zincPlan.supplies[0], taken: 5 }] },
  ])('a plan with a forged part is none: %j', (part) => {
    expect(() => contextOf({ ...zincPlan, ...part } as never)).toThrowError(
      expect.objectContaining({ code: 'review/not-a-plan' }),
    )
  })

  it('a plan that nobody can look at is none', () => {
    const { proxy, revoke } = Proxy.revocable(zincPlan, {})
    revoke()
    expect(() => contextOf(proxy)).toThrowError(expect.objectContaining({ code: 'review/not-a-plan' }))
  })

  it('and the error that a part led to is the cause', () => {
    expect(() => contextOf({ ...zincPlan, stages: [null] } as never)).toThrowError(
      expect.objectContaining({ cause: expect.any(TypeError) }),
    )
  })

  it.each([
    null,
    5,
    {},
    zincPlan,
    JSON.parse(JSON.stringify(zincAssessment)),
    { ...zincAssessment, format: 'saltwright/assessment@2' },
    { ...zincAssessment, percentYield: '79 %' },
  ])('%# is no assessment', (assessment) => {
    for (const make of [contextOf, worksheetOf])
      expect(() => make(zincPlan, { assessment: assessment as never })).toThrowError(
        expect.objectContaining({ code: 'review/not-an-assessment' }),
      )
  })

  it('and nothing printed but a plan', () => {
    for (const make of [contextOf, worksheetOf])
      expect(() => make(zincPlan, { printed: {} as never })).toThrowError(
        expect.objectContaining({ code: 'review/not-a-plan' }),
      )
    expect(worksheetOf(zincPlan, { printed: alumPlan }).questions).toHaveLength(8)
  })

  it('and null no options', () => {
    expect(() => contextOf(zincPlan, null as never)).toThrowError(
      expect.objectContaining({ code: 'review/not-an-object' }),
    )
  })
})
