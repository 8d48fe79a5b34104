/**
 * What it costs that a number remembers where it came from: a step of arithmetic beside the bare operation of decimal.js, and the
 * readers of the graph on graphs of growing size.
 */
import { Decimal as Shared } from 'decimal.js'
import { exact, quantity, reconsider, standardUncertainty, toJSON, working } from 'saltwright/quantity'
import { atMost, timed } from './harness.mjs'

const Decimal = Shared.clone({ defaults: true, precision: 34, rounding: 6 })
const mass = quantity('3.9772(21) g')
const other = quantity('18.632(1) g')
const molar = quantity('81.379(20) g/mol')
const share = quantity('1.2345(10)')
const [a, b, m, r] = [mass, other, molar, share].map(({ value }) => new Decimal(value))

const steps = [
  { name: 'plus', ours: () => mass.plus(other), bare: () => a.plus(b) },
  { name: 'minus', ours: () => other.minus(mass), bare: () => b.minus(a) },
  { name: 'times', ours: () => mass.times(share), bare: () => a.times(r) },
  { name: 'dividedBy', ours: () => mass.dividedBy(molar), bare: () => a.div(m) },
  { name: 'to', ours: () => mass.to('mg'), bare: () => a.times(1000) },
]

const calls = 20_000
const often = (call) => () => {
  for (let count = 0; count < calls; count += 1) call()
}

function stepRows({ name, ours, bare }) {
  return timed(
    [
      { name, run: often(ours) },
      { name: `${name} in decimal.js`, run: often(bare) },
    ],
    { rounds: 12, items: calls },
  )
}

/** A calculation of so many steps, each from the one before and an earlier one. */
function graph(size) {
  const nodes = [share]
  for (let count = 1; count < size; count += 1) {
    const [last, early] = [nodes.at(-1), nodes[count >> 1]]
    nodes.push(count % 3 === 0 ? last.times(share).dividedBy(early) : last.plus(early).dividedBy(exact(2)))
  }
  return nodes.at(-1)
}

const readers = {
  uncertainty: (q) => standardUncertainty(q),
  working: (q) => working(q),
  reconsideration: (q) => reconsider(q, { replace: share, with: exact('1.5') }),
  json: (q) => toJSON(q, { origin: true }),
}

function readerRows([name, read]) {
  return [1000, 10_000, 100_000].map((size) => {
    const q = graph(size)
    const times = Math.max(1, 10_000 / size)
    const run = () => {
      for (let count = 0; count < times; count += 1) read(q)
    }
    const [{ time }] = timed([{ name, run, times }], { rounds: size > 50_000 ? 4 : 12, items: size })
    return { name: `${name}, ${size} steps`, time }
  })
}

export function measure() {
  const arithmetic = steps.map(stepRows)
  const graphs = Object.entries(readers).map(readerRows)
  const worst = Math.max(...arithmetic.map(([ours, bare]) => ours.time / bare.time))
  const [uncertainty] = graphs
  return {
    title: 'Numbers that remember',
    about:
      'Microseconds for each operation, then for each step of a calculation of a thousand to a hundred thousand steps.',
    rows: [...arithmetic, ...graphs].flat(),
    targets: [
      atMost('times decimal.js for a step of arithmetic, at worst', 3, worst),
      atMost(
        'times as long for each step of 100 000 as of 1000, uncertainty',
        3,
        uncertainty[2].time / uncertainty[0].time,
      ),
    ],
  }
}
