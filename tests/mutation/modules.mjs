/**
 * Loads modules of the project anew as often as wanted: each file is compiled once, and every set of modules runs it again.
 * The library keeps memos at the top of many files; with new modules none of them outlives the mutant that filled it.
 */
import { existsSync, readFileSync } from 'node:fs'
import { createRequire } from 'node:module'
import { dirname, join, resolve } from 'node:path'
import { pathToFileURL } from 'node:url'
import { Script } from 'node:vm'
import { transformSync } from 'esbuild'

/** A clock that stands still: how fast the tests are says nothing here, with two of them at once and every line counted. */
const performance = { now: () => 0 }

export class Modules {
  #root
  #outside
  #files = new Map()

  /** @param root - The folder of the project. */
  constructor(root) {
    this.#root = root
    this.#outside = createRequire(join(root, 'package.json'))
  }

  /**
   * Modules that nobody has used yet.
   *
   * @param stand - What to load in place of a package, by its name.
   * @param isMutated - Whether the mutants of a file are wanted.
   * @returns `load` a file by its path, once; `forget` what was loaded.
   */
  newSet(stand, isMutated) {
    let loaded = new Map()
    const load = (path) => {
      const known = loaded.get(path)
      if (known !== undefined) return known.exports
      const file = this.#file(path, isMutated(path))
      const module = { exports: {} }
      loaded.set(path, module)
      const require = (name) =>
        isOfProject(name) ? load(this.#find(name, file)) : (stand[name] ?? this.#outside(name))
      file.run(module, module.exports, require, pathToFileURL(path).href, performance)
      return module.exports
    }
    return { load, forget: () => (loaded = new Map()) }
  }

  /** Compiles a file beforehand, so that a run that is stopped is never stopped in the middle of that. */
  prepare(path, mutated) {
    this.#file(path, mutated)
  }

  #file(path, mutated) {
    const key = `${mutated} ${path}`
    const file = this.#files.get(key) ?? { path, run: compile(path, mutated), found: new Map() }
    this.#files.set(key, file)
    return file
  }

  #find(name, { path, found }) {
    const known = found.get(name) ?? this.#search(name, dirname(path))
    found.set(name, known)
    return known
  }

  #search(name, folder) {
    if (name === 'saltwright') return join(this.#root, 'src/index.ts')
    if (name.startsWith('saltwright/')) return join(this.#root, 'src', name.slice('saltwright/'.length), 'index.ts')
    const path = resolve(folder, name)
    return [path, path.replace(/\.js$/, '.ts'), `${path}.ts`].find((one) => existsSync(one)) ?? path
  }
}

function isOfProject(name) {
  return name.startsWith('.') || name === 'saltwright' || name.startsWith('saltwright/')
}

function compile(path, mutated) {
  const text = readFileSync(path, 'utf8')
  const { code } = transformSync(mutated ? text : withoutMutants(text), {
    loader: path.endsWith('.json') ? 'json' : 'ts',
    format: 'cjs',
    target: 'node20',
    supported: { 'dynamic-import': false },
    define: { 'import.meta.url': '__url' },
  })
  const parameters = 'module, exports, require, __url, performance'
  return new Script(`(function (${parameters}) {${code}\n})`, { filename: path }).runInThisContext()
}

/** All mutants of a file switched off for good: asking at every step which one is meant takes most of the time. */
function withoutMutants(text) {
  return text.replace(/stryMutAct_9fa48\("\d+"\)/g, 'false').replace(/stryCov_9fa48\("[^()]*"\)/g, '0')
}
