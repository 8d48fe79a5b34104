import { type Caution, type CautionFacts, cautionsFor, type SubstanceFact } from '../cautions/index.js'
import type { RecipeFacts } from './facts.js'
import type { Plan } from './plan-type.js'

type Draft = Omit<Plan, 'findings' | 'cautions'>

/** What can hurt someone in a plan, from what is taken, given off, made and done. */
export function cautionsOf({ recipe }: RecipeFacts, plan: Draft): readonly Caution[] {
  return cautionsFor({
    substances: [...suppliesOf(plan), ...washesOf(recipe.washes), { formula: plan.product.formula, form: 'solid' }],
    gases: plan.stages.flatMap(({ gases }) => gases),
    operations: operationsOf(recipe),
    neutralisation: plan.stages.find(({ heat }) => heat !== undefined)?.heat,
    product: plan.product.formula,
  })
}

function suppliesOf({ supplies }: Draft): readonly SubstanceFact[] {
  return supplies.map(({ taken, name, concentration, form }) => ({
    formula: taken,
    name,
    concentration,
    form: form === 'solid' ? 'solid' : undefined,
  }))
}

function washesOf(washes: RecipeFacts['recipe']['washes'] = []): readonly SubstanceFact[] {
  return washes.flatMap(({ substance, with: name }) => (substance === undefined ? [] : [{ formula: substance, name }]))
}

/** Crystals that are washed or dried by drawing air through stand on a suction filter. */
function operationsOf({ operations = [], washes, crystallisation }: RecipeFacts['recipe']): CautionFacts['operations'] {
  const filtered = washes !== undefined || crystallisation !== undefined
  return [...new Set([...operations, ...(filtered ? (['suction'] as const) : [])])]
}
