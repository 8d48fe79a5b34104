/**
 * How fast formulas are read, beside a parser generated from a grammar for the same notation and beside a bare scan that only
 * counts atoms. Run `npm run build` first, then `node tests/bench/formulas.mjs`.
 */
import { elements } from 'saltwright/element'
import { molarMass, parseFormula } from 'saltwright/formula'
import { scanAtoms } from './bare-scan.mjs'
import { generatedParser } from './generated-parser.mjs'

/** Salts, hydrates, complexes, minerals, ions. From memory. */
const formulas = [
  'NaCl',
  'ZnSO4·7H2O',
  'CuSO4·5H2O',
  '(NH4)2Fe(SO4)2·6H2O',
  'KAl(SO4)2·12H2O',
  'Na2B4O5(OH)4·8H2O',
  'UO2(NO3)2·6H2O',
  '[Co(NH3)6]Cl3',
  'K3[Fe(C2O4)3]·3H2O',
  '[Cr(H2O)4Cl2]Cl·2H2O',
  'Ca5(PO4)3(OH)',
  'KAl3Si3O10(OH)2',
  'Fe0.947O',
  'CdSO4·8/3H2O',
  '3CdSO4·8H2O',
  'SO4^2-',
  'Fe^3+',
  '[Fe(CN)6]^4-',
  'C6H12O6',
  'CH3COOH',
]

const generated = generatedParser([...elements.map(({ symbol }) => symbol), 'D', 'T'])

for (const text of formulas) {
  const [ours, theirs] = [parseFormula(text), generated.parse(text)]
  const same = [...ours.composition].every(
    ([symbol, count]) => Math.abs(count.toNumber() - theirs.composition.get(symbol)) < 1e-9,
  )
  if (!same || ours.charge !== theirs.charge || ours.parts.length !== theirs.parts.length) throw new Error(text)
}

/** Nanoseconds per formula: the best of some rounds, taken in turns so that all routes meet the same machine. */
function timed(routes, rounds) {
  const best = routes.map(() => Number.POSITIVE_INFINITY)
  for (let round = 0; round < rounds; round += 1) {
    for (const [index, [, route]] of routes.entries()) best[index] = Math.min(best[index], once(route))
  }
  return best
}

function once(route) {
  const start = performance.now()
  for (let turn = 0; turn < 500; turn += 1) for (const text of formulas) route(text)
  return ((performance.now() - start) * 1e6) / (500 * formulas.length)
}

const measured = [
  ['parseFormula', (text) => parseFormula(text)],
  ['parseFormula, with composition', (text) => parseFormula(text).composition],
  [
    'parseFormula, with composition, charge, parts',
    (text) => [parseFormula(text)].map((f) => [f.composition, f.charge, f.parts]),
  ],
  ['generated parser', (text) => generated.parse(text)],
  ['bare scan that counts atoms', (text) => scanAtoms(text)],
  ['molarMass', (text) => molarMass(text)],
]
const times = timed(measured, 40)
const unit = times[1]
console.log(`${formulas.length} formulas, the same atoms, charges and parts by both parsers`)
for (const [index, [name]] of measured.entries()) {
  console.log(
    `  ${name.padEnd(48)} ${times[index].toFixed(0).padStart(7)} ns ${(times[index] / unit).toFixed(2).padStart(7)} x`,
  )
}
