/**
 * A percent yield from twelve inputs as text, with figures and origin and with its standard uncertainty, beside the same arithmetic in
 * bare decimal.js and beside a Python library for numbers with uncertainties, where that is installed.
 */
import { execFileSync } from 'node:child_process'
import { fileURLToPath } from 'node:url'
import { Decimal as Shared } from 'decimal.js'
import { constant, quantity, standardUncertainty, weightedSum } from 'saltwright/quantity'
import { atLeast, atMost, ratio, timed } from './harness.mjs'

const Decimal = Shared.clone({ defaults: true, precision: 34, rounding: 6 })

/**
 * Ammonium iron(II) sulfate from iron(II) sulfate heptahydrate; invented numbers. The atomic weights are in both molar masses, and each
 * counts as one measurement.
 */
const inputs = {
  gross: ['20.3174', '0.0003', 'g'],
  tare: ['11.2043', '0.0003', 'g'],
  paper: ['0.4210', '0.0005', 'g'],
  used: ['7.5062', '0.0004', 'g'],
  assay: ['0.9910', '0.0029', '1'],
  ratio: ['1', '0', '1'],
  N: ['14.007', '0.001', 'g/mol'],
  H: ['1.0080', '0.0002', 'g/mol'],
  Fe: ['55.845', '0.002', 'g/mol'],
  S: ['32.06', '0.02', 'g/mol'],
  O: ['15.999', '0.001', 'g/mol'],
  drops: ['0.0121', '0.0012', 'g'],
}
const made = { N: 2, H: 20, Fe: 1, S: 2, O: 14 }
const given = { Fe: 1, S: 1, O: 11, H: 14 }

const texts = Object.fromEntries(
  Object.entries(inputs).map(([name, [value, uncertainty, unit]]) => [
    name,
    { plain: `${value} ${unit}`, stated: `${value}(${uncertainty}) ${unit}`, bare: value },
  ]),
)

function ours(form) {
  const read = (name) => quantity(texts[name][form])
  const weights = Object.fromEntries(Object.keys(made).map((symbol) => [symbol, constant(texts[symbol][form])]))
  const mass = (counts) =>
    weightedSum(Object.entries(counts).map(([symbol, times]) => ({ times, of: weights[symbol] })))
  const actual = read('gross').minus(read('tare')).minus(read('paper')).plus(read('drops'))
  const possible = read('used').times(read('assay')).dividedBy(mass(given)).times(read('ratio')).times(mass(made))
  return actual.dividedBy(possible)
}

function bare() {
  const read = (name) => new Decimal(texts[name].bare)
  const weights = Object.fromEntries(Object.keys(made).map((symbol) => [symbol, read(symbol)]))
  const mass = (counts) =>
    Object.entries(counts).reduce((sum, [symbol, times]) => sum.plus(weights[symbol].times(times)), new Decimal(0))
  const actual = read('gross').minus(read('tare')).minus(read('paper')).plus(read('drops'))
  const possible = read('used').times(read('assay')).div(mass(given)).times(read('ratio')).times(mass(made))
  return actual.div(possible)
}

function withFigures() {
  const result = ours('plain')
  return [result.toString(), result.significantFigures]
}

const withUncertainty = () => standardUncertainty(ours('stated')).value

/** Turns of ten milliseconds or less: in longer ones the machine hardly ever does nothing else. */
const calls = 300
const often = (call) => () => {
  for (let count = 0; count < calls; count += 1) call()
}

/** The Python of the system, else the first on the path that has the library. */
function byPython() {
  const program = fileURLToPath(new URL('yields.py', import.meta.url))
  for (const python of ['/usr/bin/python3', 'python3']) {
    try {
      const options = { input: JSON.stringify({ inputs, made, given }), stdio: ['pipe', 'pipe', 'ignore'] }
      return JSON.parse(execFileSync(python, [program], options))
    } catch {
      // not there, or without the library
    }
  }
  return undefined
}

export function measure() {
  if (!ours('plain').value.eq(bare())) throw new Error(`${ours('plain').value}, ${bare()}`)
  const rows = timed(
    [
      { name: 'yield with figures and origin', run: often(withFigures) },
      { name: 'yield with standard uncertainty', run: often(withUncertainty) },
      { name: 'the same arithmetic in decimal.js', run: often(() => bare().toSignificantDigits(4).toString()) },
    ],
    { rounds: 100, items: calls },
  )
  const python = byPython()
  if (python !== undefined) {
    const own = withUncertainty().toNumber()
    if (Math.abs(python.uncertainty / own - 1) > 1e-6) throw new Error(`${python.uncertainty}, ${own}`)
    rows.push({ name: 'uncertainties, in Python', time: python.time })
  }
  return {
    title: 'A yield from its readings',
    about:
      'Twelve numbers as text, five of them atomic weights that both molar masses share; microseconds for the whole. The same value by all routes, and the same uncertainty.',
    rows,
    targets: [
      atMost('times bare decimal.js, with figures and origin', 2, ratio(rows, rows[0].name, rows[2].name)),
      atMost('times bare decimal.js, with standard uncertainty', 3, ratio(rows, rows[1].name, rows[2].name)),
      ...(python === undefined
        ? []
        : [atLeast('as fast as the Python library', 2, ratio(rows, 'uncertainties, in Python', rows[1].name))]),
    ],
  }
}
