import { readdirSync, readFileSync } from 'node:fs'
import { type Equation, formatEquation } from 'saltwright/equation'
import { assessPreparation, planPreparation, type Recipe, type Records } from 'saltwright/preparation'
import { isQuantity } from 'saltwright/quantity'
import { expect, it } from 'vitest'

/*
 * Plans and assessments of all examples, number by number: read the difference before you accept a new one with `vitest -u`.
 * Sentences are left out, for they may be reworded.
 */
const examples = new URL('../../docs/examples/', import.meta.url)
const read = (path: string): unknown => JSON.parse(readFileSync(new URL(path, examples), 'utf8'))
const names = readdirSync(new URL('records/', examples)).map((file) => file.replace(/\.json$/, ''))
const sentences = ['message', 'note', 'source', 'hint', 'explanation', 'advice', 'statements', 'remark']
/** What came in; it is in the examples. */
const given = ['recipe', 'plan', 'records', 'steps', 'notes', 'drying']

it.each(names)('%s', async (name) => {
  const plan = planPreparation(read(`recipes/${name.replace(/-bench-\d+$/, '')}.json`) as Recipe)
  const assessment = assessPreparation(plan, read(`records/${name}.json`) as Records)
  await expect(linesOf({ plan: { ...plan }, assessment: { ...assessment } })).toMatchFileSnapshot(
    `documents/${name}.txt`,
  )
})

/** One line for each number and text that is somewhere in a value: its path, and what stands there. */
function linesOf(value: object): string {
  const lines: string[] = []
  const visit = (one: unknown, path: string): void => {
    if (one === undefined) return
    if (typeof one !== 'object' || one === null || isQuantity(one)) {
      lines.push(`${path}: ${one}`)
      return
    }
    if ('arrow' in one) {
      lines.push(`${path}: ${formatEquation(one as Equation)}`)
      return
    }
    for (const [key, part] of Object.entries(one))
      if (isKept(key, path)) visit(part, path === '' ? key : `${path}.${key}`)
  }
  visit(value, '')
  return `${lines.join('\n')}\n`
}

function isKept(key: string, path: string): boolean {
  return !sentences.includes(key) && !(path !== '' && given.includes(key))
}
