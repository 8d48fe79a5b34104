/**
 * What it costs that a number remembers where it came from: a step of arithmetic beside the bare operation of decimal.js, and the
 * readers of the graph on graphs of growing size. Run `npm run build` first, then `node tests/bench/quantity.mjs`.
 */
import { Decimal as Shared } from 'decimal.js'
import { exact, quantity, reconsider, standardUncertainty, toJSON, working } from 'saltwright/quantity'

const Decimal = Shared.clone({ defaults: true, precision: 34, rounding: 6 })
const mass = quantity('3.9772(21) g')
const other = quantity('18.632(1) g')
const molar = quantity('81.379(20) g/mol')
const ratio = quantity('1.2345(10)')
const [a, b, m, r] = [mass, other, molar, ratio].map(({ value }) => new Decimal(value))

const steps = [
  { name: 'plus', ours: () => mass.plus(other), bare: () => a.plus(b) },
  { name: 'minus', ours: () => other.minus(mass), bare: () => b.minus(a) },
  { name: 'times', ours: () => mass.times(ratio), bare: () => a.times(r) },
  { name: 'dividedBy', ours: () => mass.dividedBy(molar), bare: () => a.div(m) },
  { name: 'to', ours: () => mass.to('mg'), bare: () => a.times(1000) },
]

/** Nanoseconds per call: the least of some rounds, for what else the machine does only adds. */
function timed(call, calls = 20_000, rounds = 25) {
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now()
    for (let count = 0; count < calls; count += 1) call()
    return performance.now() - start
  })
  return (Math.min(...times) * 1e6) / calls
}

console.log('step          ours      bare   ratio')
for (const { name, ours, bare } of steps) {
  const [own, plain] = [timed(ours), timed(bare)]
  const cells = [own.toFixed(0).padStart(7), plain.toFixed(0).padStart(7), (own / plain).toFixed(2).padStart(6)]
  console.log(`${name.padEnd(10)}${cells[0]} ns${cells[1]} ns  ${cells[2]}`)
}

/** A calculation of so many steps, each from the one before and an earlier one. */
function graph(size) {
  const nodes = [ratio]
  for (let count = 1; count < size; count += 1) {
    const [last, early] = [nodes.at(-1), nodes[count >> 1]]
    nodes.push(count % 3 === 0 ? last.times(ratio).dividedBy(early) : last.plus(early).dividedBy(exact(2)))
  }
  return nodes.at(-1)
}

const readers = {
  uncertainty: (q) => standardUncertainty(q),
  working: (q) => working(q),
  reconsideration: (q) => reconsider(q, { replace: ratio, with: exact('1.5') }),
  json: (q) => toJSON(q, { origin: true }),
}

console.log('\nmicroseconds per step of a calculation of 100, 1000 and 10 000 steps')
for (const [name, read] of Object.entries(readers)) {
  const cells = [100, 1000, 10_000].map((size) => {
    const q = graph(size)
    const time = timed(() => read(q), Math.max(1, 2000 / size), 10)
    return (time / 1000 / size).toFixed(2).padStart(8)
  })
  console.log(`${name.padEnd(16)}${cells.join('')}`)
}
