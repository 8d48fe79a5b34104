import { describe, expect, it } from 'vitest'
import { exact, quantity } from '../../src/quantity/index.js'
import { amountConcentration, massFraction, molality } from '../../src/solution/index.js'
import { refusal } from '../quantity/refusal.js'

describe('amount concentration', () => {
  it.each([
    { by: { massFraction: '96.0 %', density: '1.84 g/mL', substance: 'H2SO4' }, is: '18.0 mol/L' },
    { by: { massFraction: '0.372', density: '1.18 g/cm3', substance: 'HCl' }, is: '12.0 mol/L' },
    { by: { massFraction: '28.0 %', density: '900. g/L', substance: 'NH3' }, is: '14.8 mol/L' },
    { by: { massFraction: '90 %', density: '1.13 g/mL', substance: 'HCOOH' }, is: '22 mol/L' },
    { by: { massFraction: '56.6 %', basis: 'NH4OH', density: '0.900 g/mL', substance: 'NH3' }, is: '14.5 mol/L' },
    { by: { massFraction: '61.6 %', basis: 'P2O5', density: '1.69 g/mL', substance: 'H3PO4' }, is: '14.7 mol/L' },
    { by: { molality: '2.00 mol/kg', density: '1.08 g/mL', substance: 'KOH' }, is: '1.94 mol/L' },
    { by: { normality: '6 N', equivalentsPerMole: 2, substance: 'H2SO4' }, is: '3 mol/L' },
    { by: { mass: '12.48 g', volume: '100.0 mL', substance: 'CuSO4' }, is: '0.7819 mol/L' },
    { by: { mass: '12.48 g', weighed: 'CuSO4·5H2O', volume: '100.0 mL', substance: 'CuSO4' }, is: '0.4998 mol/L' },
    { by: { amount: '0.0500 mol', volume: '25.0 mL', substance: 'HCl' }, is: '2.00 mol/L' },
  ] as const)('$by is $is', ({ by, is }) => expect(amountConcentration(by).toString()).toBe(is))

  it('of a label that counts as exact goes to the digits of the molar mass', () => {
    const label = { massFraction: exact('96 %'), density: exact('1.84 g/mL'), substance: 'H2SO4' }
    expect(amountConcentration(label).toString()).toBe('18.01 mol/L')
  })

  it('names what went in and what came out', () => {
    const c = amountConcentration({ massFraction: '96 %', density: '1.84 g/mL', substance: 'H2SO4' })
    expect(c.naming).toEqual({
      label: 'amount concentration of H2SO4',
      symbol: 'c',
      of: 'H2SO4',
      role: 'concentration',
    })
    const roles = (q: (typeof c.operands)[number]): readonly unknown[] => [q.naming.role, ...q.operands.flatMap(roles)]
    expect(roles(c)).toEqual(expect.arrayContaining(['density', 'mass fraction', 'molar mass', 'concentration']))
  })

  it('uses the atomic weights it is told to use', () => {
    const label = { massFraction: exact('96 %'), density: exact('1.84 g/mL'), substance: 'H2SO4' } as const
    const weights = { name: 'wall chart', values: { H: '1.0', S: '32.1', O: '16.0' } }
    expect(amountConcentration({ ...label, weights }).toString()).toBe('18.0 mol/L')
  })
})

describe('mass fraction', () => {
  it.each([
    { by: { concentration: '6.00 mol/L', density: '1.10 g/mL', substance: 'HCl' }, is: '19.9 %' },
    { by: { concentration: '18.011 mol/L', density: '1.8400 g/mL', substance: 'H2SO4' }, is: '96.00 %' },
    { by: { molality: '2.000 mol/kg', substance: 'KOH' }, is: '10.09 %' },
  ] as const)('$by is $is', ({ by, is }) => expect(massFraction(by).toString()).toBe(is))
  it('says what it is', () => {
    const w = massFraction({ molality: '2.000 mol/kg', substance: 'KOH' })
    expect(w.naming).toMatchObject({ symbol: 'w', of: 'KOH', role: 'mass fraction' })
  })
})

describe('molality', () => {
  it.each([
    { by: { massFraction: '10.09 %', substance: 'KOH' }, is: '2.000 mol/kg' },
    { by: { massFraction: '57.6 %', basis: 'NH4OH', substance: 'NH3' }, is: '38.8 mol/kg' },
    { by: { concentration: '1.94 mol/L', density: '1.080 g/mL', substance: 'KOH' }, is: '2.00 mol/kg' },
  ] as const)('$by is $is', ({ by, is }) => expect(molality(by).toString()).toBe(is))
  it('says what it is', () => {
    expect(molality({ massFraction: '10.09 %', substance: 'KOH' }).naming).toEqual({
      label: 'molality of KOH',
      symbol: 'b',
      of: 'KOH',
    })
  })
})

describe('laws', () => {
  it.each(['H2SO4', 'KOH', 'NH3'])('every way of stating the strength of %s leads back to the first', (substance) => {
    const [w, density] = [exact('0.25'), exact('1.15 g/mL')]
    const concentration = amountConcentration({ massFraction: w, density, substance })
    const b = molality({ massFraction: w, substance })
    const back = [
      massFraction({ concentration, density, substance }),
      massFraction({ molality: b, substance }),
      massFraction({ molality: molality({ concentration, density, substance }), substance }),
      massFraction({ concentration: amountConcentration({ molality: b, density, substance }), density, substance }),
    ]
    for (const one of back) expect(one.minus(w).value.abs().lt('1e-28')).toBe(true)
  })
})

describe('what is refused', () => {
  const label = { massFraction: '96 %', density: '1.84 g/mL', substance: 'H2SO4' } as const
  it.each([
    { call: () => amountConcentration({ ...label, massFraction: '0 %' }), code: 'solution/not-a-fraction' },
    { call: () => amountConcentration({ ...label, massFraction: '196 %' }), code: 'solution/not-a-fraction' },
    { call: () => amountConcentration({ ...label, density: '0 g/mL' }), code: 'solution/not-above-zero' },
    { call: () => amountConcentration({ ...label, density: '-1 g/mL' }), code: 'solution/not-above-zero' },
    { call: () => amountConcentration({ ...label, density: undefined as never }), code: 'quantity/not-text' },
    { call: () => amountConcentration({ ...label, density: '1.84 g' as never }), code: 'quantity/wrong-dimension' },
    { call: () => amountConcentration({ ...label, basis: 'NaOH' }), code: 'solution/unrelated-bases' },
    { call: () => amountConcentration({ ...label, substance: 'h2so4' }), code: 'formula/unknown-symbol' },
    { call: () => amountConcentration({ substance: 'H2SO4' } as never), code: 'solution/no-strength' },
    { call: () => amountConcentration({ ...label, substance: undefined } as never), code: 'formula/not-text' },
    { call: () => amountConcentration(null as never), code: 'solution/not-an-object' },
    { call: () => amountConcentration('96 %' as never), code: 'solution/not-an-object' },
    { call: () => amountConcentration({ normality: '6 N', substance: 'H2SO4' } as never), code: 'quantity/not-text' },
    {
      call: () => amountConcentration({ molality: '0 mol/kg', density: '1 g/mL', substance: 'KOH' }),
      code: 'solution/not-above-zero',
    },
    {
      call: () => amountConcentration({ mass: '1 g', volume: '0 mL', substance: 'KOH' }),
      code: 'solution/not-above-zero',
    },
    {
      call: () => amountConcentration({ mass: '1 g', weighed: 'NaCl', volume: '1 mL', substance: 'KOH' }),
      code: 'solution/unrelated-bases',
    },
    { call: () => massFraction({ substance: 'KOH' } as never), code: 'solution/no-strength' },
    { call: () => massFraction(undefined as never), code: 'solution/not-an-object' },
    {
      call: () => massFraction({ concentration: '30 mol/L', density: '1.4 g/mL', substance: 'KOH' }),
      code: 'solution/more-solute-than-solution',
    },
    { call: () => molality({ substance: 'KOH' } as never), code: 'solution/no-strength' },
    { call: () => molality({ massFraction: '100 %', substance: 'KOH' }), code: 'solution/more-solute-than-solution' },
    {
      call: () => molality({ concentration: '30 mol/L', density: '1.4 g/mL', substance: 'KOH' }),
      code: 'solution/more-solute-than-solution',
    },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))

  it('says which number it was', () => {
    const error = refusal(() => amountConcentration({ ...label, density: undefined as never }))
    expect(error.message).toContain('density of the solution of H2SO4')
    expect(refusal(() => amountConcentration({ ...label, massFraction: '196 %' }))).toMatchObject({
      message: '196 % cannot be the mass fraction of H2SO4: expected is above 0 and at most 1, or 100 %.',
      found: '196 %',
    })
  })

  it('lists what it found where no strength is stated', () => {
    const vague = { substance: 'KOH', molarity: '2' } as never
    for (const call of [amountConcentration, massFraction, molality]) {
      expect(refusal(() => call(vague)).found).toBe('substance, molarity')
    }
  })

  it('says by what numbers there is more solute than solution', () => {
    // 30 mol/L of 56.105 g/mol are 1.68 kg in a litre that weighs 1.4 kg
    const thick = { concentration: '30.0 mol/L', density: '1.40 g/mL', substance: 'KOH' } as const
    expect(refusal(() => massFraction(thick)).found).toBe('a mass fraction of 120. %')
    expect(refusal(() => molality(thick)).found).toBe('1680 g/L of solute in 1.40 g/mL')
    expect(refusal(() => molality({ massFraction: '100 %', substance: 'KOH' })).found).toBe(
      'a mass fraction of 100. %, without any solvent',
    )
  })

  it('up to all of it may be solute', () => {
    // 40 mol/L of a substance of 25 g/mol are 1 kg in a litre that weighs as much
    const weights = { name: 'invented', values: { Na: '15', F: '10' } }
    const all = { concentration: exact('40 mol/L'), density: exact('1 g/mL'), substance: 'NaF', weights } as const
    expect(massFraction(all).value.toString()).toBe('100')
    expect(refusal(() => molality(all)).code).toBe('solution/more-solute-than-solution')
  })
})

it('a measured mass fraction keeps its identity', () => {
  const w = quantity('96.0 %', { id: 'label of the bottle' })
  const c = amountConcentration({ massFraction: w, density: '1.84 g/mL', substance: 'H2SO4' })
  const inputs = (q: typeof w | (typeof c.operands)[number]): readonly unknown[] =>
    q.operands.length === 0 ? [q.input] : q.operands.flatMap(inputs)
  expect(inputs(c as never)).toContain(w.input)
})
