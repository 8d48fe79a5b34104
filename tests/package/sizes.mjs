/**
 * What each door costs a web page: bundled alone, minified, compressed with brotli, its dependencies included; and that one function
 * through the front door costs no more than through its own. Fails above a limit. `npm run size`
 */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { brotliCompressSync } from 'node:zlib'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../..', import.meta.url))
const { exports, name } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'))
const doors = Object.keys(exports)
  .filter((key) => !key.endsWith('.json'))
  .map((key) => key.replace('.', name))

/** In kilobytes of 1000 bytes. A door without one may cost what the front door may. */
const limits = new Map([
  [name, 90],
  [`${name}/formula`, 25],
])

/** One function of each kind of topic, through its own door and through the front door. */
const single = {
  quantity: 'countFigures',
  formula: 'molarMass',
  equation: 'balance',
  product: 'percentYield',
  solution: 'dilution',
}
/** Bytes by which the two may differ: the names of files differ in length. */
const slack = 200

const problems = []
for (const door of doors) {
  const size = await costOf(`export * from '${door}'`)
  const limit = limits.get(door) ?? limits.get(name)
  if (size > limit * 1000) problems.push(`${door} is over its limit of ${limit} kB`)
  console.log(`${(size / 1000).toFixed(1).padStart(6)} kB of ${String(limit).padStart(2)}  ${door}`)
}
for (const [topic, one] of Object.entries(single)) {
  const own = await costOf(`export { ${one} } from '${name}/${topic}'`)
  const front = await costOf(`export { ${one} } from '${name}'`)
  if (front > own + slack) problems.push(`${one} costs ${front} bytes through the front door, ${own} through its own`)
  console.log(
    `${(own / 1000).toFixed(1).padStart(6)} kB, ${(front / 1000).toFixed(1)} kB by the front door: ${one} alone`,
  )
}

for (const problem of problems) console.error(problem)
process.exitCode = problems.length === 0 ? 0 : 1

async function costOf(contents) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    format: 'esm',
    write: false,
  })
  return brotliCompressSync(outputFiles[0].contents).length
}
