import { divideFractions, type Fraction, fraction } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import type { Change, StageChemistry } from './chemistry.js'
import type { RecipeFacts, SupplyFacts } from './facts.js'
import { addForms, amountOf, type Form, formOf, moleRatio, molesOf, nothing, scaleForm } from './form.js'
import { nextStage, sharePerScale } from './needs.js'
import { type Contents, isTrace, pour, runStage, type StageRun, takeAliquot, takeAway } from './run.js'
import type { SubstanceKey } from './substance.js'

/** How much of a supply the preparation needs, at the scale. */
export interface Need {
  /** By the overall equation alone; `undefined` where there is no scale to work from. */
  readonly naive: Quantity<'amount'> | undefined
  /** For clearing what earlier stages left; `undefined` where nothing is cleared. */
  readonly clearing: Quantity<'amount'> | undefined
  /** Both together. */
  readonly total: Quantity<'amount'> | undefined
  /** What earlier stages left of the same substance, beyond what they make for later ones; `undefined` for nothing. */
  readonly left: Quantity<'amount'> | undefined
}

/** A supply as it went in. */
export interface Poured {
  /** Which. */
  readonly supply: SupplyFacts
  /** What was needed of it. */
  readonly need: Need
  /** What was taken. */
  readonly amount: Quantity<'amount'>
}

/** The whole preparation, stage by stage. */
export interface Course {
  /** Every supply, in the order they go in. */
  readonly poured: readonly Poured[]
  /** Every stage as it ran. */
  readonly runs: readonly StageRun[]
  /** What is in the vessel at the end. */
  readonly contents: Contents
}

/** Decides how much of a supply is taken, from what is needed. */
export type AmountRule = (supply: SupplyFacts, need: Need) => Quantity<'amount'>

/** Runs a recipe from the first stage to the last: each on what the earlier ones left. */
export function runCourse(facts: RecipeFacts, scale: Quantity<'amount'> | undefined, amountFor: AmountRule): Course {
  let contents: Contents = new Map()
  const poured: Poured[] = []
  const runs: StageRun[] = []
  for (const [index, stage] of facts.stages.entries()) {
    const [removed, left] = takeAway(takeAliquot(contents, stage.aliquot), stage.removes)
    contents = left
    for (const supply of facts.supplies.filter((each) => each.stage === index)) {
      const need = needOf(facts, supply, scale, contents)
      const amount = amountFor(supply, need)
      poured.push({ supply, need, amount })
      contents = pour(contents, supply.key, amount)
    }
    const run = runStage(stage, contents, facts.unlimited)
    runs.push({ ...run, removed })
    contents = run.after
  }
  return { poured, runs, contents }
}

/** How much of a supply went in. */
export function pouredAmount({ poured }: Course, supply: SupplyFacts): Quantity<'amount'> {
  return (poured.find((each) => each.supply === supply) as Poured).amount
}

function needOf(
  facts: RecipeFacts,
  supply: SupplyFacts,
  scale: Quantity<'amount'> | undefined,
  contents: Contents,
): Need {
  const of = supply.formula.text
  const label = { symbol: 'n', of, role: 'amount' } as const
  const share = sharePerScale(facts, supply)
  const naive =
    scale && timesRatio(scale, share.need, of).named({ ...label, label: `need of ${of} by the overall equation` })
  const form = clearingForm(facts, supply, contents)
  const clearing = isTrace(form)
    ? undefined
    : amountOf(form, of).named({ ...label, label: `need of ${of} for what earlier stages left` })
  const total =
    naive && clearing ? naive.plus(clearing).named({ ...label, label: `need of ${of}` }) : (naive ?? clearing)
  return { naive, clearing, total, left: scale && leftOf(supply, scale, share.made, contents) }
}

/** What is in the vessel of a supply before it goes in, beyond what earlier stages make of it by the equations. */
function leftOf(
  { key, formula }: SupplyFacts,
  scale: Quantity<'amount'>,
  made: Fraction,
  contents: Contents,
): Quantity<'amount'> | undefined {
  const beyond = addForms(contents.get(key) ?? nothing, formOf(scale), { ...made, numerator: -made.numerator })
  if (isTrace(beyond) || molesOf(beyond).lt(0)) return undefined
  return amountOf(beyond, formula.text).named({ of: formula.text, label: `${formula.text} that earlier stages left` })
}

function timesRatio(amount: Quantity<'amount'>, ratio: Fraction, of: string): Quantity<'amount'> {
  if (ratio.numerator === ratio.denominator && amount.naming.of === of) return amount
  return amount.times(moleRatio(ratio, of, amount.naming.of as string))
}

/** What the supply must clear first, judged by what is in the vessel when it goes in. */
function clearingForm(facts: RecipeFacts, supply: SupplyFacts, contents: Contents): Form {
  const stages = facts.stages.slice(supply.stage, nextStage(facts, supply))
  return stages.reduce((total, stage) => addForms(total, clearedBy(stage, supply.key, contents), fraction(1n)), nothing)
}

function clearedBy(stage: StageChemistry, key: SubstanceKey, contents: Contents): Form {
  const used = stage.changes.get(key)
  if (stage.clears === undefined || used === undefined || used.moles.numerator >= 0n) return nothing
  const leftover = stage.changes.get(stage.clears) as Change
  return scaleForm(contents.get(stage.clears) ?? nothing, divideFractions(used.moles, leftover.moles))
}
