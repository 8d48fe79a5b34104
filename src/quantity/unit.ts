import type { Dimension } from './dimension.js'

/** A unit the library writes. */
export interface UnitInfo<D extends Dimension = Dimension> {
  /** The one spelling that is written. */
  readonly symbol: string
  /** What it measures. */
  readonly dimension: D
  /** How many coherent units (g, L, mol, s, K, kPa and their products) one of it is; exact. */
  readonly factor: string
  /** What is added after the factor, for the degree Celsius. */
  readonly offset?: string
  /** Other spellings that are read. */
  readonly spellings: readonly string[]
}

/**
 * Every unit: how it is written, what it measures, how many coherent units it is, and what else is read as it.
 * To add a unit, add a row. SI brochure (9th edition) for SI units and the litre, bar, minute, hour, degree Celsius;
 * 1 atm = 101 325 Pa exactly (10th CGPM, resolution 4). M and mM are the laboratory's short forms of mol/L and mmol/L.
 */
export const units = {
  '1': { symbol: '1', dimension: 'ratio', factor: '1', spellings: [''] },
  '%': { symbol: '%', dimension: 'ratio', factor: '0.01', spellings: ['% w/w', '%w/w', '% (w/w)'] },
  g: { symbol: 'g', dimension: 'mass', factor: '1', spellings: [] },
  kg: { symbol: 'kg', dimension: 'mass', factor: '1000', spellings: [] },
  mg: { symbol: 'mg', dimension: 'mass', factor: '0.001', spellings: [] },
  ug: { symbol: 'ug', dimension: 'mass', factor: '0.000001', spellings: ['µg', 'μg'] },
  mol: { symbol: 'mol', dimension: 'amount', factor: '1', spellings: [] },
  mmol: { symbol: 'mmol', dimension: 'amount', factor: '0.001', spellings: [] },
  umol: { symbol: 'umol', dimension: 'amount', factor: '0.000001', spellings: ['µmol', 'μmol'] },
  L: { symbol: 'L', dimension: 'volume', factor: '1', spellings: ['l', 'dm3', 'dm³', 'dm^3'] },
  mL: { symbol: 'mL', dimension: 'volume', factor: '0.001', spellings: ['ml', 'cm3', 'cm³', 'cm^3'] },
  uL: { symbol: 'uL', dimension: 'volume', factor: '0.000001', spellings: ['µL', 'μL', 'ul', 'µl', 'μl'] },
  'mol/L': {
    symbol: 'mol/L',
    dimension: 'amountConcentration',
    factor: '1',
    spellings: [
      'M',
      'mol/l',
      'mol·L⁻¹',
      'mol L⁻¹',
      'mol L^-1',
      'mol·L^-1',
      'mol/dm3',
      'mol/dm³',
      'mol dm⁻³',
      'mol dm^-3',
      'mol·dm⁻³',
      'mol·dm^-3',
    ],
  },
  'mmol/L': {
    symbol: 'mmol/L',
    dimension: 'amountConcentration',
    factor: '0.001',
    spellings: [
      'mM',
      'mmol/l',
      'mmol·L⁻¹',
      'mmol L⁻¹',
      'mmol L^-1',
      'mmol/dm3',
      'mmol/dm³',
      'mmol dm⁻³',
      'mol/m3',
      'mol/m³',
      'mol m⁻³',
      'mol m^-3',
    ],
  },
  'g/mol': {
    symbol: 'g/mol',
    dimension: 'molarMass',
    factor: '1',
    spellings: ['g·mol⁻¹', 'g mol⁻¹', 'g mol^-1', 'g·mol^-1'],
  },
  'kg/mol': {
    symbol: 'kg/mol',
    dimension: 'molarMass',
    factor: '1000',
    spellings: ['kg·mol⁻¹', 'kg mol⁻¹', 'kg mol^-1', 'kg·mol^-1'],
  },
  'g/mL': {
    symbol: 'g/mL',
    dimension: 'density',
    factor: '1000',
    spellings: ['g/ml', 'g/cm3', 'g/cm³', 'g cm⁻³', 'g cm^-3', 'g·cm⁻³', 'g mL⁻¹', 'g mL^-1', 'g·mL⁻¹', 'kg/L', 'kg/l'],
  },
  'g/L': {
    symbol: 'g/L',
    dimension: 'density',
    factor: '1',
    spellings: [
      'g/l',
      'kg/m3',
      'kg/m³',
      'kg m⁻³',
      'kg m^-3',
      'kg·m⁻³',
      'g L⁻¹',
      'g L^-1',
      'g·L⁻¹',
      'g/dm3',
      'g/dm³',
      'g dm⁻³',
      'mg/mL',
      'mg/ml',
    ],
  },
  'mg/L': { symbol: 'mg/L', dimension: 'density', factor: '0.001', spellings: ['mg/l', 'mg L⁻¹', 'mg L^-1', 'mg·L⁻¹'] },
  'mol/kg': {
    symbol: 'mol/kg',
    dimension: 'molality',
    factor: '0.001',
    spellings: ['mol kg⁻¹', 'mol kg^-1', 'mol·kg⁻¹', 'mmol/g'],
  },
  'mol/g': { symbol: 'mol/g', dimension: 'molality', factor: '1', spellings: ['mol g⁻¹', 'mol g^-1', 'mol·g⁻¹'] },
  degC: { symbol: 'degC', dimension: 'temperature', factor: '1', offset: '273.15', spellings: ['°C', '℃', 'ºC'] },
  K: { symbol: 'K', dimension: 'temperature', factor: '1', spellings: ['\u212A'] },
  s: { symbol: 's', dimension: 'time', factor: '1', spellings: [] },
  min: { symbol: 'min', dimension: 'time', factor: '60', spellings: [] },
  h: { symbol: 'h', dimension: 'time', factor: '3600', spellings: [] },
  Pa: { symbol: 'Pa', dimension: 'pressure', factor: '0.001', spellings: [] },
  kPa: { symbol: 'kPa', dimension: 'pressure', factor: '1', spellings: [] },
  bar: { symbol: 'bar', dimension: 'pressure', factor: '100', spellings: [] },
  atm: { symbol: 'atm', dimension: 'pressure', factor: '101.325', spellings: [] },
  J: { symbol: 'J', dimension: 'energy', factor: '1', spellings: [] },
  kJ: { symbol: 'kJ', dimension: 'energy', factor: '1000', spellings: [] },
  'J/mol': { symbol: 'J/mol', dimension: 'molarEnergy', factor: '1', spellings: ['J mol⁻¹', 'J mol^-1', 'J·mol⁻¹'] },
  'kJ/mol': {
    symbol: 'kJ/mol',
    dimension: 'molarEnergy',
    factor: '1000',
    spellings: ['kJ mol⁻¹', 'kJ mol^-1', 'kJ·mol⁻¹'],
  },
  'L/mol': {
    symbol: 'L/mol',
    dimension: 'molarVolume',
    factor: '1',
    spellings: ['L mol⁻¹', 'L mol^-1', 'L·mol⁻¹', 'dm3/mol', 'dm³/mol'],
  },
  'J/(mol K)': {
    symbol: 'J/(mol K)',
    dimension: 'molarHeatCapacity',
    factor: '1',
    spellings: ['J mol⁻¹ K⁻¹', 'J mol^-1 K^-1', 'J/(mol·K)', 'J/mol/K', 'J·mol⁻¹·K⁻¹', 'J K⁻¹ mol⁻¹'],
  },
  'J/(g K)': {
    symbol: 'J/(g K)',
    dimension: 'specificHeatCapacity',
    factor: '1',
    spellings: ['J g⁻¹ K⁻¹', 'J g^-1 K^-1', 'J/(g·K)', 'kJ/(kg K)', 'J/(g degC)', 'J/(g °C)'],
  },
  'J/K': { symbol: 'J/K', dimension: 'heatCapacity', factor: '1', spellings: ['J K⁻¹', 'J K^-1', 'J·K⁻¹'] },
} as const

type Units = typeof units

/** The one spelling of a unit that is written. */
export type Unit = keyof Units

type UnitsByDimension = {
  readonly [D in Dimension]: { [U in Unit]: Units[U]['dimension'] extends D ? U : never }[Unit]
}

/** The units of one dimension, as written. */
export type UnitOf<D extends Dimension> = UnitsByDimension[D]

type Spelled = { [U in Unit]: { [S in Units[U]['spellings'][number] | U]: Units[U]['dimension'] } }[Unit]
type Merge<T> = { [K in T extends unknown ? keyof T : never]: T extends { readonly [P in K]: infer D } ? D : never }

/** Every spelling that is read, with its dimension. */
export type UnitSpellings = Merge<Spelled>

/** The unit that products and quotients of a dimension come out in where their own units do not combine. */
export const coherentUnit: Readonly<Record<Dimension, Unit>> = {
  ratio: '1',
  mass: 'g',
  amount: 'mol',
  volume: 'L',
  molarMass: 'g/mol',
  amountConcentration: 'mol/L',
  density: 'g/L',
  molality: 'mol/g',
  temperature: 'K',
  time: 's',
  pressure: 'kPa',
  energy: 'J',
  molarEnergy: 'J/mol',
  molarVolume: 'L/mol',
  molarHeatCapacity: 'J/(mol K)',
  specificHeatCapacity: 'J/(g K)',
  heatCapacity: 'J/K',
}

const spellings: ReadonlyMap<string, Unit> = /* @__PURE__ */ spellingMap()

function spellingMap(): ReadonlyMap<string, Unit> {
  const map = new Map<string, Unit>()
  for (const unit of Object.keys(units) as Unit[]) {
    map.set(unit, unit)
    for (const spelling of units[unit].spellings) map.set(spelling, unit)
  }
  return map
}

/** The unit a text names, in any spelling that is read; undefined for none. */
export function findUnit(text: string): Unit | undefined {
  return spellings.get(text)
}

/** Every spelling that is read as a unit of the dimension, the written one first. */
export function unitsOf(dimension: Dimension): readonly Unit[] {
  return (Object.keys(units) as Unit[]).filter((unit) => units[unit].dimension === dimension)
}
