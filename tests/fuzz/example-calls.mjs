/** Every call that an example of the documentation makes, as it was made: the examples run with a package that takes notes. */
import { readdirSync, readFileSync } from 'node:fs'
import ts from 'typescript'
import { fencedBlocks } from '../documentation/blocks.mjs'
import { testFiles } from '../documentation/examples.mjs'

const root = new URL('../../', import.meta.url)
const doors = Object.keys(JSON.parse(readFileSync(new URL('package.json', root), 'utf8')).exports)
const packages = doors.filter((door) => !door.includes('.', 1)).map((door) => `saltwright${door.slice(1)}`)

/** Stands in for whatever an example needs beside the package, as nobody looks at what it claims. */
const anything = new Proxy(class {}, {
  get: (_, key) => (key === 'then' ? undefined : anything),
  apply: () => anything,
  construct: () => anything,
})

/** @returns {Promise<{ name: string, run: Function, given: unknown[] }[]>} Each call, of the several alike the first. */
export async function exampleCalls() {
  const calls = new Map()
  const modules = new Map(await Promise.all(packages.map(async (name) => [name, noted(await import(name), calls)])))
  for (const { text } of examples()) await runExample(text, (name) => modules.get(name) ?? anything)
  return [...calls.values()]
}

function examples() {
  const sources = readdirSync(new URL('src', root), { recursive: true }).filter((name) => name.endsWith('.ts'))
  const guides = readdirSync(new URL('docs/guides', root)).filter((name) => name.endsWith('.md'))
  const names = ['README.md', ...guides.map((name) => `docs/guides/${name}`), ...sources.map((name) => `src/${name}`)]
  return names.sort().flatMap((name) => testFiles(fencedBlocks(name, readFileSync(new URL(name, root), 'utf8'))))
}

/** A door of the package, the functions of which write down what they are called with. */
function noted(module, calls) {
  const entries = Object.entries(module).map(([name, run]) => {
    if (typeof run !== 'function' || /^class/.test(String(run))) return [name, run]
    const taking = (...given) => {
      const key = `${name} ${given.map((value) => shapeOf(value)).join()}`
      if (!calls.has(key)) calls.set(key, { name, run, given })
      return run(...given)
    }
    return [name, taking]
  })
  return Object.fromEntries(entries)
}

function shapeOf(value) {
  return typeof value === 'object' && value !== null ? `{${Object.keys(value)}}` : typeof value
}

async function runExample(text, require) {
  const { outputText } = ts.transpileModule(text, { compilerOptions: { module: 'CommonJS', target: 'ES2022' } })
  let example
  const vitest = { expect: anything, it: (_, run) => (example = run) }
  const own = { vitest, '../console.js': { Console: anything, codeOf } }
  new Function('require', 'exports', outputText)((name) => own[name] ?? require(name), {})
  try {
    await example()
  } catch {} // the calls up to here were noted
}

async function codeOf(run) {
  try {
    await run()
  } catch {} // the refusal was the claim
}
