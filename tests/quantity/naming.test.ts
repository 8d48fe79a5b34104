import { describe, expect, it } from 'vitest'
import { readNaming } from '../../src/quantity/naming.js'
import { refusal } from './refusal.js'

describe('the names of a quantity', () => {
  it('are kept, and nothing else is', () => {
    const given = { label: 'mass of zinc oxide', symbol: 'm', of: 'ZnO', role: 'mass', unit: 'kg', place: undefined }
    expect(readNaming(given)).toEqual({ label: 'mass of zinc oxide', symbol: 'm', of: 'ZnO', role: 'mass' })
    expect(Object.isFrozen(readNaming(given))).toBe(true)
  })

  it('may all be missing', () => expect(readNaming({ label: undefined })).toEqual({}))

  it.each([null, undefined, 'mass', 5])('%s names nothing', (given) => {
    expect(refusal(() => readNaming(given)).code).toBe('quantity/unknown-option')
  })

  it.each([{ label: 5 }, { symbol: null }, { of: {} }, { role: [] }])('%j is no name', (given) => {
    const error = refusal(() => readNaming(given))
    expect(error).toMatchObject({ code: 'quantity/unknown-option', path: Object.keys(given) })
  })
})
