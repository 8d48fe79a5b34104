import { assessPreparation, type Plan, planClass, planPreparation } from 'saltwright/preparation'
import { assessmentSheet, benchSheet, classCsv } from 'saltwright/report'
import { describe, expect, it } from 'vitest'
import { doubleSaltAsPrinted, withCarbonate } from './recipes.js'

const codes = ({ findings }: Pick<Plan, 'findings'>): readonly string[] => findings.map(({ code }) => code)

describe('a supply of which nothing is needed', () => {
  const plan = planPreparation(withCarbonate)

  it('has no equivalents, and the plan says so', () => {
    expect(plan.supplies.map(({ excess }) => excess === undefined)).toEqual([false, false, true])
    expect(codes(plan)).toEqual(['supply-not-needed', 'claim-does-not-hold'])
    expect(plan.findings.at(-1)?.numbers).toEqual({})
  })

  it('is marked in sheets and lists', () => {
    expect(benchSheet(plan)).toMatch(/FeCO₃ +5\.000 g +FeCO₃ +0\.04316 mol +not needed/)
    expect(benchSheet(plan)).toMatch(/air +as needed +O₂/)
    const records = { format: 'saltwright/records@1', product: { mass: '9.8 g' } } as const
    expect(assessmentSheet(assessPreparation(plan, records))).toMatch(/FeCO₃ +5\.000 g +0\.04316 mol +not needed/)
    const list = planClass(withCarbonate, [{ name: 'Bench 1', scale: { amount: '0.0500 mol' } }])
    expect(classCsv(list)).toContain('Bench 1,FeCO3,FeCO3,5,g,0.04316,,13.9')
  })
})

describe('the claim of an excess', () => {
  it.each([
    { excess: '6 %', verdict: 'claim-holds' },
    { excess: '0.06', verdict: 'claim-holds' },
    { excess: '6.0 %', verdict: 'claim-holds' },
    { excess: '5.9 %', verdict: 'claim-does-not-hold' },
    { excess: '5.96 %', verdict: 'claim-holds' },
    { excess: '10 %', verdict: 'claim-does-not-hold' },
    { excess: '0 %', verdict: 'claim-does-not-hold' },
  ])('of $excess, to its last digit: $verdict', ({ excess, verdict }) => {
    const claims = [{ of: '(NH4)2SO4', excess }]
    expect(codes(planPreparation({ ...doubleSaltAsPrinted, claims }))).toEqual([verdict])
  })

  it('beside the claim that it limits: both are named, and both have to hold', () => {
    const claims = [{ of: '(NH4)2SO4', limiting: true, excess: '6 %' }] as const
    const [finding] = planPreparation({ ...doubleSaltAsPrinted, claims }).findings
    expect(finding?.code).toBe('claim-does-not-hold')
    expect(finding?.message).toContain('limits and is in 6 % excess')
  })

  it('finds the substance whatever way it is written', () => {
    const claims = [
      { of: 'FeSO4', limiting: true },
      { of: 'SO4(NH4)2', excess: '6 %' },
    ] as const
    expect(codes(planPreparation({ ...doubleSaltAsPrinted, claims }))).toEqual(['claim-holds', 'claim-holds'])
  })
})
