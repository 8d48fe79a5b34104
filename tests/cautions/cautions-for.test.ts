import { describe, expect, it } from 'vitest'
import {
  type Caution,
  type CautionFacts,
  cautionsFor,
  type Operation,
  type SubstanceFact,
} from '../../src/cautions/index.js'
import { exact, quantity } from '../../src/quantity/index.js'
import { namesIn } from '../quantity/names.js'
import { refusal } from '../quantity/refusal.js'

const codes = (facts: CautionFacts) => cautionsFor(facts).map(({ code }) => code)
/** What is said of a substance by itself: without its waste, and without the last line. */
const about = (substance: SubstanceFact): readonly Caution[] =>
  cautionsFor({ substances: [substance] }).filter(({ code }) => code !== 'heavy-metals' && code !== 'deferral')
const first = (substance: SubstanceFact): Caution | undefined => about(substance)[0]
const statements = (substance: SubstanceFact) => first(substance)?.statements.map(({ code }) => code)

describe('the last caution', () => {
  it.each([
    { what: 'nothing', facts: {} },
    { what: 'water', facts: { substances: [{ formula: 'H2O' }] } },
    { what: 'a preparation', facts: { substances: [{ formula: 'KOH', form: 'solid' }], operations: ['boil'] } },
  ] as const)('for $what defers to local rules, the data sheet and supervision', ({ facts }) => {
    const last = cautionsFor(facts).at(-1)
    expect(last?.code).toBe('deferral')
    expect(last?.message).toContain(
      'Local rules, the supplier’s current safety data sheet and label, and qualified supervision',
    )
  })
})

describe('a substance', () => {
  it('carries the statements of its classification, with texts, pictograms, signal word and source', () => {
    const caution = first({ formula: 'KOH', form: 'solid' })
    expect(caution).toMatchObject({ code: 'substance-hazard', about: 'KOH', signalWord: 'Danger', fromMemory: false })
    expect(caution?.statements[2]).toEqual({ code: 'H314', text: 'Causes severe skin burns and eye damage' })
    expect(caution?.pictograms).toEqual(['GHS05', 'GHS07'])
    expect(caution?.source).toContain('GESTIS')
    expect(caution?.message).toBe(
      'potassium hydroxide: Danger. H290 May be corrosive to metals; H302 Harmful if swallowed; H314 Causes severe skin burns and eye damage.',
    )
  })

  it('of which the classification is from memory says so', () => {
    const caution = first({ formula: 'ZnSO4·7H2O', form: 'solid' })
    expect(caution?.fromMemory).toBe(true)
    expect(caution?.message).toContain('From memory: look at the current data sheet first.')
  })

  it('that is not classified is not called harmless', () => {
    const caution = first({ formula: 'K2SO4' })
    expect(caution).toMatchObject({ code: 'substance-not-classified', statements: [], signalWord: 'none' })
    expect(caution?.message).toContain('which is not the same as harmless')
  })

  it('that the tables do not hold is said to be unknown, never harmless', () => {
    const caution = first({ formula: 'LaCl3', name: 'lanthanum chloride' })
    expect(caution).toMatchObject({ code: 'unknown-substance', about: 'LaCl3', statements: [] })
    expect(caution?.message).toBe(
      'Nothing is known here about lanthanum chloride. That does not mean that it is harmless: see its safety data sheet.',
    )
    expect(first({ formula: 'LaCl3' })?.message).toContain('about LaCl3.')
  })

  it('is called as the plan calls it', () => {
    expect(first({ formula: 'KOH', form: 'solid', name: 'caustic potash' })?.message).toMatch(/^caustic potash: Danger/)
  })

  it.each([
    {
      substance: { formula: 'ZnSO4' },
      said: 'ZnSO4: Danger.',
      differs: 'Classified here as zinc sulfate heptahydrate.',
    },
    {
      substance: { formula: 'ZnSO4·6H2O', form: 'solid' },
      said: 'ZnSO4·6H2O: Danger.',
      differs: 'Classified here as zinc sulfate heptahydrate.',
    },
    {
      substance: { formula: 'CuSO4·5H2O', concentration: '1.0 mol/L' },
      said: 'CuSO4·5H2O, 1.0 mol/L: Danger.',
      differs: 'Classified here as solid.',
    },
    { substance: { formula: 'Zn', form: 'solid' }, said: 'Zn: Warning.', differs: 'Classified here as powder.' },
    {
      substance: { formula: 'H2SO4', form: 'solution' },
      said: 'H2SO4: Danger.',
      differs: 'Its strength is not stated; this classification is for 15 % or more.',
    },
    {
      substance: { formula: 'H2O2', massFraction: '60 %' },
      said: 'H2O2, 60 %: Danger.',
      differs: 'The nearest classification is for 8 to under 50 %.',
    },
    {
      substance: { formula: 'NH3', concentration: '2.0 mol/L' },
      said: 'NH3, 2.0 mol/L: Danger.',
      differs: 'The nearest classification is for 25 % or more.',
    },
  ] as const)('$substance.formula in another form says which classification it has', ({ substance, said, differs }) => {
    const message = first(substance)?.message
    expect(message?.startsWith(said)).toBe(true)
    expect(message).toContain(differs)
  })

  it.each([
    { substance: { formula: 'H2SO4', massFraction: '96 %' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'H2SO4', massFraction: '15 %' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'H2SO4', massFraction: '14.9 %' }, codes: ['H315', 'H319'] },
    { substance: { formula: 'H2SO4', massFraction: '4.9 %' }, codes: [] },
    { substance: { formula: 'H2SO4', concentration: '3.00 mol/L' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'H2SO4', concentration: '1.5 mol/L' }, codes: ['H315', 'H319'] },
    { substance: { formula: 'H2SO4', concentration: '1.6 mol/L' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'H2SO4', concentration: '1.6 mol/L', density: '1.10 g/mL' }, codes: ['H315', 'H319'] },
    { substance: { formula: 'HCl', concentration: '12 mol/L' }, codes: ['H290', 'H314', 'H335'] },
    { substance: { formula: 'HCl', concentration: '6.0 mol/L' }, codes: ['H315', 'H319', 'H335'] },
    { substance: { formula: 'HCl', concentration: '2.0 mol/L' }, codes: [] },
    { substance: { formula: 'HNO3', massFraction: '50 %' }, codes: ['H272', 'H290', 'H314', 'H331', 'EUH071'] },
    { substance: { formula: 'HNO3', massFraction: '10 %' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'KOH', concentration: '2.0 mol/L' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'NaOH', massFraction: '1 %' }, codes: ['H290', 'H314'] },
    { substance: { formula: 'H2O2', massFraction: '30 %' }, codes: ['H302', 'H318'] },
    { substance: { formula: 'Zn', form: 'powder' }, codes: ['H400', 'H410'] },
    { substance: { formula: 'Zn', form: 'pieces' }, codes: [] },
    { substance: { formula: 'Zn' }, codes: ['H400', 'H410'] },
    { substance: { formula: 'K2SO4·Al2(SO4)3·24H2O' }, codes: undefined },
  ] as const)('$substance has $codes', ({ substance, codes: expected }) => {
    if (expected === undefined) return expect(first(substance)?.code).toBe('unknown-substance')
    expect(statements(substance)).toEqual(expected)
  })

  it('has its strength among its numbers', () => {
    const caution = first({ formula: 'H2SO4', concentration: quantity('3.00 mol/L'), density: '1.18 g/mL' })
    expect(caution?.numbers.strength?.toString()).toBe('24.9 %')
    expect(caution?.message).toContain('sulfuric acid, 3.00 mol/L: Danger.')
  })

  it.each([
    { substance: { formula: 'H2SO4', massFraction: '96 %' }, called: ['acid-into-water'] },
    { substance: { formula: 'H2SO4' }, called: ['acid-into-water'] },
    { substance: { formula: 'H2SO4', massFraction: '25 %' }, called: [] },
    { substance: { formula: 'H2SO4', massFraction: '10 %' }, called: [] },
    { substance: { formula: 'HClO4', massFraction: '10 %' }, called: [] },
    { substance: { formula: 'CH3COOH', massFraction: '10 %' }, called: [] },
    { substance: { formula: 'HNO3', massFraction: '65 %' }, called: ['acid-into-water', 'fumes', 'oxidiser'] },
    { substance: { formula: 'NH3', massFraction: '28 %' }, called: ['fumes'] },
    { substance: { formula: 'NH3', massFraction: '5 %' }, called: [] },
    { substance: { formula: 'H2O2', massFraction: '30 %' }, called: ['hydrogen-peroxide'] },
    { substance: { formula: 'C2H5OH' }, called: ['flammable-liquid'] },
    { substance: { formula: 'CH3COOH', massFraction: '99 %' }, called: ['acid-into-water', 'flammable-liquid'] },
    { substance: { formula: 'KNO3' }, called: ['oxidiser'] },
    { substance: { formula: 'K3[Fe(C2O4)3]·3H2O' }, called: ['light-sensitive'] },
  ] as const)('$substance calls for $called', ({ substance, called }) => {
    const [, ...others] = about(substance)
    expect(others.map(({ code }) => code)).toEqual(called)
    for (const other of others) expect(other.about).toBe(substance.formula)
  })

  it('needs no line where it is water', () => expect(about({ formula: 'H2O', form: 'liquid' })).toEqual([]))
})

describe('a gas', () => {
  it('comes with how much there is, its precaution and its classification', () => {
    const [precaution, classified] = cautionsFor({ gases: [{ gas: 'H2', amount: '0.0400 mol', volume: '0.99 L' }] })
    expect(precaution).toMatchObject({ code: 'hydrogen', about: 'H2' })
    expect(precaution?.message).toMatch(/^H2, 0\.0400 mol, 0\.99 L: Hydrogen is evolved/)
    expect(Object.keys(precaution?.numbers ?? {})).toEqual(['amount', 'volume'])
    expect(classified?.statements.map(({ code }) => code)).toEqual(['H220'])
  })

  it('that was worked out is said to three figures', () => {
    const volume = quantity('0.0375 mol').times(exact('24.789570 L/mol'))
    expect(cautionsFor({ gases: [{ gas: 'H2', volume }] })[0]?.message).toMatch(/^H2, 0\.930 L: /)
  })

  it('that is evolved is not under pressure', () => {
    const [, classified] = cautionsFor({ gases: [{ gas: 'CO2' }] })
    expect(classified).toMatchObject({ code: 'substance-not-classified', pictograms: [] })
    expect(classified?.note).toContain('it displaces air')
  })

  it('names its amount and its volume', () => {
    const [evolved] = cautionsFor({ gases: [{ gas: 'H2', amount: '0.0400 mol', volume: '0.992 L' }] })
    expect(namesIn(evolved?.numbers)).toEqual(['n, -, H2', 'V, -, H2'])
  })

  it.each([
    { gas: 'H2', code: 'hydrogen' },
    { gas: 'NO2', code: 'nitrogen-dioxide' },
    { gas: 'CO2', code: 'gas-evolved' },
    ...['Cl2', 'H2S', 'SO2', 'NO', 'CO', 'NH3', 'HCN', 'HCl'].map((gas) => ({ gas, code: 'toxic-gas' })),
    { gas: 'N2', code: 'gas-evolved' },
  ])('$gas has the precaution $code', ({ gas, code }) => expect(codes({ gases: [{ gas }] })[0]).toBe(code))

  it('that the tables do not hold is said to be unknown', () => {
    expect(codes({ gases: [{ gas: 'Cl2' }] })).toEqual(['toxic-gas', 'unknown-substance', 'deferral'])
  })
})

describe('what is done', () => {
  it.each([
    { operations: ['dilute acid'], codes: ['acid-into-water'] },
    { operations: ['boil'], codes: ['bumping'] },
    { operations: ['evaporate'], codes: ['bumping'] },
    { operations: ['suction'], codes: ['suction'] },
    { operations: ['neutralise'], codes: ['neutralisation-warms'] },
    { operations: ['hot plate'], codes: [] },
    { operations: ['dry'], codes: [] },
  ] as const)('$operations calls for $codes', ({ operations, codes: expected }) => {
    expect(codes({ operations })).toEqual([...expected, 'deferral'])
  })

  const acid: SubstanceFact = { formula: 'H2SO4', massFraction: '10 %' }
  const ethanol: SubstanceFact = { formula: 'C2H5OH', form: 'liquid' }
  it.each([
    { what: 'boiling acid', facts: { operations: ['boil'], substances: [acid] }, code: 'not-to-dryness', there: true },
    {
      what: 'acid over a burner with an oxide',
      facts: { operations: ['burner'], substances: [acid, { formula: 'CuO' }] },
      code: 'boiling-acid',
      there: true,
    },
    {
      what: 'acid over a burner with a carbonate',
      facts: { operations: ['burner'], substances: [acid, { formula: 'MgCO3' }] },
      code: 'boiling-acid',
      there: true,
    },
    {
      what: 'acid over a burner with a metal, which is not added to it hot',
      facts: { operations: ['burner'], substances: [acid, { formula: 'Fe' }] },
      code: 'boiling-acid',
      there: false,
    },
    {
      what: 'nitric acid with an oxide',
      facts: { operations: ['burner'], substances: [{ formula: 'HNO3', massFraction: '65 %' }, { formula: 'CuO' }] },
      code: 'boiling-acid',
      there: false,
    },
    {
      what: 'acid on a hot plate',
      facts: { operations: ['hot plate'], substances: [acid] },
      code: 'boiling-acid',
      there: false,
    },
    { what: 'boiling water', facts: { operations: ['boil'], substances: [] }, code: 'boiling-acid', there: false },
    {
      what: 'ethanol near a hot plate',
      facts: { operations: ['hot plate'], substances: [ethanol] },
      code: 'flammable-near-heat',
      there: true,
    },
    {
      what: 'dilute acetic acid near a burner',
      facts: { operations: ['burner'], substances: [{ formula: 'CH3COOH', concentration: '2.0 mol/L' }] },
      code: 'flammable-near-heat',
      there: false,
    },
    {
      what: 'glacial acetic acid near a burner',
      facts: { operations: ['burner'], substances: [{ formula: 'CH3COOH', massFraction: '99 %' }] },
      code: 'flammable-near-heat',
      there: true,
    },
    {
      what: 'ethanol without heat',
      facts: { operations: ['suction'], substances: [ethanol] },
      code: 'flammable-near-heat',
      there: false,
    },
    {
      what: 'heat without ethanol',
      facts: { operations: ['boil'], substances: [acid] },
      code: 'flammable-near-heat',
      there: false,
    },
    {
      what: 'heat with an unknown substance',
      facts: { operations: ['boil'], substances: [{ formula: 'LaCl3' }] },
      code: 'flammable-near-heat',
      there: false,
    },
    {
      what: 'aluminium in alkali',
      facts: { substances: [{ formula: 'Al' }, { formula: 'KOH' }] },
      code: 'metal-in-alkali',
      there: true,
    },
    {
      what: 'aluminium in acid',
      facts: { substances: [{ formula: 'Al' }, acid] },
      code: 'metal-in-alkali',
      there: false,
    },
    {
      what: 'iron in alkali',
      facts: { substances: [{ formula: 'Fe' }, { formula: 'KOH' }] },
      code: 'metal-in-alkali',
      there: false,
    },
    {
      what: 'drying a hydrate',
      facts: { operations: ['dry'], product: 'ZnSO4·7H2O' },
      code: 'hydrates-not-warm',
      there: true,
    },
    {
      what: 'drying a hydrate of unknown water',
      facts: { operations: ['dry'], product: 'ZnSO4·xH2O' },
      code: 'hydrates-not-warm',
      there: true,
    },
    {
      what: 'drying an anhydrous salt',
      facts: { operations: ['dry'], product: 'KNO3' },
      code: 'hydrates-not-warm',
      there: false,
    },
    { what: 'a hydrate that is not dried', facts: { product: 'ZnSO4·7H2O' }, code: 'hydrates-not-warm', there: false },
  ] as const)('$what: $code is there: $there', ({ facts, code, there }) => {
    expect(codes(facts as CautionFacts).includes(code)).toBe(there)
  })

  it.each(['Al', 'Zn', 'Sn', 'Pb'])('%s is dissolved by alkali', (formula) => {
    expect(codes({ substances: [{ formula }, { formula: 'NaOH' }] })).toContain('metal-in-alkali')
  })

  it.each(['boil', 'evaporate', 'hot plate', 'burner'] as const)('to %s is to heat', (operation) => {
    const facts = {
      operations: [operation],
      substances: [{ formula: 'C2H5OH', form: 'liquid' }, { formula: 'H2SO4' }],
    } as const
    expect(codes(facts)).toContain('flammable-near-heat')
    expect(codes(facts).includes('not-to-dryness')).toBe(operation !== 'hot plate')
    expect(codes(facts).includes('bumping')).toBe(operation === 'boil' || operation === 'evaporate')
  })

  it.each([
    ['FeO', true],
    ['Fe2O3', true],
    ['ZnCO3', true],
    ['Na2CO3', true],
    ['Zn', false],
    ['ZnSO4', false],
    ['CO2', false],
    ['NaAlO2', false],
    ['P2O5', false],
    ['SO3', false],
    ['NO2', false],
    ['Cl2O', false],
    ['Br2O', false],
    ['I2O5', false],
    ['OF2', false],
    ['H2O', false],
    ['(NH4)2CO3', false],
    ['Ca(HCO3)2', false],
  ])('%s goes into hot acid as an oxide or a carbonate: %s', (formula, there) => {
    const facts = { operations: ['boil'], substances: [{ formula }, { formula: 'H2SO4' }] } as const
    expect(codes(facts).includes('boiling-acid')).toBe(there)
  })

  it.each(['Cu', 'Ni', 'Co', 'Ba', 'Pb', 'Ag', 'Cr', 'Mn', 'Zn', 'Cd', 'Hg'])(
    'liquors of %s are collected',
    (metal) => {
      const waste = cautionsFor({ substances: [{ formula: `${metal}O` }] }).filter(
        ({ code }) => code === 'heavy-metals',
      )
      expect(waste.map(({ about: metals }) => metals)).toEqual([metal])
    },
  )

  it('carries the strength where there is one, and nothing in its place where there is none', () => {
    const [, stated] = about({ formula: 'H2SO4', form: 'solution', massFraction: '96 %' })
    expect(stated).toMatchObject({ code: 'acid-into-water' })
    expect(String(stated?.numbers.strength)).toBe('96 %')
    const [, unstated] = about({ formula: 'H2SO4', form: 'solution' })
    expect(unstated?.code).toBe('acid-into-water')
    expect(Object.keys(unstated?.numbers ?? {})).toEqual([])
  })

  it('keeps the metals apart that are not for the sink', () => {
    const waste = cautionsFor({
      substances: [{ formula: 'CuSO4·5H2O' }, { formula: 'Zn', form: 'pieces' }, { formula: 'Fe' }],
    })
    const metals = waste.filter(({ code }) => code === 'heavy-metals')
    expect(metals.map((caution) => caution.about)).toEqual(['Cu', 'Zn'])
    expect(metals[0]?.message).toMatch(/^Cu: Liquors and washings go into a labelled container/)
  })

  it('says how much heat a neutralisation releases, where that is known', () => {
    const [warm] = cautionsFor({ neutralisation: { heat: '5.58 kJ', temperatureRise: '18 K' } })
    expect(warm?.code).toBe('neutralisation-warms')
    expect(Object.entries(warm?.numbers ?? {}).map(([name, q]) => `${name} ${q}`)).toEqual([
      'heat 5.58 kJ',
      'temperatureRise 18 K',
    ])
    expect(Object.keys(cautionsFor({ neutralisation: {} })[0]?.numbers ?? {})).toEqual([])
  })

  it('comes before gases, and these before substances', () => {
    const facts = { substances: [{ formula: 'KNO3' }], gases: [{ gas: 'H2' }], operations: ['boil'] } as const
    expect(codes(facts)).toEqual([
      'bumping',
      'hydrogen',
      'substance-hazard',
      'substance-hazard',
      'oxidiser',
      'deferral',
    ])
  })

  it('is said once', () => {
    const twice = { substances: [{ formula: 'KNO3' }, { formula: 'KNO3' }], operations: ['boil', 'boil'] } as const
    expect(codes(twice)).toEqual(['bumping', 'substance-hazard', 'oxidiser', 'deferral'])
  })
})

describe('facts are refused', () => {
  it.each([
    { what: 'that are none', facts: null, code: 'cautions/not-an-object' },
    { what: 'with substances that are no list', facts: { substances: {} }, code: 'cautions/not-a-list' },
    { what: 'with a substance that is none', facts: { substances: ['KOH'] }, code: 'cautions/not-an-object' },
    {
      what: 'with an unknown form',
      facts: { substances: [{ formula: 'Zn', form: 'foil' }] },
      code: 'cautions/unknown-choice',
    },
    {
      what: 'with a name that is no text',
      facts: { substances: [{ formula: 'Zn', name: 5 }] },
      code: 'cautions/not-text',
    },
    { what: 'with gases that are no list', facts: { gases: 'H2' }, code: 'cautions/not-a-list' },
    { what: 'with a gas that is none', facts: { gases: [null] }, code: 'cautions/not-an-object' },
    { what: 'with an unknown operation', facts: { operations: ['juggle'] }, code: 'cautions/unknown-choice' },
    {
      what: 'with operations that are no list',
      facts: { operations: 'boil' as Operation },
      code: 'cautions/not-a-list',
    },
    { what: 'with a heat that is none', facts: { neutralisation: 5 }, code: 'cautions/not-an-object' },
    { what: 'with a formula that is none', facts: { substances: [{ formula: 'zn' }] }, code: 'formula/unknown-symbol' },
    {
      what: 'with a strength that is none',
      facts: { substances: [{ formula: 'HCl', massFraction: '5 g' }] },
      code: 'quantity/wrong-dimension',
    },
  ])('$what', ({ facts, code }) => {
    const error = refusal(() => cautionsFor(facts as CautionFacts))
    expect(error.code).toBe(code)
    expect(error.expected).toBeTruthy()
  })
})
