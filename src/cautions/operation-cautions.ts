import { formulaOf } from '../formula/index.js'
import { isStrongBase } from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import { chosen } from '../stoichiometry/given.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Caution, generalCaution } from './caution.js'
import type { CautionFacts, NeutralisationFact, Operation, SubstanceFact } from './facts.js'
import { findHazard, isFlammable } from './find-hazard.js'
import { type GeneralCautionCode, generalCautions } from './general-cautions.js'
import type { SubstanceAtHand } from './strength.js'

/** Metals that alkali dissolves with hydrogen: common knowledge, no source. */
const amphoteric = ['Al', 'Zn', 'Sn', 'Pb']

/** Metals whose liquors are collected: named or meant by the waste pages, see the caution; zinc and manganese by their H410, H411. */
const collected = ['Cu', 'Ni', 'Co', 'Ba', 'Pb', 'Ag', 'Cr', 'Mn', 'Zn', 'Cd', 'Hg']

/** What follows from operations and substances together. */
export function operationCautions(facts: CautionFacts, substances: readonly SubstanceAtHand[]): readonly Caution[] {
  const does = (...names: readonly Operation[]) => names.some((name) => facts.operations?.includes(name))
  const heats = does('boil', 'evaporate', 'hot plate', 'burner')
  return [
    ...called('acid-into-water', does('dilute acid')),
    ...called('metal-in-alkali', metalInAlkali(substances)),
    ...(does('boil', 'evaporate', 'burner') ? hotAcid(substances) : []),
    ...called('bumping', does('boil', 'evaporate')),
    ...called('flammable-near-heat', heats && substances.some(burns)),
    ...called('suction', does('suction')),
    ...neutralising(facts.neutralisation, does('neutralise')),
    ...called('hydrates-not-warm', does('dry') && isHydrate(facts.product)),
    ...metalWaste(substances),
  ]
}

function called(code: GeneralCautionCode, holds: boolean): readonly Caution[] {
  return holds ? [generalCaution(code)] : []
}

/** Sulfuric acid that is heated: an oxide or a carbonate is added to it hot, a metal is not; dry sulfates give off fumes. */
function hotAcid(substances: readonly SubstanceFact[]): readonly Caution[] {
  const sulfuric = substances.some(({ formula }) => speciesKey(formula) === speciesKey('H2SO4'))
  return [
    ...called('boiling-acid', sulfuric && substances.some(isOxideOrCarbonate)),
    ...called('not-to-dryness', sulfuric),
  ]
}

/** A metal oxide or carbonate. */
function isOxideOrCarbonate({ formula }: SubstanceFact): boolean {
  const others = [...formulaOf(formula).counts.keys()].filter((symbol) => !nonMetals.includes(symbol))
  const rest = formulaOf(formula).text.slice(others.join('').length)
  return others.length === 1 && (/^\d*O\d*$/.test(rest) || /^\d*CO3$/.test(rest))
}

const nonMetals = ['H', 'C', 'N', 'O', 'F', 'P', 'S', 'Cl', 'Br', 'I']

function metalInAlkali(substances: readonly SubstanceFact[]): boolean {
  const metal = substances.some(({ formula }) => amphoteric.includes(formulaOf(formula).text))
  return metal && substances.some(({ formula }) => isStrongBase(formula))
}

function burns({ formula, form, strength }: SubstanceAtHand): boolean {
  const found = findHazard(formula, form, strength)
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
