/**
 * What each door costs a web page: bundled alone, minified, compressed with brotli, its dependencies included; and that one function
 * through the front door costs no more than through its own. Fails where a door has grown. `npm run size`
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

/**
 * In kilobytes of 1000 bytes, some two per cent above what was last measured: a door that outgrows its limit is either mended or given
 * another one, with the reason in the commit. One that has shrunk gets a lower limit.
 */
const limits = new Map([
  [name, 172.4],
  [`${name}/quantity`, 32],
  [`${name}/element`, 26],
  [`${name}/formula`, 52.1],
  [`${name}/equation`, 47.7],
  [`${name}/stoichiometry`, 58.1],
  [`${name}/solution`, 54.1],
  [`${name}/crystallisation`, 55.3],
  [`${name}/product`, 58.6],
  [`${name}/cautions`, 54.3],
  [`${name}/preparation`, 108.5],
  [`${name}/review`, 125.5],
  [`${name}/report`, 78.6],
])

/** What is aimed at. Numbers that remember their origin, and a reader that explains every mistake, cost more so far. */
const goals = new Map([
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
  const limit = limits.get(door) ?? 0
  if (size > limit * 1000) problems.push(`${door} is over its limit of ${limit} kB`)
  const goal = goals.has(door) ? `, goal ${goals.get(door)}` : ''
  console.log(`${(size / 1000).toFixed(1).padStart(6)} kB of ${limit.toFixed(1).padStart(5)}  ${door}${goal}`)
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
