/**
 * Builds and packs what is under version control, or would be, twice, in two folders, and compares: `npm run reproducible`. Whoever rebuilds a
 * release from its tag can so tell that the published tarball holds nothing else.
 */
import { execFileSync } from 'node:child_process'
import { createHash } from 'node:crypto'
import { cpSync, mkdtempSync, readFileSync, rmSync, symlinkSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { root } from './install.mjs'

const files = execFileSync('git', ['ls-files', '-coz', '--exclude-standard'], { cwd: root, encoding: 'utf8' })
  .split('\0')
  .filter(Boolean)
const needed = files.filter((file) =>
  /^(src\/|\.config\/rollup\.mjs$|package.*\.json$|ts[a-z.]*$|tsconfig\.json$|README\.md$|LICENSE$)/.test(file),
)
const [one, other] = ['one', 'another'].map(packed)

console.log(`${one.hash}  ${one.filename}, built twice`)
if (one.hash !== other.hash) {
  console.error(`the second build differs: ${other.hash}`)
  process.exitCode = 1
}

function packed(name) {
  const folder = mkdtempSync(join(tmpdir(), `saltwright-${name}-`))
  try {
    for (const file of needed) cpSync(join(root, file), join(folder, file), { recursive: true })
    symlinkSync(join(root, 'node_modules'), join(folder, 'node_modules'))
    execFileSync(process.execPath, ['.config/rollup.mjs'], { cwd: folder, stdio: 'inherit' })
    execFileSync('npx', ['tsup', '--silent'], { cwd: folder, stdio: 'inherit' })
    const [{ filename }] = JSON.parse(execFileSync('npm', ['pack', '--json'], { cwd: folder, encoding: 'utf8' }))
    const hash = createHash('sha256')
      .update(readFileSync(join(folder, filename)))
      .digest('hex')
    return { filename, hash }
  } finally {
    rmSync(folder, { recursive: true })
  }
}
