import { describe, expect, it } from 'vitest'
import { anhydrous, formatFormula, hillFormula, tryParseFormula } from '../../src/formula/index.js'

/** Milliseconds of a call, at best of some. */
function milliseconds(call: () => unknown, calls = 3): number {
  const times = Array.from({ length: calls }, () => {
    const start = performance.now()
    call()
    return performance.now() - start
  })
  return Math.min(...times)
}

describe('hostile texts are settled soon', () => {
  const million = 1_048_576

  it.each([
    ['brackets', '('.repeat(million)],
    ['waters', 'H2O·'.repeat(million / 4)],
    ['digits', `H${'1'.repeat(million)}`],
    ['control characters', '\u0000'.repeat(million)],
    ['letters', 'cuso'.repeat(million / 4)],
    ['spaces', ' '.repeat(million)],
  ])('a megabyte of %s, in less than 100 ms', (_, text) => {
    expect(tryParseFormula(text).ok).toBe(false)
    expect(milliseconds(() => tryParseFormula(text))).toBeLessThan(100)
  })

  it.each([
    ['H'.repeat(10_000)],
    ['C'.repeat(5_000).concat('I'.repeat(5_000))],
    ['H2O.'.repeat(2_499).concat('H2O')],
    ['K2.2Na'.repeat(1_600)],
    ['NaCl2.2MgSO4'.repeat(800)],
    ['H1/2'.repeat(2_500)],
    ['H1/999983He1/999979'.repeat(500)],
    [`${'('.repeat(31)}H${')'.repeat(31)}`.repeat(150)],
    [`(${'H2O·'.repeat(2_000)}H2O)2`],
    ['(H2O·NaCl)'.repeat(900)],
    ['CUO203'.repeat(1_660)],
    ['C20H'.repeat(2_500)],
    ['CuSO5'.repeat(2_000)],
    ['C1'.repeat(5_000)],
    ['e^-·'.repeat(2_000).concat('e^-')],
    [`H${'^+'.repeat(4_999)}`],
    [`H${'-'.repeat(9_000)}`],
    ['H2. '.repeat(2_499).concat('H')],
    [`H${' '.repeat(9_990)}O`],
    ['H2x5'.repeat(2_400)],
    ['co1'.repeat(26)],
    ['ncoshiy2'.repeat(10)],
    ['(((co'.repeat(16)],
  ])('%# whatever is asked of them', (text) => {
    const ask = (): void => {
      const outcome = tryParseFormula(text)
      if (!outcome.ok) return
      const { composition, counts, parts, hydration, notes } = outcome.value
      for (const part of parts) expect(part.counts).toBeDefined()
      expect([composition, counts, hydration, notes]).toHaveLength(4)
      expect(formatFormula(outcome.value, 'plain').length).toBeGreaterThan(0)
      expect(hillFormula(outcome.value).length).toBeGreaterThan(0)
    }
    expect(milliseconds(ask)).toBeLessThan(400)
  })

  it('takes time in proportion to the length', () => {
    const time = (length: number): number => milliseconds(() => tryParseFormula('KAl(SO4)2'.repeat(length)), 30)
    time(100)
    expect(time(1_000)).toBeLessThan(40 * Math.max(time(100), 0.05))
  })

  it('loses its water from many places', () => {
    expect(anhydrous(`NaCl${'·H2O'.repeat(2_000)}`).text).toBe('NaCl')
  })

  it.each([['__proto__'], ['constructor'], ['toString'], ['hasOwnProperty'], ['valueOf']])(
    '%s is no formula and no symbol',
    (text) => {
      expect(tryParseFormula(text).ok).toBe(false)
    },
  )
})
