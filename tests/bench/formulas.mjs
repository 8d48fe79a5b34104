/**
 * How fast formulas are read, beside a parser generated from a grammar for the same notation and beside a bare scan that only counts
 * atoms.
 */
import { Decimal as Shared } from 'decimal.js'
import { abridgedWeights, elements } from 'saltwright/element'
import { molarMass, parseFormula } from 'saltwright/formula'
import { scanAtoms } from './bare-scan.mjs'
import { generatedParser } from './generated-parser.mjs'
import { atLeast, atMost, ratio, timed } from './harness.mjs'

/** Salts, hydrates, complexes, ions. From memory. */
const formulas = [
  'NaCl KNO3 K2SO4 Na2CO3 CaCO3 MgSO4 BaSO4 AgNO3 PbI2 KMnO4 K2Cr2O7 NH4Cl (NH4)2SO4 Ca3(PO4)2 Al2(SO4)3',
  'ZnSO4·7H2O CuSO4·5H2O FeSO4·7H2O MgSO4·7H2O Na2CO3·10H2O CoCl2·6H2O BaCl2·2H2O CaSO4·2H2O Ba(OH)2·8H2O',
  '(NH4)2Fe(SO4)2·6H2O KAl(SO4)2·12H2O (NH4)2Cu(SO4)2·6H2O Na2B4O5(OH)4·8H2O UO2(NO3)2·6H2O CdSO4·8/3H2O',
  '[Co(NH3)6]Cl3 K3[Fe(C2O4)3]·3H2O [Cu(NH3)4]SO4·H2O K4[Fe(CN)6]·3H2O [Cr(H2O)4Cl2]Cl·2H2O',
  'SO4^2- Fe^3+ [Fe(CN)6]^4- Cr2O7^2- NH4^+',
].flatMap((line) => line.split(' '))

/** Ten thousand strings, each of them a string of its own, as if read from a file. */
const strings = Array.from({ length: 10_000 }, (_, index) => ` ${formulas[index % formulas.length]}`.slice(1))

const Decimal = Shared.clone({ defaults: true, precision: 34, rounding: 6 })
const weights = new Map(Object.entries(abridgedWeights.values).map(([symbol, text]) => [symbol, weightOf(text)]))
const generated = generatedParser([...elements.map(({ symbol }) => symbol), 'D', 'T'])

function weightOf(text) {
  const number = Number.parseFloat(String(text))
  return Number.isFinite(number) ? new Decimal(String(number)) : undefined
}

function massOf(text) {
  let mass = new Decimal(0)
  for (const [symbol, count] of generated.parse(text).composition) mass = mass.plus(weights.get(symbol).times(count))
  return mass
}

function checkSame() {
  for (const text of formulas) {
    const [ours, theirs] = [parseFormula(text), generated.parse(text)]
    const same = [...ours.composition].every(
      ([symbol, count]) => Math.abs(count.toNumber() - theirs.composition.get(symbol)) < 1e-9,
    )
    if (!same || ours.charge !== theirs.charge || ours.parts.length !== theirs.parts.length) throw new Error(text)
    if (molarMass(text).value.minus(massOf(text)).abs().gt('1e-9')) throw new Error(`the mass of ${text}`)
  }
}

const over = (work) => () => {
  for (const text of strings) work(text)
}

const asked = (formula) => [formula.composition, formula.charge, formula.parts]

export function measure() {
  checkSame()
  const rows = timed(
    [
      { name: 'parseFormula', run: over((text) => parseFormula(text)) },
      { name: 'parseFormula, with composition, charge and parts', run: over((text) => asked(parseFormula(text))) },
      { name: 'generated parser', run: over((text) => generated.parse(text)) },
      { name: 'bare scan that only counts atoms', run: over((text) => scanAtoms(text)) },
      { name: 'molarMass', run: over((text) => molarMass(text)) },
      { name: 'generated parser and sums in decimal.js', run: over(massOf) },
    ],
    { rounds: 12, items: strings.length },
  )
  const ours = 'parseFormula, with composition, charge and parts'
  return {
    title: 'Formulas',
    about: `${strings.length} strings of ${formulas.length} salts, hydrates, complexes and ions; microseconds for each. The same atoms, charges, parts and masses by all routes that give them.`,
    rows,
    targets: [
      atLeast('as fast as the generated parser', 5, ratio(rows, 'generated parser', ours)),
      atMost('times the bare scan', 5, ratio(rows, ours, 'bare scan that only counts atoms')),
      atLeast(
        'as fast with the molar mass as the generated parser with sums',
        3,
        ratio(rows, 'generated parser and sums in decimal.js', 'molarMass'),
      ),
    ],
  }
}
