/**
 * The long fuzzing: `npm run build && npm run fuzz -- [--count 1000000] [--seed 1] [--reader formula]`;
 * `--whole` prints findings in full. Ends with 1 if anything was
 * found. Prints how many inputs each reader accepted, how long the slowest took, and how much memory is in use.
 */
import { parseArgs } from 'node:util'
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { calls } from './calls.mjs'
import { everything } from './everything.mjs'
import { describeFinding, fuzz } from './fuzz.mjs'
import { readers } from './readers.mjs'

const { values } = parseArgs({
  options: {
    count: { type: 'string', default: '1000000' },
    seed: { type: 'string', default: '1' },
    reader: { type: 'string' },
    whole: { type: 'boolean', default: false },
  },
})
const [count, seed] = [Number(values.count), Number(values.seed)]
const chosen = [...readers, everything, calls].filter(
  ({ name }) => values.reader === undefined || name === values.reader,
)
const batches = 10

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc')

for (const reader of chosen) run(reader)

/** In batches, to see whether memory grows. */
function run(reader) {
  Error.stackTraceLimit = 0 // refusals by the million; findings are run again with their stack
  const start = performance.now()
  const memory = []
  let accepted = 0
  let slowest = 0
  for (let batch = 0; batch < batches; batch += 1) {
    const result = fuzz(reader, { count: Math.ceil(count / batches), seed: seed + batch * 7919 })
    collect()
    memory.push(process.memoryUsage().heapUsed / 1e6)
    accepted += result.accepted
    slowest = Math.max(slowest, result.slowest)
    if (result.polluted) report(reader, ['Object.prototype was changed'])
    if (result.findings.length > 0)
      return report(
        reader,
        result.findings.map((finding) => describeFinding(finding, values.whole ? 1e9 : 300)),
      )
  }
  const grown = memory[batches - 1] - memory[1]
  if (grown > 20) report(reader, [`memory grew by ${grown.toFixed(1)} MB`])
  const seconds = ((performance.now() - start) / 1000).toFixed(0)
  console.log(
    `${reader.name}: ${count} inputs, ${accepted} accepted, slowest ${slowest.toFixed(1)} ms, ` +
      `memory ${memory[1].toFixed(1)} to ${memory[batches - 1].toFixed(1)} MB, ${seconds} s`,
  )
  return undefined
}

function report({ name }, lines) {
  process.exitCode = 1
  console.log(`${name}: FOUND`)
  for (const line of lines) console.log(line)
}
