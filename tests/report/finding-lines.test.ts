import { exact } from 'saltwright/quantity'
import { expect, it } from 'vitest'
import { numberPieces } from '../../src/report/finding-lines.js'

const [half, gram] = [exact('0.5'), exact('1 g')]

it.each([
  { numbers: {}, pieces: [] },
  { numbers: { percentYield: half }, pieces: [' (', 'percent yield ', { quantity: half }, ')'] },
  {
    numbers: { taken: gram, netMassOfIt: gram },
    pieces: [' (', 'taken ', { quantity: gram }, ', net mass of it ', { quantity: gram }, ')'],
  },
])('the numbers behind a sentence: $pieces.length pieces', ({ numbers, pieces }) => {
  expect(numberPieces(numbers)).toEqual(pieces)
})
