/**
 * Packs the package, puts the tarball where npm would install it, beside its two dependencies and nothing else, and uses
 * it as other software does: every door as an ES module and as CommonJS, and compiled without skipping its declarations.
 */
import { execFileSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

const root = fileURLToPath(new URL('../..', import.meta.url))
const consumers = join(root, 'tests/package/consumers')
const { name, dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
const place = mkdtempSync(join(tmpdir(), `${name}-`))

try {
  install(pack())
  cpSync(consumers, place, { recursive: true })
  run('node', 'imports.mjs')
  run('node', 'requires.cjs')
  run('node', join(root, 'node_modules/typescript/bin/tsc'), '-p', '.')
  console.log('used as an ES module, as CommonJS, and compiled')
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
} finally {
  rmSync(place, { recursive: true })
}

function pack() {
  const report = execFileSync('npm', ['pack', '--json', '--pack-destination', place], { cwd: root, encoding: 'utf8' })
  const [{ filename, size, files }] = JSON.parse(report)
  const unwanted = files.filter(({ path }) => !/^(dist\/.*|package\.json|README\.md|LICENSE)$/.test(path))
  if (unwanted.length > 0) throw new Error(`not for users: ${unwanted.map(({ path }) => path).join(', ')}`)
  if (size > 1_000_000) throw new Error(`the tarball has ${size} bytes, more than 1 MB`)
  console.log(`${filename}: ${files.length} files, ${(size / 1000).toFixed(1)} kB`)
  return join(place, filename)
}

/** Dependencies come from the project's own folder, so that this works without a network. */
function install(tarball) {
  const modules = join(place, 'node_modules')
  mkdirSync(join(modules, name), { recursive: true })
  run('tar', '-xzf', tarball, '--strip-components=1', '-C', join(modules, name))
  const forCompiling = ['@types/node', 'undici-types']
  for (const other of [...Object.keys(dependencies), ...forCompiling]) {
    cpSync(join(root, 'node_modules', other), join(modules, other), { recursive: true })
  }
}

function run(command, ...args) {
  execFileSync(command, args, { cwd: place, stdio: 'inherit' })
}
