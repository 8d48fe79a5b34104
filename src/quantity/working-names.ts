import type { Dimension } from './dimension.js'
import type { Node } from './node.js'
import type { Outline } from './outline.js'
import { bareSymbol, isNamed, type SubjectKey } from './subject.js'
import type { WorkingName } from './working-type.js'

/** Symbols for results that have no name and need one: IUPAC Green Book, 3rd ed., chapter 2. */
const symbols: Readonly<Record<Dimension, string>> = {
  ratio: 'x',
  mass: 'm',
  amount: 'n',
  volume: 'V',
  molarMass: 'M',
  amountConcentration: 'c',
  density: 'ρ',
  molality: 'b',
  temperature: 'T',
  time: 't',
  pressure: 'p',
  energy: 'E',
  molarEnergy: 'Em',
  molarVolume: 'Vm',
  molarHeatCapacity: 'Cm',
  specificHeatCapacity: 'cp',
  heatCapacity: 'C',
}

/** The names of the quantities of a calculation, each one's own. A number without a name has none, nor has a last result without one. */
export function workingNames({ quantities, lines }: Outline, last: SubjectKey): ReadonlyMap<SubjectKey, WorkingName> {
  const named = [...quantities].filter(([key, node]) => isNamed(node) || (lines.has(key) && key !== last))
  const alike = new Map<string, number>()
  const plain = named.map(([key, node]) => [key, plainName(node)] as const)
  for (const [, name] of plain) alike.set(spelled(name), (alike.get(spelled(name)) ?? 0) + 1)
  const given = new Map<string, number>()
  return new Map(
    plain.map(([key, name]) => {
      if (alike.get(spelled(name)) === 1) return [key, name]
      const index = (given.get(spelled(name)) ?? 0) + 1
      given.set(spelled(name), index)
      return [key, { ...name, index }]
    }),
  )
}

function plainName(node: Node): WorkingName {
  const { symbol, label, of } = node.naming
  if (symbol === undefined && label !== undefined) return { symbol, index: undefined, of: undefined, label }
  return { symbol: bareSymbol(node.naming) ?? symbols[node.dimension], index: undefined, of, label }
}

function spelled({ symbol, of, label }: WorkingName): string {
  return symbol === undefined ? `${label}` : `${symbol}(${of})`
}
