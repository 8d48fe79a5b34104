import { describe, expect, it } from 'vitest'
import { joinWords, listSpecies } from '../../src/equation/species.js'
import { parseFormula } from '../../src/formula/index.js'

describe('several things in one phrase', () => {
  it.each([
    { words: [], phrase: '' },
    { words: ['Zn'], phrase: 'Zn' },
    { words: ['Zn', 'S'], phrase: 'Zn and S' },
    { words: ['Zn', 'S', 'O'], phrase: 'Zn, S and O' },
  ])('$words is "$phrase"', ({ words, phrase }) => expect(joinWords(words)).toBe(phrase))

  it('names each species once', () => {
    const zinc = { formula: parseFormula('Zn'), state: 's' as const }
    expect(listSpecies([zinc, zinc, { formula: parseFormula('S'), state: undefined }])).toBe('Zn(s) and S')
  })
})
