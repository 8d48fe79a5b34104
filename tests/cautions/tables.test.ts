import { describe, expect, it } from 'vitest'
import { generalCautions, hazardStatements, pictograms, substanceHazards } from '../../src/cautions/index.js'
import { parseFormula } from '../../src/formula/index.js'

describe('the classifications', () => {
  it('are of formulas that can be read, with statements and pictograms that exist', () => {
    for (const { formula, statements, pictograms: shown } of substanceHazards()) {
      expect(parseFormula(formula).text).toBe(formula)
      for (const code of statements) expect(hazardStatements[code]).toMatch(/^[A-Z]/)
      for (const code of shown) expect(pictograms[code]).toBeTruthy()
    }
  })

  it('of solutions stand from strong to weak, without overlap', () => {
    for (const { formula } of substanceHazards()) {
      const bands = substanceHazards().filter((row) => row.formula === formula && row.form === 'solution')
      for (const [index, { below }] of bands.slice(1).entries()) expect(below).toBe(bands[index]?.from)
    }
  })

  it('from memory say so in their source too', () => {
    for (const { source, fromMemory } of substanceHazards()) {
      if (fromMemory) expect(source).toMatch(/from memory|GESTIS|2013|university/)
      else expect(source).not.toContain('from memory')
    }
  })

  it('with a signal word have statements, and none without', () => {
    for (const { signalWord, statements } of substanceHazards())
      expect(signalWord === 'Danger' || signalWord === 'Warning').toBe(statements.length > 0)
  })
})

describe('the general cautions', () => {
  it('each name their source', () => {
    for (const { text, source } of Object.values(generalCautions)) {
      expect(text).toMatch(/[.]$/)
      expect(source.length).toBeGreaterThan(10)
    }
  })
})
