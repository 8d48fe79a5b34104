/**
 * Time and memory from a thousand benches and worksheets up. Bench by bench nothing is kept, so memory must not grow; a class as a list
 * keeps what it gives, so memory grows as the class does.
 */
import { setFlagsFromString } from 'node:v8'
import { runInNewContext } from 'node:vm'
import { planBenches, planClass, planPreparation } from 'saltwright/preparation'
import { reviewBenches, reviewClass } from 'saltwright/review'
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

const perItem = ({ count, memory }) => memory / count

/** A whole class at once, with what its result keeps. */
function whole(name, make, count) {
  collect()
  const before = process.memoryUsage().heapUsed
  const start = performance.now()
  const result = make(count)
  const time = ((performance.now() - start) * 1000) / count
  collect()
  const memory = (process.memoryUsage().heapUsed - before) / 1e6
  if (result === undefined) throw new Error(`${name} gave nothing`) // and it is in use until here
  return { name: `${name}, ${count}`, count, time, memory }
}

export function measure({ long = false } = {}) {
  const counts = long ? [1000, 10_000, 100_000] : [1000, 10_000]
  consumed('warm', planBenches(recipe, benches(500)), 500)
  consumed('warm', reviewBenches(worksheets(500)), 500)
  const plans = counts.map((count) => consumed('planBenches', planBenches(recipe, benches(count)), count))
  const reviews = counts.map((count) => consumed('reviewBenches', reviewBenches(worksheets(count)), count))
  const lists = [1000, 10_000].map((count) =>
    whole('planClass', (size) => planClass(recipe, [...benches(size)]), count),
  )
  const classes = counts.map((count) => whole('reviewClass', (size) => reviewClass(worksheets(size)), count))
  const growth = (rows) => rows.at(-1).time / rows[0].time
  const memory = Math.max(...[...plans, ...reviews].map((row) => row.memory))
  return {
    title: 'Scaling',
    about: `Microseconds for each of so many benches or worksheets, and the memory in use at most. planBenches and reviewBenches give one at a time and keep nothing; planClass keeps every plan, so it is for classes, not for a hundred thousand benches.`,
    rows: [...plans, ...reviews, ...lists, ...classes],
    targets: [
      atMost('times as long for each bench of the most as of a thousand', 1.3, growth(plans)),
      atMost('times as long for each worksheet of the most as of a thousand', 1.3, growth(reviews)),
      atMost('megabytes kept on the way, one at a time', 5, memory),
      atMost('times as long for each bench of a class of 10000 as of 1000', 1.3, growth(lists)),
      atMost(
        'times the memory for each bench of a class of 10000 as of 1000',
        1.1,
        perItem(lists[1]) / perItem(lists[0]),
      ),
      atMost('times as long for each worksheet of the largest class as of a thousand', 1.3, growth(classes)),
    ],
  }
}
