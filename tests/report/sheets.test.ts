import { assessPreparation, planClass, planPreparation, type Recipe } from 'saltwright/preparation'
import { exact, type Quantity, quantity } from 'saltwright/quantity'
import { assessmentSheet, benchSheet, classCsv, preparationRoomSheet, type SheetFormat } from 'saltwright/report'
import { describe, expect, it } from 'vitest'
import { quantityText } from '../../src/report/sheet.js'
import { alum, doubleSaltAsPrinted, zincSulfate } from '../preparation/recipes.js'
import { halfOfIt, normal, oxalate } from '../review/recipes.js'

const formats = ['text', 'markdown', 'html', 'latex'] as const satisfies readonly SheetFormat[]
const records = {
  format: 'saltwright/records@1',
  bench: 'Bench 1',
  notes: ['Invented.'],
  supplies: [{ substance: 'ZnO', mass: '3.255 g' }],
  product: { gross: '20.317 g', tare: '11.204 g', purity: '98.0 %' },
} as const

/** A bench sheet in one line. */
function textOf(recipe: Recipe): string {
  return benchSheet(planPreparation(recipe)).replaceAll(/\s+/g, ' ')
}

/** Words that a recipe might bring and that no format may take for markup. */
const hostileWords = '<script>alert(1)</script> & 50 % _x_ $y$ | # \\cmd{z} ^~'
const hostile: Recipe = {
  ...zincSulfate,
  title: hostileWords,
  source: hostileWords,
  drying: hostileWords,
  stages: [
    { name: hostileWords, equation: 'ZnO + H2SO4 -> ZnSO4 + H2O', steps: [hostileWords] },
    { name: 'crystallise', equation: 'ZnSO4 + 7H2O -> ZnSO4·7H2O' },
  ],
}

describe('a bench sheet', () => {
  const full: Recipe = {
    ...zincSulfate,
    supplies: [
      { form: 'solid', substance: 'ZnO', name: 'zinc oxide', assay: '99.5 %' },
      { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', excessFactor: '1.10' },
    ],
    source: 'Invented.',
    notes: ['For the tests.'],
    crystallisation: { temperature: '5 degC', water: '8 mL' },
    washes: [
      { with: 'cold ethanol', volume: '3 mL', portions: 3, substance: 'C2H6O' },
      { with: 'cold water', volume: '2 mL' },
    ],
    drying: 'Draw air through.',
  }
  const lines = benchSheet(planPreparation(full)).split('\n')

  it.each([
    'Zinc sulfate heptahydrate',
    'Bench sheet for 0.0400 mol of ZnSO₄·7H₂O',
    'zinc oxide  3.272 g  ZnO, 99.5 %        0.04000 mol         1.00',
    'H₂SO₄       14.7 mL  H₂SO₄, 3.00 mol/L  0.04400 mol         1.10',
    '1. dissolve:  ZnO + H₂SO₄ → ZnSO₄ + H₂O',
    '- Cool to 5 °C and filter.',
    '- Wash with 3 × 3 mL of cold ethanol.',
    '- Wash with 1 × 2 mL of cold water.',
    '- Draw air through.',
    '- Theoretical yield: 11.50 g of ZnSO₄·7H₂O (0.04000 mol at 287.54 g/mol).',
    '- Limited by: zinc oxide.',
    '- Besides the product: 0.00400 mol of H₂SO₄.',
    'zinc oxide, mass taken          ______________ g',
    '- Relative atomic masses: abridged.',
    '- Recipe: Invented.',
    '- For the tests.',
  ])('has the line "%s"', (line) => expect(lines).toContain(line))

  it('keeps within 80 characters', () => {
    expect(lines.filter((line) => [...line].length > 80)).toEqual([])
  })

  it('shows what is taken as needed, by name or by formula, and a crop without a warmer table', () => {
    const supplies: Recipe['supplies'] = [...zincSulfate.supplies, { form: 'unlimited', substance: 'H2O' }]
    const sheet = benchSheet(
      planPreparation({ ...zincSulfate, supplies, crystallisation: { temperature: '28 degC', water: '8 mL' } }),
    )
    expect(sheet).toMatch(/H₂O +as needed +H₂O/)
    expect(sheet).toContain('Estimated crop from the solubility')
    expect(sheet).not.toContain('too warm')
  })

  it('names no source where the recipe has none', () => {
    expect(benchSheet(planPreparation(zincSulfate))).not.toContain('Recipe:')
  })

  it('names all that limit', () => {
    const limiting = ['ZnO', 'H2SO4']
    const plan = { ...planPreparation(zincSulfate), limiting }
    expect(benchSheet(plan)).toContain('- Limited by: zinc oxide and sulfuric acid.')
    const assessment = { ...assessPreparation(zincSulfate, records), limiting }
    expect(assessmentSheet(assessment)).toContain('follows from zinc oxide and sulfuric acid.')
  })

  it('gives the numbers behind what is to be looked at', () => {
    const [oxide, acid] = zincSulfate.supplies
    const even = { ...zincSulfate, supplies: [oxide!, { ...acid!, excessFactor: '1' }] } as Recipe
    const sheet = benchSheet(planPreparation(even)).replaceAll(/\s+/g, ' ')
    expect(sheet).toContain('H2SO4 is within 1 % of limiting as well. (equivalents 1.00, excess 0 %)')
  })

  it('ends its cautions by deferring to those who decide on the spot', () => {
    expect(planPreparation(full).cautions.at(-1)?.code).toBe('deferral')
    expect(lines.join(' ').replaceAll(/\s+/g, ' ')).toContain('qualified supervision')
  })

  it('says in its place what share goes on, before what is taken away, before the steps', () => {
    const [dissolve, neutralise] = halfOfIt.stages
    const washed = { ...neutralise!, removes: ['H2', 'KOH'], clears: undefined, steps: ['Stir.'] }
    const removing = [dissolve, { ...washed, equation: 'K[Al(OH)4] + H2SO4 -> KAl(OH)2SO4 + 2H2O' }]
    const recipe = {
      ...halfOfIt,
      product: 'KAl(OH)2SO4',
      scale: { of: 'KAl(OH)2SO4', amount: '0.0100 mol' },
      stages: removing,
    } as unknown as Recipe
    expect(textOf(recipe)).toContain(
      'Take 0.5 of the solution on; the rest takes no part from here. Before anything goes in, take away H₂ and KOH. Stir.',
    )
    expect(textOf(halfOfIt)).toMatch(/2\. Neutralise: .* Take 0\.5 of the solution on; .* This only removes the KOH/)
    expect(textOf(zincSulfate)).not.toMatch(/goes? on|take away/i)
  })

  it('shows one number in one way', () => {
    const sheet = benchSheet(planPreparation(oxalate))
    expect(sheet).toMatch(/H₂C₂O₄, 1\.50 mol\/L +0\.01250 mol +1\.00\n/)
    expect(sheet).not.toContain('1.000')
    const gas = benchSheet(planPreparation(normal))
    expect(gas.match(/0\.0498 mol/g)).toHaveLength(2) // under what to expect, and in the caution
  })

  it('lists what is taken away with commas, and says before which stage', () => {
    const stages = oxalate.stages.map((stage) =>
      stage.name === 'Oxidise' ? { ...stage, removes: ['H2SO4', '(NH4)2SO4', 'H2C2O4'] } : stage,
    )
    const sheet = textOf({ ...oxalate, stages })
    expect(sheet).toContain('2. Oxidise: 6 FeC₂O₄ + 3 H₂O₂ + 6 K₂C₂O₄ → 4 K₃[Fe(C₂O₄)₃] + 2 Fe(OH)₃ Before anything')
    expect(sheet).toContain('Before anything goes in, take away H₂SO₄, (NH₄)₂SO₄ and H₂C₂O₄.')
    expect(sheet).toContain('- Taken away before "Oxidise": 0.0250 mol of H₂SO₄.')
  })

  it('asks for the water that the expected crop rests on', () => {
    expect(textOf(normal)).toContain(
      '- See that the liquor holds 27 g of water in all, that of the solutions included. - Evaporate 15 g of water before it cools. - Cool to 10 °C',
    )
    const { water: _, ...dry } = normal.crystallisation!
    expect(textOf({ ...normal, crystallisation: dry })).toContain('- Evaporate 15 g of water before it cools. - Cool')
    expect(textOf({ ...normal, crystallisation: dry })).not.toContain('See that')
    const wet = { ...normal, crystallisation: { temperature: '10 degC', water: '12 mL' } }
    expect(textOf(wet)).toContain('holds 12 mL of water in all, that of the solutions included. - Cool to 10 °C')
  })

  it('shows gas, what only clears a leftover, a pure liquid, and notes', () => {
    const sheet = benchSheet(planPreparation(alum))
    expect(sheet).toContain('- Gas: 0.0375 mol of H₂, about 0.930 L at 25 °C and 100 kPa.')
    expect(sheet).toContain('This only removes the KOH left from before.')
    expect(sheet).toContain('- Note: Part of the H2SO4 first removes')
    const liquid = {
      ...zincSulfate,
      supplies: [zincSulfate.supplies[0], { form: 'liquid', substance: 'H2SO4', density: '1.84 g/mL' }],
    }
    expect(benchSheet(planPreparation(liquid as Recipe))).toContain('H₂SO₄, liquid')
  })
})

describe('the scale', () => {
  it('heads a sheet as it was chosen, with the amount beside a mass', () => {
    expect(benchSheet(planPreparation(normal)).split('\n')[1]).toBe('Bench sheet for 4.20 g of MgCO₃ (0.04981 mol)')
    expect(benchSheet(planPreparation(zincSulfate)).split('\n')[1]).toBe('Bench sheet for 0.0400 mol of ZnSO₄·7H₂O')
    expect(benchSheet(planPreparation(doubleSaltAsPrinted)).split('\n')[1]).toBe(
      'Bench sheet for 0.05000 mol of (NH₄)₂Fe(SO₄)₂·6H₂O', // 13.9 g of the heptahydrate, 278.0 g/mol
    )
  })

  it('stands so for each bench of a class', () => {
    const benches = [
      { name: 'Bench 1', scale: { mass: '4.20 g' } },
      { name: 'Bench 2', scale: { amount: '0.0400 mol' } },
    ] as const
    const sheet = preparationRoomSheet(planClass(normal, benches))
    expect(sheet).toMatch(/^Bench 1 +4\.20 g \(0\.04981 mol\)/m)
    expect(sheet).toMatch(/^Bench 2 +0\.0400 mol /m)
  })
})

describe('the cautions of a class', () => {
  const cautionsOf = (...masses: readonly string[]): string => {
    const benches = masses.map((mass, index) => ({ name: `Bench ${index + 1}`, scale: { mass } }))
    return preparationRoomSheet(planClass(normal, benches)).split('Take care')[1]!.replaceAll(/\s+/g, ' ')
  }

  it('stand once, a gas with the volume of the bench that makes the most', () => {
    const cautions = cautionsOf('2.20 g', '4.20 g', '3.20 g')
    expect(cautions.match(/CO2, /g)).toHaveLength(1)
    // 4.20 g / 84.313 g/mol = 0.0498 mol
    expect(cautions).toMatch(/CO2, 0\.0498 mol, [^:]*: A gas is evolved.* This is at the bench that makes the most\./)
  })

  it('lose none that only a smaller bench has', () => {
    const list = planClass(normal, [
      { name: 'Bench 1', scale: { mass: '4.20 g' } },
      { name: 'Bench 2', scale: { mass: '2.20 g' } },
    ])
    const [most, other] = list.benches as readonly [(typeof list.benches)[0], (typeof list.benches)[0]]
    const own = { ...other.plan.cautions[0]!, code: 'hydrogen', message: 'Only Bench 2 makes hydrogen.' } as const
    const plan = { ...other.plan, cautions: [own, ...other.plan.cautions] }
    const sheet = preparationRoomSheet({ ...list, benches: [most, { ...other, plan }] })
    expect(sheet).toContain('Only Bench 2 makes hydrogen.')
  })

  it('say nothing of the most where all make as much, or there is one bench', () => {
    for (const cautions of [cautionsOf('4.20 g', '4.20 g'), cautionsOf('4.20 g')]) {
      expect(cautions.match(/CO2, /g)).toHaveLength(1)
      expect(cautions).not.toContain('makes the most')
    }
  })
})

describe('a substance that goes in twice', () => {
  const plan = planPreparation(oxalate)

  it('is told apart by its stage on the bench sheet, where others are not', () => {
    const sheet = benchSheet(plan)
    expect(sheet).toMatch(/^H₂C₂O₄ \(Precipitate\) +27\.5 mL/m)
    expect(sheet).toMatch(/^H₂C₂O₄ \(Dissolve\) +8\.3 mL/m)
    expect(sheet).toMatch(/^K₂C₂O₄ {2,}8\.288 g/m)
    expect(sheet).toMatch(/^H2C2O4 \(Precipitate\), volume taken/m)
    expect(sheet).toMatch(/^H2C2O4 \(Dissolve\), volume taken/m)
    expect(sheet).toMatch(/^H2O2, volume taken/m)
  })

  it('by its stage in an assessment and on the lists of a class', () => {
    const used = assessmentSheet(assessPreparation(plan, { ...records, supplies: [] }))
    expect(used).toMatch(/^H₂C₂O₄ \(Precipitate\) .*\nK₂C₂O₄ .*\nH₂O₂ .*\nH₂C₂O₄ \(Dissolve\) /m)
    const room = planClass(oxalate, [{ name: 'Bench 1', scale: { mass: '9.80 g' } }])
    const sheet = preparationRoomSheet(room)
    expect(sheet).toMatch(/^H2C2O4 \(Dissolve\) +H₂C₂O₄, 1\.50 mol\/L/m)
    expect(sheet).toMatch(/scale +\(NH4\)2Fe\(SO4\)2·6H2O +H2C2O4 \(Precipitate\) +K2C2O4 +H2O2 +H2C2O4 \(Dissolve\)/)
    expect(classCsv(room)).toContain('Bench 1,H2C2O4 (Dissolve),H2C2O4,8.3,mL')
  })

  it('in the order of the recipe on the list of the store, whatever goes in first', () => {
    const late = { ...oxalate, supplies: [...oxalate.supplies].reverse() }
    const sheet = preparationRoomSheet(planClass(late, [{ name: 'Bench 1', scale: { mass: '9.80 g' } }]))
    expect(sheet).toMatch(/^H2C2O4 \(Dissolve\) +H₂C₂O₄, 1\.50 mol\/L/m)
    expect(sheet).toMatch(/^H2C2O4 \(Precipitate\) +H₂C₂O₄, 1\.00 mol\/L/m)
  })

  it('limits once', () => {
    const [salt, first, oxide, peroxide, second] = oxalate.supplies
    const short = { ...oxalate, supplies: [salt!, { ...first!, excessFactor: '0.5' }, oxide!, peroxide!, second!] }
    expect(benchSheet(planPreparation(short as Recipe))).toMatch(/^- Limited by: H₂C₂O₄\.$/m)
  })
})

describe('an assessment sheet', () => {
  const assessment = assessPreparation(zincSulfate, records)

  it.each([
    'Assessment of Bench 1: ZnSO₄·7H₂O',
    'theoretical           11.50 g  0.04000 mol',
    'obtained              9.113 g  0.03169 mol',
    '- Invented.',
  ])('has the line "%s"', (line) => expect(assessmentSheet(assessment).split('\n')).toContain(line))

  it('shows a recorded mass with all its digits, and one number in one way', () => {
    const supplies = [{ substance: 'MgCO3', gross: '14.1412 g', tare: '10.0000 g' }] as const
    const sheet = assessmentSheet(
      assessPreparation(normal, { ...records, supplies, product: { gross: '23.3000 g', tare: '11.204 g' } }),
    )
    // 4.1412 g · 246.47 / 84.313 = 12.106 g; 12.096 g of it are 99.92 %
    expect(sheet).toMatch(/^MgCO₃ +4\.1412 g /m)
    expect(sheet.match(/12\.096 g/g)).toHaveLength(2)
    expect(sheet.match(/12\.106 g/g)).toHaveLength(2)
    expect(sheet.match(/99\.920 %/g)).toHaveLength(2)
    expect(sheet).not.toMatch(/12\.1[01]? g|99\.92? %/)
  })

  it('says in findings and explanations what stands in the tables', () => {
    const over = assessPreparation(normal, { ...records, supplies: [], product: { mass: '12.9876 g' } })
    const sheet = assessmentSheet(over)
    expect(sheet.match(/12\.9876 g/g)).toHaveLength(3) // obtained, recovered, and where the yield is over 100 %
    expect(sheet).not.toMatch(/12\.99 g/)
  })

  it('of a balance in whole grams shows no number as nothing, and no yield over 100 % as less', () => {
    // 4 g of carbonate can give 4 · 246.47 / 84.313 = 11.69 g; 13 g are 111 %
    const supplies = [{ substance: 'MgCO3', gross: '30 g', tare: '26 g' }] as const
    const sheet = assessmentSheet(
      assessPreparation(normal, { ...records, supplies, product: { gross: '120 g', tare: '107 g' } }),
    )
    for (const row of [
      /^MgCO₃ +4 g +0\.05 mol/m,
      /^theoretical +12 g /m,
      /^obtained +13 g /m,
      /^percent yield +110 %$/m,
      /percent yield\s+110 %/,
    ])
      expect(sheet).toMatch(row)
    expect(sheet).not.toMatch(/ -?0 (g|%)/)
  })

  it.each([
    { q: quantity('30 g').minus(quantity('26 g')), is: '4 g' }, // rounds to no tens
    { q: quantity('30 g').minus(quantity('30 g')), is: '0 g' },
    { q: quantity('1.0').minus(exact('1.003')).to('%'), is: '-0.3 %' },
    { q: quantity('111 %').times(quantity('1')), is: '110 %' },
    { q: quantity('12345 g').times(quantity('1.000')), is: '12340 g' }, // to the even neighbour
    { q: quantity('2.50e3 mL'), is: '2500 mL' },
    { q: quantity('250 mL'), is: '250 mL' },
    { q: quantity('100. mL'), is: '100 mL' },
    { q: exact('100 g'), is: '100 g' },
    { q: quantity('2e3'), is: '2000' },
    { q: quantity('4 g').times(quantity('0.5')), is: '2 g' },
  ])('writes $q as $is', ({ q, is }) => expect(quantityText({ quantity: q as Quantity })).toBe(is))

  it('says what to look at, the gravest first', () => {
    const over = assessPreparation(zincSulfate, { ...records, supplies: [], product: { mass: '12.62 g' } })
    const sheet = assessmentSheet(over)
    expect(sheet.indexOf('Problem: The yield is over 100 %')).toBeGreaterThan(0)
    expect(sheet.indexOf('Problem:')).toBeLessThan(sheet.indexOf('Note:'))
  })

  it('tells what the numbers speak for from what they do not exclude', () => {
    const product = { series: ['24.20 g', '23.82 g'], tare: '11.204 g', constancy: 'school-balance' } as const
    const sheet = assessmentSheet(assessPreparation(zincSulfate, { ...records, product }))
    expect(sheet).toContain('- The numbers speak for it: The mass was falling')
    expect(sheet).toContain('- Possible: ')
    expect(sheet).toContain('left in liquor  not known')
  })

  it('counts what cooling leaves in the liquor as an estimate', () => {
    const cooled = { ...zincSulfate, crystallisation: { temperature: '5 degC', water: '8 mL' } }
    expect(assessmentSheet(assessPreparation(cooled, records))).toMatch(/left in liquor +3\.54 g +30\.7 % +estimate/)
  })

  it('does without a bench', () => {
    const { bench: _, ...nobody } = records
    expect(assessmentSheet(assessPreparation(zincSulfate, nobody))).toContain('Assessment: ZnSO₄·7H₂O')
  })
})

describe('the list of the preparation room', () => {
  const withStock: Recipe = {
    ...zincSulfate,
    supplies: [
      { form: 'solid', substance: 'ZnO', name: 'zinc oxide' },
      {
        form: 'solution',
        substance: 'H2SO4',
        name: '=cmd|acid',
        concentration: '3.00 mol/L',
        excessFactor: '1.10',
        madeFrom: { massFraction: '96 %', density: '1.84 g/mL' },
      },
    ],
  }
  const plan = planClass(withStock, [
    { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
    { name: 'Bench 2, left', scale: { amount: '0.0500 mol' } },
  ])

  it('has totals, how to make up, the benches and the waste', () => {
    const sheet = preparationRoomSheet(plan)
    expect(sheet).toContain('Preparation room list for 2 benches')
    expect(sheet.replaceAll(/\s+/g, ' ')).toContain('pour it slowly into most of the water, never the water into it')
    expect(sheet).toContain('Bench 2, left  0.0500 mol')
    expect(sheet).toContain('Zn: up to 0.0900 mol')
  })

  it('shows what should be looked at', () => {
    const short = {
      ...zincSulfate,
      supplies: [
        zincSulfate.supplies[0],
        { form: 'solution', substance: 'H2SO4', concentration: '3 mol/L', excessFactor: '0.9' },
      ],
    } as Recipe
    const sheet = preparationRoomSheet(planClass(short, [{ name: 'Bench 1', scale: { amount: '0.0400 mol' } }]))
    expect(sheet).toContain('Preparation room list for 1 bench')
    expect(sheet).toContain('Problem: Bench 1: There is less H2SO4 than the preparation needs')
  })

  it.each([
    { from: { solid: 'H2SO4' }, how: 'dissolve in part of the water, then make up to' },
    { from: { concentration: '6 mol/L' }, how: 'dissolve in part of the water, then make up to' },
  ])('says how a solution is made from $from', ({ from, how }) => {
    const supplies = [
      zincSulfate.supplies[0],
      { form: 'solution', substance: 'H2SO4', concentration: '3.00 mol/L', madeFrom: from },
    ]
    const made = planClass({ ...zincSulfate, supplies } as Recipe, [
      { name: 'Bench 1', scale: { amount: '0.0400 mol' } },
    ])
    expect(preparationRoomSheet(made).replaceAll(/\s+/g, ' ')).toContain(how)
  })

  it('is defused for spreadsheets', () => {
    expect(classCsv(plan).split('\r\n')).toEqual([
      'bench,supply,taken as,take,unit,amount / mol,equivalents,theoretical yield / g',
      'Bench 1,zinc oxide,ZnO,3.255,g,0.04,1,11.502',
      "Bench 1,'=cmd|acid,H2SO4,14.7,mL,0.044,1.1,11.502",
      '"Bench 2, left",zinc oxide,ZnO,4.069,g,0.05,1,14.377',
      '"Bench 2, left",\'=cmd|acid,H2SO4,18.3,mL,0.055,1.1,14.377',
      '',
    ])
  })
})

describe('every format', () => {
  it.each(formats)('%s keeps the words of a recipe from being read as markup', (format) => {
    const sheet = benchSheet(planPreparation(hostile), format)
    const oneLine = sheet.replaceAll(/\s+/g, ' ')
    if (format === 'text')
      expect(oneLine).toContain(hostileWords) // plain text has no markup, so the words stay
    else expect(oneLine).not.toContain(hostileWords)
    if (format === 'html' || format === 'markdown') expect(sheet).not.toMatch(/(^|[^\\])<script>/)
  })

  it.each(formats)('%s writes every sheet', (format) => {
    const plan = planClass(zincSulfate, [{ name: 'Bench 1', scale: { amount: '0.0400 mol' } }])
    expect(benchSheet(planPreparation(alum), format).endsWith('\n')).toBe(true)
    expect(assessmentSheet(assessPreparation(zincSulfate, records), format)).toContain('9.113')
    expect(preparationRoomSheet(plan, format)).toContain('Bench 1')
  })

  it('another format is refused', () => {
    const plan = planPreparation(zincSulfate)
    expect(() => benchSheet(plan, 'docx' as never)).toThrow(expect.objectContaining({ code: 'report/unknown-format' }))
    expect(() => benchSheet(plan, 'toString' as never)).toThrow(
      expect.objectContaining({ code: 'report/unknown-format' }),
    )
  })
})

describe('what only looks like one of our documents', () => {
  const plan = planPreparation(zincSulfate)
  const room = planClass(zincSulfate, [{ name: 'Bench 1', scale: { amount: '0.0400 mol' } }])
  const assessment = assessPreparation(zincSulfate, records)
  const other = { format: 'saltwright/other@1' }

  it.each([
    {
      what: 'a plan of another format',
      write: () => benchSheet({ ...plan, ...other } as never),
      code: 'report/not-a-plan',
    },
    {
      what: 'a class of another format',
      write: () => classCsv({ ...room, ...other } as never),
      code: 'report/not-a-plan',
    },
    {
      what: 'an assessment of another format',
      write: () => assessmentSheet({ ...assessment, ...other } as never),
      code: 'report/not-an-assessment',
    },
    {
      what: 'an assessment with text for a yield',
      write: () => assessmentSheet({ ...assessment, percentYield: '79 %' } as never),
      code: 'report/not-an-assessment',
    },
    {
      what: 'a class with text for its waste',
      write: () => classCsv({ ...room, liquidWaste: '15 mL' } as never),
      code: 'report/not-a-plan',
    },
  ])('$what is refused', ({ write, code }) => {
    expect(write).toThrow(expect.objectContaining({ code }))
  })
})

it('what has to be checked is called the same on a sheet and in a notebook', () => {
  const assessment = assessPreparation(zincSulfate, { ...records, product: { mass: '0 g' } })
  const inNotebook = assessment as unknown as Readonly<Record<symbol, () => Readonly<Record<string, string>>>>
  const shown = inNotebook[Symbol.for('Jupyter.display')]?.()['text/plain']
  for (const text of [assessmentSheet(assessment), shown]) expect(text).toContain('To check: No product was obtained.')
})
