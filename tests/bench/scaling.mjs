/** Time and memory from a thousand benches and worksheets up, bench by bench: nothing is kept, so memory must not grow. */
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { planBenches, planPreparation } from 'saltwright/preparation'
import { reviewBenches } from 'saltwright/review'
import { atMost } from './harness.mjs'
import { recipe } from './preparations.mjs'

setFlagsFromString('--expose-gc')
const collect = runInNewContext('gc')

function* benches(count) {
  for (let index = 0; index < count; index += 1)
    yield { name: `Bench ${index + 1}`, scale: { amount: `0.0${200 + (index % 700)} mol` } }
}

const plan = planPreparation(recipe)

function* worksheets(count) {
  const answers = { 'theoretical-yield': '11.77 g', 'theoretical-amount': '0.0300 mol', 'mass-of-Fe': '1.700 g' }
  for (let index = 0; index < count; index += 1)
    yield { plan, filled: { format: 'saltwright/worksheet@1', bench: `Bench ${index + 1}`, answers } }
}

function consumed(name, iterator, count) {
  collect()
  const before = process.memoryUsage().heapUsed
  const start = performance.now()
  let seen = 0
  let most = 0
  for (const each of iterator) {
    seen += each === undefined ? 0 : 1
    if (seen % Math.ceil(count / 4) === 0) {
      collect()
      most = Math.max(most, process.memoryUsage().heapUsed - before)
    }
  }
  if (seen !== count) throw new Error(`${seen} of ${count}`)
  return { name: `${name}, ${count}`, time: ((performance.now() - start) * 1000) / count, memory: most / 1e6 }
}

export function measure({ long = false } = {}) {
  const counts = long ? [1000, 10_000, 100_000] : [1000, 10_000]
  consumed('warm', planBenches(recipe, benches(500)), 500)
  consumed('warm', reviewBenches(worksheets(500)), 500)
  const plans = counts.map((count) => consumed('planBenches', planBenches(recipe, benches(count)), count))
  const reviews = counts.map((count) => consumed('reviewBenches', reviewBenches(worksheets(count)), count))
  const growth = (rows) => rows.at(-1).time / rows[0].time
  const memory = Math.max(...[...plans, ...reviews].map((row) => row.memory))
  return {
    title: 'Scaling',
    about: `Microseconds for each bench or worksheet of ${counts.join(', ')}, one at a time.`,
    rows: [...plans, ...reviews],
    targets: [
      atMost('times as long for each bench of the most as of a thousand', 1.3, growth(plans)),
      atMost('times as long for each worksheet of the most as of a thousand', 1.3, growth(reviews)),
      atMost('megabytes kept on the way, at most', 5, memory),
    ],
  }
}
