import { assessPreparation, type Recipe } from 'saltwright/preparation'
import { lossAccount, percentYield } from 'saltwright/product'
import { asDimension, quantity, sum, uncertaintyBudget } from 'saltwright/quantity'
import {
  dryingPicture,
  lossPicture,
  type Picture,
  solubilityPicture,
  uncertaintyPicture,
  yieldsPicture,
} from 'saltwright/report'
import { theoreticalYield } from 'saltwright/stoichiometry'
import { parse, View } from 'vega'
import { compile, type TopLevelSpec } from 'vega-lite'
import { describe, expect, it } from 'vitest'
import { coolingPath } from '../../src/report/cooling-path.js'
import { pictureOf } from '../../src/report/picture.js'

const batch = { crystal: 'ZnSO4·7H2O', amount: '0.0400 mol', water: '17 g', evaporated: '6 g' } as const

/** The recipe and the benches are invented. */
const recipe: Recipe = {
  format: 'saltwright/recipe@1',
  title: 'Zinc sulfate heptahydrate',
  product: 'ZnSO4·7H2O',
  scale: { of: 'ZnO', amount: '0.0400 mol' },
  stages: [{ name: 'Dissolve and crystallise', equation: 'ZnO + H2SO4 + 6H2O -> ZnSO4·7H2O' }],
  supplies: [
    { form: 'solid', substance: 'ZnO' },
    { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
  ],
}
const crops = ['7.412 g', '8.101 g', '6.955 g', '7.730 g', '11.784 g', '5.218 g']
const assessments = crops.map((mass, index) =>
  assessPreparation(recipe, { format: 'saltwright/records@1', bench: `Bench ${index + 1}`, product: { mass } }),
)

const step = { readability: '0.001 g' }
const crop = quantity('18.616 g', { uncertainty: step, label: 'vial with crystals' }).minus(
  quantity('11.204 g', { uncertainty: step, label: 'empty vial' }),
)
const oxide = quantity('3.272 g', { uncertainty: [step, step], label: 'zinc oxide' })
const possible = theoreticalYield('ZnO + H2SO4 + 6 H2O -> ZnSO4·7H2O', 'ZnSO4·7H2O', { ZnO: oxide })

const pictures: Readonly<Record<string, Picture>> = {
  solubility: solubilityPicture({ ...batch, from: '60 degC', temperature: '5 degC' }),
  loss: lossPicture(lossAccount({ theoretical: '11.56 g', recovered: '7.412 g', leftInLiquor: '3.54 g' })),
  drying: dryingPicture({ weighings: ['18.771 g', '18.618 g', '18.616 g'], criterion: 'two-milligrams' }),
  uncertainty: uncertaintyPicture(uncertaintyBudget(percentYield(crop, possible.mass))),
  yields: yieldsPicture(assessments),
}

/** As the guide shows it; places are given to a thousandth, for the last digits of a double differ between runs. */
async function drawn(picture: Picture): Promise<string> {
  const view = new View(parse(compile(picture as unknown as TopLevelSpec).spec), { renderer: 'none' })
  return (await view.toSVG()).replace(/\d+\.\d{4,}/g, (number) => String(Number(Number(number).toFixed(3))))
}

describe.each(Object.entries(pictures))('the picture of %s', (name, picture) => {
  it('is plain data', () => expect(JSON.parse(JSON.stringify(picture))).toEqual(picture))

  it('is drawn as the guide shows it', async () => {
    await expect(`${await drawn(picture)}\n`).toMatchFileSnapshot(`../../docs/guides/pictures/${name}.svg`)
  })

  it('says in words what it shows', () => expect(picture.description).toMatch(/\d.*\.$/))

  it('draws no number that is none', () => expect(JSON.stringify(picture)).not.toContain('null,null'))
})

describe('what a picture says', () => {
  it('of drying: readings that rose, given as quantities', () => {
    const weighings = [quantity('18.616 g'), quantity('18.640 g')]
    const picture = dryingPicture({ weighings, criterion: 'analytical-balance' })
    expect(picture.title.text).toBe('Not yet at constant mass')
    expect(picture.description).toContain('differ by 0.024 g, allowed is 0.3 mg: not constant, still rising.')
  })

  it('of uncertainty: inputs and results without a name', () => {
    const picture = uncertaintyPicture(uncertaintyBudget(quantity('7.412(2) g').plus(quantity('1.000(1) g'))))
    expect(picture.title.subtitle).toEqual(['result: 8.4120(22) g'])
    expect(picture.description).toContain('input 1 80 %; input 2 20 %.')
  })

  it('of uncertainty: the one that was worked out, whatever it takes for what is not stated', () => {
    const budget = uncertaintyBudget(quantity('7.412 g'), { unstated: 'last-digit' })
    expect(uncertaintyPicture(budget).title.subtitle).toEqual(['result: 7.4120(10) g'])
  })

  it('of uncertainty: the twelve largest inputs, shares below one per cent to a tenth', () => {
    const inputs = ['3.0', ...Array(13).fill('0.1')].map((size) => quantity(`10.0(${size}) g` as '10.0(0.1) g'))
    // 9 / (9 + 13 × 0.01) and 0.01 / 9.13
    const shown = sum(inputs.map((input) => asDimension(input, 'mass')))
    const { description } = uncertaintyPicture(uncertaintyBudget(shown))
    expect(description).toContain('input 1 99 %; input 2 0.1 %;')
    expect(description.match(/input/g)).toHaveLength(12)
  })

  it('in lines of a heading, no longer than ninety characters unless a word is', () => {
    const linesOf = (...lengths: readonly number[]) => {
      const text = lengths.map((length) => 'x'.repeat(length)).join(' ')
      return pictureOf({ title: '', subtitle: [text, 'more'], description: '' }, {}).title.subtitle.map(
        (line) => line.length,
      )
    }
    expect(linesOf(44, 45, 10)).toEqual([90, 10, 4])
    expect(linesOf(44, 46)).toEqual([44, 46, 4])
    expect(linesOf(100, 100)).toEqual([100, 100, 4])
    expect(pictureOf({ title: '', description: '' }, {}).title.subtitle).toEqual([])
  })

  it('of a class: benches without a name are numbered', () => {
    const unnamed = assessPreparation(recipe, { format: 'saltwright/records@1', product: { mass: '7.412 g' } })
    expect(yieldsPicture([unnamed]).description).toBe('Percent yields: Bench 1 64.44 %.')
  })

  it('of cooling: from the highest temperature of a table of one’s own', () => {
    const table = {
      salt: 'KNO3',
      name: 'potassium nitrate',
      per: '100 g of water',
      source: 'Invented for this test',
      phases: [{ crystal: 'KNO3', celsius: [0, 20, 40], printed: ['13.0', '32.0', '64.0'] }],
    } as const
    const picture = solubilityPicture({
      crystal: 'KNO3',
      dissolved: '20 g',
      water: '40 g',
      temperature: '0 degC',
      table,
    })
    expect(picture.description).toContain('Cooled from 40 °C to 0 °C')
    expect(picture.title.subtitle).toEqual(['Solubilities in pure water: Invented for this test'])
  })

  it('of cooling: all solubilities of the built-in table unless told where it begins', () => {
    const picture = solubilityPicture({ ...batch, temperature: '5 degC' })
    expect(picture.description).toContain('Cooled from 100 °C to 5 °C')
  })
})

describe('what cannot be drawn is refused', () => {
  const account = lossAccount({ theoretical: '11.56 g', recovered: '7.412 g' })
  const budget = uncertaintyBudget(crop)
  const withShare = (share: number) => ({
    ...budget,
    contributions: budget.contributions.map((each) => ({ ...each, share })),
  })

  it.each([
    ['an account that is none', () => lossPicture([])],
    ['an account of something else', () => lossPicture('losses' as never)],
    ['a budget without contributions', () => uncertaintyPicture({ contributions: [] } as never)],
    ['no budget', () => uncertaintyPicture(undefined as never)],
    ['a budget with a hole', () => uncertaintyPicture({ ...budget, contributions: new Array(1) })],
    ['a budget of something else', () => uncertaintyPicture({ ...budget, contributions: [{ share: 1 }] as never })],
    ['a share that is none', () => uncertaintyPicture(withShare(Number.NaN))],
    ['a share that is text', () => uncertaintyPicture(withShare('1' as never))],
    ['a line that is none', () => lossPicture([...account, null] as never)],
    ['a line without a name', () => lossPicture([...account, { ...account[1], item: Number.NaN }] as never)],
    ['a bench without a name', () => yieldsPicture([{ ...assessments[0], bench: {} }] as never)],
    ['a line of no known kind', () => lossPicture([...account, { ...account[1], kind: 'guess' }] as never)],
    ['a share of losses that is none', () => lossPicture([...account, { ...account[1], share: 5 }] as never)],
    ['a heading that is none', () => yieldsPicture([{ ...assessments[0], title: 5 }] as never)],
    ['findings that are none', () => yieldsPicture([{ ...assessments[0], findings: 5 }] as never)],
    ['no assessments', () => yieldsPicture([])],
    ['assessments that are none', () => yieldsPicture([{}, null] as never)],
    ['a list with holes', () => yieldsPicture(new Array(3) as never)],
    ['one assessment in place of a list', () => yieldsPicture(assessments[0] as never)],
  ])('%s', (_, draw) => {
    expect(draw).toThrow(expect.objectContaining({ code: 'report/nothing-to-show' }))
  })

  it('a series of one weighing, in the words of the one who judges it', () => {
    const draw = () => dryingPicture({ weighings: ['18.771 g'], criterion: 'analytical-balance' })
    expect(draw).toThrow(expect.objectContaining({ code: 'product/too-few-weighings' }))
  })
})

describe('the path of a liquor that cools', () => {
  const curve = [
    { celsius: 60, grams: 80 },
    { celsius: 40, grams: 60 },
    { celsius: 20, grams: 40 },
  ]

  it.each([
    [
      'is level until it meets the curve, then follows it',
      70,
      [
        [60, 70],
        [50, 70],
        [40, 60],
        [20, 40],
      ],
    ],
    [
      'drops onto the curve where it holds too much at the start',
      90,
      [
        [60, 90],
        [60, 80],
        [40, 60],
        [20, 40],
      ],
    ],
    [
      'stays level where nothing crystallises',
      30,
      [
        [60, 30],
        [20, 30],
      ],
    ],
    [
      'meets the curve in a tabulated point',
      60,
      [
        [60, 60],
        [40, 60],
        [20, 40],
      ],
    ],
  ])('%s', (_, grams, corners) => {
    expect(coolingPath(grams, curve).map((point) => [point.celsius, point.grams])).toEqual(corners)
  })
})
