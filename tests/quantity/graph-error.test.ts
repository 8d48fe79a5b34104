import { describe, expect, it } from 'vitest'
import {
  asDimension,
  coverageFactor,
  exact,
  expandedUncertainty,
  fromJSON,
  fromReadings,
  power,
  quantity,
  reconsider,
  roundTo,
  squareRoot,
  standardUncertainty,
  working,
  writeWithUncertainty,
} from '../../src/quantity/index.js'
import { refusal } from './refusal.js'

const [gram, mole, two] = [quantity('3.0 g'), exact('1 mol'), exact('2')]
const [a, b] = [quantity('1.0(1) g', { id: 'a' }), quantity('2.0(1) g', { id: 'a' })]
const between = [quantity('1.0(1)'), quantity('2.0(1)')] as const

describe('a refusal says what was found, and where', () => {
  it.each<{ call: () => unknown; code: string; found: string; path?: readonly (string | number)[] }>([
    { call: () => gram.times(gram as never), code: 'no-such-product', found: '3.0 g times 3.0 g' },
    { call: () => mole.dividedBy(exact('2 s') as never), code: 'no-such-quotient', found: '1 mol divided by 2 s' },
    { call: () => gram.dividedBy(exact('0')), code: 'division-by-zero', found: '0' },
    { call: () => gram.plus(mole as never), code: 'dimensions-differ', found: '1 mol' },
    { call: () => asDimension(gram, 'amount'), code: 'wrong-dimension', found: '3.0 g' },
    { call: () => gram.plus('1 g' as never), code: 'not-a-quantity', found: '"1 g"' },
    { call: () => Number(gram), code: 'compared-with-operator', found: '3.0 g' },
    { call: () => standardUncertainty(a.plus(b)), code: 'identity-conflict', found: '2.0 g and 1.0 g' },
    { call: () => exact('1.0(1) g'), code: 'bad-uncertainty', found: '"0.1"' },
    { call: () => exact('1 g', { uncertainty: '0.2 g' }), code: 'bad-uncertainty', found: '"0.2 g"' },
    { call: () => quantity('1.0(1) g', { uncertainty: '0.2 g' }), code: 'bad-uncertainty', found: '"0.2 g"' },
    { call: () => squareRoot(exact('-2')), code: 'root-of-negative', found: '-2' },
    { call: () => power(two, 21), code: 'not-a-whole-power', found: '21' },
    { call: () => roundTo(gram, { figures: 0 }), code: 'figures-out-of-range', found: '0' },
    { call: () => roundTo(gram, { figures: 1, rule: 'up' as never }), code: 'unknown-option', found: '"up"' },
    { call: () => reconsider(gram, 'tare' as never), code: 'bad-change', found: '"tare"' },
    { call: () => fromReadings(['1 g']), code: 'too-few-readings', found: 'an array' },
    { call: () => coverageFactor(1.5), code: 'bad-coverage', found: '1.5' },
    { call: () => expandedUncertainty(gram, 2 as never), code: 'uncertainty-not-stated', found: '3.0 g' },
    {
      call: () => quantity('1 g', { wholeNumberZeros: 'some' as never }),
      code: 'unknown-option',
      found: '"some"',
      path: ['wholeNumberZeros'],
    },
    {
      call: () => standardUncertainty(gram, { unstated: 'guess' as never }),
      code: 'unknown-option',
      found: '"guess"',
      path: ['unstated'],
    },
    {
      call: () => standardUncertainty(gram, { correlations: [{ between, coefficient: 2 }] }),
      code: 'bad-correlation',
      found: '2',
      path: ['correlations'],
    },
    { call: () => working(gram, { guardDigits: 11 }), code: 'unknown-option', found: '11', path: ['guardDigits'] },
    {
      call: () => writeWithUncertainty(a, { form: 'words' as never }),
      code: 'unknown-option',
      found: '"words"',
      path: ['form'],
    },
    { call: () => fromJSON({ value: 5 }), code: 'bad-json', found: '5', path: ['value'] },
  ])('$code: $found', ({ call, code, found, path }) => {
    const error = refusal(call)
    expect({ code: error.code, found: error.found, path: error.path }).toEqual({
      code: `quantity/${code}`,
      found,
      path,
    })
  })
})
