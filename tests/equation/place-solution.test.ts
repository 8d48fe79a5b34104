import { expect, it } from 'vitest'
import { oriented } from '../../src/equation/place-solution.js'

it.each([
  ['that moves fewer species', [-1n, -2n, 3n], [1n, 2n, -3n]],
  ['as it is, where that moves fewer', [-1n, 2n, 3n], [-1n, 2n, 3n]],
  ['that leaves the first, where both move as many', [-1n, 2n], [1n, -2n]],
  ['as it is, where that leaves the first', [1n, -2n], [1n, -2n]],
  ['with nothing of some', [0n, -1n, 1n, 0n], [0n, 1n, -1n, 0n]],
  ['that is all below zero', [-1n, -1n, 0n], [1n, 1n, 0n]],
  ['that is all above zero', [1n, 1n, 0n], [1n, 1n, 0n]],
] as const)('a solution %s', (_, values, turned) => expect(oriented(values)).toEqual(turned))
