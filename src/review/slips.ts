import type { Slip } from './slip.js'
import { copyingSlips } from './slips/copying.js'
import { dividingSlips } from './slips/dividing.js'
import { excessSlips } from './slips/excess.js'
import { formulaSlips } from './slips/formulas.js'
import { gasSlips } from './slips/gases.js'
import { hydrateSlips } from './slips/hydrates.js'
import { limitingSlips } from './slips/limiting.js'
import { moleRatioSlips } from './slips/mole-ratios.js'
import { puritySlips } from './slips/purities.js'
import { roundingSlips } from './slips/rounding.js'
import { stockSlips } from './slips/stocks.js'
import { strengthSlips } from './slips/strengths.js'
import { unitSlips } from './slips/units.js'
import { weighingSlips } from './slips/weighing.js'
import { yieldSlips } from './slips/yields.js'

/**
 * Every slip that a review knows, each with what was done, what to look at, and where it was seen. Where it was seen says that it
 * exists, not how common it is.
 */
export const slips: readonly Slip[] = /* @__PURE__ */ [
  hydrateSlips,
  formulaSlips,
  moleRatioSlips,
  limitingSlips,
  excessSlips,
  unitSlips,
  dividingSlips,
  weighingSlips,
  roundingSlips,
  yieldSlips,
  strengthSlips,
  stockSlips,
  gasSlips,
  puritySlips,
  copyingSlips,
].flat()
