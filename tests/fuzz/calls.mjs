/** The calls of the examples with one argument changed, or one place anywhere inside an argument. */
import assert from 'node:assert/strict'
import * as s from 'saltwright'
import { everything } from './everything.mjs'
import { exampleCalls } from './example-calls.mjs'
import { allowed, checkNumbers, isFrozen } from './invariants.mjs'
import { anything } from './json.mjs'

const examples = (await exampleCalls()).map((call) => ({ ...call, places: placesIn(call.given) }))
const forged = ['plan', 'assessment', 'class-plan', 'review'].map((name) => ({ format: `saltwright/${name}@1` }))

/** The way to every place in the arguments, and to one argument more than there are. */
function placesIn(given) {
  const inside = (value, path) =>
    isPlain(value) ? Object.keys(value).flatMap((key) => [[...path, key], ...inside(value[key], [...path, key])]) : []
  return [...inside(given, []), [String(given.length)]]
}

function isPlain(value) {
  if (Array.isArray(value)) return true
  return typeof value === 'object' && value !== null && Object.getPrototypeOf(value) === Object.prototype
}

/** A copy of a value in which something else stands at one place; all beside the way there is the same. */
function replaced(holder, [key, ...rest], value) {
  const copy = Array.isArray(holder) ? holder.slice() : { ...holder }
  copy[key] = rest.length === 0 ? value : replaced(holder[key], rest, value)
  return copy
}

/** What looks right for longer than most. */
const likely = [
  -0,
  5,
  'x',
  [null],
  [Symbol('s')],
  new Array(3),
  ['1.00 g', undefined],
  { [Symbol.iterator]: 5 },
  { length: 2 },
  '1e99 mol',
  s.exact('1e99 mol'),
  s.quantity('-2.0 g'),
  s.quantity('0 mL'),
  s.exact('0'),
  s.parseFormula('H2O'),
  s.parseEquation('2H2 + O2 -> 2H2O'),
]

export const calls = {
  ...everything,
  name: 'calls',
  input: (random) => {
    const { name, run, given, places } = random.pick(examples)
    const place = random.pick(places)
    const value = random.oneIn(2) ? random.pick(likely) : anything(random, forged)
    return { call: [name, run], place, value, given: replaced(given, place, value) }
  },
  check: (result, { value }) => {
    if (Object.is(result, value)) return // handed back as it was
    allowed(() => checkNumbers(result, (number) => !Number.isNaN(number)))
    if (/(plan|assessment|review)@1$/.test(result?.format)) assert.ok(isFrozen(result), 'a document is frozen')
  },
}
