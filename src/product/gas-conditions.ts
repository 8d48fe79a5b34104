import type { Given } from '../stoichiometry/given.js'

/** Temperature and pressure at which a gas volume is stated, as chosen numbers. */
export interface GasConditions {
  /** Temperature. */
  readonly temperature: Given<'temperature'>
  /** Pressure. */
  readonly pressure: Given<'pressure'>
  /** Who uses them. */
  readonly source: string
}

/** The name of conditions. */
export type GasConditionsName = '0 °C, 100 kPa' | '0 °C, 1 atm' | '20 °C, 100 kPa' | '25 °C, 100 kPa' | '25 °C, 1 atm'

/** Named conditions. "Standard" means different pressures to different people, so a volume always says which. */
export const gasConditions: Readonly<Record<GasConditionsName, GasConditions>> = {
  '0 °C, 100 kPa': {
    temperature: '0 degC',
    pressure: '100 kPa',
    source: 'IUPAC standard temperature and pressure since 1982',
  },
  '0 °C, 1 atm': {
    temperature: '0 degC',
    pressure: '1 atm',
    source: 'The older standard, kept by OpenStax, Chemistry 2e, section 9.2',
  },
  '20 °C, 100 kPa': {
    temperature: '20 degC',
    pressure: '100 kPa',
    source: 'A room at 100 kPa: common practice, no source',
  },
  '25 °C, 100 kPa': { temperature: '25 degC', pressure: '100 kPa', source: 'SATP: 298.15 K and 100 kPa (from memory)' },
  '25 °C, 1 atm': { temperature: '25 degC', pressure: '1 atm', source: 'A room at 1 atm: common practice, no source' },
}
