import { readdirSync, readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { type Equation, lowestTerms, netIonicEquation } from '../../src/equation/index.js'
import { formatFraction } from '../../src/fraction.js'
import {
  assessPreparation,
  type Plan,
  type PlannedSupply,
  planPreparation,
  type Recipe,
  type RecipeSupply,
} from '../../src/preparation/index.js'
import { exact, type Quantity } from '../../src/quantity/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import {
  type Printed,
  type PublishedPreparation,
  type PublishedSupply,
  type PublishedYield,
  preparations,
  type Replacement,
} from './data/preparations/published.js'
import { shownAs } from './shown-as.js'

const folder = new URL('data/preparations/', import.meta.url)

function recipeOf(name: string): Recipe {
  return JSON.parse(readFileSync(new URL(`${name}.json`, folder), 'utf8'))
}

const plans = new Map<string, Plan>()

/** The plan of a recipe, made once. */
function planOf(name: string): Plan {
  const plan = plans.get(name) ?? planPreparation(recipeOf(name))
  plans.set(name, plan)
  return plan
}

/** The plan with another supply in the place of the recipe's. */
function planWith(name: string, { of, ...other }: Replacement): Plan {
  const recipe = recipeOf(name)
  const replaced = (supply: RecipeSupply): RecipeSupply => {
    if (supply.substance !== of) return supply
    return (other.form === undefined ? { ...supply, ...other } : { substance: of, ...other }) as RecipeSupply
  }
  return planPreparation({ ...recipe, supplies: recipe.supplies.map(replaced) })
}

/** One row: what is printed, what the plan gives, and what it gives once the reason for a difference is put into it. */
function row(
  recipe: string,
  what: string,
  printed: Printed,
  ours: (plan: Plan, printed: string) => string,
): PublishedRow {
  if (typeof printed === 'string')
    return { at: recipe, what, published: printed, ours: () => ours(planOf(recipe), printed), agrees: true }
  const { printed: published, with: replacement, ...difference } = printed
  const explained = replacement && (() => ours(planWith(recipe, replacement), published))
  return {
    at: recipe,
    what,
    published,
    ours: () => ours(planOf(recipe), published),
    agrees: { ...difference, ...(explained && { explained }) },
  }
}

function supplyRows(recipe: string, { of, stage, need, ...printed }: PublishedSupply): readonly PublishedRow[] {
  const supplyIn = ({ supplies }: Plan): PlannedSupply => {
    const found = supplies.find((supply) => supply.substance === of && (stage === undefined || supply.stage === stage))
    if (found === undefined) throw new Error(`no ${of} in ${recipe}`)
    return found
  }
  const needOf = (supply: PlannedSupply): Quantity<'amount'> => (need === undefined ? supply.need : supply.naiveNeed)
  const basis = need === undefined ? '' : ' by the overall equation alone'
  return [
    row(recipe, `moles of ${of} taken`, printed.used, (plan, text) => shownAs(text, supplyIn(plan).amount)),
    row(recipe, `moles of ${of} needed${basis}`, printed.needed, (plan, text) => shownAs(text, needOf(supplyIn(plan)))),
    row(recipe, `equivalents of ${of}${basis}`, printed.equivalents, (plan, text) => {
      const supply = supplyIn(plan)
      return shownAs(text, supply.amount.dividedBy(needOf(supply)))
    }),
  ]
}

/** Both sides with their terms in the order of the alphabet. */
function sorted(equation: Equation): string {
  const side = (terms: Equation['left']): string =>
    terms
      .map(({ coefficient, formula, state }) => `${formatFraction(coefficient)} ${formula}(${state ?? ''})`)
      .sort()
      .join(' + ')
  return `${side(equation.left)} -> ${side(equation.right)}`
}

/** The overall equation as the text has it; of the ions where the recipe is of ions. */
function printedOverall(recipe: string, overall: string): Equation {
  return recipe.startsWith('barium-sulfate') ? netIonicEquation(overall) : lowestTerms(overall)
}

/** What the audit says to the claims of the sheet, in their order. */
function verdicts(recipe: string): string {
  const found = planOf(recipe).findings.filter(({ path }) => path[0] === 'claims')
  return found.map(({ code }) => code).join(', ')
}

function claimRows({ recipe, claimFails }: PublishedPreparation): readonly PublishedRow[] {
  const { claims = [] } = recipeOf(recipe)
  if (claims.length === 0) return []
  const published = claims.map(() => 'claim-holds').join(', ')
  const agrees = claimFails === undefined ? true : { ours: 'claim-does-not-hold', differs: claimFails }
  return [{ at: recipe, what: 'the verdict on what the sheet claims', published, ours: () => verdicts(recipe), agrees }]
}

/** The percent yield of a report, from its weighings; whatever the recipe has too little of is taken as enough. */
function percentYield(name: string, { from, obtained }: PublishedYield): Quantity<'ratio'> {
  const { claims: _, ...recipe } = recipeOf(name)
  const supplies = recipe.supplies.map((supply): RecipeSupply => {
    if (supply.form === 'unlimited' || supply.substance === from.of) return supply
    const { asPrinted, ...rest } = supply
    return rest as RecipeSupply
  })
  const scale = { of: from.of, mass: from.mass }
  return assessPreparation(
    { ...recipe, scale, supplies },
    {
      format: 'saltwright/records@1',
      supplies: [{ substance: from.of, mass: from.mass }],
      product: { mass: obtained },
    },
  ).percentYield
}

function yieldRow(recipe: string, stated: PublishedYield): PublishedRow {
  const what = `per cent yield of ${stated.obtained} from ${stated.from.mass} of ${stated.from.of}`
  return row(recipe, what, stated.stated, (_, text) => shownAs(text, percentYield(recipe, stated)))
}

function rowsOf(preparation: PublishedPreparation): readonly PublishedRow[] {
  const { recipe, overall, molarMass, theoretical, limiting, supplies = [], yields = [] } = preparation
  const rows: PublishedRow[] = []
  if (overall !== undefined)
    rows.push(
      row(recipe, 'the overall equation, terms sorted,', sorted(printedOverall(recipe, overall)), (plan) =>
        sorted(plan.overall),
      ),
    )
  if (molarMass !== undefined)
    rows.push(row(recipe, 'g/mol of the product', molarMass, (plan, text) => shownAs(text, plan.product.molarMass)))
  if (theoretical !== undefined)
    rows.push(
      row(recipe, 'moles of product at most', theoretical.amount, (plan, text) =>
        shownAs(text, plan.theoretical.amount),
      ),
      row(recipe, 'grams of product at most', theoretical.mass, (plan, text) => shownAs(text, plan.theoretical.mass)),
    )
  if (limiting !== undefined)
    rows.push(row(recipe, `limiting reagent by ${limiting.by}`, limiting.of, (plan) => plan.limiting.join(', ')))
  return [
    ...rows,
    ...supplies.flatMap((supply) => supplyRows(recipe, supply)),
    ...claimRows(preparation),
    ...yields.map((stated) => yieldRow(recipe, stated)),
  ]
}

for (const preparation of preparations) {
  const { title, source = '' } = recipeOf(preparation.recipe)
  checkPublished(`${title}. ${source}`, rowsOf(preparation))
}

describe('the recipes of published preparations', () => {
  const names = readdirSync(folder)
    .filter((file) => file.endsWith('.json'))
    .map((file) => file.slice(0, -'.json'.length))

  it('are of 21 preparations, and some of them in variants', () => {
    expect(preparations.filter(({ overall }) => overall !== undefined)).toHaveLength(21)
    expect(names).toEqual(expect.arrayContaining(preparations.map(({ recipe }) => recipe)))
  })

  it.each(names)('%s says where it is from', (name) => expect(recipeOf(name).source).toBeTruthy())

  it.each(names)('%s runs and comes back the same from its JSON', (name) => {
    const text = JSON.stringify(planOf(name))
    expect(JSON.stringify(planPreparation(JSON.parse(text).recipe))).toBe(text)
  })

  it.each([
    { name: 'potassium-aluminium-sulfate-dodecahydrate-from-aluminium', acid: '0.01647 mol' },
    { name: 'potassium-aluminium-sulfate-dodecahydrate-from-aluminium-3-molar', acid: '0.01897 mol' },
  ])('$name: the alkali that is left takes $acid of the acid', ({ name, acid }) => {
    const cleared = planOf(name).findings.find(({ code }) => code === 'alkali-or-acid-cleared')
    expect(shownAs('0.00001', cleared?.numbers.difference as Quantity)).toBe(acid.split(' ')[0])
  })

  it('copper cycle: the acid that is left needs more zinc than there is, after the copper is out', () => {
    const plan = planOf('copper-cycle-through-nitrate-hydroxide-oxide-and-sulfate')
    const zinc = plan.supplies.find(({ substance }) => substance === 'Zn') as PlannedSupply
    expect(shownAs('0.001', zinc.need.minus(zinc.naiveNeed))).toBe('0.082')
    expect(plan.findings.map(({ code }) => code)).toContain('supply-short')
    expect(plan.theoretical.mass.equals(exact('0.5 g'))).toBe(true)
    expect(plan.leftovers.map(({ formula }) => formula)).not.toContain('NaOH')
  })

  it('ammonium iron(II) sulfate from iron: the carbonate has no acid left to take up', () => {
    const plan = planOf('ammonium-iron-ii-sulfate-hexahydrate-from-iron')
    const carbonate = plan.supplies.find(({ substance }) => substance === 'FeCO3') as PlannedSupply
    expect(carbonate.excess).toBeUndefined()
    expect(plan.findings.map(({ code }) => code)).toEqual(['supply-not-needed'])
  })

  it('potassium trioxalatoferrate(III): the double salt and the oxalate are practically equal at the 5.00 g scale only', () => {
    const codes = (name: string): readonly string[] => planOf(name).findings.map(({ code }) => code)
    expect(codes('potassium-trioxalatoferrate-iii-trihydrate-from-mohrs-salt')).toContain('practically-equal')
    expect(codes('potassium-trioxalatoferrate-iii-trihydrate-from-mohrs-salt-7-5-g')).not.toContain('practically-equal')
  })
})
