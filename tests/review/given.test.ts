import type { Recipe, RecipeSupply } from 'saltwright/preparation'
import { exact } from 'saltwright/quantity'
import { type PosedQuestion, questionSet } from 'saltwright/review'
import { describe, expect, it } from 'vitest'
import { alum, doubleSaltAsPrinted, zincSulfate } from '../preparation/recipes.js'
import { doubleSalt, halfOfIt, molal, normal, oxalate, printed } from './recipes.js'

const recipes = { zincSulfate, alum, doubleSaltAsPrinted, doubleSalt, oxalate, molal, normal, halfOfIt, printed }

function posed(recipe: Recipe, questions?: readonly string[]): readonly PosedQuestion[] {
  return questionSet(recipe, { seed: 3, distractors: 0, questions }).variants[0]!.questions
}

const keys = ['amount', 'mass', 'excessFactor', 'molesPerMole', 'asPrinted', 'concentration', 'massFraction'] as const
const numbers = [...keys, 'density', 'molality', 'normality', 'equivalentsPerMole', 'assay', 'aliquot'] as const

/** A text like `4.20 g` with another number; whole where it has to be. */
function changed(text: string, key: string, times: number): string {
  const [number = '', unit] = text.split(' ')
  const most = key === 'assay' ? 100 : Number.POSITIVE_INFINITY
  const value = key === 'equivalentsPerMole' ? Number(number) + 1 : Math.min(Number(number) * times, most)
  return [value.toPrecision(6), unit].filter(Boolean).join(' ')
}

type Part = Readonly<Record<string, unknown>>

/** Every recipe with one of its numbers changed, and that number. */
function changes(recipe: Recipe, times: number): readonly { readonly text: string; readonly changed: Recipe }[] {
  const within = (part: Part | undefined, put: (changed: Part) => Recipe) =>
    numbers.flatMap((key) => {
      const text = part?.[key]
      return typeof text === 'string' ? [{ text, changed: put({ ...part, [key]: changed(text, key, times) }) }] : []
    })
  const parts = <K extends 'supplies' | 'stages'>(key: K) =>
    (recipe[key] as unknown as readonly Part[]).flatMap((part, index) =>
      within(
        part,
        (one) => ({ ...recipe, [key]: recipe[key].map((other, at) => (at === index ? one : other)) }) as Recipe,
      ),
    )
  return [
    ...within(
      recipe.scale as Part | undefined,
      (scale) => ({ ...recipe, scale: scale as unknown as Recipe['scale'] }) as Recipe,
    ),
    ...parts('supplies'),
    ...parts('stages'),
  ]
}

describe('what is given with a question', () => {
  describe.each(Object.entries(recipes))('%s', (_, recipe) => {
    it.each([1.1, 0.8])(
      'is every number of the recipe that changes the answer when it is %d times as large',
      (times) => {
        const before = posed(recipe)
        const ids = before.map(({ id }) => id)
        const missing = changes(recipe, times).flatMap(({ text, changed: other }) => {
          const after = posed(other, ids)
          return before.flatMap(({ id, answer, given }, index) => {
            const isGiven = given.some(({ quantity }) => quantity.toString() === exact(text).toString())
            return isGiven || after[index]?.answer === answer ? [] : [`${id} needs ${text}`]
          })
        })
        expect(missing).toEqual([])
      },
    )

    it('has one question for each wording', () => {
      const asked = posed(recipe).map(({ asks }) => asks)
      expect(new Set(asked).size).toBe(asked.length)
    })

    it('does not answer another question of the sheet', () => {
      const questions = posed(recipe)
      const given = questions.flatMap((question) => question.given.map(({ quantity }) => quantity.toString()))
      const answers = questions.filter(({ id }) => /^(amount|mass|volume)-of/.test(id)).map(({ answer }) => answer)
      expect(answers.filter((answer) => given.includes(answer))).toEqual([])
    })

    it('has a name of its own for each number', () => {
      for (const { given } of posed(recipe)) expect(new Set(given.map(({ label }) => label)).size).toBe(given.length)
    })
  })

  const givenWith = (recipe: Recipe, id: string): readonly string[] =>
    posed(recipe, [id])[0]!.given.map(({ label, quantity }) => `${label} ${quantity}`)

  it('is the scale as it was chosen: a mass where it is a mass', () => {
    expect(givenWith(doubleSalt, 'theoretical-amount')[0]).toBe('chosen mass of (NH4)2Ni(SO4)2·6H2O 15.0 g')
    expect(givenWith(molal, 'theoretical-amount')[0]).toBe('chosen amount of NiCl2·6H2O 0.0650 mol')
  })

  it('is the assay of what is weighed, and the question says that a hydrate is', () => {
    expect(givenWith(doubleSalt, 'mass-of-NiSO4·6H2O')).toContain('assay of NiSO4·6H2O 98.5 %')
    expect(posed(doubleSalt, ['mass-of-NiSO4·6H2O'])[0]?.asks).toBe(
      'What mass of nickel sulfate is weighed, as NiSO4·6H2O?',
    )
    expect(posed(doubleSalt, ['mass-of-(NH4)2SO4'])[0]?.asks).toBe('What mass of (NH4)2SO4 is weighed?')
  })

  it('is what a manual prints, and of what its label speaks', () => {
    expect(givenWith(printed, 'amount-of-NH4OH')).toEqual([
      'density of the solution of NH4OH 0.91 g/mL',
      'mass fraction of NH3 25 %',
      'printed volume of NH4OH 20 mL',
    ])
    expect(givenWith(printed, 'amount-of-CuSO4')).toEqual(['printed mass of CuSO4·5H2O 12.5 g'])
  })

  it('is moles per mole, and of what', () => {
    expect(givenWith(oxalate, 'amount-of-H2O2')).toContain('chosen moles of H2O2 per mole of (NH4)2Fe(SO4)2·6H2O 2')
  })

  it('is the part that goes on, and the scale as it was chosen', () => {
    expect(givenWith(halfOfIt, 'theoretical-yield')).toContain('part that goes on to "Neutralise" 0.5')
    expect(givenWith(halfOfIt, 'amount-of-Al')).toContain('chosen mass of Al 1.000 g')
    const ofProduct = { ...halfOfIt, scale: { of: 'KAl(SO4)2·12H2O', amount: '0.0300 mol' } }
    expect(givenWith(ofProduct, 'mass-of-Al')[0]).toBe('chosen amount of KAl(SO4)2·12H2O 0.0300 mol')
  })

  it('is nothing with a molar mass', () => {
    expect(givenWith(halfOfIt, 'molar-mass-of-product')).toEqual([])
  })

  it('is how much there is of each where only the limit is asked for', () => {
    expect(givenWith(oxalate, 'limiting-reagent')).toEqual([
      'amount of (NH4)2Fe(SO4)2·6H2O 0.024992 mol',
      'amount of H2C2O4 for the stage "Precipitate" 0.027491 mol',
      'amount of K2C2O4 0.044986 mol',
      'amount of H2O2 0.049984 mol',
      'amount of H2C2O4 for the stage "Dissolve" 0.012496 mol',
    ])
  })
})

describe('a question about a substance that goes in twice', () => {
  it('names the stage', () => {
    const asks = posed(oxalate, ['amount-of-H2C2O4', 'volume-of-H2C2O4-2', 'amount-of-H2O2']).map((one) => one.asks)
    expect(asks).toEqual([
      'What amount of H2C2O4 is taken for the stage "Precipitate"?',
      'What volume of H2C2O4 is measured out for the stage "Dissolve"?',
      'What amount of H2O2 is taken?',
    ])
  })

  it('comes with the stages', () => {
    expect(questionSet(oxalate, { seed: 1 }).variants[0]?.stages[1]).toMatchObject({
      name: 'Oxidise',
      removes: ['H2SO4', '(NH4)2SO4'],
      aliquot: undefined,
    })
    expect(questionSet(halfOfIt, { seed: 1 }).variants[0]?.stages[1]).toMatchObject({
      clears: 'KOH',
      removes: [],
      aliquot: '0.5',
    })
  })
})

describe('what is not asked', () => {
  it('is a mass that is chosen; it is where that mass is not what is weighed', () => {
    const ids = (recipe: Recipe) => posed(recipe).map(({ id }) => id)
    expect(ids(normal)).not.toContain('mass-of-MgCO3')
    const [carbonate, acid] = normal.supplies as readonly [RecipeSupply, RecipeSupply]
    const impure: Recipe = { ...normal, supplies: [{ ...carbonate, assay: '98 %' } as RecipeSupply, acid] }
    expect(ids(impure)).toContain('mass-of-MgCO3')
    expect(ids({ ...normal, scale: { of: 'MgCO3', mass: '0.00420 kg' } })).not.toContain('mass-of-MgCO3')
    expect(ids(halfOfIt)).not.toContain('mass-of-Al')
  })

  it('no wrong answer is nothing', () => {
    for (const recipe of Object.values(recipes))
      for (const { distractors } of questionSet(recipe, { seed: 3, distractors: 20 }).variants[0]!.questions)
        for (const { value } of distractors) if (value !== undefined) expect(Number(value)).toBeGreaterThan(0)
  })

  it('such as a milligram on a balance of two places', () => {
    const [mass] = questionSet(normal, { seed: 3, distractors: 20, questions: ['mass-of-MgCO3'] }).variants[0]!
      .questions
    expect(mass?.distractors.map(({ text }) => text)).not.toContain('0.00 g')
  })
})
