import type { FormulaLike } from '../formula/index.js'
import type { Quantity } from '../quantity/index.js'
import { rowsOf, rowsOfSalt } from './hazard-rows.js'
import type { SubstanceForm, SubstanceHazard } from './substance-hazard.js'

/** A classification that was found, and how well it fits. */
export interface FoundHazard {
  /** The classification. */
  readonly hazard: SubstanceHazard
  /** In what it differs from the substance at hand, as a sentence; undefined where it fits. */
  readonly differs: string | undefined
  /** True where the substance at hand is weaker than everything classified. */
  readonly weaker?: boolean
}

/**
 * The classification that fits a substance best: in its form and strength if there is one; else in the next stronger, or another
 * form or hydrate, and the difference is said. Nothing where nothing is known.
 */
export function findHazard(
  formula: FormulaLike,
  form: SubstanceForm | undefined,
  strength: Quantity<'ratio'> | undefined,
): FoundHazard | undefined {
  const exactly = rowsOf(formula)
  if (exactly.length > 0) return bestOf(exactly, form, strength)
  const best = bestOf(rowsOfSalt(formula), form, strength)
  return best && { hazard: best.hazard, differs: `Classified here as ${best.hazard.name}.` }
}

/** Whether a classification says that vapour catches fire. */
export function isFlammable({ statements }: SubstanceHazard): boolean {
  return statements.includes('H225') || statements.includes('H226')
}

function bestOf(
  rows: readonly SubstanceHazard[],
  form: SubstanceForm | undefined,
  strength: Quantity<'ratio'> | undefined,
): FoundHazard | undefined {
  const wanted = form ?? (strength === undefined ? undefined : 'solution')
  const inForm = rows.filter((row) => row.form === wanted)
  if (inForm.length > 0) return byStrength(inForm, strength)
  const [first] = rows
  return first && { hazard: first, differs: wanted && `Classified here as ${first.form}.` }
}

/** Rows of solutions run from strong to weak, and each says from where on it holds; other forms have one row. */
function byStrength(rows: readonly SubstanceHazard[], strength: Quantity<'ratio'> | undefined): FoundHazard {
  const [strongest] = rows as readonly [SubstanceHazard, ...SubstanceHazard[]]
  if (strongest.from === undefined) return { hazard: strongest, differs: undefined }
  if (strength === undefined)
    return { hazard: strongest, differs: `Its strength is not stated; this classification is ${bandOf(strongest)}.` }
  const percent = strength.value.toNumber()
  const fits = rows.find(({ from, below }) => (from as number) <= percent && percent < (below ?? 101))
  if (fits !== undefined) return { hazard: fits, differs: undefined }
  const stronger = rows.filter(({ from }) => (from as number) > percent)
  const hazard = stronger.at(-1) ?? strongest
  return {
    hazard,
    differs: `The nearest classification is ${bandOf(hazard)}.`,
    weaker: stronger.length > 0,
  }
}

function bandOf({ from, below }: SubstanceHazard): string {
  return below === undefined ? `for ${from} % or more` : `for ${from} to under ${below} %`
}
