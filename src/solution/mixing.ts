import type { FormulaLike } from '../formula/index.js'
import { speciesKey } from '../stoichiometry/species.js'

/** What goes into what. */
export type MixingOrder = 'acid into water' | 'alkali into water' | 'stock into water'

/** In which order a stock solution and water come together. */
export interface Mixing {
  /** What goes into what: the stock into the water, unless the substance is known to be an acid or an alkali. */
  readonly order: MixingOrder
  /** The caution that goes with it. */
  readonly caution: string
}

/** How a stock of a substance is mixed with water. The order and its reason: common practice, no source. */
export function mixingOf(substance: FormulaLike | undefined): Mixing {
  const usual = substance === undefined ? undefined : knownOrders().get(speciesKey(substance))
  const order = usual ?? 'stock into water'
  return { order, caution: `${cautions[order]} ${deferral}` }
}

/** Substances whose concentrated solutions heat up with water, as they are sold. */
const substances: Readonly<Record<Exclude<MixingOrder, 'stock into water'>, readonly string[]>> = {
  'acid into water': ['H2SO4', 'HCl', 'HNO3', 'H3PO4', 'CH3COOH', 'HClO4', 'HF', 'HBr', 'HI', 'HCOOH'],
  'alkali into water': ['NaOH', 'KOH', 'LiOH', 'NH3', 'NH4OH'],
}

const cautions: Readonly<Record<MixingOrder, string>> = {
  'acid into water':
    'Add the acid slowly to most of the water, stirring and cooling, and never water to the acid: mixing heats it and it can splash.',
  'alkali into water':
    'Add the alkali slowly to most of the water, stirring and cooling: mixing can heat it, and concentrated ammonia gives off gas.',
  'stock into water': 'Add the stock solution slowly to most of the water, stirring, then make up to the volume.',
}

const deferral = 'Follow local rules, the supplier’s safety data sheet and qualified supervision.'

/** A memo of constants: the orders by species. */
const known: Map<string, MixingOrder> = /* @__PURE__ */ new Map()

function knownOrders(): ReadonlyMap<string, MixingOrder> {
  if (known.size > 0) return known
  for (const formula of substances['acid into water']) known.set(speciesKey(formula), 'acid into water')
  for (const formula of substances['alkali into water']) known.set(speciesKey(formula), 'alkali into water')
  return known
}
