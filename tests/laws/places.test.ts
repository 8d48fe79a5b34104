import { readdirSync, readFileSync } from 'node:fs'
import { assessPreparation, planPreparation, type Recipe, type Records } from 'saltwright/preparation'
import { calculationFromJSON, calculationToJSON } from 'saltwright/quantity'
import { describe, expect, it } from 'vitest'
import { refusal } from '../quantity/refusal.js'

type Path = readonly (string | number)[]

const examples = new URL('../../docs/examples/', import.meta.url)
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(`${path}.json`, examples), 'utf8'))
const namesIn = (folder: string): readonly string[] =>
  readdirSync(new URL(folder, examples)).map((file) => file.replace(/\.json$/, ''))

/** The paths of all texts and numbers in a document. */
function leavesOf(value: unknown, path: Path = []): readonly Path[] {
  if (typeof value !== 'object' || value === null) return [path]
  const key = (name: string): string | number => (Array.isArray(value) ? Number(name) : name)
  return Object.entries(value).flatMap(([name, part]) => leavesOf(part, [...path, key(name)]))
}

/** The document with an object where a text or a number stood. */
function spoilt(value: unknown, [key, ...rest]: Path): unknown {
  if (key === undefined) return {}
  if (Array.isArray(value)) return value.map((part, index) => (index === key ? spoilt(part, rest) : part))
  const parts = value as Readonly<Record<string, unknown>>
  return { ...parts, [key]: spoilt(parts[key], rest) }
}

/** What may be one of several shapes is refused as a whole. */
const wholes = ['madeFrom', 'constancy']

function placeOf(path: Path): string {
  const whole = path.findIndex((key) => wholes.includes(String(key)))
  return path.slice(0, whole < 0 ? undefined : whole + 1).join('.')
}

function everyMistakeHasItsPlace(document: unknown, use: (document: never) => unknown): void {
  const leaves = leavesOf(document)
  expect(leaves.length).toBeGreaterThan(0)
  for (const path of leaves) {
    const { problems, ...error } = refusal(() => use(spoilt(document, path) as never))
    expect((problems ?? [error]).map((problem) => problem.path?.join('.'))).toContain(placeOf(path))
  }
}

describe('a mistake in a document is reported at its place', () => {
  it.each(namesIn('recipes/'))('in the recipe of %s', (name) => {
    everyMistakeHasItsPlace(read(`recipes/${name}`), planPreparation)
  })

  it.each(namesIn('records/'))('in the records of %s', (name) => {
    const plan = planPreparation(read(`recipes/${name.replace(/-bench-\d+$/, '')}`) as Recipe)
    everyMistakeHasItsPlace(read(`records/${name}`), (records: Records) => assessPreparation(plan, records))
  })

  it('in a calculation', () => {
    const plan = planPreparation(read('recipes/zinc-sulfate') as Recipe)
    const { percentYield } = assessPreparation(plan, read('records/zinc-sulfate-bench-1') as Records)
    everyMistakeHasItsPlace(JSON.parse(JSON.stringify(calculationToJSON([percentYield]))), calculationFromJSON)
  })
})
