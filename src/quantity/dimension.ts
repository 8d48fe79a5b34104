/** What kind of quantity a number is. Names follow the IUPAC Green Book; `ratio` is a quantity of dimension one. */
export type Dimension =
  | 'ratio'
  | 'mass'
  | 'amount'
  | 'volume'
  | 'molarMass'
  | 'amountConcentration'
  | 'density'
  | 'molality'
  | 'temperature'
  | 'time'
  | 'pressure'
  | 'energy'
  | 'molarEnergy'
  | 'molarVolume'
  | 'molarHeatCapacity'
  | 'specificHeatCapacity'
  | 'heatCapacity'

/** What a product of two dimensions is, apart from products with a ratio. One row each way. */
export const products = {
  amount: { molarMass: 'mass', molarVolume: 'volume', molarEnergy: 'energy', molarHeatCapacity: 'heatCapacity' },
  molarMass: { amount: 'mass', amountConcentration: 'density', molality: 'ratio' },
  volume: { density: 'mass', amountConcentration: 'amount', pressure: 'energy' },
  density: { volume: 'mass', molality: 'amountConcentration', molarVolume: 'molarMass' },
  amountConcentration: { volume: 'amount', molarMass: 'density', molarVolume: 'ratio' },
  mass: { molality: 'amount', specificHeatCapacity: 'heatCapacity' },
  molality: { mass: 'amount', molarMass: 'ratio', density: 'amountConcentration' },
  pressure: { volume: 'energy', molarVolume: 'molarEnergy' },
  molarVolume: { amount: 'volume', pressure: 'molarEnergy', amountConcentration: 'ratio', density: 'molarMass' },
  molarEnergy: { amount: 'energy' },
  temperature: { heatCapacity: 'energy', molarHeatCapacity: 'molarEnergy' },
  heatCapacity: { temperature: 'energy' },
  molarHeatCapacity: { temperature: 'molarEnergy', amount: 'heatCapacity' },
  specificHeatCapacity: { mass: 'heatCapacity' },
} as const

/** What a quotient of two dimensions is, apart from a quotient of equals and by a ratio. */
export const quotients = {
  mass: { molarMass: 'amount', amount: 'molarMass', volume: 'density', density: 'volume' },
  amount: { volume: 'amountConcentration', amountConcentration: 'volume', mass: 'molality', molality: 'mass' },
  volume: { amount: 'molarVolume', molarVolume: 'amount' },
  density: { molarMass: 'amountConcentration', amountConcentration: 'molarMass' },
  amountConcentration: { density: 'molality', molality: 'density' },
  molarMass: { density: 'molarVolume', molarVolume: 'density' },
  ratio: {
    molarMass: 'molality',
    molality: 'molarMass',
    molarVolume: 'amountConcentration',
    amountConcentration: 'molarVolume',
  },
  energy: {
    amount: 'molarEnergy',
    molarEnergy: 'amount',
    volume: 'pressure',
    pressure: 'volume',
    temperature: 'heatCapacity',
    heatCapacity: 'temperature',
  },
  molarEnergy: {
    temperature: 'molarHeatCapacity',
    molarHeatCapacity: 'temperature',
    pressure: 'molarVolume',
    molarVolume: 'pressure',
  },
  heatCapacity: {
    amount: 'molarHeatCapacity',
    molarHeatCapacity: 'amount',
    mass: 'specificHeatCapacity',
    specificHeatCapacity: 'mass',
  },
} as const

type Products = typeof products
type Quotients = typeof quotients

/** What a quantity of dimension `D` may be multiplied by. */
export type Factor<D extends Dimension> =
  | 'ratio'
  | (D extends 'ratio' ? Dimension : D extends keyof Products ? keyof Products[D] & Dimension : never)

/** What a quantity of dimension `D` may be divided by. */
export type Divisor<D extends Dimension> =
  | 'ratio'
  | D
  | (D extends keyof Quotients ? keyof Quotients[D] & Dimension : never)

/** The dimension of a product. */
export type Product<D extends Dimension, E extends Dimension> = E extends 'ratio'
  ? D
  : D extends 'ratio'
    ? E
    : D extends keyof Products
      ? E extends keyof Products[D]
        ? Products[D][E] & Dimension
        : never
      : never

/** The dimension of a quotient. */
export type Quotient<D extends Dimension, E extends Dimension> = E extends 'ratio'
  ? D
  : D extends E
    ? 'ratio'
    : D extends keyof Quotients
      ? E extends keyof Quotients[D]
        ? Quotients[D][E] & Dimension
        : never
      : never

/** The dimension of `a · b` at run time; undefined where the product means nothing here. */
export function productDimension(a: Dimension, b: Dimension): Dimension | undefined {
  if (b === 'ratio') return a
  if (a === 'ratio') return b
  return look(products, a, b)
}

/** The dimension of `a / b` at run time; undefined where the quotient means nothing here. */
export function quotientDimension(a: Dimension, b: Dimension): Dimension | undefined {
  if (b === 'ratio') return a
  if (a === b) return 'ratio'
  return look(quotients, a, b)
}

type Table = { readonly [D in Dimension]?: { readonly [E in Dimension]?: Dimension } }

function look(table: Table, a: Dimension, b: Dimension): Dimension | undefined {
  return table[a]?.[b]
}

const words: Readonly<Record<Dimension, string>> = {
  ratio: 'a ratio',
  mass: 'a mass',
  amount: 'an amount of substance',
  volume: 'a volume',
  molarMass: 'a molar mass',
  amountConcentration: 'an amount concentration',
  density: 'a density',
  molality: 'a molality',
  temperature: 'a temperature',
  time: 'a time',
  pressure: 'a pressure',
  energy: 'an energy',
  molarEnergy: 'a molar energy',
  molarVolume: 'a molar volume',
  molarHeatCapacity: 'a molar heat capacity',
  specificHeatCapacity: 'a specific heat capacity',
  heatCapacity: 'a heat capacity',
}

/** A dimension in a sentence: `a mass`, `an amount of substance`. */
export function nameDimension(dimension: Dimension): string {
  return words[dimension]
}

/** Whether a value names a dimension. */
export function isDimension(value: unknown): value is Dimension {
  return typeof value === 'string' && Object.hasOwn(words, value)
}
