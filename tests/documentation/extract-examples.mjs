/**
 * Writes one test per example of the documentation: every block fenced as `ts` in the doc comments of `src`, in
 * `README.md` and in the guides under `docs`. The tests import the package by its name, so they are compiled and run
 * against `dist`, as a user's code would be. What may stand in an example is described in DEVELOPERS.md.
 */
import { mkdirSync, readdirSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { fencedBlocks } from './blocks.mjs'
import { testFiles } from './examples.mjs'

const root = new URL('../../', import.meta.url)
const target = new URL('generated/', import.meta.url)

const documents = ['README.md', ...filesUnder('docs', '.md'), ...filesUnder('src', '.ts')]
const problems = []
let examples = 0

rmSync(target, { recursive: true, force: true })
mkdirSync(target)
for (const document of documents) {
  try {
    for (const { name, text } of testFiles(fencedBlocks(document, readFileSync(new URL(document, root), 'utf8')))) {
      writeFileSync(new URL(name, target), text)
      examples += 1
    }
  } catch (error) {
    problems.push(error.message)
  }
}

for (const problem of problems) console.error(problem)
console.log(`${examples} examples in ${documents.length} documents, ${problems.length} problems`)
process.exitCode = problems.length === 0 ? 0 : 1

function filesUnder(folder, ending) {
  return readdirSync(new URL(folder, root), { recursive: true })
    .filter((name) => name.endsWith(ending) && !name.includes('node_modules'))
    .map((name) => `${folder}/${name}`)
    .sort()
}
