import type { CoolingEstimate, Plan, PlannedStage, PlannedSupply, Portion } from '../preparation/index.js'
import type { GasVolume } from '../product/index.js'
import { brief, briefEquivalents } from './brief.js'
import { findingLines } from './finding-lines.js'
import { planKind, reportOf } from './guard.js'
import { nameAmong, namesOf, wordsAmong } from './name-of.js'
import { scalePieces } from './scale.js'
import type { Block, Line, Piece, Sheet, SheetFormat, Step } from './sheet.js'
import { stageNotes } from './stage-notes.js'
import { writeSheet } from './write-sheet.js'

/**
 * Writes the bench sheet of a plan: what to weigh and measure, what to do, what to expect, what to write down, and the cautions.
 *
 * @param plan - A plan.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"` (for the body of a document).
 * @returns The sheet, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`; `report/not-a-plan` for anything but a plan.
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
  return reportOf(planKind, plan, () => writeSheet(benchSheetOf(plan), format))
}

/** The bench sheet apart from how it is written. */
function benchSheetOf(plan: Plan): Sheet {
  const { recipe, scale } = plan
  return {
    title: recipe.title,
    subtitle: ['Bench sheet for ', ...scalePieces(plan, [' of ', { formula: scale.formula }])],
    blocks: [
      { kind: 'heading', text: 'Weigh and measure' },
      suppliesTable(plan),
      { kind: 'heading', text: 'Do' },
      { kind: 'steps', steps: plan.stages.map((stage, index) => stageStep(stage, plan.recipe, index)) },
      ...finishing(plan),
      { kind: 'heading', text: 'Expect' },
      { kind: 'notes', lines: expectations(plan) },
      ...findingBlocks(plan),
      { kind: 'heading', text: 'Write down' },
      { kind: 'blanks', fields: blanks(plan) },
      { kind: 'heading', text: 'Take care' },
      { kind: 'notes', lines: plan.cautions.map(({ message }) => message) },
      ...provenance(plan),
    ],
  }
}

function suppliesTable({ supplies, recipe }: Plan): Block {
  return {
    kind: 'table',
    head: ['', 'take', 'of', 'amount', 'equivalents'],
    numeric: [1, 3, 4],
    rows: [...supplies.map((supply) => supplyRow(supply, supplies)), ...asNeededRows(recipe), ...auxiliaryRows(recipe)],
  }
}

function supplyRow(supply: PlannedSupply, supplies: readonly PlannedSupply[]): readonly Line[] {
  return [
    nameAmong(supply, supplies),
    { quantity: supply.measure },
    takenOf(supply),
    { quantity: brief(supply.amount) },
    supply.excess === undefined ? 'not needed' : { quantity: briefEquivalents(supply.excess.equivalents) },
  ]
}

function asNeededRows({ supplies }: Plan['recipe']): readonly (readonly Line[])[] {
  return supplies.flatMap(({ form, name, substance }) =>
    form === 'unlimited' ? [[name ?? { formula: substance }, 'as needed', { formula: substance }, '', '']] : [],
  )
}

function auxiliaryRows({ auxiliaries = [] }: Plan['recipe']): readonly (readonly Line[])[] {
  return auxiliaries.map(({ name, amount }) => [name, amount, '', '', ''])
}

function takenOf({ taken, concentration, by, assay }: PlannedSupply): Line {
  const strength: readonly Piece[] = assay === undefined ? [] : [', ', { quantity: assay }]
  if (concentration === undefined) return [{ formula: taken }, ...strength, by === 'weigh' ? '' : ', liquid']
  return [{ formula: taken }, ', ', { quantity: brief(concentration) }]
}

function stageStep({ name, equation, steps, clears }: PlannedStage, { stages }: Plan['recipe'], index: number): Step {
  const { aliquot, removes = [] } = stages[index] as Plan['recipe']['stages'][number]
  return { line: [name, ':  ', { equation }], details: [...stageNotes({ clears, aliquot, removes }), ...steps] }
}

/** Cooling, washing and drying, where the recipe says something of them. */
function finishing({ recipe }: Plan): readonly Block[] {
  const { crystallisation, washes = [], drying } = recipe
  const lines: Line[] = []
  if (crystallisation !== undefined) {
    lines.push(...waterLines(crystallisation), `Cool to ${degrees(crystallisation.temperature)} and filter.`)
  }
  for (const wash of washes) lines.push(`Wash with ${wash.portions ?? 1} × ${wash.volume} of ${wash.with}.`)
  if (drying !== undefined) lines.push(drying)
  return lines.length === 0 ? [] : [{ kind: 'notes', lines }]
}

/** How much water the crop that is expected rests on: what there is of it, and what of that is boiled off. */
function waterLines({ water, evaporated }: NonNullable<Plan['recipe']['crystallisation']>): readonly Line[] {
  const there =
    water === undefined ? [] : [`See that the liquor holds ${water} of water in all, that of the solutions included.`]
  const off = evaporated === undefined ? [] : [`Evaporate ${evaporated} of water before it cools.`]
  return [...there, ...off]
}

function degrees(text: string): string {
  return text.replace('degC', '°C')
}

function expectations({ theoretical, limiting, supplies, leftovers, product, stages, cooling }: Plan): readonly Line[] {
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
    ['Limited by: ', ...namesOf(supplies, limiting), '.'],
    ...gases.map(gasLine),
    ...stages.flatMap(({ name, removed }) => removed.map((portion) => removedLine(name, portion))),
    ...coolingLines(cooling),
    ...leftovers.map(
      ({ formula, amount }): Line => [
        'Besides the product: ',
        { quantity: brief(amount, 3) },
        ' of ',
        { formula },
        '.',
      ],
    ),
  ]
}

function removedLine(stage: string, { formula, amount }: Portion): Line {
  return [`Taken away before "${stage}": `, { quantity: brief(amount, 3) }, ' of ', { formula }, '.']
}

function gasLine({ gas, amount, volume, temperature, pressure }: GasVolume): Line {
  return [
    'Gas: ',
    { quantity: brief(amount, 3) },
    ' of ',
    { formula: gas },
    ', about ',
    { quantity: brief(volume, 3) },
    ' at ',
    { quantity: temperature },
    ' and ',
    { quantity: pressure },
    '.',
  ]
}

function coolingLines(cooling: CoolingEstimate | undefined): readonly Line[] {
  if (cooling?.known !== true) return []
  const { crop, loss, notes } = cooling.expected
  const estimate: Line = [
    'Estimated crop from the solubility: ',
    { quantity: brief(crop, 3) },
    ', with ',
    { quantity: brief(loss, 3) },
    ' left in the liquor.',
  ]
  const { tooWarm } = cooling
  const warm: Line[] =
    tooWarm === undefined
      ? []
      : [['Filtering 5 K too warm would cost about ', { quantity: brief(tooWarm.lessBy, 2) }, '.']]
  return [
    estimate,
    ...warm,
    ...notes.filter(({ code }) => code === 'pure-water' || code === 'upper-estimate').map(({ message }) => message),
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
  const taken = supplies.map((supply) => {
    const [what, unit] = supply.by === 'weigh' ? ['mass', 'g'] : ['volume', 'mL']
    return { label: `${wordsAmong(supply, supplies)}, ${what} taken`, unit }
  })
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
