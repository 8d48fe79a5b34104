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
  #compiled = new Map()

  /** @param root - The folder of the project. */
  constructor(root) {
    this.#root = root
    this.#outside = createRequire(join(root, 'package.json'))
  }

  /** A function that loads files by their path, each once; `stand` gives what to load in place of a package. */
  newSet(stand) {
    let loaded = new Map()
    const load = (file) => {
      const known = loaded.get(file)
      if (known !== undefined) return known.exports
      const module = { exports: {} }
      loaded.set(file, module)
      const require = (name) =>
        isOfProject(name) ? load(this.#find(name, file)) : (stand[name] ?? this.#outside(name))
      this.#compile(file)(module, module.exports, require, pathToFileURL(file).href, performance)
      return module.exports
    }
    return { load, forget: () => (loaded = new Map()) }
  }

  #compile(file) {
    const known = this.#compiled.get(file)
    if (known !== undefined) return known
    const { code } = transformSync(readFileSync(file, 'utf8'), {
      loader: file.endsWith('.json') ? 'json' : 'ts',
      format: 'cjs',
      target: 'node20',
      supported: { 'dynamic-import': false },
      define: { 'import.meta.url': '__url' },
    })
    const script = new Script(`(function (module, exports, require, __url, performance) {${code}\n})`, {
      filename: file,
    })
    const made = script.runInThisContext()
    this.#compiled.set(file, made)
    return made
  }

  #find(name, from) {
    if (name === 'saltwright') return join(this.#root, 'src/index.ts')
    if (name.startsWith('saltwright/')) return join(this.#root, 'src', name.slice('saltwright/'.length), 'index.ts')
    const path = resolve(dirname(from), name)
    return [path, path.replace(/\.js$/, '.ts'), `${path}.ts`].find((one) => existsSync(one)) ?? path
  }
}

function isOfProject(name) {
  return name.startsWith('.') || name === 'saltwright' || name.startsWith('saltwright/')
}
