import type { Decimal } from '../decimal.js'
import type { Distribution, InputFacts, InputKind, Naming, StatedUncertainty } from './input.js'
import {
  badJson,
  type Fields,
  largestPlace,
  type Path,
  readChoice,
  readDecimal,
  readList,
  readObject,
  readSpread,
  readText,
  readUnit,
  readWhole,
} from './json-reader.js'
import { readSettings } from './json-settings.js'
import { derivedNode, inputNode, type Node } from './node.js'
import { type RuleName, rules } from './rules.js'

const names = ['label', 'symbol', 'of', 'role'] as const
const inputKinds: readonly InputKind[] = ['measured', 'exact', 'constant']
const distributions: readonly Distribution[] = ['normal', 'rectangular', 'triangular', 'arcsine']
const ruleNames = /* @__PURE__ */ Object.keys(rules) as readonly RuleName[]

/** What was read of a calculation so far. */
interface Reading {
  readonly measurements: readonly InputFacts[]
  readonly nodes: Node[]
  /** The first input of each measurement: the others have to be the same. */
  readonly inputs: Map<InputFacts, Node>
  /** The operands of each result: its renamed copies share their list. */
  readonly operands: Map<string, readonly Node[]>
}

/** The quantities of a document of a calculation, made anew from their inputs. */
export function readCalculation(json: unknown): readonly Node[] {
  const fields = readObject(json, [], ['format', 'measurements', 'nodes', 'results'])
  readChoice(fields.get('format'), ['format'], ['saltwright/calculation@1'])
  const measurements = readList(fields.get('measurements'), ['measurements']).map((one, index) =>
    readMeasurement(one, ['measurements', index]),
  )
  const reading: Reading = { measurements, nodes: [], inputs: new Map(), operands: new Map() }
  readList(fields.get('nodes'), ['nodes']).forEach((one, index) => {
    reading.nodes.push(readNode(one, ['nodes', index], reading))
  })
  const results = readList(fields.get('results'), ['results'])
  if (results.length === 0) throw badJson(results, ['results'], 'one result or more')
  return results.map((one, index) => nodeAt(one, ['results', index], reading.nodes))
}

function readMeasurement(value: unknown, path: Path): InputFacts {
  const fields = readObject(value, path, ['kind', 'place', 'ambiguous', 'uncertainty', 'id'])
  const kind = readChoice(fields.get('kind'), [...path, 'kind'], inputKinds)
  const uncertainty = fields.has('uncertainty')
    ? readUncertainty(fields.get('uncertainty'), [...path, 'uncertainty'])
    : undefined
  if (kind === 'exact' && uncertainty !== undefined)
    throw badJson('an uncertainty', [...path, 'uncertainty'], 'none, for an exact number has none')
  return Object.freeze({
    kind,
    writtenPlace: readWhole(fields.get('place'), [...path, 'place'], -largestPlace, largestPlace),
    ambiguous: fields.has('ambiguous') && readChoice(fields.get('ambiguous'), [...path, 'ambiguous'], [true]),
    uncertainty,
    id: fields.has('id') ? readName(fields.get('id'), [...path, 'id']) : undefined,
  })
}

function readUncertainty(value: unknown, path: Path): StatedUncertainty {
  const fields = readObject(value, path, ['standard', 'distribution', 'degreesOfFreedom'])
  const stated = {
    standard: readSpread(fields.get('standard'), [...path, 'standard']),
    distribution: readChoice(fields.get('distribution'), [...path, 'distribution'], distributions),
  }
  if (!fields.has('degreesOfFreedom')) return Object.freeze(stated)
  const degreesOfFreedom: unknown = fields.get('degreesOfFreedom')
  if (typeof degreesOfFreedom === 'number' && Number.isFinite(degreesOfFreedom) && degreesOfFreedom > 0)
    return Object.freeze({ ...stated, degreesOfFreedom })
  throw badJson(degreesOfFreedom, [...path, 'degreesOfFreedom'], 'a number above zero')
}

function readNode(value: unknown, path: Path, reading: Reading): Node {
  const fields = readObject(value, path, ['measurement', 'rule', 'operands', 'settings', 'value', 'unit', ...names])
  return fields.has('measurement') ? readInput(fields, path, reading) : readDerived(fields, path, reading)
}

function readInput(fields: Fields, path: Path, { measurements, inputs }: Reading): Node {
  const strange = ['rule', 'operands', 'settings'].find((key) => fields.has(key))
  if (strange !== undefined) throw badJson(strange, [...path, strange], 'a measurement or a rule, not both')
  const position = readWhole(fields.get('measurement'), [...path, 'measurement'], 0, measurements.length - 1)
  const facts = measurements[position] as InputFacts
  const number = readDecimal(fields.get('value'), [...path, 'value'])
  const node = inputNode(number, readUnit(fields.get('unit'), [...path, 'unit']), facts, readNames(fields, path))
  const first = inputs.get(facts) ?? node
  if (first.unit !== node.unit || !first.value.eq(number))
    throw badJson(node.toString(), path, `the number of its measurement, ${first.toString()}`)
  inputs.set(facts, first)
  return node
}

function readDerived(fields: Fields, path: Path, reading: Reading): Node {
  const rule = readChoice(fields.get('rule'), [...path, 'rule'], ruleNames)
  const operands = readOperands(rule, fields, path, reading)
  const settings = fields.has('settings') ? readSettings(fields.get('settings'), [...path, 'settings']) : {}
  const unit = readUnit(fields.get('unit'), [...path, 'unit'])
  const fits = rules[rule].fits(
    operands.map((operand) => operand.unit),
    unit,
    settings,
  )
  if (!fits) throw badJson(rule, path, 'operands, settings and a unit that go with the rule')
  const node = derivedNode(rule, operands, unit, Object.freeze(settings), readNames(fields, path))
  const number = readDecimal(fields.get('value'), [...path, 'value'])
  if (!agree(node.value, number))
    throw badJson(number.toString(), [...path, 'value'], `what the rule gives, ${node.value}`)
  return node
}

function readOperands(rule: RuleName, fields: Fields, path: Path, { nodes, operands }: Reading): readonly Node[] {
  const at = [...path, 'operands']
  const positions = readList(fields.get('operands'), at)
  const list = positions.map((one, index) => nodeAt(one, [...at, index], nodes))
  const key = `${rule} ${positions.join(' ')} ${JSON.stringify(fields.get('settings'))}`
  const known = operands.get(key) ?? list
  operands.set(key, known)
  return known
}

function nodeAt(value: unknown, path: Path, nodes: readonly Node[]): Node {
  return nodes[readWhole(value, path, 0, nodes.length - 1)] as Node
}

/** Digits to which a result that was saved has to agree with one that is worked out again. */
const agreement = '1e-25'

function agree(a: Decimal, b: Decimal): boolean {
  return a.minus(b).abs().lte(a.abs().times(agreement))
}

function readNames(fields: Fields, path: Path): Naming {
  const given = names.filter((name) => fields.has(name))
  return Object.fromEntries(given.map((name) => [name, readText(fields.get(name), [...path, name])]))
}

function readName(value: unknown, path: Path): string {
  const text = readText(value, path)
  if (text !== '') return text
  throw badJson(value, path, 'text that is not empty')
}
