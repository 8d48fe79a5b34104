import { execFileSync } from 'node:child_process'
import { cpSync, mkdirSync, mkdtempSync, readFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'

/** The folder of the project. */
export const root = fileURLToPath(new URL('../..', import.meta.url))

const { name, dependencies } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))

/**
 * Packs the package and puts it where npm would install it, in a folder of its own, beside its two dependencies and nothing else.
 * Dependencies come from the project's own folder, so that this works without a network.
 *
 * @returns {string} The folder, to be removed when done.
 */
export function placeWithPackage() {
  const place = mkdtempSync(join(tmpdir(), `${name}-`))
  const tarball = pack(place)
  const modules = join(place, 'node_modules')
  mkdirSync(join(modules, name), { recursive: true })
  execFileSync('tar', ['-xzf', tarball, '--strip-components=1', '-C', join(modules, name)], { stdio: 'inherit' })
  const forCompiling = ['@types/node', 'undici-types']
  for (const other of [...Object.keys(dependencies), ...forCompiling]) {
    cpSync(join(root, 'node_modules', other), join(modules, other), { recursive: true })
  }
  return place
}

function pack(place) {
  const report = execFileSync('npm', ['pack', '--json', '--pack-destination', place], { cwd: root, encoding: 'utf8' })
  const [{ filename, size, files }] = JSON.parse(report)
  const unwanted = files.filter(({ path }) => !/^(dist\/.*|package\.json|README\.md|LICENSE)$/.test(path))
  if (unwanted.length > 0) throw new Error(`not for users: ${unwanted.map(({ path }) => path).join(', ')}`)
  if (size > 1_000_000) throw new Error(`the tarball has ${size} bytes, more than 1 MB`)
  console.log(`${filename}: ${files.length} files, ${(size / 1000).toFixed(1)} kB`)
  return join(place, filename)
}
