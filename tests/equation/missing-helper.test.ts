import { describe, expect, it } from 'vitest'
import { checkBalance, parseEquation } from '../../src/equation/index.js'
import { formatFraction } from '../../src/fraction.js'
import { equationCorpora } from './corpus.js'
import { knownEquations } from './known-equations.js'

const helpers = ['H2O', 'H^+', 'OH^-', 'e^-']
const balanced = [...Object.values(knownEquations).flat(), ...equationCorpora.flatMap(({ equations }) => equations)]

/** Every equation with one helper species, and the same without it. */
const cases = balanced.flatMap((text) => {
  const { left, right } = parseEquation(text)
  return (['left', 'right'] as const).flatMap((side) =>
    (side === 'left' ? left : right)
      .filter(
        ({ formula }) =>
          helpers.includes(formula.text) &&
          [...left, ...right].filter((term) => helpers.includes(term.formula.text)).length === 1,
      )
      .map((term) => {
        const rest = (terms: typeof left): string =>
          terms
            .filter((one) => one !== term)
            .map((one) => `${formatFraction(one.coefficient)} ${one.formula.text}`)
            .join(' + ')
        return { text, side, term, without: `${rest(left)} -> ${rest(right)}` }
      })
      .filter(({ without }) => !without.startsWith(' ') && !without.endsWith(' ')),
  )
})

describe('the one helper species that was taken out of an equation is missed where it stood', () => {
  it.each(cases)('$without', ({ side, term, without }) => {
    const { missing } = checkBalance(without)
    expect([missing?.formula.text, missing?.side, missing && formatFraction(missing.coefficient)]).toEqual([
      term.formula.text,
      side,
      formatFraction(term.coefficient),
    ])
  })
})

it('there are many such equations', () => expect(cases.length).toBeGreaterThan(50))
