import { type Caution, type CautionFacts, cautionsFor, type SubstanceFact } from '../cautions/index.js'
import type { RecipeFacts } from './facts.js'
import type { Plan } from './plan-type.js'

type Draft = Omit<Plan, 'findings' | 'cautions'>

/** What can hurt someone in a plan, from what is taken, given off, made and done. */
export function cautionsOf({ recipe }: RecipeFacts, plan: Draft): readonly Caution[] {
  return cautionsFor({
    substances: [...suppliesOf(plan), ...aidsOf(recipe), { formula: plan.product.formula, form: 'solid' }],
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
