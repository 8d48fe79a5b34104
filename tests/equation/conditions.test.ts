import { describe, expect, it } from 'vitest'
import { isConditionText, isEnergyText } from '../../src/equation/conditions.js'
import { parseEquation } from '../../src/equation/index.js'
import { refusal } from './refusal.js'

const words =
  'heat heated warm boil cool ice cat catalyst light uv hv reflux electrolysis ignite spark pressure temp temperature rt'

describe('a condition', () => {
  it.each([...words.split(' '), 'room temperature'])('%s', (word) => {
    expect(isConditionText(word)).toBe(true)
    expect(isConditionText(word.toUpperCase())).toBe(true)
    expect(isConditionText(`a${word}`)).toBe(false)
  })

  it.each(['Δ', '∆', '25 °C', '80 ℃', 'hν', 'λ', '🔥'])('%s', (text) => expect(isConditionText(text)).toBe(true))

  it.each([...' \t\n()[]{}-–—.,:;^'])('has nothing to do with %j around it', (sign) => {
    expect(isConditionText(`${sign}heat${sign}${sign}`)).toBe(true)
    expect(isConditionText(`he${sign}at`)).toBe(false)
    expect(isConditionText(sign)).toBe(false)
  })

  it.each(['', 'H2O', 'Co', 'heats'])('is not %j', (text) => expect(isConditionText(text)).toBe(false))
})

describe('energy', () => {
  const energies = [
    'heat',
    'energy',
    'light',
    'hv',
    'hν',
    'electricity',
    'Δ',
    'ΔH',
    'kJ',
    'kJ/mol',
    'kcal',
    'kcal/mol',
    'eV',
  ]
  it.each(energies)('%s', (text) => {
    expect(isEnergyText(text)).toBe(true)
    expect(isEnergyText(`(${text}).`)).toBe(true)
  })

  it.each(['', 'J', 'kJ mol', 'heated', 'H2O'])('is not %j', (text) => expect(isEnergyText(text)).toBe(false))
})

describe('two formulas without a plus', () => {
  it.each([
    ['H2, O2 -> H2O', 'H2 + O2?'],
    ['H2; O2 -> H2O', 'H2 + O2?'],
    ['H2 & O2 -> H2O', 'H2 + O2?'],
    ['H2 and O2 -> H2O', 'H2 + O2?'],
    ['H2 O2 -> H2O', 'H2 + O2?'],
    ['H2& O2 -> H2O', 'H2 + O2?'],
    ['H2 , O2 -> H2O', 'H2 + O2?'],
    ['H2 ; O2 -> H2O', 'H2 + O2?'],
  ])('%s: %s', (text, hint) => {
    const error = refusal(() => parseEquation(text))
    expect([error.code, error.hint]).toEqual(['equation/missing-plus', hint])
  })

  it.each([' yields ', ' gives ', ' to form ', ' to give ', ' produces '])('nor an arrow, but "%s"', (verb) => {
    const error = refusal(() => parseEquation(`H2 + Cl2${verb}2HCl`))
    expect([error.code, error.hint]).toEqual(['equation/missing-arrow', `Write -> instead of "${verb.trim()}".`])
  })
})
