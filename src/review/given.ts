import type { Plan, PlannedSupply } from '../preparation/index.js'
import { asDimension, type Quantity, working } from '../quantity/index.js'
import { called } from './look-up.js'
import { aliquots } from './numbers-at-hand.js'
import type { GivenNumber } from './question-set-type.js'
import type { Question } from './worksheet.js'
import { goesInTwice } from './worksheet-of.js'

/** What has to be given so that a number can be worked out with the equations and a table of molar masses. */
export function givenFor(plan: Plan, expected: Quantity): readonly GivenNumber[] {
  const { amount, mass } = plan.theoretical
  const hangsOnAll = expected === amount || expected === mass // which supply limits is a part of the question
  return givenBehind(plan, hangsOnAll ? [expected, ...amountsIn(plan)] : [expected])
}

/** What has to be given so that it can be told what limits: how much there is of each, or what that follows from where it is asked for. */
export function givenForChoice(plan: Plan, questions: readonly Question[]): readonly GivenNumber[] {
  const asked = new Set(questions.map((question) => (question.kind === 'quantity' ? question.expected : undefined)))
  if (plan.supplies.some(({ amount }) => asked.has(amount))) return givenBehind(plan, amountsIn(plan))
  return plan.supplies.map((supply) => ({ label: amountLabel(supply, plan), quantity: supply.amount }))
}

function amountsIn({ supplies }: Plan): readonly Quantity[] {
  return supplies.map(({ amount }) => amount)
}

function amountLabel(supply: PlannedSupply, plan: Plan): string {
  const label = `amount of ${supply.substance}`
  return goesInTwice(supply, plan) ? `${label} for the stage "${supply.stage}"` : label
}

/** The chosen numbers behind some results, each once. What goes on to a stage has a part in every amount, so it is given with all. */
function givenBehind(plan: Plan, results: readonly Quantity[]): readonly GivenNumber[] {
  const leaves = results.flatMap((result) => working(result).given.map(({ quantity }) => quantity)).filter(isChosen)
  const once = new Map(leaves.map((leaf) => [leaf.input, leaf]))
  if (once.size === 0) return []
  return [...once.values(), ...aliquots(plan)].map((quantity) => ({ label: labelIn(plan, quantity), quantity }))
}

/** Whether a number is neither looked up nor read off the equations; moles per mole that a recipe chooses have no symbol of theirs. */
function isChosen({ naming: { role, symbol } }: Quantity): boolean {
  if (role === 'mole ratio') return symbol === undefined
  return role !== 'atomic weight' && role !== 'molar mass'
}

/** The scale as it was chosen, where that is a mass; in whatever unit. */
function chosenMass({ recipe, scale }: Plan): Quantity | undefined {
  if (recipe.scale?.mass === undefined) return undefined
  const [mass] = scale.amount.operands as readonly [Quantity]
  return mass.input === undefined ? mass.operands[0] : mass
}

/** Whether a mass to be weighed is the very mass that was chosen, come back by way of its amount. */
export function isChosenMass({ naming, value, unit }: Quantity, plan: Plan): boolean {
  const mass = chosenMass(plan)
  if (mass === undefined || naming.role !== 'mass' || naming.of !== mass.naming.of) return false
  const chosen = asDimension(mass, 'mass').to(unit as 'g').value
  return Math.abs(value.div(chosen).toNumber() - 1) < lastDigits
}

/** What dividing and multiplying by a molar mass may leave of a number. */
const lastDigits = 1e-12

/** What a given number is called: the scale by its own name, whatever it stands for in the answer; an assay after what is weighed. */
function labelIn(plan: Plan, q: Quantity): string {
  const chosen = chosenMass(plan) ?? plan.scale.amount
  if (chosen.input === q.input) return called(chosen)
  const weighed = plan.supplies.find(({ assay }) => assay !== undefined && assay.input === q.input)
  return weighed === undefined ? called(q) : `assay of ${weighed.taken}`
}
