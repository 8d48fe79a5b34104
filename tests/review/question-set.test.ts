import type { Recipe } from 'saltwright/preparation'
import { type QuestionSetOptions, questionSet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { generatorFrom } from '../../src/review/generator.js'
import { alum, doubleSaltAsPrinted, zincSulfate } from '../preparation/recipes.js'

const options: QuestionSetOptions = {
  seed: 7,
  variants: 3,
  scale: { from: '0.0200 mol', to: '0.0600 mol' },
  strengths: { H2SO4: { from: '2.0 mol/L', to: '6.0 mol/L' } },
  assays: { ZnO: { from: '98.0 %', to: '99.9 %' } },
  excessFactors: { H2SO4: { from: '1.05', to: '1.50' } },
}

describe('a set of questions', () => {
  const set = questionSet(zincSulfate, options)

  it('is the same for the same seed, and another for another', () => {
    expect(JSON.stringify(questionSet(zincSulfate, options))).toBe(JSON.stringify(set))
    expect(JSON.stringify(questionSet(zincSulfate, { ...options, seed: 8 }))).not.toBe(JSON.stringify(set))
  })

  it('varies within the ranges, in steps of their digits', () => {
    for (const { recipe } of set.variants) {
      expect(recipe.scale?.amount).toMatch(/^0\.0[2-6]\d{2} mol$/)
      const [oxide, acid] = recipe.supplies as unknown as [
        { assay: string },
        { concentration: string; excessFactor: string },
      ]
      expect(oxide.assay).toMatch(/^9[89]\.\d %$/)
      expect(acid.concentration).toMatch(/^[2-6]\.\d mol\/L$/)
      expect(acid.excessFactor).toMatch(/^1\.[0-5]\d$/)
    }
    expect(new Set(set.variants.map(({ recipe }) => recipe.scale?.amount)).size).toBe(3)
  })

  it('asks what takes work, with what is given', () => {
    const [variant] = set.variants
    expect(variant?.number).toBe(1)
    expect(variant?.equation.text).toContain('ZnSO4·7H2O')
    expect(variant?.questions.map(({ id }) => id)).toEqual([
      'amount-of-ZnO',
      'mass-of-ZnO',
      'amount-of-H2SO4',
      'volume-of-H2SO4',
      'limiting-reagent',
      'molar-mass-of-product',
      'theoretical-amount',
      'theoretical-yield',
    ])
    expect(variant?.questions[3]?.given.map(({ label }) => label)).toEqual([
      'chosen amount of ZnSO4·7H2O',
      'excess of H2SO4',
      'concentration of H2SO4',
    ])
  })

  it('what is given already is only asked for by name', () => {
    const asked = (questions?: readonly string[]) => questionSet(alum, { seed: 1, questions }).variants[0]?.questions
    expect(asked()?.map(({ id }) => id)).not.toContain('amount-of-Al')
    expect(asked(['amount-of-Al'])?.[0]?.answer).toBe('0.02500 mol')
  })

  it('has answers with their figures, for people and for programs', () => {
    const fixed = questionSet(zincSulfate, {
      seed: 1,
      questions: ['mass-of-ZnO', 'theoretical-yield', 'limiting-reagent'],
    })
    expect(fixed.variants[0]?.questions.map(({ answer, numeric }) => ({ answer, numeric }))).toEqual([
      { answer: '3.255 g', numeric: { value: '3.255', unit: 'g', tolerance: '1e-3' } },
      { answer: '11.502 g', numeric: { value: '11.502', unit: 'g', tolerance: '1e-3' } },
      { answer: 'ZnO', numeric: undefined },
    ])
  })

  it('has a worked solution and wrong answers that slips give', () => {
    const [question] = questionSet(zincSulfate, { seed: 1, questions: ['theoretical-yield'], distractors: 4 })
      .variants[0]!.questions
    expect(question?.working?.steps.at(-1)?.shown).toEqual({ number: '11.502', unit: 'g' })
    expect(question?.distractors.map(({ text, slip }) => [text, slip])).toEqual([
      ['69.010 g', 'coefficient-of-neighbour'],
      ['12.652 g', 'excess-reagent-limits'],
      ['7.1780 g', 'other-hydrate'],
      ['9.5818 g', 'subscript-left-out'],
    ])
  })

  it('has no wrong answer that is the right one, or next to it', () => {
    for (const { questions } of questionSet(alum, { seed: 3, variants: 5, distractors: 20 }).variants) {
      for (const { answer, numeric, distractors } of questions) {
        for (const { text, value } of distractors) {
          expect(text).not.toBe(answer)
          if (numeric === undefined) continue
          expect(Math.abs(Number(value) / Number(numeric.value) - 1)).toBeGreaterThan(0.005)
        }
      }
    }
  })

  it('offers the other supplies where one is to be chosen', () => {
    const [question] = questionSet(alum, { seed: 1, questions: ['limiting-reagent'], distractors: 1 }).variants[0]!
      .questions
    expect(question?.distractors).toEqual([
      { text: 'KOH', value: undefined, slip: undefined, advice: 'How far does each of them let the reaction go?' },
    ])
  })

  it('a mass can be the scale, a supply without an assay can get one, and liquids too', () => {
    const liquid: Recipe = {
      ...zincSulfate,
      scale: { of: 'ZnSO4·7H2O', mass: '10.0 g' },
      supplies: [zincSulfate.supplies[0]!, { form: 'liquid', substance: 'H2SO4', density: '1.84 g/mL' }],
    }
    const { variants } = questionSet(liquid, {
      seed: 1,
      scale: { from: '5.0 g', to: '15.0 g' },
      assays: { H2SO4: { from: '95 %', to: '98 %' } },
    })
    expect(variants[0]?.recipe.scale?.mass).toMatch(/^\d+\.\d g$/)
    expect(variants[0]?.recipe.supplies[1]).toMatchObject({ assay: expect.stringMatching(/^9[5-8] %$/) })
  })

  it('is as fine as the finer of its ends, where zeros count', () => {
    const drawn = (from: string, to: string) =>
      questionSet(
        { ...zincSulfate, scale: { of: 'ZnO', mass: '1 g' } },
        { seed: 1, variants: 5, scale: { from, to } },
      ).variants.map(({ recipe }) => recipe.scale?.mass ?? '')
    for (const mass of [...drawn('1 g', '2.00 g'), ...drawn('1.00 g', '2 g')]) expect(mass).toMatch(/^[12]\.\d\d g$/)
    expect(new Set(drawn('100 g', '200 g')).size).toBeGreaterThan(2)
  })

  it('a range of one number is that number', () => {
    const { variants } = questionSet(zincSulfate, { seed: 1, scale: { from: '0.0300 mol', to: '0.0300 mol' } })
    expect(variants[0]?.recipe.scale?.amount).toBe('0.0300 mol')
  })
})

describe('what cannot be varied or asked', () => {
  it.each([
    { options: { strengths: { ZnO: { from: '1 mol/L', to: '2 mol/L' } } }, names: /: H2SO4$/ },
    { options: { assays: { H2SO4: { from: '90 %', to: '95 %' } } }, names: /: ZnO$/ },
    { options: { excessFactors: { KOH: { from: '1.1', to: '1.2' } } }, names: /: ZnO, H2SO4$/ },
  ])('the refusal of $options tells what can', ({ options: given, names }) => {
    expect(() => questionSet(zincSulfate, { seed: 1, ...given })).toThrowError(
      expect.objectContaining({ code: 'review/bad-range', expected: expect.stringMatching(names) }),
    )
  })

  it.each<{ why: string; recipe?: Recipe; options: unknown; code: string; path?: readonly string[] }>([
    { why: 'no options', options: undefined, code: 'review/not-an-object' },
    { why: 'no seed', options: {}, code: 'review/bad-range', path: ['seed'] },
    { why: 'half a seed', options: { seed: 0.5 }, code: 'review/bad-range', path: ['seed'] },
    { why: 'a seed below zero', options: { seed: -1 }, code: 'review/bad-range', path: ['seed'] },
    { why: 'a seed too large', options: { seed: 2e6 }, code: 'review/bad-range', path: ['seed'] },
    { why: 'no variant', options: { seed: 1, variants: 0 }, code: 'review/bad-range', path: ['variants'] },
    { why: 'too many variants', options: { seed: 1, variants: 1e9 }, code: 'review/bad-range', path: ['variants'] },
    {
      why: 'distractors in words',
      options: { seed: 1, distractors: 'three' },
      code: 'review/bad-range',
      path: ['distractors'],
    },
    {
      why: 'an unknown question',
      options: { seed: 1, questions: ['mass-of-CuO'] },
      code: 'review/unknown-question',
      path: ['questions'],
    },
    {
      why: 'a scale of volume',
      options: { seed: 1, scale: { from: '1 mL', to: '2 mL' } },
      code: 'review/bad-range',
      path: ['scale'],
    },
    {
      why: 'a range backwards',
      options: { seed: 1, scale: { from: '0.2 mol', to: '0.1 mol' } },
      code: 'review/bad-range',
      path: ['scale'],
    },
    {
      why: 'two units',
      options: { seed: 1, scale: { from: '10 mmol', to: '0.1 mol' } },
      code: 'review/bad-range',
      path: ['scale'],
    },
    {
      why: 'a range from zero',
      options: { seed: 1, scale: { from: '0 mol', to: '0.1 mol' } },
      code: 'review/bad-range',
      path: ['scale'],
    },
    {
      why: 'half a range',
      options: { seed: 1, scale: { from: '0.1 mol' } },
      code: 'review/bad-range',
      path: ['scale'],
    },
    { why: 'a range that is none', options: { seed: 1, scale: null }, code: 'review/bad-range', path: ['scale'] },
    {
      why: 'a strength of a solid',
      options: { seed: 1, strengths: { ZnO: { from: '1 mol/L', to: '2 mol/L' } } },
      code: 'review/bad-range',
      path: ['strengths', 'ZnO'],
    },
    {
      why: 'an assay of a solution',
      options: { seed: 1, assays: { H2SO4: { from: '90 %', to: '95 %' } } },
      code: 'review/bad-range',
      path: ['assays', 'H2SO4'],
    },
    {
      why: 'an excess of what is printed',
      recipe: doubleSaltAsPrinted,
      options: { seed: 1, excessFactors: { FeSO4: { from: '1.1', to: '1.2' } } },
      code: 'review/bad-range',
      path: ['excessFactors', 'FeSO4'],
    },
    {
      why: 'a scale where there is none',
      recipe: doubleSaltAsPrinted,
      options: { seed: 1, scale: { from: '1 g', to: '2 g' } },
      code: 'review/bad-range',
      path: ['scale'],
    },
    { why: 'a recipe that is none', recipe: {} as Recipe, options: { seed: 1 }, code: 'preparation/invalid' },
  ])('$why', ({ recipe = zincSulfate, options: given, code, path }) => {
    let error: { code?: string; path?: unknown } = {}
    try {
      questionSet(recipe, given as QuestionSetOptions)
    } catch (caught) {
      error = caught as typeof error
    }
    expect(error.code).toBe(code)
    if (path !== undefined) expect(error.path).toEqual(path)
  })
})

describe('the generator', () => {
  it.each([
    [0, 0],
    [1, 1],
    [5, 3],
    [1_000_000, 1000],
  ])('draws the powers of 48271 modulo 2^31 - 1, from seed %i and stream %i', (seed, stream) => {
    const modulus = 2n ** 31n - 1n
    const start = 1n + ((BigInt(seed) * 7919n + BigInt(stream) * 104_729n) % (modulus - 1n))
    const draw = generatorFrom(seed, stream)
    for (let count = 9n; count < 14n; count += 1n) {
      const state = (start * 48_271n ** count) % modulus
      expect(draw()).toBe(Number(state - 1n) / Number(modulus - 1n))
    }
  })

  it('gives the same numbers for the same seed, evenly between 0 and 1', () => {
    const draw = (seed: number, stream?: number) => Array.from({ length: 2000 }, generatorFrom(seed, stream))
    expect(draw(5)).toEqual(draw(5))
    expect(draw(5)).not.toEqual(draw(6))
    expect(draw(5, 1)).not.toEqual(draw(5, 2))
    const numbers = draw(1)
    expect(Math.min(...numbers)).toBeGreaterThanOrEqual(0)
    expect(Math.max(...numbers)).toBeLessThan(1)
    const tenths = Array.from({ length: 10 }, (_, tenth) => numbers.filter((x) => Math.floor(10 * x) === tenth).length)
    for (const count of tenths) expect(Math.abs(count - 200)).toBeLessThan(60)
  })
})
