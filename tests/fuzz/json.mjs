/** Values that do not belong into a document, or only look as if they did. */
const leaves = [
  null,
  true,
  0,
  -1,
  1e308,
  Number.NaN,
  Number.POSITIVE_INFINITY,
  '',
  ' ',
  '0 g',
  '-1 g',
  '1e99 g',
  '1e120 mol',
  '1e-120 mol',
  '1e999 g',
  '3,98 g',
  '250 g',
  '10 %',
  '0 %',
  '250 %',
  'H2O',
  'cuso4',
  'xyz',
  'e^-',
  '2H2 + O2 -> 2H2O',
  'A -> B',
  '__proto__',
  'constructor',
  'x'.repeat(5000),
  () => 1,
  Symbol('s'),
  10n,
  new Date(0),
  new Map([['a', 1]]),
  /x/,
  undefined,
]

/** What a value throws by itself when it is looked at. */
export class Trap extends Error {}

/** A fresh value that makes trouble when it is looked at. */
function trap(random) {
  const boom = () => {
    throw new Trap('a trap')
  }
  const cyclic = { a: [] }
  cyclic.a.push(cyclic)
  const revoked = Proxy.revocable({}, {})
  revoked.revoke()
  let deep = 'x'
  for (let depth = random.pick([10, 300, 20_000]); depth > 0; depth -= 1) deep = random.oneIn(2) ? [deep] : { deep }
  return random.pick([
    () => Object.defineProperty({}, 'format', { get: boom, enumerable: true }),
    () => new Proxy({}, { get: boom, has: boom, ownKeys: boom, getOwnPropertyDescriptor: boom, getPrototypeOf: boom }),
    () => new Proxy([], { get: boom }),
    () => new Proxy({}, { get: (_, key) => key }),
    () => new Proxy(() => 1, { get: () => 'x', apply: boom }),
    () => revoked.proxy,
    () => cyclic,
    () => deep,
    () => Object.create(null),
    () => JSON.parse('{"__proto__": {"polluted": "yes"}, "constructor": {"prototype": {"polluted": "yes"}}}'),
    () => ({ toString: boom, valueOf: boom, toJSON: boom, [Symbol.toPrimitive]: boom }),
    () => ({ toString: () => '5 g', length: 3 }),
    () => [],
    () => ({}),
    () => [[[[]]]],
    () => new String('5 g'),
    () => Object.assign([], { length: 20_000 }),
    () => ({ length: -1, 0: 'a' }),
  ])()
}

/** Anything at all in the place of one value. */
export function anything(random, documents) {
  if (random.oneIn(3)) return trap(random)
  return random.oneIn(3) ? structuredClone(random.pick(documents)) : random.pick(leaves)
}

/** Every place in a document: the object or list that holds it, and its key. */
function places(document) {
  const found = []
  const visit = (value) => {
    for (const key of Object.keys(value)) {
      found.push([value, key])
      if (typeof value[key] === 'object' && value[key] !== null) visit(value[key])
    }
  }
  visit(document)
  return found
}

/** A copy of a document with some changes: what is missing, doubled, of another kind, hostile, or text with a slip. */
export function mutatedDocument(random, document, { documents, textOf }) {
  const copy = structuredClone(document)
  for (let times = 1 + random.below(3); times > 0; times -= 1) {
    const [holder, key] = random.pick(places(copy)) ?? [copy, 'format']
    changePlace(random, holder, key, { documents, textOf })
    if (!isPlain(copy)) return copy
  }
  return copy
}

function changePlace(random, holder, key, { documents, textOf }) {
  const value = holder[key]
  const text = () => {
    holder[key] = typeof value === 'string' ? textOf(random, value) : random.pick(leaves)
  }
  const [a, b] = [random.pick(Object.keys(holder)), random.pick(Object.keys(holder))]
  random.pick([
    text,
    text,
    text,
    text,
    () => delete holder[key],
    () => {
      holder[key] = anything(random, documents)
    },
    () => {
      holder[random.pick(['stage', '__proto__x', 'constructor', 'x', 'mass', 'scale', 'toJSON'])] = random.pick(leaves)
    },
    () => {
      ;[holder[a], holder[b]] = [holder[b], holder[a]]
    },
    () => {
      if (Array.isArray(holder)) holder.push(tried(() => structuredClone(random.pick(holder))))
    },
    () =>
      Object.defineProperty(holder, '__proto__', {
        value: { polluted: 'yes' },
        enumerable: true,
        writable: true,
        configurable: true,
      }),
  ])()
}

/** Whether a value can be changed further: only what JSON can say, and not too deep. */
function isPlain(value, depth = 0) {
  if (typeof value !== 'object' || value === null) return ['string', 'number', 'boolean'].includes(typeof value)
  if (depth > 20) return false
  const proto = tried(() => Object.getPrototypeOf(value))
  if (proto !== Object.prototype && proto !== Array.prototype) return false
  return tried(() => Object.values(value).every((part) => isPlain(part, depth + 1))) ?? false
}

function tried(read) {
  try {
    return read()
  } catch {
    return undefined
  }
}
