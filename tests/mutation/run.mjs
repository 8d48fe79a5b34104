/**
 * Mutation testing: `npm run mutation -- [topic or file ...] [--share 0.1] [--seed 1]`. Prints what survived, and a table by folder.
 *
 * The whole takes hours; `--share 0.1` tries a tenth of the mutants, chosen by `--seed`, and gives the score with its
 * 95 % interval.
 */
import { spawnSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { relative } from 'node:path'
import { parseArgs } from 'node:util'
import { Stryker } from '@stryker-mutator/core'
import { interval, isSampled } from './sample.mjs'

const { values, positionals: topics } = parseArgs({
  allowPositionals: true,
  options: {
    share: { type: 'string', default: '1' },
    seed: { type: 'string', default: '1' },
    concurrency: { type: 'string', default: '2' },
  },
})
const sample = { share: Number(values.share), seed: Number(values.seed) }
const settings = JSON.parse(readFileSync('.config/stryker.json', 'utf8'))
const chosen =
  topics.length === 0
    ? ['src/**/*.ts']
    : topics.map((topic) => (topic.endsWith('.ts') ? `src/${topic}` : `src/${topic}/**/*.ts`))

spawnSync(process.execPath, ['tests/documentation/extract-examples.mjs'], { stdio: 'inherit' })

const all = await new Stryker({
  ...settings,
  mutate: [...chosen, ...settings.mutate],
  concurrency: Number(values.concurrency),
  sample,
}).runMutationTest()
const mutants = all.filter(({ status }) => status !== 'Ignored').map(withFile)
const tried = mutants.filter((mutant) => isSampled(mutant, sample))

console.log(`\n${table()}`)

function withFile(mutant) {
  const file = relative(process.cwd(), mutant.fileName).replaceAll('\\', '/')
  return { ...mutant, file, folder: file.split('/').slice(0, -1).slice(0, 2).join('/') }
}

function isFoundOut({ status }) {
  return status === 'Killed' || status === 'Timeout'
}

function table() {
  const folders = [...new Set(mutants.map(({ folder }) => folder))].sort()
  const rows = [...folders.map((folder) => rowOf(folder, (one) => one.folder === folder)), rowOf('all', () => true)]
  return [
    '| folder | mutants | tried | found out | score | 95 % interval |',
    '|---|--:|--:|--:|--:|--:|',
    ...rows,
  ].join('\n')
}

function rowOf(name, isIn) {
  const [here, tries] = [mutants.filter(isIn), tried.filter(isIn)]
  const found = tries.filter(isFoundOut).length
  const percent = (share) => (100 * share).toFixed(1)
  const [low, high] = interval(found, tries.length, here.length).map(percent)
  const cells = [here.length, tries.length, found, `${percent(found / tries.length)} %`, `${low} to ${high} %`]
  return `| ${[name, ...cells].join(' | ')} |`
}
