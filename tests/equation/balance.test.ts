import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { balance, checkBalance, lowestTerms, parseEquation } from '../../src/equation/index.js'
import { isSaltwrightError } from '../../src/errors.js'
import { elementaryReactions, knownEquations } from './known-equations.js'
import { refusal } from './refusal.js'

/** An equation without its numbers. */
function skeleton(text: string): string {
  const side = (half: string): string =>
    half
      .split(' + ')
      .map((term) => term.replace(/^\d+ /, ''))
      .join(' + ')
  return text.split(' -> ').map(side).join(' -> ')
}

const known = Object.entries(knownEquations).flatMap(([kind, all]) => all.map((text) => [kind, text] as const))

describe('known equations', () => {
  it.each(known)('%s: %s', (_, text) => {
    expect(balance(skeleton(text)).text).toBe(text)
    expect(balance(text).text).toBe(text)
  })
})

describe('balancing', () => {
  it.each([
    ['Al + H^+ -> Al^3+ + H2', '2 Al + 6 H^+ -> 2 Al^3+ + 3 H2'],
    ['H2+O2=H2O', '2 H2 + O2 = 2 H2O'],
    ['N2(g) + H2(g) ⇌ NH3(g)', 'N2(g) + 3 H2(g) <=> 2 NH3(g)'],
    ['H2 + 0.5 O2 <-> H2O', '2 H2 + O2 <-> 2 H2O'],
    ['BaCl2 + Na2SO4 -> BaSO4↓ + NaCl', 'BaCl2 + Na2SO4 -> BaSO4(s) + 2 NaCl'],
    ['Fe0.947O + O2 -> Fe2O3', '4000 Fe0.947O + 841 O2 -> 1894 Fe2O3'],
    ['CdSO4·8/3H2O -> CdSO4 + H2O', '3 CdSO4·8/3H2O -> 3 CdSO4 + 8 H2O'],
    ['CaSO4·½H2O + H2O -> CaSO4·2H2O', '2 CaSO4·1/2H2O + 3 H2O -> 2 CaSO4·2H2O'],
    ['H2SO4 + Cu -> CuSO4 + SO2 + H2O + H2O', '2 H2SO4 + Cu -> CuSO4 + SO2 + 2 H2O'],
    ['H2O(l) + H2O + SO3 -> H2SO4', 'H2O(l) + SO3 -> H2SO4'],
    ['D2 + O2 -> D2O', '2 D2 + O2 -> 2 D2O'],
    ['C1000000H2 + O2 -> CO2 + H2O', '2 C1000000H2 + 2000001 O2 -> 2000000 CO2 + 2 H2O'],
  ])('%s becomes %s', (text, balanced) => expect(balance(text).text).toBe(balanced))

  it('takes an equation as well as its text, and one from another copy of the library', () => {
    const text = 'H2 + O2 -> H2O'
    const foreign = { text, left: [], right: [], arrow: 'forward' } as never
    for (const given of [text, parseEquation(text), foreign]) expect(balance(given).text).toBe('2 H2 + O2 -> 2 H2O')
  })

  it('writes 1 as no number', () => {
    expect(balance('H2 + O2 -> H2O').left.map(({ coefficientWritten }) => coefficientWritten)).toEqual([true, false])
  })
})

describe('a species on the wrong side', () => {
  it.each([
    ['Zn + H2 -> ZnSO4 + H2SO4', 'H2 and H2SO4'],
    ['2 H2O + O2 -> 2 H2', 'O2'],
    ['CaO -> CaCO3 + CO2', 'CO2'],
  ])('%s', (text, found) => {
    const error = refusal(() => balance(text))
    expect([error.code, error.found]).toEqual(['equation/wrong-side', found])
    expect(error.hint).toContain('move')
  })

  it.each([
    ['CaO -> CaCO3 + CO2', 'CaO + CO2 -> CaCO3'],
    ['2 H2O + O2 -> 2 H2', '2 H2O -> 2 H2 + O2'],
    ['Zn + H2 -> ZnSO4 + H2SO4', 'Zn + H2SO4 -> ZnSO4 + H2'],
    ['Fe^2+ + e^- -> Fe^3+', 'Fe^2+ -> Fe^3+ + e^-'],
  ])('%s is moved on request: %s', (text, moved) => expect(balance(text, { wrongSide: 'move' }).text).toBe(moved))

  it('is named where every one of several answers would move some', () => {
    const error = refusal(() => balance('C + CO + CO2 + O2 -> N2 + N'))
    expect([error.code, error.basis]).toEqual([
      'equation/wrong-side',
      ['2 CO -> C + CO2', '2 CO -> 2 C + O2', '2 N -> N2'].map((text) =>
        expect.stringContaining(text.split(' -> ')[1]!),
      ),
    ])
  })
})

describe('refusals', () => {
  it.each([
    ['Zn + H2 -> Zn^2+', 'equation/impossible', 'On one side only: H.'],
    ['Fe -> Fe2O3', 'equation/impossible', 'On one side only: O.'],
    ['NaCl -> KCl', 'equation/impossible', 'On one side only: Na and K.'],
    ['H2O -> H2 + O2 + NaCl', 'equation/unused-species', 'Leave out NaCl, or write what becomes of it.'],
    ['Cu(OH)2 -> CuO', 'equation/impossible', 'On one side only: H.'],
    ['Fe^2+ -> Fe^3+', 'equation/impossible', 'e^- on the right would balance it: Fe^2+ -> Fe^3+ + e^-'],
    ['Na^+ -> Na', 'equation/impossible', 'e^- on the left would balance it: Na^+ + e^- -> Na'],
    ['Al(OH)3 -> Al2O3 + H2', 'equation/impossible', undefined],
    ['H2 + He + O2 -> H2O', 'equation/unused-species', 'Leave out He, or write what becomes of it.'],
    ['NaCl + AgNO3 + KBr -> AgCl + NaNO3', 'equation/unused-species', 'Leave out KBr, or write what becomes of it.'],
    ['P4O10 + C -> P4 + CO + CO2', 'equation/underdetermined', 'one by one'],
    ['MnO4^- + H2O2 + H^+ -> Mn^2+ + O2 + H2O', 'equation/underdetermined', 'one by one'],
    ['Ag^+ + NO3^- + Na^+ + Cl^- -> AgCl + Na^+ + NO3^-', 'equation/underdetermined', 'both sides: NO3^- and Na^+.'],
    ['I2(s) + I2(g) + H2 -> HI', 'equation/underdetermined', 'one by one'],
    ['CuSO4·xH2O -> CuSO4 + H2O', 'equation/unknown-count', undefined],
    ['Fe -> Fe', 'equation/fine', undefined],
  ])('%s: %s', (text, code, hint) => {
    if (code === 'equation/fine') return expect(balance(text).text).toBe(text)
    const error = refusal(() => balance(text))
    expect(error.code).toBe(code)
    expect(error.hint ?? '').toContain(hint ?? '')
    expect(error.hint === undefined).toBe(hint === undefined)
  })

  it.each(elementaryReactions)('%s has more than one independent answer, and so is only checked', (text) => {
    const error = refusal(() => balance(text))
    expect(error.code).toBe('equation/underdetermined')
    expect(error.basis).toHaveLength(2)
    for (const equation of error.basis!) expect(checkBalance(equation).balanced).toBe(true)
    expect(checkBalance(text).balanced).toBe(true)
  })

  it('lists independent reactions that leave every species on its side', () => {
    const { basis, message } = refusal(() => balance('MnO4^- + H2O2 + H^+ -> Mn^2+ + O2 + H2O'))
    expect(basis).toEqual(['2 H2O2 -> O2 + 2 H2O', '4 MnO4^- + 12 H^+ -> 4 Mn^2+ + 5 O2 + 6 H2O'])
    expect(message).toContain('2 H2O2 -> O2 + 2 H2O; 4 MnO4^-')
  })

  it('carries the basis into JSON', () => {
    expect(refusal(() => balance('P4O10 + C -> P4 + CO + CO2')).toJSON()).toMatchObject({
      code: 'equation/underdetermined',
      basis: ['P4O10 + 10 C -> P4 + 10 CO', 'P4O10 + 5 C -> P4 + 5 CO2'],
    })
  })

  it('gives a basis even where there are too many simple reactions to follow', () => {
    const hydrocarbons = Array.from({ length: 20 }, (_, index) => `C${index + 1}H${2 * index + 4}`)
    const text = `${hydrocarbons.slice(0, 10).join(' + ')} -> ${hydrocarbons.slice(10).join(' + ')} + H2 + C + CH2`
    const error = refusal(() => balance(text))
    expect([error.code, error.basis?.length]).toEqual(['equation/underdetermined', 21])
    for (const equation of error.basis!) expect(checkBalance(equation).balanced).toBe(true)
  })

  it('names what takes no part beside reactions that do', () => {
    const error = refusal(() => balance('C + O2 + H2 + He -> CO2 + CO + H2O'))
    expect([error.code, error.found]).toEqual(['equation/unused-species', 'He'])
  })

  it('keeps a long equation out of its message', () => {
    const text = `${Array.from({ length: 30 }, (_, index) => `C${index + 1}H${index + 2}`).join(' + ')} -> Na`
    expect(refusal(() => balance(text)).message.length).toBeLessThan(400)
  })

  it.each([undefined, null, 5, {}, [], { text: 5 }])('%s is no equation', (value) => {
    expect(refusal(() => balance(value as never)).code).toBe('equation/not-text')
  })

  it.each([null, 'move', 5])('%s are no options', (options) => {
    expect(refusal(() => balance('H2 -> H', options as never)).code).toBe('equation/unknown-option')
  })

  it('an option that does not exist', () => {
    const error = refusal(() => balance('H2 -> H', { wrongSide: 'drop' as never }))
    expect([error.code, error.path, error.expected]).toEqual([
      'equation/unknown-option',
      ['wrongSide'],
      '"refuse" or "move"',
    ])
  })

  it('not 100 terms', () => {
    const text = `${Array.from({ length: 99 }, (_, index) => `H${index + 1}`).join(' + ')} -> H100`
    expect(refusal(() => balance(text)).code).toBe('equation/underdetermined')
  })

  it('more than 100 terms', () => {
    const text = `${Array.from({ length: 100 }, (_, index) => `H${index + 1}`).join(' + ')} -> O2`
    const error = refusal(() => balance(text))
    expect([error.code, error.found]).toEqual(['equation/too-many-species', '101 terms'])
  })
})

describe('laws', () => {
  const symbols = ['H', 'C', 'N', 'O', 'Na', 'S', 'Cl', 'Fe'] as const
  const formula = fc
    .uniqueArray(fc.tuple(fc.constantFrom(...symbols), fc.integer({ min: 1, max: 9 })), {
      minLength: 1,
      maxLength: 4,
      selector: ([symbol]) => symbol,
    })
    .map((atoms) => atoms.map(([symbol, count]) => `${symbol}${count === 1 ? '' : count}`).join(''))
  const charge = fc.constantFrom('', '', '', '^+', '^-', '^2+', '^3-')
  const species = fc.tuple(formula, charge).map((parts) => parts.join(''))
  const side = fc.array(species, { minLength: 1, maxLength: 4 }).map((all) => all.join(' + '))
  const equation = fc.tuple(side, side).map((sides) => sides.join(' -> '))

  it('an answer is balanced and in lowest terms, and its own answer; everything else is one of our errors', () => {
    fc.assert(
      fc.property(equation, fc.constantFrom('refuse' as const, 'move' as const), (text, wrongSide) => {
        try {
          const answer = balance(text, { wrongSide })
          expect(checkBalance(answer)).toMatchObject({ balanced: true, lowestTerms: true })
          expect(balance(answer).text).toBe(answer.text)
          expect(parseEquation(answer.text).text).toBe(answer.text)
        } catch (error) {
          if (!isSaltwrightError(error)) throw error
          for (const reaction of (error as { basis?: readonly string[] }).basis ?? []) {
            expect(checkBalance(reaction).balanced).toBe(true)
          }
        }
      }),
      { numRuns: 1000 },
    )
  })

  it('coefficients that were written do not count, whatever they are', () => {
    const number = fc
      .tuple(fc.integer({ min: 1, max: 99 }), fc.integer({ min: 1, max: 9 }))
      .map(([a, b]) => `${a}/${b} `)
    fc.assert(
      fc.property(
        fc.constantFrom(...known.map(([, text]) => text)),
        fc.array(number, { minLength: 20, maxLength: 20 }),
        (text, numbers) => {
          let next = 0
          const scaled = skeleton(text).replace(/(^|-> | \+ )(?=\S)/g, (before) => before + numbers[next++])
          expect(balance(scaled).text).toBe(text)
        },
      ),
    )
  })

  it('a multiple of a balanced equation goes back to its lowest terms', () => {
    fc.assert(
      fc.property(
        fc.constantFrom(...known.map(([, text]) => text)),
        fc.integer({ min: 2, max: 1000 }),
        (text, factor) => {
          const times = (term: string): string => {
            const [, count = '1', bare] = /^(?:(\d+) )?(.*)$/.exec(term) ?? []
            return `${Number(count) * factor} ${bare}`
          }
          const multiple = text
            .split(' -> ')
            .map((half) => half.split(' + ').map(times).join(' + '))
            .join(' -> ')
          expect(checkBalance(multiple)).toMatchObject({ balanced: true, lowestTerms: false })
          expect([lowestTerms(multiple).text, balance(multiple).text]).toEqual([text, text])
        },
      ),
    )
  })

  it('turning the sides round turns the answer round', () => {
    fc.assert(
      fc.property(fc.constantFrom(...known.map(([, text]) => text)), (text) => {
        const turned = text.split(' -> ').reverse().join(' -> ')
        expect(balance(skeleton(turned)).text).toBe(turned)
      }),
    )
  })
})

describe('fifty species', () => {
  const symbols =
    'H He Li Be B C N O F Ne Na Mg Al Si P S Cl Ar K Ca Sc Ti V Cr Mn Fe Co Ni Cu Zn Ga Ge As Se Br Kr Rb Sr Y Zr Nb Mo Tc Ru Rh Pd Ag Cd In'.split(
      ' ',
    )

  it('are balanced exactly, however large the numbers', () => {
    const chain = symbols.map(
      (symbol, index) => `${symbol}${(index % 7) + 2}${symbols[(index + 1) % 49]}${(index % 5) + 1}`,
    )
    const whole = symbols.map((symbol) => symbol).join('')
    const start = performance.now()
    const answer = balance(`${chain.join(' + ')} -> ${whole}`, { wrongSide: 'move' })
    expect(performance.now() - start).toBeLessThan(1000)
    expect(answer.left.length + answer.right.length).toBe(50)
    expect(checkBalance(answer)).toMatchObject({ balanced: true, lowestTerms: true })
    const digits = [...answer.left, ...answer.right].map(({ coefficient }) => `${coefficient.numerator}`.length)
    expect(Math.max(...digits)).toBeGreaterThan(16)
  })
})
