import { fractionToDecimal } from '../fraction.js'
import type { Assessment, Plan, PlannedSupply, RecipeSupply } from '../preparation/index.js'
import { asDimension, type Dimension, exact, type Naming, type Quantity, quantity } from '../quantity/index.js'
import { amountConcentration } from '../solution/index.js'

type Measured = Exclude<RecipeSupply, { readonly form: 'unlimited' }>

function suppliesOf({ recipe }: Plan): readonly Measured[] {
  return recipe.supplies.flatMap((supply) => (supply.form === 'unlimited' ? [] : [supply]))
}

/** A number that the recipe says, exact, under a name. */
function said<D extends Dimension>(text: string, dimension: D, naming: Naming): Quantity<D> {
  return asDimension(exact(text), dimension).named(naming)
}

/** The excess factors that the recipe states. */
export function excessFactors(plan: Plan): readonly Quantity[] {
  return suppliesOf(plan).flatMap(({ substance: of, excessFactor }) =>
    excessFactor === undefined ? [] : [said(excessFactor, 'ratio', { role: 'excess', of, label: `excess of ${of}` })],
  )
}

/** Strengths of the solutions, of what they are made from, and what the labels of stocks say. */
export function strengths(plan: Plan): readonly Quantity[] {
  const used = plan.supplies.flatMap(({ concentration }) => (concentration === undefined ? [] : [concentration]))
  return [...used, ...suppliesOf(plan).flatMap((supply) => strengthsBehind(supply, plan))]
}

function strengthsBehind(supply: Measured, { recipe }: Plan): readonly Quantity[] {
  const { substance: of } = supply
  if (supply.form === 'stock') return label(supply, of)
  if (supply.form !== 'solution' || supply.madeFrom === undefined || 'solid' in supply.madeFrom) return []
  const { madeFrom } = supply
  const names = { role: 'concentration', of, label: `concentration of the stock of ${of}` } as const
  if ('concentration' in madeFrom) return [said(madeFrom.concentration, 'amountConcentration', names)]
  const [massFraction, density] = label(madeFrom, of)
  const weights = recipe.atomicWeights
  const stock = { massFraction, density, basis: madeFrom.statedAs, substance: of, weights }
  return [massFraction, density, amountConcentration(stock).named(names)]
}

function label(
  { massFraction, density }: { readonly massFraction: string; readonly density: string },
  of: string,
): readonly [Quantity<'ratio'>, Quantity<'density'>] {
  return [
    said(massFraction, 'ratio', { role: 'mass fraction', of, label: `mass fraction of ${of}` }),
    said(density, 'density', { role: 'density', of, label: `density of ${of}` }),
  ]
}

/** Moles of a supply that one stage uses per mole of the scale substance, where several stages use it. */
export function stepRatios(plan: Plan): readonly Quantity[] {
  return plan.supplies.flatMap((supply) => {
    const steps = plan.stages.flatMap((stage) => usedIn(stage, supply, plan))
    return steps.length < 2 ? [] : steps
  })
}

function usedIn(
  { equation, extent, name }: Plan['stages'][number],
  { substance: of }: PlannedSupply,
  { scale }: Plan,
): readonly Quantity[] {
  const term = equation.left.find(({ formula }) => formula.text === of)
  if (term === undefined || scale.amount.value.isZero()) return []
  const ratio = extent.times(exact(fractionToDecimal(term.coefficient).toNumber())).dividedBy(scale.amount)
  return [ratio.named({ role: 'mole ratio', of, label: `ratio of "${name}" alone` })]
}

/** The parts of the solution that go on. */
export function aliquots({ recipe }: Plan): readonly Quantity[] {
  return recipe.stages.flatMap(({ aliquot, name }) =>
    aliquot === undefined ? [] : [said(aliquot, 'ratio', { role: 'aliquot', label: `part that goes on to "${name}"` })],
  )
}

/** Tares of other vessels, and weighings before the last one. */
export function weighings({ records }: Assessment): readonly Quantity[] {
  const { supplies = [], product } = records
  const own = product.tare === undefined ? [] : [product.tare].flat()
  const vessels = product.vessels?.flatMap(({ tare }) => [tare].flat()) ?? []
  const others = supplies.flatMap(({ tare }) => (tare === undefined ? [] : [tare]))
  return [
    ...[...own, ...vessels, ...others].map((text) => read(text, { role: 'tare', label: `tare of ${text}` })),
    ...(product.series?.slice(0, -1) ?? []).map((text) => read(text, { role: 'gross', label: `weighing of ${text}` })),
  ]
}

function read(text: string, naming: Naming): Quantity {
  return asDimension(quantity(text), 'mass').named(naming)
}
