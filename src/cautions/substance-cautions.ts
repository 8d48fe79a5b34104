import { formulaOf } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { speciesKey } from '../stoichiometry/index.js'
import { type Caution, generalCaution, plainCaution, statementsOf } from './caution.js'
import type { GasFact, SubstanceFact } from './facts.js'
import { type FoundHazard, findHazard, isFlammable } from './find-hazard.js'
import type { HazardCode } from './hazard-statements.js'
import type { SubstanceAtHand } from './strength.js'

/** What a substance is classified as, or that nothing is known of it here. Water needs no line. */
export function substanceCautions(fact: SubstanceAtHand): readonly Caution[] {
  if (isWater(fact)) return []
  const { strength } = fact
  const found = findHazard(fact.formula, fact.form, strength)
  const name = nameOf(fact, found)
  if (found === undefined) return [unknown(fact, name)]
  return [classification(fact, found, name, strength), ...calledFor(fact, found, strength)]
}

/** What an evolved gas is classified as; that it is under pressure holds for the cylinder only. */
export function gasClassification(fact: GasFact): Caution {
  const gas: SubstanceFact = { formula: fact.gas, form: 'gas' }
  const found = findHazard(fact.gas, 'gas', undefined)
  if (found === undefined) return unknown(gas, nameOf(gas, found))
  const statements = found.hazard.statements.filter((code) => code !== 'H280')
  const pictograms = found.hazard.pictograms.filter((code) => code !== 'GHS04')
  return classification(
    gas,
    { ...found, hazard: { ...found.hazard, statements, pictograms } },
    found.hazard.name,
    undefined,
  )
}

function isWater({ formula }: Pick<SubstanceFact, 'formula'>): boolean {
  const { counts, charge } = formulaOf(formula)
  return charge === 0 && counts.size === 2 && speciesKey(formula) === speciesKey('H2O')
}

/** As the plan calls it, else as it is classified, where that is the same substance. */
function nameOf({ name, formula }: SubstanceFact, found: FoundHazard | undefined): string {
  if (name !== undefined) return name
  return found === undefined || found.differs !== undefined ? formulaOf(formula).text : found.hazard.name
}

function unknown({ formula }: SubstanceFact, name: string): Caution {
  const text = `Nothing is known here about ${name}. That does not mean that it is harmless: see its safety data sheet.`
  return plainCaution(
    'unknown-substance',
    { text, source: 'Not in the tables of this library' },
    { about: formulaOf(formula).text },
  )
}

/** The strength in the words of the plan, so that nobody meets a number that stands on no bottle. */
function strengthAsGiven({ massFraction, concentration }: SubstanceFact): string {
  const given = massFraction ?? concentration
  return given === undefined ? '' : `, ${given}`
}

function classification(
  fact: SubstanceFact,
  { hazard, differs }: FoundHazard,
  name: string,
  strength: Quantity<'ratio'> | undefined,
): Caution {
  const statements = statementsOf(hazard.statements)
  const memory = hazard.fromMemory && 'From memory: look at the current data sheet first.'
  const remarks = [said(hazard.signalWord, hazard.statements), differs, memory]
  return {
    code: statements.length === 0 ? 'substance-not-classified' : 'substance-hazard',
    message: `${[name, strengthAsGiven(fact)].join('')}: ${remarks.filter((remark) => typeof remark === 'string').join(' ')}`,
    about: formulaOf(fact.formula).text,
    note: hazard.note,
    statements,
    pictograms: hazard.pictograms,
    signalWord: hazard.signalWord,
    numbers: strength === undefined ? {} : { strength },
    source: hazard.source,
    fromMemory: hazard.fromMemory === true,
  }
}

function said(signalWord: Caution['signalWord'], codes: readonly HazardCode[]): string {
  if (codes.length === 0) return 'not classified to the source’s knowledge, which is not the same as harmless.'
  const texts = statementsOf(codes).map(({ code, text }) => `${code} ${text}`)
  return `${signalWord}. ${texts.join('; ')}.`
}

/** From what mass fraction on, in per cent, an acid is poured into water and not the other way round. Our choice, no source. */
const pouredWithCare = 30

/** Precautions that follow from the substance alone. What is weaker than everything classified calls for none. */
function calledFor(
  fact: SubstanceFact,
  { hazard, weaker }: FoundHazard,
  strength: Quantity<'ratio'> | undefined,
): readonly Caution[] {
  if (weaker) return []
  const about = formulaOf(fact.formula).text
  const numbers = strength === undefined ? {} : { strength }
  const isStrong = strength === undefined || strength.value.gte(pouredWithCare)
  const calls = (hazard.calls ?? []).filter((code) => code !== 'acid-into-water' || isStrong)
  const oxidises = (['H270', 'H271', 'H272'] as const).some((code) => hazard.statements.includes(code))
  return [
    ...calls.map((code) => generalCaution(code, { about, numbers })),
    ...(isFlammable(hazard) ? [generalCaution('flammable-liquid', { about })] : []),
    ...(oxidises ? [generalCaution('oxidiser', { about })] : []),
  ]
}
