import { formulaOf } from '../formula/index.js'
import { isStrongAcid, isStrongBase } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import { chosen } from '../stoichiometry/given.js'
import { type Caution, generalCaution } from './caution.js'
import type { CautionFacts, NeutralisationFact, Operation, SubstanceFact } from './facts.js'
import { findHazard, isFlammable } from './find-hazard.js'
import { generalCautions } from './general-cautions.js'
import { strengthOf } from './strength.js'

/** Metals that alkali dissolves with hydrogen: common knowledge, no source. */
const amphoteric = ['Al', 'Zn', 'Sn', 'Pb']

/** Metals whose liquors are collected: named or meant by the waste pages, see the caution; zinc and manganese by their H410, H411. */
const collected = ['Cu', 'Ni', 'Co', 'Ba', 'Pb', 'Ag', 'Cr', 'Mn', 'Zn', 'Cd', 'Hg']

/** What follows from operations and substances together. */
export function operationCautions(facts: CautionFacts): readonly Caution[] {
  const { substances = [] } = facts
  const does = (...names: readonly Operation[]) => names.some((name) => facts.operations?.includes(name))
  const heats = does('boil', 'evaporate', 'hot plate', 'burner')
  const acid = substances.some(({ formula }) => isStrongAcid(formula))
  return [
    ...(does('dilute acid') ? [generalCaution('acid-into-water')] : []),
    ...(metalInAlkali(substances) ? [generalCaution('metal-in-alkali')] : []),
    ...(acid && does('boil', 'evaporate', 'burner') ? [generalCaution('boiling-acid')] : []),
    ...(does('boil', 'evaporate') ? [generalCaution('bumping')] : []),
    ...(heats && substances.some(burns) ? [generalCaution('flammable-near-heat')] : []),
    ...(does('suction') ? [generalCaution('suction')] : []),
    ...neutralising(facts.neutralisation, does('neutralise')),
    ...(does('dry') && isHydrate(facts.product) ? [generalCaution('hydrates-not-warm')] : []),
    ...metalWaste(substances),
  ]
}

function metalInAlkali(substances: readonly SubstanceFact[]): boolean {
  const metal = substances.some(({ formula }) => amphoteric.includes(formulaOf(formula).text))
  return metal && substances.some(({ formula }) => isStrongBase(formula))
}

function burns(fact: SubstanceFact): boolean {
  const found = findHazard(fact.formula, fact.form, strengthOf(fact))
  return found !== undefined && !found.weaker && isFlammable(found.hazard)
}

function isHydrate(product: CautionFacts['product']): boolean {
  return product !== undefined && formulaOf(product).hydration?.isZero() !== true
}

function neutralising(fact: NeutralisationFact | undefined, does: boolean): readonly Caution[] {
  if (fact === undefined) return does ? [generalCaution('neutralisation-warms')] : []
  const { heat, temperatureRise } = fact
  const numbers: Readonly<Record<string, Quantity>> = {
    ...(heat !== undefined && { heat: chosen(heat, 'energy', { label: 'heat released', symbol: 'q' }) }),
    ...(temperatureRise !== undefined && {
      temperatureRise: chosen(temperatureRise, 'temperature', { label: 'temperature rise at most', symbol: 'ΔT' }),
    }),
  }
  return [generalCaution('neutralisation-warms', { numbers })]
}

/** One line for each metal that is to be kept out of the sink. */
function metalWaste(substances: readonly SubstanceFact[]): readonly Caution[] {
  const present = substances.flatMap(({ formula }) => [...formulaOf(formula).counts.keys()])
  return collected
    .filter((metal) => present.includes(metal))
    .map((about) =>
      generalCaution('heavy-metals', { about, message: `${about}: ${generalCautions['heavy-metals'].text}` }),
    )
}
