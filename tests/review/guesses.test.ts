import { expect, it } from 'vitest'
import { calculationOf } from '../../src/review/calculation.js'
import { guessesAt } from '../../src/review/guesses.js'
import { slips } from '../../src/review/slips.js'
import { workedSlips } from './worked-slips.js'

/** What every way of every slip makes of a worked example, to six figures. */
function guessesOf({ example, expected, context }: (typeof workedSlips)[number]): readonly string[] {
  const given = context?.()
  const guesses = guessesAt(calculationOf(expected()), { ...given, given, weights: undefined }, slips)
  return [example, ...guesses.map(({ slip, way, value }) => `  ${slip.name}, ${way.reason}: ${value.toPrecision(6)}`)]
}

/* Read the difference before you accept a new one with `vitest -u`. */
it('every slip makes of every worked example what it made of it before', async () => {
  const first = workedSlips.filter(
    ({ example }, index) => workedSlips.findIndex((one) => one.example === example) === index,
  )
  await expect(`${first.flatMap(guessesOf).join('\n')}\n`).toMatchFileSnapshot('documents/guesses.txt')
})
