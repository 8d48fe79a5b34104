/** Texts that are legal, or nearly: what a person might write, put together by chance. */

const symbols =
  'H He Li B C N O F Na Mg Al Si P S Cl K Ca Ti Cr Mn Fe Co Ni Cu Zn As Br Sr Ag Cd Sn I Ba Pt Hg Pb D T'.split(' ')
const units = [
  'g',
  'mg',
  'kg',
  'mol',
  'mmol',
  'mL',
  'L',
  'mol/L',
  'M',
  'g/mol',
  'g/mL',
  '%',
  '% w/w',
  '',
  '°C',
  'K',
  'min',
]
const moreUnits = ['kPa', 'atm', 'kJ/mol', 'J/(mol K)', 'mol/kg', 'µg', 'cm³', 'mol·L⁻¹', 'L/mol', 'J/K', 'bar', 'h']

const digits = (random, most) => Array.from({ length: 1 + random.below(most) }, () => random.below(10)).join('')
const maybe = (random, times, make) => (random.oneIn(times) ? make() : '')

export function numeral(random) {
  const whole = random.oneIn(8) ? '' : random.oneIn(20) ? digits(random, 60) : digits(random, 5)
  const decimals = random.oneIn(3) ? '' : `.${maybe(random, 1, () => digits(random, random.oneIn(20) ? 60 : 5))}`
  const power = random.pick(['e', 'E', ' × 10^', 'x10^', '·10'])
  const size = random.oneIn(10) ? random.below(400) : random.below(12)
  return `${maybe(random, 8, () => random.pick(['-', '−', '+']))}${whole}${decimals}${maybe(random, 5, () => `${power}${random.pick(['', '-', '+', '−'])}${size}`)}`
}

export function quantity(random) {
  const unit = random.oneIn(3) ? random.pick(moreUnits) : random.pick(units)
  const [number, spread] = [numeral(random), numeral(random)]
  const value = random.pick([
    () => number,
    () => number,
    () => number,
    () => `${number}(${digits(random, 3)})`,
    () => `(${number} ± ${spread})`,
    () => `${number} ± ${spread}`,
    () => `(${number} +/- ${spread})e${random.below(9)}`,
  ])()
  return `${maybe(random, 20, () => ' ')}${value}${random.oneIn(20) ? '' : ' '}${unit}`
}

const count = (random) =>
  random.oneIn(2)
    ? ''
    : random.pick(['2', '3', '4', '6', '12', '0.5', '1.25', '₂', '₁₂', '(1/2)', String(random.below(200))])

function atoms(random, depth) {
  if (depth > 0 && random.oneIn(3)) {
    const [open, close] = random.pick(['()', '[]', '{}', '()'])
    return open + group(random, depth - 1) + close + count(random)
  }
  return random.pick(symbols) + count(random)
}

function group(random, depth) {
  return Array.from({ length: 1 + random.below(3) }, () => atoms(random, depth)).join('')
}

const charges = ['^2-', '^+', '^3+', '²⁻', '⁺', '-', '+', '2-', '^-', '--']
const waters = ['·7H2O', '·H2O', '.5H2O', '*6H2O', '·xH2O', '·½H2O', '·8/3H2O', '•2NH3', '·0.5H2O', '·12H2O']

export function formula(random) {
  const leading = maybe(random, 20, () => random.pick(['2', '3', '1/2']))
  const water = maybe(random, 4, () => random.pick(waters))
  const charge = maybe(random, 5, () => random.pick(charges))
  const state = maybe(random, 10, () => random.pick(['(s)', '(aq)', ' (g)', '(l)']))
  return leading + group(random, random.oneIn(10) ? 6 : 2) + water + charge + state
}

const knownFormulas =
  'H2O H2SO4 KOH NaOH HCl ZnO ZnSO4 Zn Cu CuSO4 K2SO4 KMnO4 MnSO4 Fe^2+ Fe^3+ H^+ OH^- e^- NH3 NH4^+ Cl^- CO2 O2 H2 ZnSO4·7H2O FeSO4·7H2O K3[Fe(C2O4)3]·3H2O Al2(SO4)3 Ba(OH)2·8H2O C2O4^2- Cr2O7^2- Cr^3+'.split(
    ' ',
  )

const coefficient = (random) => (random.oneIn(2) ? '' : random.pick(['2 ', '3', '1/2 ', '0.5', '24', '½', '12 ']))

function side(random) {
  const term = () => coefficient(random) + (random.oneIn(4) ? formula(random) : random.pick(knownFormulas))
  return Array.from({ length: 1 + random.below(4) }, term).join(random.pick([' + ', ' + ', '+', ' +']))
}

export function equation(random) {
  return `${side(random)} ${random.pick(['->', '→', '⇌', '<=>', '=', '-->', '<->', '⟶'])} ${side(random)}`
}
