import type { AtomicWeights } from '../element/index.js'
import { molarMass, parseFormula } from '../formula/index.js'
import { compareFractions, divideFractions, type Fraction } from '../fraction.js'
import { asDimension, type Dimension, exact, type Quantity, quantity } from '../quantity/index.js'
import { amountConcentration, type Strength } from '../solution/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { isOfWater } from '../stoichiometry/of-water.js'
import type { SupplyFacts } from './facts.js'
import { moleRatio } from './form.js'
import { PreparationError } from './preparation-error.js'

/** How an amount of a supply is turned into what is weighed or measured, and back. */
export interface SupplyMeasure {
  /** `weigh` for a mass, `measure` for a volume. */
  readonly by: 'weigh' | 'measure'
  /** What is weighed or measured out, as a formula. */
  readonly substance: string
  /** Mass fraction of a solid or liquid; absent where it is pure. */
  readonly assay: Quantity<'ratio'> | undefined
  /** Amount concentration of what is measured; absent for what is weighed. */
  readonly concentration: Quantity<'amountConcentration'> | undefined
  /** The mass or volume that contains an amount. */
  readonly toTake: (amount: Quantity<'amount'>) => Quantity<'mass'> | Quantity<'volume'>
  /** The amount that a mass or volume contains. */
  readonly amountIn: (taken: Quantity) => Quantity<'amount'>
}

type Told = SupplyFacts['recipe']

/** The strength of a supply where records give their own: an assay or a concentration that was measured. */
export interface MeasuredStrength {
  /** Mass fraction of a solid or liquid. */
  readonly assay?: Quantity<'ratio'> | undefined
  /** Amount concentration of a solution. */
  readonly concentration?: Quantity<'amountConcentration'> | undefined
}

/** How one supply is measured out. What the recipe says of its strength is exact; a measured strength replaces it. */
export function measureOf(
  { recipe, formula }: SupplyFacts,
  weights: AtomicWeights,
  measured: MeasuredStrength = {},
): SupplyMeasure {
  const substance = formula.text
  if (recipe.form === 'solid')
    return weighed(recipe.weighedAs ?? substance, substance, strengthOf(recipe, measured), weights)
  if (recipe.form === 'liquid') return pureLiquid(recipe.density, substance, strengthOf(recipe, measured), weights)
  const concentration = measured.concentration ?? concentrationOf(recipe, substance, weights)
  return bySolution(substance, concentration)
}

function strengthOf(
  recipe: Extract<Told, { readonly assay?: string }>,
  { assay }: MeasuredStrength,
): Quantity<'ratio'> | undefined {
  if (assay !== undefined) return named(assay, 'assay', 'w', recipe.substance)
  return recipe.assay === undefined ? undefined : named(chosen(recipe.assay, 'ratio'), 'assay', 'w', recipe.substance)
}

function named<D extends Dimension>(
  q: Quantity<D>,
  role: 'assay' | 'concentration' | 'density' | 'mass fraction',
  symbol: string,
  of: string,
): Quantity<D> {
  return q.named({ role, symbol, of, label: `${role} of ${of}` })
}

/** A number that the recipe chooses: exact. */
export function chosen<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  return asDimension(exact(text), dimension)
}

/** A number that was read off: a balance that shows 30 g shows a zero. */
export function reading<D extends Dimension>(text: string, dimension: D): Quantity<D> {
  return asDimension(quantity(text, { wholeNumberZeros: 'significant' }), dimension)
}

function weighed(
  weighedAs: string,
  substance: string,
  assay: Quantity<'ratio'> | undefined,
  weights: AtomicWeights,
): SupplyMeasure {
  const mass = molarMass(weighedAs, { weights })
  const held = molesHeld(weighedAs, substance)
  const names = { symbol: 'm', of: weighedAs, role: 'mass', label: `mass of ${weighedAs}` } as const
  return {
    by: 'weigh',
    substance: weighedAs,
    assay,
    concentration: undefined,
    toTake: (amount) => {
      const pure = (held === undefined ? amount : amount.dividedBy(held)).times(mass)
      return (assay === undefined ? pure : pure.dividedBy(assay)).named(names)
    },
    amountIn: (taken) => {
      const gross = asDimension(taken, 'mass')
      const pure = assay === undefined ? gross : gross.times(assay)
      const amount = pure.dividedBy(mass)
      return amountNamed(held === undefined ? amount : amount.times(held), substance)
    },
  }
}

/**
 * Moles of a substance in a mole of what is weighed for it, where that is not one: as many as the atoms of its elements make, hydrogen and
 * oxygen aside. Two of an alum in its doubled formula, one iron(II) sulfate in a double salt.
 */
function molesHeld(weighedAs: string, substance: string): Quantity<'ratio'> | undefined {
  const [from, to] = [parseFormula(weighedAs), parseFormula(substance)]
  if (speciesKey(from) === speciesKey(to)) return undefined
  const ratios = [...to.counts]
    .filter(([symbol]) => !isOfWater(symbol))
    .map(([symbol, count]) => divideFractions(from.counts.get(symbol) ?? none, count))
  const held =
    ratios.length === 0 ? none : ratios.reduce((least, each) => (compareFractions(each, least) < 0 ? each : least))
  if (held.numerator === 0n) throw holdsNone(weighedAs, substance)
  return held.numerator === held.denominator ? undefined : moleRatio(held, substance, weighedAs)
}

const none: Fraction = { numerator: 0n, denominator: 1n }

function holdsNone(weighedAs: string, substance: string): PreparationError {
  return new PreparationError({
    code: 'preparation/unrelated-substance',
    message: `A mass of ${weighedAs} does not tell how much ${substance} it holds.`,
    found: weighedAs,
    expected: `a substance with the elements of ${substance}, hydrogen and oxygen aside`,
    hint: `Write the equation with ${weighedAs}, if that is what goes in.`,
  })
}

function pureLiquid(
  density: string,
  substance: string,
  assay: Quantity<'ratio'> | undefined,
  weights: AtomicWeights,
): SupplyMeasure {
  const solid = weighed(substance, substance, assay, weights)
  const rho = named(chosen(density, 'density'), 'density', 'ρ', substance)
  return {
    by: 'measure',
    substance,
    assay,
    concentration: undefined,
    toTake: (amount) => volumeNamed(asDimension(solid.toTake(amount), 'mass').dividedBy(rho), substance),
    amountIn: (taken) => solid.amountIn(massOf(taken, rho)),
  }
}

function massOf(taken: Quantity, density: Quantity<'density'>): Quantity<'mass'> {
  return taken.dimension === 'mass' ? asDimension(taken, 'mass') : asDimension(taken, 'volume').times(density)
}

function bySolution(substance: string, concentration: Quantity<'amountConcentration'>): SupplyMeasure {
  const c = named(concentration, 'concentration', 'c', substance)
  return {
    by: 'measure',
    substance,
    assay: undefined,
    concentration: c,
    toTake: (amount) => volumeNamed(amount.dividedBy(c), substance),
    amountIn: (taken) => amountNamed(c.times(asDimension(taken, 'volume')), substance),
  }
}

function volumeNamed(volume: Quantity<'volume'>, of: string): Quantity<'volume'> {
  return volume.to('mL').named({ symbol: 'V', of, role: 'volume', label: `volume for ${of}` })
}

function amountNamed(amount: Quantity<'amount'>, of: string): Quantity<'amount'> {
  return amount.named({ symbol: 'n', of, role: 'amount', label: `amount of ${of}` })
}

type Dissolved = Exclude<Told, { readonly form: 'solid' | 'liquid' }>

function concentrationOf(
  recipe: Dissolved,
  substance: string,
  weights: AtomicWeights,
): Quantity<'amountConcentration'> {
  if (recipe.form === 'solution') return chosen(recipe.concentration, 'amountConcentration')
  return amountConcentration({ ...strengthIn(recipe), substance, weights })
}

function strengthIn(recipe: Exclude<Dissolved, { readonly form: 'solution' }>): Strength {
  switch (recipe.form) {
    case 'stock':
      return {
        massFraction: chosen(recipe.massFraction, 'ratio'),
        density: chosen(recipe.density, 'density'),
        basis: recipe.statedAs,
      }
    case 'molal':
      return { molality: chosen(recipe.molality, 'molality'), density: chosen(recipe.density, 'density') }
    default:
      return {
        normality: chosen(recipe.normality, 'amountConcentration'),
        equivalentsPerMole: chosen(recipe.equivalentsPerMole, 'ratio'),
      }
  }
}

/** By what a supply in some form can be measured out: a solid by mass, a solution by volume, a pure liquid by either. */
export function measuredBy(form: Told['form']): readonly ('mass' | 'volume')[] {
  if (form === 'solid') return ['mass']
  return form === 'liquid' ? ['mass', 'volume'] : ['volume']
}
