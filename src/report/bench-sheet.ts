import type { Plan, PlannedStage, PlannedSupply } from '../preparation/index.js'
import { brief } from './brief.js'
import { findingLines } from './finding-lines.js'
import type { Block, Line, Sheet, SheetFormat, Step } from './sheet.js'
import { writeSheet } from './write-sheet.js'

/**
 * Writes the bench sheet of a plan: what to weigh and measure, what to do, what to expect, what to write down, and the cautions.
 *
 * @param plan - A plan.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document).
 * @returns The sheet, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`.
 *
 * @example
 * ```ts
 * import { planPreparation } from 'saltwright/preparation'
 * import { benchSheet } from 'saltwright/report'
 *
 * const plan = planPreparation({
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * })
 * benchSheet(plan).split('\n')[0] // => 'Zinc sulfate heptahydrate'
 * benchSheet(plan, 'markdown').startsWith('# Zinc sulfate heptahydrate') // => true
 * ```
 */
export function benchSheet(plan: Plan, format: SheetFormat = 'text'): string {
  return writeSheet(benchSheetOf(plan), format)
}

/** The bench sheet apart from how it is written. */
export function benchSheetOf(plan: Plan): Sheet {
  const { recipe, scale } = plan
  return {
    title: recipe.title,
    subtitle: ['Bench sheet for ', { quantity: scale.amount }, ' of ', { formula: scale.formula }],
    blocks: [
      { kind: 'heading', text: 'Weigh and measure' },
      suppliesTable(plan.supplies),
      { kind: 'heading', text: 'Do' },
      { kind: 'steps', steps: plan.stages.map(stageStep) },
      ...finishing(plan),
      { kind: 'heading', text: 'Expect' },
      { kind: 'notes', lines: expectations(plan) },
      ...findingBlocks(plan),
      { kind: 'heading', text: 'Write down' },
      { kind: 'blanks', fields: blanks(plan) },
      { kind: 'heading', text: 'Take care' },
      { kind: 'notes', lines: plan.cautions.map(({ text }) => text) },
      ...provenance(plan),
    ],
  }
}

function suppliesTable(supplies: readonly PlannedSupply[]): Block {
  return {
    kind: 'table',
    head: ['', 'take', 'of', 'amount', 'equivalents'],
    numeric: [1, 3, 4],
    rows: supplies.map((supply) => [
      supply.name,
      { quantity: supply.measure },
      takenOf(supply),
      { quantity: brief(supply.amount) },
      { quantity: brief(supply.excess.equivalents, 3) },
    ]),
  }
}

function takenOf({ taken, concentration, by }: PlannedSupply): Line {
  if (concentration === undefined) return by === 'weigh' ? [{ formula: taken }] : [{ formula: taken }, ', liquid']
  return [{ formula: taken }, ', ', { quantity: brief(concentration) }]
}

function stageStep({ name, equation, steps, clears }: PlannedStage): Step {
  const only: Line[] =
    clears === undefined ? [] : [['This only removes the ', { formula: clears }, ' left from before.']]
  return { line: [name, ':  ', { equation }], details: [...only, ...steps] }
}

/** Cooling, washing and drying, where the recipe says something of them. */
function finishing({ recipe }: Plan): readonly Block[] {
  const { crystallisation, washes = [], drying } = recipe
  const lines: Line[] = []
  if (crystallisation !== undefined) lines.push(`Cool to ${degrees(crystallisation.temperature)} and filter.`)
  for (const wash of washes) lines.push(`Wash with ${wash.portions ?? 1} × ${wash.volume} of ${wash.with}.`)
  if (drying !== undefined) lines.push(drying)
  return lines.length === 0 ? [] : [{ kind: 'notes', lines }]
}

function degrees(text: string): string {
  return text.replace('degC', '°C')
}

function expectations({ theoretical, limiting, supplies, leftovers, product, stages }: Plan): readonly Line[] {
  const names = supplies.filter(({ substance }) => limiting.includes(substance)).map(({ name }) => name)
  const gases = stages.flatMap((stage) => stage.gases)
  return [
    [
      'Theoretical yield: ',
      { quantity: brief(theoretical.mass) },
      ' of ',
      { formula: product.formula },
      ' (',
      { quantity: brief(theoretical.amount) },
      ' at ',
      { quantity: product.molarMass },
      ').',
    ],
    `Limited by: ${names.join(' and ') || 'nothing that is measured'}.`,
    ...gases.map(({ formula, amount }): Line => ['Gas: ', { quantity: brief(amount) }, ' of ', { formula }, '.']),
    ...leftovers.map(
      ({ formula, amount }): Line => ['Left in the liquor: ', { quantity: brief(amount, 3) }, ' of ', { formula }, '.'],
    ),
  ]
}

function findingBlocks({ findings }: Plan): readonly Block[] {
  if (findings.length === 0) return []
  return [
    { kind: 'heading', text: 'Look at' },
    { kind: 'notes', lines: findingLines(findings) },
  ]
}

function blanks({ supplies }: Plan): Extract<Block, { readonly kind: 'blanks' }>['fields'] {
  const taken = supplies.map(({ name, by }) => ({
    label: `${name}, ${by === 'weigh' ? 'mass' : 'volume'} taken`,
    unit: by === 'weigh' ? 'g' : 'mL',
  }))
  return [
    ...taken,
    { label: 'empty vial, with cap and label', unit: 'g' },
    { label: 'vial with dry product', unit: 'g' },
  ]
}

function provenance({ recipe, atomicWeights }: Plan): readonly Block[] {
  const lines: Line[] = [`Relative atomic masses: ${atomicWeights}.`]
  if (recipe.source !== undefined) lines.push(`Recipe: ${recipe.source}`)
  return [
    { kind: 'heading', text: 'Origin' },
    { kind: 'notes', lines: [...lines, ...(recipe.notes ?? [])] },
  ]
}
