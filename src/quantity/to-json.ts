import { standardUncertainty } from './budget.js'
import type { InputFacts, StatedUncertainty } from './input.js'
import { openInputs } from './input-uncertainty.js'
import type {
  CalculationDocument,
  DerivedNodeJSON,
  InputNodeJSON,
  MeasurementJSON,
  QuantityDocument,
  SettingsJSON,
  UncertaintyJSON,
} from './json-type.js'
import { type Node, nodeOf } from './node.js'
import { nodesOf } from './nodes-of.js'
import type { Quantity } from './quantity.js'
import { QuantityError } from './quantity-error.js'
import type { RuleSettings } from './rule.js'
import { everyDigit, quantityJSON } from './show.js'

/**
 * A quantity as a JSON document: its number, unit and figures, and its standard uncertainty where every input states its own. Its names
 * and the kind of distribution are not in it, so that a quantity read from it has none: with its origin it keeps them.
 *
 * @param q - Any quantity.
 * @param options - `origin: true` for its whole calculation, as {@link calculationToJSON} writes it.
 * @returns Plain data; {@link fromJSON} reads it.
 * @throws {@link QuantityError} `quantity/not-a-quantity`; the codes of {@link standardUncertainty} where it cannot be propagated.
 *
 * @example
 * ```ts
 * import { quantity, toJSON } from 'saltwright/quantity'
 *
 * toJSON(quantity('25.00(3) mL'))
 * // => { format: 'saltwright/quantity@1', value: '25.00', unit: 'mL', significantFigures: 4, uncertainty: '0.03' }
 * ```
 */
export function toJSON(q: Quantity, options?: { readonly origin?: false }): QuantityDocument
export function toJSON(q: Quantity, options: { readonly origin: true }): CalculationDocument
export function toJSON(q: Quantity, options?: { readonly origin?: boolean }): QuantityDocument | CalculationDocument {
  if (options?.origin === true) return calculationToJSON([q])
  const node = nodeOf(q)
  const number = { format: 'saltwright/quantity@1', ...quantityJSON(node) } as const
  if (node.rule === 'input' || openInputs(nodesOf([node])).length > 0) return number
  const uncertainty = standardUncertainty(node)
  return uncertainty.value.isZero() ? number : { ...number, uncertainty: uncertainty.value.toString() }
}

/**
 * Quantities with everything they were made from, as one JSON document. A measurement that several of them use is in it once, so that
 * after reading it is still one: its uncertainty counts once. A measurement that is used in several documents needs an `id` to be known
 * again.
 *
 * @param quantities - One or more quantities.
 * @returns Plain data; {@link calculationFromJSON} reads it.
 * @throws {@link QuantityError} `quantity/not-a-quantity`.
 *
 * @example
 * ```ts
 * import { calculationFromJSON, calculationToJSON, quantity, standardUncertainty } from 'saltwright/quantity'
 *
 * const tare = quantity('11.2040(2) g')
 * const nets = [quantity('18.6320(2) g').minus(tare), quantity('19.1100(2) g').minus(tare)]
 * const saved = JSON.stringify(calculationToJSON(nets))
 * const [first, second] = calculationFromJSON(JSON.parse(saved))
 * if (first && second) standardUncertainty(second.minus(first)).toString() // => '0.00028 g'
 * ```
 */
export function calculationToJSON(quantities: readonly Quantity[]): CalculationDocument {
  if (!Array.isArray(quantities) || quantities.length === 0) throw nothingToSave()
  const results = Array.from(quantities, nodeOf) // which meets the holes of a list too
  const nodes = nodesOf(results)
  const positions = new Map(nodes.map((node, index) => [node, index]))
  const facts = [...new Set(nodes.flatMap(({ input }) => (input === undefined ? [] : [input])))]
  const measurements = new Map(facts.map((one, index) => [one, index]))
  return {
    format: 'saltwright/calculation@1',
    measurements: facts.map(measurementJSON),
    nodes: nodes.map((node) =>
      node.input === undefined ? derivedJSON(node, positions) : inputJSON(node, measurements.get(node.input) as number),
    ),
    results: results.map((node) => positions.get(node) as number),
  }
}

function measurementJSON({ kind, writtenPlace, ambiguous, uncertainty, id }: InputFacts): MeasurementJSON {
  return {
    kind,
    place: writtenPlace,
    ...(ambiguous && { ambiguous }),
    ...(uncertainty && { uncertainty: uncertaintyJSON(uncertainty) }),
    ...(id !== undefined && { id }),
  }
}

function uncertaintyJSON({ standard, ...rest }: StatedUncertainty): UncertaintyJSON {
  return { standard: standard.toString(), ...rest }
}

function inputJSON({ value, unit, naming, place }: Node, measurement: number): InputNodeJSON {
  return { measurement, value: everyDigit(value, place ?? 0), unit, ...naming }
}

function derivedJSON(node: Node, positions: ReadonlyMap<Node, number>): DerivedNodeJSON {
  const { rule, operands, settings, value, unit, naming } = node
  return {
    rule: rule as DerivedNodeJSON['rule'],
    operands: operands.map((operand) => positions.get(operand) as number),
    ...(Object.keys(settings).length > 0 && { settings: settingsJSON(settings) }),
    value: value.toString(),
    unit,
    ...naming,
  }
}

function settingsJSON({ factor, inverse, offset, counts, exponent, rounding }: RuleSettings): SettingsJSON {
  return {
    ...(factor && { factor: factor.toString() }),
    ...(inverse && { inverse }),
    ...(offset && { offset: offset.toString() }),
    ...(counts && { counts: counts.map(String) }),
    ...(exponent !== undefined && { exponent }),
    ...(rounding && { rounding: 'step' in rounding ? { ...rounding, step: rounding.step.toString() } : rounding }),
  }
}

function nothingToSave(): QuantityError {
  return new QuantityError({
    code: 'quantity/not-a-quantity',
    message: 'There is no quantity to save.',
    found: 'no list of quantities',
    expected: 'an array of one quantity or more',
  })
}
