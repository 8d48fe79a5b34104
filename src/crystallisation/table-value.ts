import type { AtomicWeights } from '../element/index.js'
import { anhydrous, type FormulaLike, molarMass } from '../formula/index.js'
import { asDimension, constant, exact, type Quantity } from '../quantity/index.js'
import type { PhaseSolubility, SolubilityTable } from './solubility-table.js'

/**
 * A printed solubility as grams of the anhydrous salt per gram of all the water. The printed number is the input, so that the
 * conversion shows in the working; the same number used twice is the same measurement.
 */
export function tabulated(table: SolubilityTable, phase: PhaseSolubility, index: number): Quantity<'ratio'> {
  const at = `${phase.celsius[index]} °C`
  const mass = printedMass(table, phase, index, at)
  return perWater(table, phase, mass).named({
    label: `solubility of ${table.salt} at ${at}, g per g of water`,
    symbol: 's',
    of: table.salt,
    role: 'solubility',
  })
}

function printedMass(table: SolubilityTable, phase: PhaseSolubility, index: number, at: string): Quantity<'mass'> {
  const text: string = `${phase.printed[index]} g`
  const of = table.per === '100 g of water, weighed as crystals' ? phase.crystal : table.salt
  const mass = constant(text, {
    label: `${of} per ${table.per} at ${at}`,
    symbol: 'm',
    of,
    role: 'solubility',
    id: `${table.source}: ${phase.crystal} at ${at} = ${text}`,
    wholeNumberZeros: 'significant',
  })
  return asDimension(mass, 'mass')
}

const water = { label: '100 g of water', symbol: 'm', of: 'H2O' }
const solution = { label: '100 g of solution', symbol: 'm' }
/** What tables are for, filled when first asked: one input wherever it occurs. */
const made: Map<unknown, Quantity<'mass'>> = /* @__PURE__ */ new Map()

function hundredGrams(of: typeof water | typeof solution): Quantity<'mass'> {
  const known = made.get(of) ?? exact('100 g', of)
  made.set(of, known)
  return known
}

function perWater(table: SolubilityTable, phase: PhaseSolubility, mass: Quantity<'mass'>): Quantity<'ratio'> {
  if (table.per === '100 g of water') return mass.dividedBy(hundredGrams(water))
  if (table.per === '100 g of solution') return mass.dividedBy(hundredGrams(solution).minus(mass))
  const salt = mass.times(anhydrousFraction(phase.crystal))
  return salt.dividedBy(hundredGrams(water).plus(mass.minus(salt)))
}

/** Mass of the anhydrous salt per mass of the crystals; one where the crystals hold no water. */
export function anhydrousFraction(crystal: FormulaLike, weights?: AtomicWeights): Quantity<'ratio'> {
  return fractionOf(molarMass(anhydrous(crystal), { weights }), molarMass(crystal, { weights }))
}

/** The mass fraction of the anhydrous salt in the crystals, from their molar masses. */
export function fractionOf(salt: Quantity<'molarMass'>, crystal: Quantity<'molarMass'>): Quantity<'ratio'> {
  const of = String(salt.naming.of)
  const label = `mass fraction of ${of} in ${crystal.naming.of}`
  return salt.dividedBy(crystal).named({ label, symbol: 'w', of, role: 'mass fraction' })
}
