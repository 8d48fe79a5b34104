import { asDimension, exact, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import { because, called } from '../look-up.js'
import { instead, times } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** The number of degrees Celsius in the place of kelvins. */
function keepsCelsius({ quantities }: Calculation): readonly SlipChange[] {
  return quantities.flatMap((q) => {
    const [celsius] = q.operands
    if (q.rule !== 'conversion' || q.unit !== 'K' || celsius?.unit !== 'degC' || celsius.value.isZero()) return []
    return [because(`${called(q)} in degrees Celsius`, instead(q, kelvins(celsius)))]
  })
}

function kelvins({ value }: Quantity): Quantity<'temperature'> {
  return asDimension(exact(`${value.toString()} K` as '1 K'), 'temperature')
}

/** The molar gas constant of a calculation. */
function gasConstants({ quantities }: Calculation): readonly Quantity[] {
  return quantities.filter(({ dimension, rule }) => dimension === 'molarHeatCapacity' && rule === 'input')
}

/** Kilopascals with a gas constant for atmospheres; a change of unit of the pressure that was not made. */
function mixesPressures(calculation: Calculation): readonly SlipChange[] {
  const constants = gasConstants(calculation)
  const mixed = constants.map((q) =>
    because(`${called(q)} for atmospheres, the pressure in kilopascals`, times(q, perAtmosphere())),
  )
  const unconverted = constants.length === 0 ? [] : calculation.quantities.filter(isPressureConversion)
  return [...mixed, ...unconverted.map((q) => because(`${called(q)} not converted`, instead(q, kilopascals(q))))]
}

/** One atmosphere is 101.325 kilopascals. */
function perAtmosphere(): Quantity<'ratio'> {
  return exact(1).dividedBy(exact('101.325'))
}

function isPressureConversion({ rule, dimension }: Quantity): boolean {
  return rule === 'conversion' && dimension === 'pressure'
}

/** The number before the conversion, in the unit after it. */
function kilopascals({ operands, unit }: Quantity): Quantity {
  const [before] = operands as readonly [Quantity]
  return exact(`${before.value.toString()} ${unit}` as '1 kPa')
}

/** Molar volumes that people know by heart: 0 °C and 1 atm, 0 °C and 100 kPa, a warm room. */
const knownByHeart = ['22.4', '22.414', '22.7', '22.711', '24.0'] as const

function takesMolarVolume(calculation: Calculation): readonly SlipChange[] {
  return gasConstants(calculation).flatMap((constant) => {
    const amount = calculation.usersOf(constant).flatMap(({ operands }) => operands.filter(isAmount))[0]
    const volume = calculation.quantities.find((q) => q.rule === 'quotient' && q.dimension === 'volume')
    if (amount === undefined || volume === undefined) return []
    return knownByHeart.map((litres) => {
      const taken = asDimension(amount, 'amount').times(exact(`${litres} L/mol`))
      return because(`${called(volume)} with ${litres} L/mol`, instead(volume, taken))
    })
  })
}

function isAmount({ dimension }: Quantity): boolean {
  return dimension === 'amount'
}

/** Slips with gases. */
export const gasSlips: readonly Slip[] = [
  {
    name: 'celsius-in-gas-law',
    group: 'gas',
    did: 'Put the temperature into the gas law in degrees Celsius.',
    advice: 'From which zero does the gas law count temperature?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: keepsCelsius,
  },
  {
    name: 'pressure-units-mixed',
    group: 'gas',
    did: 'Used a pressure in one unit with a gas constant for another.',
    advice: 'Write the units of the gas constant beside those of the pressure: do they cancel?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: mixesPressures,
  },
  {
    name: 'molar-volume-elsewhere',
    group: 'gas',
    did: 'Used a molar volume that belongs to another temperature or pressure.',
    advice: 'For which temperature and pressure does that molar volume hold?',
    evidence: 'printed',
    source: 'A teaching page lists it; OpenStax, Chemistry 2e, keeps 1 atm although IUPAC moved to 100 kPa in 1982.',
    changes: takesMolarVolume,
  },
]
