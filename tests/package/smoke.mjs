/**
 * Uses the packed tarball as other software does: every door as an ES module and as CommonJS, and compiled without skipping its
 * declarations.
 */
import { execFileSync } from 'node:child_process'
import { cpSync, rmSync } from 'node:fs'
import { join } from 'node:path'
import { placeWithPackage, root } from './install.mjs'

const place = placeWithPackage()

try {
  cpSync(join(root, 'tests/package/consumers'), place, { recursive: true })
  run('imports.mjs')
  run('requires.cjs')
  run(join(root, 'node_modules/typescript/bin/tsc'), '-p', '.')
  console.log('used as an ES module, as CommonJS, and compiled')
} catch (error) {
  console.error(error.message)
  process.exitCode = 1
} finally {
  rmSync(place, { recursive: true })
}

function run(...args) {
  execFileSync('node', args, { cwd: place, stdio: 'inherit' })
}
