import { showFound } from '../errors.js'
import { type Caution, plainCaution } from './caution.js'
import { CautionError } from './caution-error.js'
import { type CautionFacts, operations } from './facts.js'
import { gasCautions } from './gas-cautions.js'
import { deferral } from './general-cautions.js'
import { operationCautions } from './operation-cautions.js'
import { atHand } from './strength.js'
import { substanceCautions } from './substance-cautions.js'

/**
 * What can hurt somebody in a plan, and what the usual precaution is: UN GHS hazard statements of the substances in the forms and
 * strengths at hand, gases evolved and how much, heat, boiling, flammable liquids, suction, waste. The last line is always that
 * local rules, the supplier's safety data sheet and qualified supervision take precedence.
 *
 * What the tables do not hold is said to be unknown, never to be harmless. Classifications from memory say so.
 *
 * @param facts - Substances, gases, operations, heat and product of a plan; whatever is left out is not looked at.
 * @returns The cautions: what is done, gases, substances, and the deferral at the end; each line once.
 * @throws {@link CautionError} `cautions/not-an-object`, `cautions/not-a-list`, `cautions/not-text`; `cautions/unknown-choice` for an operation or a form
 *   that is none. {@link FormulaError} and {@link QuantityError} for what cannot be read.
 * @source Each caution names its own.
 *
 * @example
 * ```ts
 * import { cautionsFor } from 'saltwright/cautions'
 *
 * const cautions = cautionsFor({
 *   substances: [{ formula: 'H2SO4', concentration: '3.00 mol/L', density: '1.18 g/mL' }, { formula: 'Zn', form: 'pieces' }],
 *   gases: [{ gas: 'H2', amount: '0.0400 mol', volume: '0.99 L' }],
 * })
 * cautions.map(({ code }) => code) // => ['heavy-metals', 'hydrogen', 'substance-hazard', 'substance-hazard',
 *   //   'substance-not-classified', 'deferral']
 * ```
 */
export function cautionsFor(facts: CautionFacts): readonly Caution[] {
  const { substances: given = [], gases = [] } = checked(facts)
  const substances = given.map(atHand)
  return [
    ...once([
      ...operationCautions(facts, substances),
      ...gases.flatMap(gasCautions),
      ...substances.flatMap(substanceCautions),
    ]),
    plainCaution('deferral', deferral),
  ]
}

/** The same line about the same thing is enough once. */
function once(cautions: readonly Caution[]): readonly Caution[] {
  return [
    ...new Map(cautions.map((caution) => [`${caution.code} ${caution.about} ${caution.message}`, caution])).values(),
  ]
}

const forms = ['solid', 'powder', 'pieces', 'solution', 'liquid', 'gas']

function checked(facts: CautionFacts): CautionFacts {
  if (typeof facts !== 'object' || facts === null) throw notAnObject(facts, 'the facts of a plan')
  if (facts.neutralisation !== undefined) checkObject(facts.neutralisation, 'a heat: { heat, temperatureRise }')
  checkList(facts.operations, 'operations', (name) => checkChoice(name, operations, 'operation'))
  checkList(facts.gases, 'gases', (fact) => checkObject(fact, 'a gas: { gas }'))
  checkList(facts.substances, 'substances', (fact) => {
    checkObject(fact, 'a substance: { formula }')
    if (fact.form !== undefined) checkChoice(fact.form, forms, 'form')
    if (fact.name !== undefined && typeof fact.name !== 'string') throw notText(fact.name)
  })
  return facts
}

function checkList<T>(list: readonly T[] | undefined, what: string, check: (each: T) => void): void {
  if (list === undefined) return
  if (!Array.isArray(list)) throw notAList(list, what)
  for (const each of list as readonly T[]) check(each)
}

function checkObject(value: unknown, expected: string): void {
  if (typeof value !== 'object' || value === null) throw notAnObject(value, expected)
}

function checkChoice(found: string, choices: readonly string[], what: string): void {
  if (choices.includes(found)) return
  throw new CautionError({
    code: 'cautions/unknown-choice',
    message: `${showFound(found)} is no ${what} known here.`,
    found: showFound(found),
    expected: choices.map((choice) => `"${choice}"`).join(', '),
  })
}

function notAnObject(found: unknown, expected: string): CautionError {
  return new CautionError({
    code: 'cautions/not-an-object',
    message: `${showFound(found)} stands where ${expected} was expected.`,
    found: showFound(found),
    expected,
  })
}

function notText(found: unknown): CautionError {
  return new CautionError({
    code: 'cautions/not-text',
    message: `${showFound(found)} is not a name.`,
    found: showFound(found),
    expected: 'what the plan calls the substance, as text',
  })
}

function notAList(found: unknown, what: string): CautionError {
  return new CautionError({
    code: 'cautions/not-a-list',
    message: `${showFound(found)} stands where a list of ${what} was expected.`,
    path: [what],
    found: showFound(found),
    expected: `a list of ${what}`,
  })
}
