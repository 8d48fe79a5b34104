import { exact, roundTo } from 'saltwright/quantity'
import { expect, it } from 'vitest'
import { numberPieces } from '../../src/report/finding-lines.js'

const [half, gram] = [exact('0.5'), exact('1 g')]
const third = exact('1').dividedBy(exact('3'))

it.each([
  { numbers: {}, pieces: [] },
  {
    numbers: { equivalents: third },
    pieces: [' (', 'equivalents ', { quantity: roundTo(third, { figures: 3 }) }, ')'],
  },
  { numbers: { percentYield: half }, pieces: [' (', 'percent yield ', { quantity: half }, ')'] },
  {
    numbers: { taken: gram, netMassOfIt: gram },
    pieces: [' (', 'taken ', { quantity: gram }, ', net mass of it ', { quantity: gram }, ')'],
  },
])('the numbers behind a sentence: $pieces.length pieces', ({ numbers, pieces }) => {
  expect(numberPieces(numbers, (q) => q)).toEqual(pieces)
})
