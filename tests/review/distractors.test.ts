import { netMass, percentYield } from 'saltwright/product'
import { exact, type Quantity } from 'saltwright/quantity'
import { slips } from 'saltwright/review'
import { massFromAmount } from 'saltwright/stoichiometry'
import { describe, expect, it } from 'vitest'
import { distractorsFor } from '../../src/review/distractors.js'
import { evidenceOrder } from '../../src/review/slip.js'

const written = (q: Quantity) => ({ text: `${q.value.toPrecision(4)} ${q.unit}`, value: q.value.toPrecision(4) })
const mass = massFromAmount(exact('0.0250 mol'), 'ZnSO4·7H2O')
const all = distractorsFor(mass, {}, written, 100)

describe('wrong answers that slips give', () => {
  it('are as many as asked for, the same ones first', () => {
    expect(all.length).toBeGreaterThan(8)
    for (const most of [0, 1, 4]) expect(distractorsFor(mass, {}, written, most)).toEqual(all.slice(0, most))
  })

  it('are each written once', () => {
    const texts = all.map(({ text }) => text)
    expect(new Set(texts).size).toBe(texts.length)
    expect(texts).not.toContain(written(mass).text)
  })

  it('have one of each slip before a second of any', () => {
    const names = all.map(({ slip }) => slip)
    const distinct = new Set(names).size
    expect(names.length).toBeGreaterThan(distinct)
    expect(new Set(names.slice(0, distinct)).size).toBe(distinct)
  })

  it('come from the best known slips first, with absurd sizes last', () => {
    const firsts = all.slice(0, new Set(all.map(({ slip }) => slip)).size)
    const rank = ({ slip, value }: (typeof all)[number]) => {
      const ratio = Number(value) / mass.value.toNumber()
      const { evidence } = slips.find(({ name }) => name === slip)!
      return evidenceOrder.indexOf(evidence) + (ratio > 20 || ratio < 1 / 20 ? evidenceOrder.length : 0)
    }
    const ranks = firsts.map(rank)
    expect(ranks).toEqual([...ranks].sort((a, b) => a - b))
    expect(ranks.some((each) => each >= evidenceOrder.length)).toBe(true)
  })

  it('differ by more than two per cent', () => {
    for (const { value } of all) expect(Math.abs(Number(value) / mass.value.toNumber() - 1)).toBeGreaterThan(0.02)
    expect(all.map(({ slip }) => slip)).not.toContain('molar-mass-rounded')
  })

  it('say what to look at', () => {
    for (const { slip, advice } of all) expect(slips.find(({ name }) => name === slip)?.advice).toBe(advice)
  })

  it('are never below zero', () => {
    const net = netMass({ gross: '10.250 g', tare: '10.000 g' })
    const tares = (['12.000 g', '9.000 g'] as const).map((text) => exact(text, { role: 'tare', label: `tare ${text}` }))
    const found = distractorsFor(net, { atHand: tares }, written, 20)
    expect(found.map(({ text, slip }) => [text, slip])).toContainEqual(['1.250 g', 'other-tare'])
    for (const { value } of found) expect(Number(value)).toBeGreaterThan(0)
  })

  it('of a yield take what is at hand into account', () => {
    const reactants = [
      { of: 'ZnO', amount: exact('0.0400 mol'), gives: exact('0.0400 mol'), mass: exact('3.255 g') },
      { of: 'H2SO4', amount: exact('0.0440 mol'), gives: exact('0.0440 mol') },
    ]
    const names = distractorsFor(percentYield('9.113 g', '11.502 g'), { reactants }, written, 20).map(
      ({ slip }) => slip,
    )
    expect(names).toContain('yield-on-starting-mass')
    expect(names).toContain('excess-reagent-limits')
  })
})
