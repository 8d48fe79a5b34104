/**
 * Writes the code of the package, as ES modules and as CommonJS. A door is a list of names; the code behind the doors is in a few
 * files, laid out so that a door loads few of them and little that it does not use. A file is loaded once, whichever doors lead to
 * it, so there is one copy of every class.
 */
import { copyFileSync, readFileSync, rmSync } from 'node:fs'
import { readFile } from 'node:fs/promises'
import { dirname, resolve } from 'node:path'
import { fileURLToPath } from 'node:url'
import { transform } from 'esbuild'
import { rollup } from 'rollup'

const root = fileURLToPath(new URL('..', import.meta.url))
const path = (name) => resolve(root, name)
const { exports, dependencies } = JSON.parse(readFileSync(path('package.json'), 'utf8'))
const tsconfigRaw = readFileSync(path('src/tsconfig.json'), 'utf8')
const target = 'es2022'

/** The export map is the one list of doors, in the order of the layers: "./formula" means src/formula/index.ts. */
const topics = Object.keys(exports)
  .filter((door) => door.startsWith('./') && !door.endsWith('.json'))
  .map((door) => door.slice(2))
const upper = topics.slice(topics.indexOf('cautions'))

/** Lists of topics that have a file of their own, called after the first, for what no other topic below `upper` needs. */
const apart = [['quantity'], ['formula'], ['equation', 'stoichiometry'], ['solution'], ['crystallisation'], ['product']]

/** Files of what a low topic needs and others too, the lowest first. */
const shared = [
  ['quantity', 'ground'],
  ['element', 'weights'],
  ['formula', 'reading'],
]

rmSync(path('dist'), { recursive: true, force: true })
const bundle = await rollup({
  input: { index: 'door:', ...Object.fromEntries(topics.map((topic) => [`${topic}/index`, `door:${topic}/`])) },
  plugins: [doors(), sources()],
  treeshake: { moduleSideEffects: false },
  onLog,
})
const fileOf = await layOut()
for (const [format, ending] of Object.entries({ es: 'js', cjs: 'cjs' })) {
  await bundle.write({
    dir: path('dist'),
    format,
    exports: 'named',
    entryFileNames: `[name].${ending}`,
    chunkFileNames: `parts/[name].${ending}`,
    manualChunks: (id) => fileOf.get(id),
    hoistTransitiveImports: false,
    minifyInternalExports: false,
    plugins: [withoutComments()],
  })
}
for (const name of Object.keys(dependencies)) copyFileSync(licenceOf(name), path(`dist/LICENSE-${name}.txt`))

/** An entry point is kept whole for whoever imports it. The faces of the topics import one another, so others lead to them. */
function doors() {
  const isDoor = (id) => id.startsWith('door:')
  return {
    name: 'doors',
    resolveId: (id) => (isDoor(id) ? id : null),
    load: (id) => (isDoor(id) ? `export * from '${path(`src/${id.slice(5)}index.js`)}'` : null),
  }
}

/** Our TypeScript and the JavaScript of the dependencies, as what is used of those is part of the package: it loads faster so. */
function sources() {
  return {
    name: 'sources',
    resolveId(id, importer) {
      if (!/^[./]/.test(id)) return fileURLToPath(import.meta.resolve(id))
      const file = resolve(dirname(importer), id)
      return file.startsWith(path('src')) ? file.replace(/\.js$/, '.ts') : file
    },
    async load(id) {
      const code = await readFile(id, 'utf8')
      return id.endsWith('.ts') ? (await transform(code, { loader: 'ts', target, tsconfigRaw })).code : code
    },
  }
}

/**
 * Which file each module goes into, by the doors that lead to it once everything unused is left out. What a module imports is
 * needed by at least the same doors, so no two files import each other.
 */
async function layOut() {
  const { output } = await bundle.generate({ preserveModules: true, hoistTransitiveImports: false })
  const modules = new Map(output.map((module) => [module.fileName, module]))
  const needed = new Map()
  for (const topic of topics) {
    for (const { facadeModuleId } of reached(`${topic}/index.js`, modules)) {
      needed.set(facadeModuleId, [...(needed.get(facadeModuleId) ?? []), topic])
    }
  }
  return new Map([...needed].filter(([id]) => !id.startsWith('door:')).map(([id, by]) => [id, fileFor(by)]))
}

function reached(fileName, modules, found = new Set()) {
  const module = modules.get(fileName)
  if (found.has(module)) return found
  found.add(module)
  for (const other of module.imports) reached(other, modules, found)
  return found
}

/** What several topics need is with the lowest of them, so that its door loads no more than it needs, else in `common`. */
function fileFor(needing) {
  const lower = needing.filter((topic) => !upper.includes(topic))
  if (lower.length === 0) return needing.includes('cautions') ? 'cautions' : 'preparation'
  const own = apart.find((list) => lower.every((topic) => list.includes(topic)))
  return own?.[0] ?? shared.find(([topic]) => lower.includes(topic))?.[1] ?? 'common'
}

/** Names and lines stay as they are, for whoever debugs; comments are in the declarations. All in ASCII, which is read faster. */
function withoutComments() {
  return {
    name: 'without-comments',
    renderChunk: async (code) => ({ code: (await transform(code, { target, legalComments: 'none' })).code, map: null }),
  }
}

function licenceOf(name) {
  return path(`node_modules/${name}/${name === 'zod' ? 'LICENSE' : 'LICENCE.md'}`)
}

/** Nothing is let pass, a circle of files least of all; how zod is written is not ours to mend. */
function onLog(_level, { message, id, ids = [id] }) {
  if (!ids.every((one) => one?.includes('/node_modules/'))) throw new Error(message)
}
