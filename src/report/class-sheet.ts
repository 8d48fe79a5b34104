import { deferral, generalCautions } from '../cautions/general-cautions.js'
import type { AidLine, ClassPlan, Plan, StoreLine } from '../preparation/index.js'
import { type Quantity, roundTo } from '../quantity/index.js'
import { brief } from './brief.js'
import { type Cell, csvOf } from './csv.js'
import { findingLines } from './finding-lines.js'
import { classPlanKind, reportOf } from './guard.js'
import { wordsAmong } from './name-of.js'
import { scalePieces } from './scale.js'
import type { Block, Line, Piece, Sheet, SheetFormat } from './sheet.js'
import { writeSheet } from './write-sheet.js'

/**
 * Writes the list for the preparation room: totals, spare, what to make and how, the benches, and the waste to expect.
 *
 * @param plan - The plan of a class.
 * @param format - `"text"` unless said, `"markdown"`, `"html"` (a fragment, escaped) or `"latex"`.
 * @returns The list, ending with a line break.
 * @throws {@link ReportError} `report/unknown-format`; `report/not-a-plan` for anything but the plan of a class.
 *
 * @example
 * ```ts
 * import { planClass, type Recipe } from 'saltwright/preparation'
 * import { preparationRoomSheet } from 'saltwright/report'
 *
 * const recipe: Recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * }
 * const plan = planClass(recipe, [{ name: 'Bench 1', scale: { amount: '0.0400 mol' } }])
 * preparationRoomSheet(plan).includes('Bench 1') // => true
 * ```
 */
export function preparationRoomSheet(plan: ClassPlan, format: SheetFormat = 'text'): string {
  return reportOf(classPlanKind, plan, () => writeSheet(sheetOf(plan), format))
}

/**
 * The benches of a class as comma-separated values for a spreadsheet: a row for each bench and supply, numbers and units apart.
 *
 * @param plan - The plan of a class.
 * @returns Text by RFC 4180; text that a spreadsheet would run as a formula is defused with an apostrophe.
 * @throws {@link ReportError} `report/not-a-plan` for anything but the plan of a class.
 * @source RFC 4180.
 *
 * @example
 * ```ts
 * import { planClass, type Recipe } from 'saltwright/preparation'
 * import { classCsv } from 'saltwright/report'
 *
 * const recipe: Recipe = {
 *   format: 'saltwright/recipe@1',
 *   title: 'Zinc sulfate heptahydrate',
 *   product: 'ZnSO4·7H2O',
 *   scale: { of: 'ZnO', amount: '0.0400 mol' },
 *   stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
 *   supplies: [
 *     { form: 'solid', substance: 'ZnO' },
 *     { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
 *   ],
 * }
 * const plan = planClass(recipe, [{ name: 'Bench 1', scale: { amount: '0.0400 mol' } }])
 * classCsv(plan).split('\r\n')[1] // => 'Bench 1,ZnO,ZnO,3.255,g,0.04,1,11.502'
 * ```
 */
export function classCsv(plan: ClassPlan): string {
  return reportOf(classPlanKind, plan, csvOfBenches)
}

function csvOfBenches({ benches }: ClassPlan): string {
  const head = ['bench', 'supply', 'taken as', 'take', 'unit', 'amount / mol', 'equivalents', 'theoretical yield / g']
  const rows = benches.flatMap(({ name, plan }) =>
    plan.supplies.map((supply): readonly Cell[] => [
      name,
      wordsAmong(supply, plan.supplies),
      supply.taken,
      supply.measure.value.toFixed(),
      supply.measure.unit,
      plainNumber(supply.amount, 4),
      supply.excess === undefined ? '' : plainNumber(supply.excess.equivalents, 4),
      plainNumber(plan.theoretical.mass, 5),
    ]),
  )
  return csvOf([head, ...rows])
}

function plainNumber(q: Quantity, figures: number): string {
  return roundTo(q, { figures }).value.toFixed()
}

function sheetOf(plan: ClassPlan): Sheet {
  const { title, benches, store, findings } = plan
  const look: Block[] = [
    { kind: 'heading', text: 'Look at' },
    { kind: 'notes', lines: findingLines(findings) },
  ]
  return {
    title,
    subtitle: `Preparation room list for ${benches.length} ${benches.length === 1 ? 'bench' : 'benches'}`,
    blocks: [
      { kind: 'heading', text: 'Get ready' },
      storeTable(plan),
      ...makingBlocks(store),
      { kind: 'heading', text: 'Benches' },
      benchTable(plan),
      ...(findings.length === 0 ? [] : look),
      { kind: 'heading', text: 'Waste to expect' },
      { kind: 'notes', lines: wasteLines(plan) },
      { kind: 'heading', text: 'Take care' },
      { kind: 'notes', lines: cautionLines(plan) },
    ],
  }
}

/** Every caution of any bench once, and what every list of cautions ends with. */
function cautionLines({ benches, store }: ClassPlan): readonly Line[] {
  const pours = store.some(({ making }) => making?.stockIntoWater === true)
  const concentrated = pours ? [generalCautions['acid-into-water'].text] : []
  return [...new Set([...concentrated, ...ofAnyBench(benches)]), deferral.text]
}

/** The cautions of one code about one thing: those of the bench that makes the most of those that have any, and what others say instead. */
interface Alike {
  readonly rank: number
  readonly messages: string[]
  readonly elsewhere: Set<string>
}

/** Every caution once: what differs by its numbers only, such as the volume of a gas, as at the bench that makes the most. */
function ofAnyBench(benches: ClassPlan['benches']): readonly string[] {
  const plans = benches.map(({ plan }) => plan).sort((a, b) => b.theoretical.amount.compare(a.theoretical.amount))
  const kinds = new Map<string, Alike>()
  for (const [rank, { cautions }] of plans.entries())
    for (const caution of cautions) if (caution.code !== 'deferral') addTo(kinds, rank, caution)
  return [...kinds.values()].flatMap(({ messages, elsewhere }) =>
    messages.map((message) =>
      elsewhere.size > 0 && !elsewhere.has(message) ? `${message} This is at the bench that makes the most.` : message,
    ),
  )
}

function addTo(kinds: Map<string, Alike>, rank: number, { code, about, message }: Plan['cautions'][number]): void {
  const key = `${code} ${about}`
  const known = kinds.get(key)
  if (known === undefined) kinds.set(key, { rank, messages: [message], elsewhere: new Set() })
  else if (known.rank === rank) known.messages.push(message)
  else known.elsewhere.add(message)
}

function storeTable({ store, aids, benches }: ClassPlan): Block {
  const names = storeNames(benches)
  return {
    kind: 'table',
    head: ['', 'of', 'benches need', 'with spare', 'get ready'],
    numeric: [2, 3, 4],
    rows: [
      ...store.map((line, index) => storeRow(line, names[index] as string, takenOf(line))),
      ...aids.map((line) => storeRow(line, line.name, '')),
    ],
  }
}

/** What the lines of the store are called, in their order, which is that of the recipe. */
function storeNames([first]: ClassPlan['benches']): readonly string[] {
  const supplies = [...(first as ClassPlan['benches'][number]).plan.supplies].sort((a, b) => a.index - b.index)
  return supplies.map((supply) => wordsAmong(supply, supplies))
}

function storeRow({ total, withSpare, toPrepare }: StoreLine | AidLine, name: string, of: Line): readonly Line[] {
  return [name, of, { quantity: brief(total) }, { quantity: brief(withSpare) }, { quantity: toPrepare }]
}

function takenOf({ taken, concentration }: StoreLine): Line {
  return concentration === undefined
    ? { formula: taken }
    : [{ formula: taken }, ', ', { quantity: brief(concentration) }]
}

function makingBlocks(store: readonly StoreLine[]): readonly Block[] {
  const lines = store.flatMap(({ name, making }): Line[] => {
    if (making === undefined) return []
    const how = making.stockIntoWater
      ? ': pour it slowly into most of the water, never the water into it, let it cool, then make up to '
      : ': dissolve in part of the water, then make up to '
    return [
      [
        `${name}: take `,
        { quantity: brief(making.take, 3) },
        ' of ',
        { formula: making.from },
        ...strengthOf(making),
        how,
        { quantity: brief(making.makeUpTo) },
        '.',
      ],
    ]
  })
  if (lines.length === 0) return []
  return [
    { kind: 'heading', text: 'Make up' },
    { kind: 'notes', lines },
  ]
}

/** The strength of what a solution is made from, as the recipe says it. */
function strengthOf({ strength }: NonNullable<StoreLine['making']>): readonly Piece[] {
  return strength.flatMap((quantity): Piece[] => [', ', { quantity: brief(quantity) }])
}

function benchTable({ benches }: ClassPlan): Block {
  const [first] = benches as readonly [ClassPlan['benches'][number]]
  const names = first.plan.supplies.map((supply, _, all) => wordsAmong(supply, all))
  return {
    kind: 'table',
    head: ['', 'scale', ...names, 'theoretical yield'],
    numeric: names.map((_, index) => index + 2).concat(1, names.length + 2),
    rows: benches.map(({ name, plan }) => [
      name,
      scalePieces(plan),
      ...plan.supplies.map(({ measure }): Line => ({ quantity: measure })),
      { quantity: brief(plan.theoretical.mass) },
    ]),
  }
}

function wasteLines({ waste, liquidWaste }: ClassPlan): readonly Line[] {
  const metals = waste.map(
    ({ metal, used, inLiquor }): Line => [
      `${metal}: up to `,
      { quantity: brief(used, 3) },
      ' if no crystals are recovered, at least ',
      { quantity: brief(inLiquor, 3) },
      '.',
    ],
  )
  return [
    ...metals,
    ['Solutions and liquids used, before water and washes: ', { quantity: brief(liquidWaste, 3) }, '.'],
  ]
}
