import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { symbols } from '../../src/element/symbols.js'
import {
  anhydrous,
  formatFormula,
  hillFormula,
  parseFormula,
  tryParseFormula,
  withWater,
} from '../../src/formula/index.js'
import { divideFractions, formatFraction, fraction, multiplyFractions } from '../../src/fraction.js'

const count = fc.oneof(
  { weight: 4, arbitrary: fc.constant('') },
  { weight: 6, arbitrary: fc.integer({ min: 2, max: 30 }).map(String) },
  { weight: 1, arbitrary: fc.integer({ min: 1, max: 99 }).map((n) => `${n / 100}`) },
  {
    weight: 1,
    arbitrary: fc.tuple(fc.integer({ min: 1, max: 20 }), fc.integer({ min: 2, max: 4 })).map((pair) => pair.join('/')),
  },
)
/** I and V alone in brackets would be an oxidation number. */
const anySymbol = fc.constantFrom(...symbols.filter((one) => one !== 'I' && one !== 'V'))
const atom = fc.tuple(anySymbol, count).map((pair) => pair.join(''))
const { units } = fc.letrec<{ units: string; unit: string; group: string }>((tie) => ({
  units: fc.array(tie('unit'), { minLength: 1, maxLength: 4 }).map((list) => list.join('')),
  unit: fc.oneof({ maxDepth: 3, depthSize: 'small' }, atom, tie('group')),
  group: fc
    .tuple(fc.constantFrom('()', '[]', '{}'), tie('units'), count)
    .map(([pair, inside, times]) => `${pair[0]}${inside}${pair[1]}${times}`),
}))
const number = fc.oneof(
  fc.constant(''),
  fc.integer({ min: 2, max: 30 }).map(String),
  fc.constantFrom('1/2', '8/3', '0.5', '2.5'),
)
const water = fc.tuple(number, fc.constant('H2O')).map((pair) => `·${pair.join('')}`)
const part = fc.tuple(number, units).map((pair) => pair.join(''))
const charge = fc.constantFrom('', '', '', '^+', '^2-', '^3+', '^0')
/** Texts that are formulas by construction, in their plain spelling, with counts that do not multiply out of bounds. */
const formulas = fc
  .oneof(
    fc.tuple(part, fc.oneof(fc.constant(''), water, fc.constant('·xH2O'))).map((pair) => pair.join('')),
    fc.tuple(units, charge).map((pair) => pair.join('')),
    fc
      .tuple(
        part,
        fc.array(
          part.map((text) => `·${text}`),
          { maxLength: 3 },
        ),
      )
      .map(([first, rest]) => first + rest.join('')),
  )
  .filter((text) => {
    const outcome = tryParseFormula(text)
    return outcome.ok || outcome.error.code !== 'formula/count-out-of-range'
  })

const exact = (text: string): unknown =>
  [...parseFormula(text).counts].map(([symbol, n]) => `${symbol} ${formatFraction(n)}`)
const said = (text: string): unknown => {
  const { charge: total, hydration, parts } = parseFormula(text)
  return [exact(text), total, hydration?.toString() ?? 'unknown', parts.length]
}

describe('a formula that was generated', () => {
  it('is read', () => {
    fc.assert(
      fc.property(formulas, (text) => tryParseFormula(text).ok),
      { numRuns: 400 },
    )
  })

  it.each([['plain'], ['unicode']] as const)('and written in %s says the same when it is read again', (style) => {
    fc.assert(
      fc.property(formulas, (text) => {
        expect(said(formatFormula(text, style))).toEqual(said(text))
      }),
      { numRuns: 400 },
    )
  })

  it.each([['plain'], ['unicode']] as const)('is written in %s the same way twice', (style) => {
    fc.assert(
      fc.property(formulas, (text) => {
        const written = formatFormula(text, style)
        expect(formatFormula(written, style)).toBe(written)
      }),
      { numRuns: 300 },
    )
  })

  it('is written plain as it was, where that was plain', () => {
    fc.assert(
      fc.property(formulas, (text) => {
        expect(formatFormula(text, 'plain')).toBe(text)
      }),
      { numRuns: 300 },
    )
  })

  it('has a Hill formula that holds the same atoms and the same charge', () => {
    fc.assert(
      fc.property(formulas, (text) => {
        const hill = tryParseFormula(hillFormula(text))
        fc.pre(hill.ok) // a sum of fractions may have more decimals than are read
        const sorted = (of: string): unknown => (exact(of) as string[]).sort()
        expect(sorted(hill.value.text)).toEqual(sorted(text))
        expect(hill.value.charge).toBe(parseFormula(text).charge)
      }),
      { numRuns: 300 },
    )
  })

  it('multiplied by a bracket has every atom as often', () => {
    fc.assert(
      fc.property(units, fc.integer({ min: 1, max: 9 }), (inside, n) => {
        const [once, several] = [parseFormula(inside).counts, parseFormula(`(${inside})${n}`).counts]
        for (const [symbol, one] of once)
          expect(several.get(symbol)).toEqual(multiplyFractions(one, fraction(BigInt(n))))
      }),
    )
  })

  it('loses and regains its water', () => {
    fc.assert(
      fc.property(units, fc.integer({ min: 1, max: 30 }), (salt, n) => {
        fc.pre(!/^[HDTO\d()[\]{}./]+$/.test(salt)) // may be water itself
        const dry = parseFormula(salt)
        const hydrate = withWater(salt, n)
        expect(hydrate.hydration?.toNumber()).toBe(n)
        expect(anhydrous(hydrate).text).toBe(dry.text)
      }),
    )
  })

  it('says nothing new with spaces of any kind beside its dots', () => {
    fc.assert(
      fc.property(units, number, fc.constantFrom(' ', '\u00a0', '\u2009', '\u3000'), (salt, n, space) => {
        expect(said(`${salt}${space}·${space}${n}${space}H2O`)).toEqual(said(`${salt}·${n}H2O`))
      }),
    )
  })
})

describe('whatever is handed over', () => {
  const settled = (text: string): boolean => {
    const outcome = tryParseFormula(text)
    if (!outcome.ok) {
      const { code, position, found, expected, hint } = outcome.error
      expect(code).toMatch(/^formula\/[a-z-]+$/)
      expect([typeof found, typeof expected]).toEqual(['string', 'string'])
      if (position !== undefined) expect(position.start <= position.end && position.end <= text.length).toBe(true)
      if (hint !== undefined && !hint.includes(' or ')) expect(tryParseFormula(hint.slice(0, -1)).ok).toBe(true)
      return true
    }
    const { composition, charge: total, notes } = outcome.value
    expect(Number.isSafeInteger(total) && [...composition.values()].every((n) => n.gt(0) && n.isFinite())).toBe(true)
    for (const { suggestion } of notes) expect(suggestion === undefined || tryParseFormula(suggestion).ok).toBe(true)
    return true
  }

  it('is read or refused with a code, a position and a hint that can be read', () => {
    const alphabet = [...'HOCNSaecluo0125()[]{}·.*^+-−²⁻₂½/x ,eE<>', 'H2O', 'SO4', 'Cu', '(aq)', '2+', 'СО']
    const texts = fc.array(fc.constantFrom(...alphabet), { maxLength: 14 }).map((list) => list.join(''))
    fc.assert(fc.property(texts, settled), { numRuns: 3000 })
  })

  it('also where it is any text at all', () => {
    fc.assert(fc.property(fc.string({ unit: 'binary', maxLength: 30 }), settled), { numRuns: 1000 })
  })

  it('and a slip in a real formula changes nothing of that', () => {
    const slips = fc.tuple(
      fc.constantFrom('KAl(SO4)2·12H2O', '[Co(NH3)6]^3+', 'Na2B4O5(OH)4·8H2O', 'CdSO4·8/3H2O'),
      fc.nat(20),
      fc.string({ maxLength: 2 }),
    )
    const slipped = slips.map(([text, at, by]) => text.slice(0, at) + by + text.slice(at + 1))
    fc.assert(fc.property(slipped, settled), { numRuns: 1500 })
  })
})

it('a ratio of atoms is the same for any multiple of a formula', () => {
  fc.assert(
    fc.property(units, fc.integer({ min: 2, max: 9 }), (text, n) => {
      const [one, many] = [parseFormula(text).counts, parseFormula(`${n}${text}`).counts]
      for (const [symbol, atoms] of one) {
        expect(divideFractions(many.get(symbol) ?? fraction(0n), atoms)).toEqual(fraction(BigInt(n)))
      }
    }),
  )
})
