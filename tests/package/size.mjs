/**
 * How much each door weighs in a web page: bundled with its dependencies, minified, compressed by Brotli. Fails where a door has
 * outgrown its limit, or where one function through the front door brings more than through its own.
 */
import { readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { brotliCompressSync } from 'node:zlib'
import { build } from 'esbuild'

const root = fileURLToPath(new URL('../..', import.meta.url))
const { exports } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'))

/** Kilobytes. Decimal.js alone is 11.5 of each, and the schema library about 15 of those from preparation on. */
const limits = {
  '.': 160,
  './quantity': 27,
  './element': 18,
  './formula': 50,
  './equation': 65,
  './stoichiometry': 70,
  './solution': 80,
  './crystallisation': 80,
  './product': 80,
  './cautions': 90,
  './preparation': 130,
  './review': 150,
  './report': 160,
}

/** One function each, as a page would take it, through its topic and through the front door. */
const single = [
  { name: 'quantity', from: 'quantity' },
  { name: 'parseFormula', from: 'formula' },
  { name: 'molarMass', from: 'formula' },
  { name: 'balance', from: 'equation' },
]

async function sizeOf(contents) {
  const { outputFiles } = await build({
    stdin: { contents, resolveDir: root },
    bundle: true,
    minify: true,
    write: false,
    format: 'esm',
    platform: 'browser',
    logLevel: 'error',
  })
  return brotliCompressSync(outputFiles[0].contents).length / 1000
}

const pathOf = (door) => `${root}dist/${door === '.' ? '' : `${door.slice(2)}/`}index.js`
const doors = Object.keys(exports).filter((door) => !door.endsWith('.json'))
const tooBig = []

for (const door of doors) {
  const size = await sizeOf(`export * from ${JSON.stringify(pathOf(door))}`)
  const limit = limits[door]
  console.log(`${door.padEnd(18)} ${size.toFixed(1).padStart(6)} kB of ${limit}`)
  if (!(size <= limit)) tooBig.push(`${door}: ${size.toFixed(1)} kB, more than ${limit}`)
}
for (const { name, from } of single) {
  const own = await sizeOf(`export { ${name} } from ${JSON.stringify(pathOf(`./${from}`))}`)
  const front = await sizeOf(`export { ${name} } from ${JSON.stringify(pathOf('.'))}`)
  console.log(`${name.padEnd(18)} ${own.toFixed(1).padStart(6)} kB, ${front.toFixed(1)} kB through the front door`)
  if (front > own + 0.5)
    tooBig.push(`${name}: ${front.toFixed(1)} kB through the front door, ${own.toFixed(1)} by itself`)
}
if (tooBig.length > 0) throw new Error(tooBig.join('\n'))
