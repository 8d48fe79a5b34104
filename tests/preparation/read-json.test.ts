import { describe, expect, it } from 'vitest'
import { classListSchema } from '../../src/preparation/class-schema.js'
import { readJson } from '../../src/preparation/read-json.js'
import { recipeSchema } from '../../src/preparation/recipe-schema.js'
import { filledWorksheetSchema } from '../../src/review/worksheet-schema.js'
import { refusal } from '../quantity/refusal.js'
import { zincSulfate } from './recipes.js'

const recipe = (change: object) => () => readJson(recipeSchema, { ...zincSulfate, ...change }, 'recipe')
const spare = (benches: unknown) => () =>
  readJson(
    classListSchema,
    { benches: [{ name: 'a', scale: { amount: '1 mol' } }], options: { spare: { benches } } },
    'class',
  )
const bench = (scale: object) => () =>
  readJson(classListSchema, { benches: [{ name: 'a', scale }], options: {} }, 'class')
const worksheet = (change: object) => () =>
  readJson(filledWorksheetSchema, { format: 'saltwright/worksheet@1', answers: {}, ...change }, 'worksheet')
const conditions = ['0 °C, 100 kPa', '0 °C, 1 atm', '20 °C, 100 kPa', '25 °C, 100 kPa', '25 °C, 1 atm']
const forms = ['solid', 'solution', 'stock', 'molal', 'normal', 'liquid', 'unlimited']
const quoted = (choices: readonly string[]) => choices.map((choice) => `"${choice}"`).join(' or ')
const long = 'x'.repeat(2001)
const longShown = `"${'x'.repeat(56)}...`

describe('what has another shape is told with what should stand there', () => {
  it.each<{ what: string; read: () => unknown; path: string; found: string; expected: string }>([
    { what: 'a number for text', read: recipe({ title: 7 }), path: 'title', found: '7', expected: 'text' },
    { what: 'text for a list', read: recipe({ notes: 'x' }), path: 'notes', found: '"x"', expected: 'a list' },
    {
      what: 'a number for an object',
      read: recipe({ supplies: [7] }),
      path: 'supplies.0',
      found: '7',
      expected: 'an object',
    },
    {
      what: 'text for a number',
      read: recipe({ washes: [{ with: 'water', volume: '1 mL', portions: '2' }] }),
      path: 'washes.0.portions',
      found: '"2"',
      expected: 'a whole number',
    },
    {
      what: 'half a portion',
      read: recipe({ washes: [{ with: 'water', volume: '1 mL', portions: 1.5 }] }),
      path: 'washes.0.portions',
      found: '1.5',
      expected: 'a whole number',
    },
    {
      what: 'no portion',
      read: recipe({ washes: [{ with: 'water', volume: '1 mL', portions: 0 }] }),
      path: 'washes.0.portions',
      found: '0',
      expected: 'above 0',
    },
    {
      what: 'nothing in a list',
      read: recipe({ stages: [] }),
      path: 'stages',
      found: 'an array',
      expected: 'something that is not empty',
    },
    {
      what: 'nothing in a text',
      read: recipe({ title: '' }),
      path: 'title',
      found: '""',
      expected: 'something that is not empty',
    },
    {
      what: 'too long a text',
      read: recipe({ title: long }),
      path: 'title',
      found: longShown,
      expected: 'text no longer than 2000',
    },
    { what: 'a choice', read: recipe({ gasAt: 'STP' }), path: 'gasAt', found: '"STP"', expected: quoted(conditions) },
    {
      what: 'a choice of shapes by their name',
      read: recipe({ supplies: [{ form: 'gas' }] }),
      path: 'supplies.0.form',
      found: '"gas"',
      expected: quoted(forms),
    },
    {
      what: 'a choice of shapes without a name',
      read: recipe({ atomicWeights: 5 }),
      path: 'atomicWeights',
      found: '5',
      expected: 'one of the shapes that the format allows',
    },
    {
      what: 'nothing',
      read: recipe({ format: undefined }),
      path: 'format',
      found: 'nothing',
      expected: '"saltwright/recipe@1"',
    },
    {
      what: 'a key of no format',
      read: recipe({ yield: 1 }),
      path: 'yield',
      found: '"yield"',
      expected: 'only the keys of the format',
    },
    {
      what: 'fewer than no benches',
      read: spare(-1),
      path: 'options.spare.benches',
      found: '-1',
      expected: 'at least 0',
    },
    {
      what: 'too many benches',
      read: spare(1001),
      path: 'options.spare.benches',
      found: '1001',
      expected: 'at most 1000',
    },
    {
      what: 'a bench without a scale',
      read: bench({}),
      path: 'benches.0.scale',
      found: 'neither',
      expected: 'an amount or a mass, one of the two',
    },
    {
      what: 'a bench with two scales',
      read: bench({ amount: '1 mol', mass: '1 g' }),
      path: 'benches.0.scale',
      found: 'amount and mass',
      expected: 'an amount or a mass, one of the two',
    },
    {
      what: 'a list of answers',
      read: worksheet({ answers: [] }),
      path: 'answers',
      found: 'an array',
      expected: 'an object',
    },
    {
      what: 'too long a name of an answer',
      read: worksheet({ answers: { [long]: '1 g' } }),
      path: `answers.${long}`,
      found: longShown,
      expected: 'text no longer than 200',
    },
    {
      what: 'a symbol for the name of an answer',
      read: worksheet({ answers: { [Symbol('mass')]: '1 g' } }),
      path: 'answers.Symbol(mass)',
      found: '"Symbol(mass)"',
      expected: 'text',
    },
  ])('$what', ({ read, path, found, expected }) => {
    const { problems = [], ...first } = refusal(read)
    expect(first).toMatchObject({ code: 'preparation/invalid', found, expected })
    expect(problems.map((each) => [each.path?.join('.'), each.found, each.expected])).toEqual([[path, found, expected]])
    expect(first.path).toEqual(problems[0]?.path)
  })

  it('counts places in lists by numbers', () => {
    expect(refusal(recipe({ supplies: [7] })).path).toEqual(['supplies', 0])
  })

  it.each([
    { read: recipe({ supplies: [7] }), message: 'The recipe cannot be used: supplies[0]: 7 is not an object.' },
    {
      read: recipe({ washes: [{ with: 'water', volume: '1 mL', portions: 0 }] }),
      message: 'The recipe cannot be used: washes[0].portions: 0 is not above 0.',
    },
    { read: spare(-1), message: 'The class cannot be used: options.spare.benches: -1 is not at least 0.' },
  ])('writes places as in a program: $message', ({ read, message }) => expect(refusal(read).message).toBe(message))

  it('keeps what another reader of the library knows of its own mistake', () => {
    expect(refusal(recipe({ product: 'ZzSO4' }))).toMatchObject({ position: { start: 0, end: 2 } })
    expect(refusal(recipe({ scale: { of: 'ZnO', amount: '0,04 mol' } }))).toMatchObject({
      path: ['scale', 'amount'],
      position: { start: 1, end: 2 },
      found: '0,04 mol',
      hint: '0.04 mol',
    })
  })
})

it('what cannot be looked at is told as such', () => {
  const hostile = {
    get format(): never {
      throw new Error('no')
    },
  }
  expect(refusal(() => readJson(recipeSchema, hostile, 'recipe'))).toMatchObject({
    code: 'preparation/unreadable',
    found: 'an object',
    expected: 'plain JSON',
  })
})
