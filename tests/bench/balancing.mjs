/**
 * How fast equations are balanced from their text, beside routes that check nothing: fraction-free elimination on BigInt behind a bare
 * scanner, row reduction on the exact fractions of a general-purpose library behind a generated parser, and a matrix library.
 */
import { execFileSync } from 'node:child_process'
import { all, create } from 'mathjs'
import { elements } from 'saltwright/element'
import { balance, checkBalance, parseEquation } from 'saltwright/equation'
import { equations } from './equations.mjs'
import { generatedEquationParser } from './generated-parser.mjs'
import { atLeast, ratio, timed } from './harness.mjs'
import { commonDivisor, scan, solveByBigInt, solveByFractions } from './plain-routes.mjs'

const math = create(all, { number: 'Fraction' })
const generated = generatedEquationParser([...elements.map(({ symbol }) => symbol), 'D', 'T'])

/** Equations that have one answer, by this library; the plain routes have to find the same. */
function isBalanced(text) {
  try {
    return balance(text) !== undefined
  } catch {
    return false
  }
}

/** The matrix of an equation behind the generated parser. */
function parsed(text) {
  const { left, right } = generated.parse(text)
  const species = [...left, ...right]
  const rows = new Map()
  for (const [index, { composition, charge }] of species.entries()) {
    const sign = index < left.length ? 1 : -1
    for (const [symbol, count] of [...composition, ['', charge]]) {
      if (!rows.has(symbol)) rows.set(symbol, new Array(species.length).fill(0))
      rows.get(symbol)[index] = sign * count
    }
  }
  return [...rows.values()]
}

/** The last species is 1; the others by the normal equations, which have one solution, in exact fractions. */
function solveByMatrices(matrix) {
  const rows = math.matrix(matrix.map((row) => row.slice(0, -1).map((value) => math.fraction(value))))
  const sides = math.matrix(matrix.map((row) => [math.fraction(-row.at(-1))]))
  const turned = math.transpose(rows)
  const solution = math.lusolve(math.multiply(turned, rows), math.multiply(turned, sides))
  return [...solution.valueOf().map(([value]) => value), math.fraction(1)]
}

function wholeNumbers(fractions) {
  const multiple = fractions.reduce((least, { d }) => (least * d) / commonDivisor(least, d), 1n)
  const whole = fractions.map(({ s, n, d }) => (s * n * multiple) / d)
  const divisor = whole.reduce(commonDivisor)
  return whole.map((value) => String(value / divisor))
}

const coefficients = (equation) =>
  [...equation.left, ...equation.right].map(({ coefficient }) => String(coefficient.numerator))

function checkSame(texts, large) {
  for (const text of texts) {
    const ours = coefficients(balance(text)).join()
    const others = [solveByBigInt(scan(text)), solveByFractions(parsed(text))].map(String)
    if (others.some((answer) => answer !== ours)) throw new Error(`${text}: ${ours}, ${others}`)
  }
  for (const text of large) {
    if (wholeNumbers(solveByMatrices(parsed(text))).join() !== coefficients(balance(text)).join()) throw new Error(text)
  }
}

const over = (texts, work) => () => {
  for (const text of texts) work(text)
}

export function measure() {
  const texts = equations(200, isBalanced)
  const size = (text) => text.split(/ \+ | -> /).length
  const large = texts.filter((text) => size(text) >= 9).slice(0, 20)
  checkSame(texts, large)
  const rows = timed(
    [
      { name: 'balance', run: over(texts, balance) },
      { name: 'bare scan and elimination on BigInt', run: over(texts, (text) => solveByBigInt(scan(text))) },
      { name: 'generated parser and rows of fractions', run: over(texts, (text) => solveByFractions(parsed(text))) },
      { name: 'parseEquation alone', run: over(texts, parseEquation) },
      { name: 'checkBalance', run: over(texts, checkBalance) },
    ],
    { rounds: 12, items: texts.length },
  )
  const big = timed(
    [
      { name: 'balance, 9 to 20 species', run: over(Array(10).fill(large).flat(), balance), times: 10 },
      {
        name: 'exact-fraction matrix library, 9 to 20 species',
        run: over(large, (text) => solveByMatrices(parsed(text))),
      },
    ],
    { rounds: 30, items: large.length },
  )
  return {
    title: 'Balancing',
    about: `${texts.length} equations of ${Math.min(...texts.map(size))} to ${Math.max(...texts.map(size))} species, from their text; microseconds for each. The same coefficients by all routes.`,
    rows: [...rows, ...big, ...byGp(texts)],
    targets: [
      atLeast('as fast as the bare scan with BigInt', 1, ratio(rows, 'bare scan and elimination on BigInt', 'balance')),
      atLeast(
        'as fast as the generated parser with fractions',
        7,
        ratio(rows, 'generated parser and rows of fractions', 'balance'),
      ),
      atLeast('as fast as the matrix library, 9 to 20 species', 60, ratio(big, big[1].name, big[0].name)),
    ],
  }
}

/** PARI/GP on the matrices alone, where it is installed: its own clock, without its start and without reading the equations. */
function byGp(texts) {
  const rounds = 20
  const program = [
    'm = List();',
    ...texts.map((text) => `listput(m, Mat([${scan(text).join(';')}]));`),
    `t = getabstime(); for(r = 1, ${rounds}, for(i = 1, #m, matkerint(m[i]))); print(getabstime() - t)`,
    '',
  ].join('\n')
  try {
    const printed = execFileSync('gp', ['-q', '-f'], { input: program, stdio: ['pipe', 'pipe', 'ignore'] })
    const milliseconds = Number.parseFloat(String(printed))
    if (!(milliseconds > 0)) return []
    return [{ name: 'PARI/GP matkerint, the matrices alone', time: (milliseconds * 1000) / rounds / texts.length }]
  } catch {
    return []
  }
}
