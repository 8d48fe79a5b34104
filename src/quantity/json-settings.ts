import {
  badJson,
  type Fields,
  type Path,
  readChoice,
  readDecimal,
  readList,
  readObject,
  readWhole,
} from './json-reader.js'
import type { Rounding } from './rounding.js'
import type { RuleSettings } from './rule.js'

type Reader = (value: unknown, path: Path) => unknown

const readers: Readonly<Record<keyof RuleSettings, Reader>> = {
  factor: readPositive,
  inverse: (value, path) => readChoice(value, path, [true]),
  offset: readDecimal,
  counts: (value, path) => Object.freeze(readList(value, path).map((one, index) => readDecimal(one, [...path, index]))),
  exponent: (value, path) => readWhole(value, path, -20, 20),
  rounding: readRounding,
}
const keys = /* @__PURE__ */ Object.keys(readers) as readonly (keyof RuleSettings)[]

/** What a rule needs beside its operands, from a document. */
export function readSettings(value: unknown, path: Path): RuleSettings {
  const fields = readObject(value, path, keys)
  const read = keys.filter((key) => fields.has(key)).map((key) => [key, readers[key](fields.get(key), [...path, key])])
  return Object.freeze(Object.fromEntries(read))
}

function readPositive(value: unknown, path: Path): RuleSettings['factor'] {
  const factor = readDecimal(value, path)
  if (factor.gt(0)) return factor
  throw badJson(value, path, 'a factor above zero')
}

function readRounding(value: unknown, path: Path): Rounding {
  const fields: Fields = readObject(value, path, ['figures', 'step', 'ties'])
  const ties = readChoice(fields.get('ties'), [...path, 'ties'], ['half-even', 'half-up'] as const)
  if (!fields.has('step'))
    return Object.freeze({ figures: readWhole(fields.get('figures'), [...path, 'figures'], 1, 30), ties })
  const step = readPositive(fields.get('step'), [...path, 'step']) as NonNullable<RuleSettings['factor']>
  return Object.freeze({ step, ties })
}
