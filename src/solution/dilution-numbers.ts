import type { Dimension, Quantity } from '../quantity/index.js'
import { chosen, type Given, type Labels } from '../stoichiometry/given.js'
import { aboveZero } from './bounds.js'
import { concentrationNaming, soluteNaming, volumeNaming } from './naming.js'
import { SolutionError } from './solution-error.js'

type Concentration = Quantity<'amountConcentration'>
type Volume = Quantity<'volume'>

/** The four numbers of a dilution. */
export interface DilutionNumbers {
  readonly from: Concentration
  readonly to: Concentration
  readonly stock: Volume
  readonly volume: Volume
}

type Known = { readonly [K in keyof DilutionNumbers]: DilutionNumbers[K] | undefined }

/** What a person gave of them. */
export interface GivenNumbers {
  readonly from?: Given<'amountConcentration'> | undefined
  readonly to?: Given<'amountConcentration'> | undefined
  readonly stock?: Given<'volume'> | undefined
  readonly volume?: Given<'volume'> | undefined
}

/** All four numbers of a dilution, from three of them. */
export function solveDilution(given: GivenNumbers, of: string | undefined): DilutionNumbers {
  const numbers = complete(read(given, of), of)
  if (numbers.to.compare(numbers.from) <= 0) return numbers
  throw cannotConcentrate(numbers)
}

function read({ from, to, stock, volume }: GivenNumbers, of: string | undefined): Known {
  return {
    from: optional(from, 'amountConcentration', concentrationNaming(of, 'concentration of the stock')),
    to: optional(to, 'amountConcentration', concentrationNaming(of, 'concentration to make')),
    stock: optional(stock, 'volume', volumeNaming('volume of the stock', of)),
    volume: optional(volume, 'volume', volumeNaming('volume to make', of)),
  }
}

function optional<D extends Dimension>(
  value: Given<D> | undefined,
  dimension: D,
  naming: Labels,
): Quantity<D> | undefined {
  return value === undefined ? undefined : aboveZero(chosen(value, dimension, naming))
}

/** The amount of solute does not change, so it gives the missing number. */
function complete({ from, to, stock, volume }: Known, of: string | undefined): DilutionNumbers {
  if (from && to && volume && !stock) {
    const needed = solute(to, volume, of)
      .dividedBy(from)
      .to(volume.unit as 'mL')
    return { from, to, volume, stock: needed.named(volumeNaming('volume of the stock', of)) }
  }
  if (from && to && stock && !volume) {
    const made = solute(from, stock, of)
      .dividedBy(to)
      .to(stock.unit as 'mL')
    return { from, to, stock, volume: made.named(volumeNaming('volume to make', of)) }
  }
  if (from && stock && volume && !to) {
    const made = solute(from, stock, of)
      .dividedBy(volume)
      .to(from.unit as 'mol/L')
    return { from, stock, volume, to: made.named(concentrationNaming(of, 'concentration to make')) }
  }
  if (to && stock && volume && !from) {
    const stated = solute(to, volume, of)
      .dividedBy(stock)
      .to(to.unit as 'mol/L')
    return { to, stock, volume, from: stated.named(concentrationNaming(of, 'concentration of the stock')) }
  }
  throw threeOfFour({ from, to, stock, volume })
}

function solute(concentration: Concentration, volume: Volume, of: string | undefined): Quantity<'amount'> {
  return concentration.times(volume).named(soluteNaming(of))
}

function cannotConcentrate({ from, to }: DilutionNumbers): SolutionError {
  return new SolutionError({
    code: 'solution/cannot-concentrate',
    message: `Water does not turn ${from.toString()} into ${to.toString()}.`,
    found: to.toString(),
    expected: `at most ${from.toString()}`,
    hint: 'Start from a stronger stock solution.',
  })
}

function threeOfFour(known: Known): SolutionError {
  const names = Object.entries(known).flatMap(([name, number]) => (number === undefined ? [] : [name]))
  const found = names.join(', ') || 'none'
  return new SolutionError({
    code: 'solution/three-of-four',
    message: `A dilution follows from three of from, to, stock and volume; given are ${found}.`,
    found,
    expected: 'three of from, to, stock, volume',
  })
}
