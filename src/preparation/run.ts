import { compareFractions, divideFractions, type Fraction, fraction } from '../fraction.js'
import type { Quantity } from '../quantity/index.js'
import { changesStatesOnly, type StageChemistry, startOf } from './chemistry.js'
import { addForms, type Form, formOf, inMoles, molesOf, nothing, scaleForm } from './form.js'
import type { SubstanceKey } from './substance.js'

/** What is in the vessel: an amount of each substance as multiples of what went in. */
export type Contents = ReadonlyMap<SubstanceKey, Form>

/** How one stage ran. */
export interface StageRun {
  /** Moles of the equation as written. */
  readonly extent: Form
  /** The substance that ran out first; `undefined` where everything it uses is unlimited or absent. */
  readonly limiting: SubstanceKey | undefined
  /** What was there before it, after supplies and aliquot. */
  readonly before: Contents
  /** What is there after it. */
  readonly after: Contents
  /** What was taken away before it. */
  readonly removed: Contents
}

/** Below this fraction of what went in, a difference is rounding of the last digits, not substance. */
const negligible = 1e-25

function inVessel(contents: Contents, key: SubstanceKey): Form {
  return contents.get(key) ?? nothing
}

/** Adds an amount that was measured out to what is in the vessel. */
export function pour(contents: Contents, key: SubstanceKey, amount: Quantity<'amount'>): Contents {
  return changed(contents, key, formOf(amount), fraction(1n))
}

function changed(contents: Contents, key: SubstanceKey, form: Form, times: Fraction): Contents {
  return new Map(contents).set(key, addForms(inVessel(contents, key), form, times))
}

/** Takes only a part of everything on. */
export function takeAliquot(contents: Contents, share: Fraction): Contents {
  if (compareFractions(share, fraction(1n)) === 0) return contents
  return new Map([...contents].map(([key, form]) => [key, scaleForm(form, share)]))
}

/** Parts what is taken away from what goes on. */
export function takeAway(
  contents: Contents,
  keys: ReadonlySet<SubstanceKey>,
): readonly [removed: Contents, left: Contents] {
  const entries = [...contents]
  return [new Map(entries.filter(([key]) => keys.has(key))), new Map(entries.filter(([key]) => !keys.has(key)))]
}

/** Runs a stage until what it uses first runs out; unlimited substances never do. */
export function runStage(
  stage: StageChemistry,
  before: Contents,
  unlimited: ReadonlySet<SubstanceKey>,
): Omit<StageRun, 'removed'> {
  const { extent, limiting } = changesStatesOnly(stage)
    ? { extent: allOf(stage, before, unlimited), limiting: undefined }
    : extentOf(stage, before, unlimited)
  let after = before
  for (const [key, { moles }] of stage.changes) after = changed(after, key, extent, moles)
  return { extent, limiting, before, after: withoutTraces(after) }
}

/** The extent of a stage that only changes states: all there is of what it starts from, as far as that is measured. */
function allOf(stage: StageChemistry, contents: Contents, unlimited: ReadonlySet<SubstanceKey>): Form {
  const { key, coefficient } = startOf(stage)
  if (unlimited.has(key)) return nothing
  return scaleForm(inVessel(contents, key), divideFractions(fraction(1n), coefficient))
}

/** How far a stage goes, and what ends it: the one of what it uses that runs out first. */
function extentOf(
  stage: StageChemistry,
  contents: Contents,
  unlimited: ReadonlySet<SubstanceKey>,
): { readonly extent: Form; readonly limiting: SubstanceKey } {
  const possible = [...stage.changes]
    .filter(([key, { moles }]) => moles.numerator < 0n && !unlimited.has(key))
    .map(([key, { moles }]) => {
      const extent = scaleForm(inVessel(contents, key), divideFractions(fraction(-1n), moles))
      return { extent, limiting: key, moles: molesOf(extent) }
    })
  return possible.reduce((first, next) => (next.moles.lt(first.moles) ? next : first))
}

function withoutTraces(contents: Contents): Contents {
  return new Map([...contents].map(([key, form]) => [key, isTrace(form) ? nothing : form]))
}

/** Whether an amount is only what rounding the last digits left of a difference. */
export function isTrace(form: Form): boolean {
  if (form.length < 2) return form.every(({ source }) => source.value.isZero()) // one multiple is no difference
  const value = molesOf(form).abs()
  if (value.isZero()) return true
  const size = form.reduce((largest, { source }) => Math.max(largest, inMoles(source).abs().toNumber()), 0)
  return value.lt(size * negligible)
}
