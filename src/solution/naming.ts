import type { Quantity, Role } from '../quantity/index.js'
import type { Labels } from '../stoichiometry/given.js'

/** The usual names of an amount of solute. */
export function soluteNaming(of?: string | undefined): Labels {
  return names('amount', 'n', of, 'amount')
}

/** The usual names of an amount concentration. */
export function concentrationNaming(of?: string | undefined, words = 'amount concentration'): Labels {
  return names(words, 'c', of, 'concentration')
}

/** The usual names of a mass fraction. */
export function massFractionNaming(of: string): Labels {
  return names('mass fraction', 'w', of, 'mass fraction')
}

/** The usual names of the density of a solution. */
export function densityNaming(of: string): Labels {
  return names('density of the solution', 'ρ', of, 'density')
}

/** The usual names of a molality. */
export function molalityNaming(of: string): Labels {
  return names('molality', 'b', of)
}

/** The usual names of a volume of solution. */
export function volumeNaming(words: string, of?: string | undefined): Labels {
  return names(words, 'V', of, 'volume')
}

function names(words: string, symbol: string, of: string | undefined, role?: Role): Labels {
  const label = of === undefined ? words : `${words} of ${of}`
  return { label, symbol, ...(of !== undefined && { of }), ...(role !== undefined && { role }) }
}

/** Of which substance several quantities are, as far as one of them says so. */
export function substanceOf(...quantities: readonly Quantity[]): string | undefined {
  return quantities.find(({ naming }) => naming.of !== undefined)?.naming.of
}
