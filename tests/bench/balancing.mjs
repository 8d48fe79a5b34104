/**
 * How fast equations are balanced, from their text and once they are read, beside two plain routes that check nothing:
 * fraction-free elimination on BigInt, and row reduction on the exact fractions of a general-purpose library. Run
 * `npm run build` first, then `node tests/bench/balancing.mjs`.
 */
import { balance, checkBalance, parseEquation } from 'saltwright/equation'
import { equations } from './equations.mjs'
import { scan, solveByBigInt, solveByFractions } from './plain-routes.mjs'

const texts = equations(200, isBalanced)
const read = texts.map(parseEquation)
const matrices = texts.map(scan)

function isBalanced(text) {
  try {
    return balance(text) !== undefined
  } catch {
    return false
  }
}

for (const [index, text] of texts.entries()) {
  const { left, right } = balance(text)
  const ours = [...left, ...right].map(({ coefficient }) => String(coefficient.numerator)).join()
  const others = [solveByBigInt(matrices[index]), solveByFractions(matrices[index])].map(String)
  if (others.some((answer) => answer !== ours)) throw new Error(`${text}: ${ours}, ${others}`)
}

/** Microseconds per item: the median of some rounds over all of them. */
function timed(items, route, rounds) {
  const run = () => {
    for (const item of items) route(item)
  }
  for (let round = 0; round < Math.max(3, rounds / 3); round += 1) run()
  const times = Array.from({ length: rounds }, () => {
    const start = performance.now()
    run()
    return performance.now() - start
  })
  return (times.sort((a, b) => a - b)[Math.floor(rounds / 2)] * 1000) / items.length
}

/** Prints the time of each route, and how many times the first it is. */
function table(title, routes) {
  console.log(`\n${title}`)
  for (const [name, time] of routes) {
    const ratio = (time / routes[0][1]).toFixed(1)
    console.log(`  ${name.padEnd(40)} ${time.toFixed(1).padStart(8)} us ${ratio.padStart(8)} x`)
  }
}

const sizes = texts.map((text) => text.split(/ \+ | -> /).length)
console.log(
  `${texts.length} equations of ${Math.min(...sizes)} to ${Math.max(...sizes)} species, the same answers by all routes`,
)
table('From the text', [
  ['balance', timed(texts, balance, 60)],
  ['bare scanner and elimination on BigInt', timed(texts, (text) => solveByBigInt(scan(text)), 30)],
  ['bare scanner and rows of fraction.js', timed(texts, (text) => solveByFractions(scan(text)), 9)],
  ['parseEquation', timed(texts, parseEquation, 60)],
  ['checkBalance', timed(texts, checkBalance, 60)],
])
table('From the equation that is read, or its matrix', [
  ['balance', timed(read, balance, 60)],
  ['elimination on BigInt', timed(matrices, solveByBigInt, 30)],
  ['row reduction on fraction.js', timed(matrices, solveByFractions, 9)],
  ['checkBalance', timed(read, checkBalance, 60)],
])
