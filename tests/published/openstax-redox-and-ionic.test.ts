import {
  combine,
  completeHalfReaction,
  completeRedox,
  ionicEquation,
  lowestTerms,
  type Medium,
  netIonicEquation,
  stageMultipliers,
} from '../../src/equation/index.js'
import { checkPublished, type PublishedRow } from './check.js'

function redox(at: string, skeleton: string, medium: Medium, published: string): PublishedRow {
  const what = `${skeleton} in ${medium === 'acid' ? 'an acid' : 'a base'}`
  return { at, what, published, ours: () => completeRedox(skeleton, { medium }).equation.text, agrees: true }
}

function half(at: string, skeleton: string, medium: Medium, published: string): PublishedRow {
  const what = `the half-reaction ${skeleton}`
  return { at, what, published, ours: () => completeHalfReaction(skeleton, { medium }).text, agrees: true }
}

function joined(at: string, oxidation: string, reduction: string, published: string): PublishedRow {
  const ours = (): string => {
    const [first, second] = stageMultipliers([oxidation, reduction])
    return lowestTerms(
      combine([
        { equation: reduction, times: second },
        { equation: oxidation, times: first },
      ]),
    ).text
  }
  return { at, what: `the sum of ${oxidation} and ${reduction}`, published, ours, agrees: true }
}

checkPublished('OpenStax, Chemistry 2e, section 17.1, Review of Redox Chemistry', [
  half('Example in acid', 'HNO3 -> NO', 'acid', 'HNO3 + 3 H^+ + 3 e^- -> NO + 2 H2O'),
  redox('Example in acid', 'Cu + HNO3 -> Cu^2+ + NO', 'acid', '3 Cu + 2 HNO3 + 6 H^+ -> 3 Cu^2+ + 2 NO + 4 H2O'),
  redox(
    'Example in acid, check your learning',
    'Cu + HNO3 -> Cu^2+ + NO2',
    'acid',
    'Cu + 2 HNO3 + 2 H^+ -> Cu^2+ + 2 NO2 + 2 H2O',
  ),
  joined('Exercise on pairs (a)', 'Ca -> Ca^2+ + 2e^-', 'F2 + 2e^- -> 2F^-', 'F2 + Ca -> 2 F^- + Ca^2+'),
  joined('Exercise on pairs (b)', 'Li -> Li^+ + e^-', 'Cl2 + 2e^- -> 2Cl^-', 'Cl2 + 2 Li -> 2 Cl^- + 2 Li^+'),
  joined('Exercise on pairs (c)', 'Fe -> Fe^3+ + 3e^-', 'Br2 + 2e^- -> 2Br^-', '3 Br2 + 2 Fe -> 6 Br^- + 2 Fe^3+'),
  joined(
    'Exercise on pairs (d)',
    'Ag -> Ag^+ + e^-',
    'MnO4^- + 4H^+ + 3e^- -> MnO2 + 2H2O',
    'MnO4^- + 4 H^+ + 3 Ag -> MnO2 + 2 H2O + 3 Ag^+',
  ),
])

function ionic(at: string, equation: string, published: string): PublishedRow {
  return {
    at,
    what: `the complete ionic form of ${equation}`,
    published,
    ours: () => ionicEquation(equation).text,
    agrees: true,
  }
}

function net(at: string, equation: string, published: string): PublishedRow {
  return {
    at,
    what: `the net ionic form of ${equation}`,
    published,
    ours: () => netIonicEquation(equation).text,
    agrees: true,
  }
}

const silver = 'CaCl2(aq) + 2 AgNO3(aq) -> Ca(NO3)2(aq) + 2 AgCl(s)'
const fluoride = '2 NaF(aq) + CaCl2(aq) -> CaF2(s) + 2 NaCl(aq)'
const oxalate = 'K2C2O4(aq) + Ba(OH)2(aq) -> 2 KOH(aq) + BaC2O4(s)'
const lead = 'Pb(NO3)2(aq) + H2SO4(aq) -> PbSO4(s) + 2 HNO3(aq)'
const carbonate = 'CaCO3(s) + H2SO4(aq) -> CaSO4(s) + CO2(g) + H2O(l)'

checkPublished('OpenStax, Chemistry 2e, sections 4.1 and 4.2, ionic equations', [
  ionic(
    'text of 4.1',
    silver,
    'Ca^2+(aq) + 2 Cl^-(aq) + 2 Ag^+(aq) + 2 NO3^-(aq) -> Ca^2+(aq) + 2 NO3^-(aq) + 2 AgCl(s)',
  ),
  net('text of 4.1', silver, 'Cl^-(aq) + Ag^+(aq) -> AgCl(s)'),
  ionic(
    'Exercise 4.1-9 (b)',
    fluoride,
    '2 Na^+(aq) + 2 F^-(aq) + Ca^2+(aq) + 2 Cl^-(aq) -> CaF2(s) + 2 Na^+(aq) + 2 Cl^-(aq)',
  ),
  net('Exercise 4.1-9 (b)', fluoride, '2 F^-(aq) + Ca^2+(aq) -> CaF2(s)'),
  ionic(
    'Exercise 4.1-11 (a)',
    oxalate,
    '2 K^+(aq) + C2O4^2-(aq) + Ba^2+(aq) + 2 OH^-(aq) -> 2 K^+(aq) + 2 OH^-(aq) + BaC2O4(s)',
  ),
  {
    ...net('Exercise 4.1-11 (a)', oxalate, 'Ba^2+(aq) + C2O4^2-(aq) -> BaC2O4(s)'),
    ours: () => netIonicEquation('Ba(OH)2(aq) + K2C2O4(aq) -> BaC2O4(s) + 2 KOH(aq)').text, // the book changes the order
  },
  ionic(
    'Exercise 4.1-11 (b)',
    lead,
    'Pb^2+(aq) + 2 NO3^-(aq) + 2 H^+(aq) + SO4^2-(aq) -> PbSO4(s) + 2 H^+(aq) + 2 NO3^-(aq)',
  ),
  net('Exercise 4.1-11 (b)', lead, 'Pb^2+(aq) + SO4^2-(aq) -> PbSO4(s)'),
  ionic('Exercise 4.1-11 (c)', carbonate, 'CaCO3(s) + 2 H^+(aq) + SO4^2-(aq) -> CaSO4(s) + CO2(g) + H2O(l)'),
  net('Exercise 4.1-11 (c)', carbonate, 'CaCO3(s) + 2 H^+(aq) + SO4^2-(aq) -> CaSO4(s) + CO2(g) + H2O(l)'),
  net('text of 4.2', 'Pb(NO3)2(aq) + 2 KI(aq) -> PbI2(s) + 2 KNO3(aq)', 'Pb^2+(aq) + 2 I^-(aq) -> PbI2(s)'),
  {
    ...net('text of 4.2', 'AgNO3(aq) + NaCl(aq) -> AgCl(s) + NaNO3(aq)', 'Ag^+(aq) + Cl^-(aq) -> AgCl(s)'),
  },
  {
    ...net(
      'Example 4.3 (a)',
      'Ba(NO3)2(aq) + K2SO4(aq) -> BaSO4(s) + 2 KNO3(aq)',
      'Ba^2+(aq) + SO4^2-(aq) -> BaSO4(s)',
    ),
  },
])
