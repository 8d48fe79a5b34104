import {
  antilogarithm,
  cosine,
  exact,
  exponential,
  naturalLogarithm,
  power,
  type Quantity,
  sine,
  squareRoot,
} from '../../src/quantity/index.js'

type Ratio = Quantity<'ratio'>
type Inputs = Readonly<Record<string, Ratio>>

interface Read {
  readonly value: Ratio
  readonly next: number
}

const functions: Readonly<Record<string, (x: Ratio) => Ratio>> = {
  sqrt: squareRoot,
  sin: sine,
  cos: cosine,
  exp: exponential,
  log: naturalLogarithm,
}

/** Works out a model in infix form, `1000*m*P/V`, with the quantities of the library. */
export function evaluateModel(model: string, inputs: Inputs): Ratio {
  const tokens = model.match(/[A-Za-z_]\w*|\d+(?:\.\d+)?(?:e[+-]?\d+)?|[-+*/^()]/g) ?? []
  const { value, next } = readSum(tokens, 0, inputs)
  if (next < tokens.length) throw new Error(`${model} stops making sense at ${tokens[next]}`)
  return value
}

function readSum(tokens: readonly string[], at: number, inputs: Inputs): Read {
  let { value, next } = readProduct(tokens, at, inputs)
  while (tokens[next] === '+' || tokens[next] === '-') {
    const right = readProduct(tokens, next + 1, inputs)
    value = tokens[next] === '+' ? value.plus(right.value) : value.minus(right.value)
    next = right.next
  }
  return { value, next }
}

function readProduct(tokens: readonly string[], at: number, inputs: Inputs): Read {
  let { value, next } = readSigned(tokens, at, inputs)
  while (tokens[next] === '*' || tokens[next] === '/') {
    const right = readSigned(tokens, next + 1, inputs)
    value = tokens[next] === '*' ? value.times(right.value) : value.dividedBy(right.value)
    next = right.next
  }
  return { value, next }
}

function readSigned(tokens: readonly string[], at: number, inputs: Inputs): Read {
  if (tokens[at] !== '-') return readPower(tokens, at, inputs)
  const { value, next } = readSigned(tokens, at + 1, inputs)
  return { value: exact(-1).times(value), next }
}

function readPower(tokens: readonly string[], at: number, inputs: Inputs): Read {
  const base = readOne(tokens, at, inputs)
  if (tokens[base.next] !== '^') return base
  const exponent = readSigned(tokens, base.next + 1, inputs)
  return { value: raise(base.value, exponent.value, tokens[at]), next: exponent.next }
}

function raise(base: Ratio, exponent: Ratio, written: string | undefined): Ratio {
  if (exponent.significantFigures === null) return power(base, exponent.value.toNumber())
  return written === '10' ? antilogarithm(exponent) : exponential(naturalLogarithm(base).times(exponent))
}

function readOne(tokens: readonly string[], at: number, inputs: Inputs): Read {
  const token = tokens[at] ?? ''
  const apply = Object.hasOwn(functions, token) && tokens[at + 1] === '(' ? functions[token] : undefined
  if (token === '(' || apply !== undefined) {
    const inside = readSum(tokens, apply === undefined ? at + 1 : at + 2, inputs)
    return { value: apply === undefined ? inside.value : apply(inside.value), next: inside.next + 1 }
  }
  return { value: inputs[token] ?? exact(token as '1'), next: at + 1 }
}
