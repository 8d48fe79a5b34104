import { type Caution, type CautionFacts, cautionsFor, type SubstanceFact } from '../cautions/index.js'
import type { RecipeFacts } from './facts.js'
import type { Plan } from './plan-type.js'

type Draft = Omit<Plan, 'findings' | 'cautions'>

/** A memo: where no gas and no heat depends on the scale, the cautions of a recipe are the same at every scale. */
const atEveryScale: WeakMap<RecipeFacts['stages'], readonly Caution[]> = /* @__PURE__ */ new WeakMap()

/** What can hurt someone in a plan, from what is taken, given off, made and done. */
export function cautionsOf(facts: RecipeFacts, plan: Draft): readonly Caution[] {
  const gases = plan.stages.flatMap((stage) => stage.gases)
  const neutralisation = plan.stages.find(({ heat }) => heat !== undefined)?.heat
  if (gases.length > 0 || neutralisation !== undefined)
    return cautionsFor({ ...scaleless(facts, plan), gases, neutralisation })
  const cautions = atEveryScale.get(facts.stages) ?? cautionsFor(scaleless(facts, plan))
  atEveryScale.set(facts.stages, cautions)
  return cautions
}

function scaleless({ recipe }: RecipeFacts, plan: Draft): CautionFacts {
  return {
    substances: [...suppliesOf(plan), ...aidsOf(recipe), { formula: plan.product.formula, form: 'solid' }],
    operations: operationsOf(recipe),
    product: plan.product.formula,
  }
}

function suppliesOf({ supplies }: Draft): readonly SubstanceFact[] {
  return supplies.map(({ taken, name, concentration, form }) => ({
    formula: taken,
    name,
    concentration,
    form: form === 'solid' ? 'solid' : undefined,
  }))
}

/** Washes and other aids of which the recipe says what they are. */
function aidsOf({ auxiliaries = [], washes = [] }: RecipeFacts['recipe']): readonly SubstanceFact[] {
  const aids = [...auxiliaries, ...washes.map(({ substance, with: name }) => ({ substance, name }))]
  return aids.flatMap(({ substance, name }) => (substance === undefined ? [] : [{ formula: substance, name }]))
}

/** Crystals that are washed or dried by drawing air through stand on a suction filter. */
function operationsOf({ operations = [], washes, crystallisation }: RecipeFacts['recipe']): CautionFacts['operations'] {
  const filtered = washes !== undefined || crystallisation !== undefined
  return [...new Set([...operations, ...(filtered ? (['suction'] as const) : [])])]
}
