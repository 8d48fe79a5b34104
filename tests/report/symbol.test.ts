import { expect, it } from 'vitest'
import { splitSymbol } from '../../src/report/symbol.js'

it.each([
  { symbol: 'm', base: 'm', sub: '' },
  { symbol: 'Ar', base: 'A', sub: 'r' },
  { symbol: 'Vm', base: 'V', sub: 'm' },
  { symbol: 'ρ', base: 'ρ', sub: '' },
  { symbol: 'Δm', base: 'Δm', sub: '' },
  { symbol: 'ΔT', base: 'ΔT', sub: '' },
  { symbol: 'ΔrH', base: 'Δ', sub: 'r', rest: 'H' },
  { symbol: 'loss', base: 'loss', sub: '' },
  { symbol: '', base: '', sub: '' },
])('$symbol is $base with $sub below', ({ symbol, base, sub, rest = '' }) =>
  expect(splitSymbol(symbol)).toEqual({ base, sub, rest }),
)
