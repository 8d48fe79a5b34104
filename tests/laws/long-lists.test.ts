import { inspect } from 'node:util'
import { calculationFromJSON, calculationToJSON, quantity } from 'saltwright/quantity'
import { classReviewSheet } from 'saltwright/report'
import { type BenchResult, reviewClass } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { withSummary } from '../../src/display.js'
import { sameEverywhere } from '../../src/product/same-everywhere.js'

/** More than a call takes arguments, so that nothing may hand a list on as arguments. */
const many = 150_000
const listOf = <T>(make: (index: number) => T): T[] => Array.from({ length: many }, (_, index) => make(index))

describe('a list may be longer than a call can have arguments', () => {
  it('of quantities to save', () => {
    const mass = quantity('3.98 g')
    const { nodes, results } = calculationToJSON(listOf(() => mass))
    expect([nodes.length, results.length]).toEqual([1, many])
    expect(calculationFromJSON(calculationToJSON(listOf(() => mass)))).toHaveLength(many)
  })

  it('of runs that are compared', () => {
    const surplus = quantity('1.12 g')
    expect(sameEverywhere(listOf(() => surplus))).toBe(true)
  })

  it('of rows in a notebook', () => {
    const shown = inspect(withSummary({}, () => ({ title: '', rows: listOf((row) => [`${row}`, 'x']), notes: [] })))
    expect(shown.split('\n').at(-1)).toBe(`  ${many - 1}  x`)
  })

  it('of rows in a sheet', () => {
    const bench: BenchResult = { bench: 'Bench 1', statuses: {}, slips: {}, notFaulted: 0, faulted: 0 }
    const sheet = classReviewSheet({ ...reviewClass([]), benches: listOf(() => bench) })
    expect(sheet.split('Bench 1').length - 1).toBe(many)
  })
})
