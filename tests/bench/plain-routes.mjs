import Fraction from 'fraction.js'

/** The matrix of an equation by a bare scanner: splits at the arrow and the pluses, counts atoms and charges, checks nothing. */
export function scan(text) {
  const [left, right] = text.split(' -> ').map((side) => side.split(' + '))
  const rows = new Map()
  const length = left.length + right.length
  for (const [index, formula] of [...left, ...right].entries()) {
    for (const [symbol, count] of countAtoms(formula)) {
      if (!rows.has(symbol)) rows.set(symbol, new Array(length).fill(0))
      rows.get(symbol)[index] = index < left.length ? count : -count
    }
  }
  return [...rows.values()]
}

function countAtoms(formula) {
  const total = new Map()
  for (const part of formula.split('·')) {
    const number = readNumber(part, 0)
    addTo(total, readUnits(part, number.next).atoms, number.value)
  }
  return total
}

function readUnits(text, from) {
  const atoms = new Map()
  let at = from
  while (at < text.length && text[at] !== ')' && text[at] !== ']') {
    const isBracket = text[at] === '(' || text[at] === '['
    const unit = text[at] === '^' ? readCharge(text, at) : isBracket ? readGroup(text, at) : readSymbol(text, at)
    addTo(atoms, unit.atoms, unit.count)
    at = unit.next
  }
  return { atoms, next: at }
}

function readGroup(text, at) {
  const inside = readUnits(text, at + 1)
  const number = readNumber(text, inside.next + 1)
  return { atoms: inside.atoms, count: number.value, next: number.next }
}

function readSymbol(text, at) {
  const end = text[at + 1] >= 'a' && text[at + 1] <= 'z' ? at + 2 : at + 1
  const number = readNumber(text, end)
  return { atoms: new Map([[text.slice(at, end), 1]]), count: number.value, next: number.next }
}

function readCharge(text, at) {
  const number = readNumber(text, at + 1)
  return {
    atoms: new Map([['', 1]]),
    count: text[number.next] === '-' ? -number.value : number.value,
    next: number.next + 1,
  }
}

function readNumber(text, at) {
  let [value, next] = [0, at]
  while (text[next] >= '0' && text[next] <= '9') {
    value = value * 10 + Number(text[next])
    next += 1
  }
  return { value: next === at ? 1 : value, next }
}

function addTo(total, atoms, times) {
  for (const [symbol, count] of atoms) total.set(symbol, (total.get(symbol) ?? 0) + count * times)
}

/** Fraction-free elimination (Bareiss) on whole numbers of any size; the smallest whole numbers. */
export function solveByBigInt(matrix) {
  const rows = matrix.map((row) => row.map(BigInt))
  const [columns, pivots] = [rows[0].length, []]
  let previous = 1n
  for (let column = 0; column < columns && pivots.length < rows.length; column += 1) {
    const rank = pivots.length
    const found = rows.findIndex((row, index) => index >= rank && row[column] !== 0n)
    if (found < 0) continue
    ;[rows[rank], rows[found]] = [rows[found], rows[rank]]
    const pivot = rows[rank]
    for (const row of rows) if (row !== pivot) clearByBigInt(row, pivot, column, previous)
    previous = pivot[column]
    pivots.push(column)
  }
  const free = [...Array(columns).keys()].find((column) => !pivots.includes(column))
  const values = new Array(columns).fill(previous)
  for (const [index, column] of pivots.entries()) values[column] = -rows[index][free]
  const divisor = values.reduce(commonDivisor, 0n)
  return values.map((value) => String(value / divisor).replace('-', ''))
}

function clearByBigInt(row, pivot, column, previous) {
  const factor = row[column]
  for (let index = 0; index < row.length; index += 1) {
    row[index] = (row[index] * pivot[column] - factor * pivot[index]) / previous
  }
}

/** The greatest common divisor, never negative. */
export function commonDivisor(a, b) {
  let [x, y] = [a < 0n ? -a : a, b < 0n ? -b : b]
  while (y !== 0n) [x, y] = [y, x % y]
  return x
}

/** Reduced row echelon form on exact fractions of a general-purpose library; the smallest whole numbers. */
export function solveByFractions(matrix) {
  const rows = matrix.map((row) => row.map((value) => new Fraction(value)))
  const [columns, pivots] = [rows[0].length, []]
  for (let column = 0; column < columns && pivots.length < rows.length; column += 1) {
    const rank = pivots.length
    const found = rows.findIndex((row, index) => index >= rank && !row[column].equals(0))
    if (found < 0) continue
    ;[rows[rank], rows[found]] = [rows[found], rows[rank]]
    rows[rank] = rows[rank].map((value) => value.div(rows[rank][column]))
    for (const [index, row] of rows.entries()) {
      if (index !== rank) rows[index] = row.map((value, at) => value.sub(row[column].mul(rows[rank][at])))
    }
    pivots.push(column)
  }
  const free = [...Array(columns).keys()].find((column) => !pivots.includes(column))
  const values = new Array(columns).fill(new Fraction(1))
  for (const [index, column] of pivots.entries()) values[column] = rows[index][free].neg()
  const multiple = values.reduce((least, { d }) => (least * d) / commonDivisor(least, d), 1n)
  const whole = values.map(({ n, d }) => (n * multiple) / d)
  const divisor = whole.reduce(commonDivisor, 0n)
  return whole.map((value) => String(value / divisor))
}
