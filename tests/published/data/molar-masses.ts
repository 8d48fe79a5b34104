import type { AtomicWeightSet } from '../../../src/element/index.js'
import { iupac1997, iupac2007, llnl, llnlFiveDecimals } from './older-atomic-weights.js'

/** A molar mass that a source prints, in g/mol. */
export interface PrintedMolarMass {
  readonly formula: string
  readonly name: string
  readonly published: string
  /** What ours rounds to with the atomic weights of today, where that differs. */
  readonly today?: string
  /** The atomic weights that give the printed digits, where those of today do not. */
  readonly weights?: AtomicWeightSet
  /** Which they are, in words. */
  readonly why?: string
}

/** Molar masses of salts, hydrates and acids by source. Every value was read in a stored copy of its source. */
export const printedMolarMasses: readonly { readonly source: string; readonly rows: readonly PrintedMolarMass[] }[] = [
  {
    source: 'BAM certificate U2-0113 (expiry January 2018): molar mass for reporting',
    rows: [
      {
        formula: 'KHC8H4O4',
        name: 'potassium hydrogen phthalate',
        published: '204.2212',
        today: '204.222',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'NMIJ CRM 3007-a(02) certificate (2013): molar mass calculated from the IUPAC atomic weight table 2007',
    rows: [
      {
        formula: 'Na2C2O4',
        name: 'sodium oxalate',
        published: '133.9985',
        today: '133.998',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4035',
    rows: [
      {
        formula: '(NH4)2SO4',
        name: 'ammonium sulfate',
        published: '132.14',
        today: '132.13',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4204',
    rows: [{ formula: 'Mg(NO3)2·6H2O', name: 'magnesium nitrate hexahydrate', published: '256.40' }],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4187',
    rows: [
      {
        formula: 'PbCO3',
        name: 'lead(II) carbonate',
        published: '267.22',
        today: '267.2',
        weights: { name: 'older', extends: 'abridged', values: { Pb: '207.21' } },
        why: 'Pb 207.21, the value before 1961 (year from memory)',
      },
      {
        formula: '(PbCO3)2Pb(OH)2',
        name: 'lead(II) carbonate, basic',
        published: '775.66',
        today: '775.6',
        weights: { name: 'older', extends: 'abridged', values: { Pb: '207.21' } },
        why: 'Pb 207.21, the value before 1961 (year from memory)',
      },
    ],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph',
    rows: [
      {
        formula: 'Cd(NO3)2·4H2O',
        name: 'cadmium nitrate tetrahydrate',
        published: '308.47',
        today: '308.48',
        weights: { name: 'older', extends: 'abridged', values: { Cd: '112.40' } },
        why: 'Cd 112.40, the value before 1975 (year from memory); outside the bounds of today',
      },
      {
        formula: 'CdSO4·8/3H2O',
        name: 'cadmium sulfate 8/3-hydrate',
        published: '256.50',
        today: '256.51',
        weights: { name: 'older', extends: 'abridged', values: { Cd: '112.40' } },
        why: 'Cd 112.40, the value before 1975 (year from memory)',
      },
      { formula: 'KNaC4H4O6·4H2O', name: 'potassium sodium tartrate tetrahydrate', published: '282.22' },
      { formula: 'MnSO4·H2O', name: 'manganese(II) sulfate monohydrate', published: '169.01' },
      { formula: 'Fe(SO4)2NH4·12H2O', name: 'ammonium iron(III) sulfate dodecahydrate', published: '482.18' },
      { formula: 'AlNH4(SO4)2·12H2O', name: 'aluminium ammonium sulfate dodecahydrate', published: '453.31' },
      { formula: 'CrK(SO4)2·12H2O', name: 'chromium(III) potassium sulfate dodecahydrate', published: '499.39' },
      {
        formula: 'H2C2O4·2H2O',
        name: 'oxalic acid dihydrate',
        published: '126.07',
        today: '126.06',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4288',
    rows: [{ formula: 'K4Fe(CN)6·3H2O', name: 'potassium hexacyanoferrate(II) trihydrate', published: '422.39' }],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4277',
    rows: [{ formula: 'KOCO(CHOH)2COOH', name: 'potassium hydrogen tartrate', published: '188.18' }],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4012',
    rows: [{ formula: 'Al2(SO4)3·18H2O', name: 'aluminium sulfate octadecahydrate', published: '666.40' }],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4333',
    rows: [
      {
        formula: 'Na2B4O7·10H2O',
        name: 'sodium tetraborate decahydrate (borax)',
        published: '381.38',
        today: '381.36',
        weights: { name: 'older', extends: 'abridged', values: { Na: '22.99', B: '10.81', O: '16.00', H: '1.008' } },
        why: 'atomic weights rounded before they were summed',
      },
    ],
  },
  {
    source:
      'ACS Reagent Chemicals (American Chemical Society, online edition 2017, eISBN 9780841230460), Part 4 monograph, doi:10.1021/acsreagents.4348',
    rows: [{ formula: 'HCOONa', name: 'sodium formate', published: '68.01' }],
  },
  {
    source: 'USP 28-NF 23 (2005) and USP 32 monograph Cupric Sulfate',
    rows: [
      {
        formula: 'CuSO4·5H2O',
        name: 'copper(II) sulfate pentahydrate',
        published: '249.69',
        today: '249.68',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
    ],
  },
  {
    source: 'USP 28-NF 23 (2005) monograph Ferrous Sulfate',
    rows: [
      {
        formula: 'FeSO4·7H2O',
        name: 'iron(II) sulfate heptahydrate',
        published: '278.02',
        today: '278.01',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
    ],
  },
  {
    source: 'USP 28-NF 23 (2005) and USP 32 monograph Ferrous Sulfate',
    rows: [
      {
        formula: 'FeSO4',
        name: 'iron(II) sulfate, anhydrous',
        published: '151.91',
        today: '151.90',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'USP 32-NF 27 (2009) and USP 29 monograph Zinc Sulfate',
    rows: [
      {
        formula: 'ZnSO4·H2O',
        name: 'zinc sulfate monohydrate',
        published: '179.46',
        today: '179.45',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
      {
        formula: 'ZnSO4',
        name: 'zinc sulfate, anhydrous',
        published: '161.46',
        today: '161.44',
        weights: { name: 'older', extends: 'abridged', values: { Zn: '65.39', S: '32.07', O: '16.00' } },
        why: 'atomic weights rounded before they were summed',
      },
    ],
  },
  {
    source: 'USP monograph Zinc Acetate (copy without edition; its text matches the USP 28 layout)',
    rows: [
      {
        formula: 'C4H6O4Zn',
        name: 'zinc acetate, anhydrous',
        published: '183.48',
        today: '183.47',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
    ],
  },
  {
    source: 'USP 28-NF 23 (2005), Reagent Specifications',
    rows: [
      { formula: 'C4H6CdO4·2H2O', name: 'cadmium acetate dihydrate', published: '266.53' },
      { formula: 'Cd(NO3)2·4H2O', name: 'cadmium nitrate tetrahydrate', published: '308.48' },
    ],
  },
  {
    source: 'USP 32-NF 27 (2009) monograph Manganese Sulfate',
    rows: [
      {
        formula: 'MnSO4·H2O',
        name: 'manganese(II) sulfate monohydrate',
        published: '169.02',
        today: '169.01',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'USP 28-NF 23 (2005) and USP 32 monograph Sodium Thiosulfate',
    rows: [
      {
        formula: 'Na2S2O3·5H2O',
        name: 'sodium thiosulfate pentahydrate',
        published: '248.19',
        today: '248.17',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
      {
        formula: 'Na2S2O3',
        name: 'sodium thiosulfate, anhydrous',
        published: '158.11',
        today: '158.10',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'USP 35-NF 30 (2012) monograph Monobasic Sodium Phosphate',
    rows: [{ formula: 'NaH2PO4·2H2O', name: 'sodium dihydrogen phosphate dihydrate', published: '156.01' }],
  },
  {
    source: 'USP 32-NF 27 (2009) monograph Aluminum Sulfate',
    rows: [
      {
        formula: 'Al2(SO4)3',
        name: 'aluminium sulfate, anhydrous',
        published: '342.15',
        today: '342.13',
        weights: iupac2007,
        why: 'IUPAC table of 2007; the same monograph also prints 342.16',
      },
    ],
  },
  {
    source: 'USP 29-NF 24 (2006), Reagent Specifications',
    rows: [
      {
        formula: 'C4H6BaO4',
        name: 'barium acetate',
        published: '255.43',
        today: '255.42',
        weights: { name: 'older', extends: 'abridged', values: { Ba: '137.34' } },
        why: 'Ba 137.34, the value before 1975 (year from memory)',
      },
      { formula: 'BaCl2·2H2O', name: 'barium chloride dihydrate', published: '244.26' },
      { formula: 'Ba(OH)2·8H2O', name: 'barium hydroxide octahydrate', published: '315.46' },
      { formula: 'Ba(NO3)2', name: 'barium nitrate', published: '261.34' },
      {
        formula: 'Mg(NO3)2·6H2O',
        name: 'magnesium nitrate hexahydrate',
        published: '256.41',
        today: '256.40',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
      { formula: 'MgO', name: 'magnesium oxide', published: '40.30' },
      {
        formula: 'MgSO4·7H2O',
        name: 'magnesium sulfate heptahydrate',
        published: '246.48',
        today: '246.47',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
      {
        formula: 'MgSO4',
        name: 'magnesium sulfate, anhydrous',
        published: '120.37',
        today: '120.36',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'USP 35-NF 30 (2012) monograph Magnesium Chloride',
    rows: [
      {
        formula: 'MgCl2',
        name: 'magnesium chloride, anhydrous',
        published: '95.21',
        today: '95.20',
        weights: iupac2007,
        why: 'IUPAC table of 2007; today the sum is the tie 95.205, which half up also rounds to the published value',
      },
    ],
  },
  {
    source: 'JECFA specification Cupric Sulfate (FAO Food and Nutrition Paper 52, 1992; metals limits revised 2003)',
    rows: [{ formula: 'CuSO4·5H2O', name: 'copper(II) sulfate pentahydrate', published: '249.68' }],
  },
  {
    source:
      'Wikipedia, Copper(II) sulfate, infobox; the page cites reference 2 there (from memory: CRC Handbook of Chemistry and Physics, 92nd ed., 2011, p. 4.62; the CRC page itself was not seen)',
    rows: [
      {
        formula: 'CuSO4·5H2O',
        name: 'copper(II) sulfate pentahydrate',
        published: '249.685',
        today: '249.68',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'public periodic-table site, compound page of barium dichloride dihydrate: formula weight',
    rows: [
      {
        formula: 'BaCl2·2H2O',
        name: 'barium chloride dihydrate',
        published: '244.263',
        today: '244.26',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
    ],
  },
  {
    source:
      'GB/T 25865-2010 (Chinese national standard, feed additive zinc sulphate), which states the 2007 international atomic weights',
    rows: [
      {
        formula: 'ZnSO4·H2O',
        name: 'zinc sulfate monohydrate',
        published: '179.47',
        today: '179.45',
        weights: iupac1997,
        why: 'Zn 65.39 of the IUPAC table of 1997, though the source names the table of 2007',
      },
    ],
  },
  {
    source: 'Data sheet with the text of The Merck Index (edition not stated), Ferric Sulfate',
    rows: [
      {
        formula: 'Fe2(SO4)3',
        name: 'iron(III) sulfate',
        published: '399.88',
        today: '399.86',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'Data sheet with the text of The Merck Index (edition not stated), Aluminum Potassium Sulfate',
    rows: [
      {
        formula: 'KAl(SO4)2',
        name: 'aluminium potassium sulfate, anhydrous',
        published: '258.21',
        today: '258.19',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
    ],
  },
  {
    source: 'Wikipedia, Cobalt(II) nitrate, infobox',
    rows: [
      {
        formula: 'Co(NO3)2',
        name: 'cobalt(II) nitrate, anhydrous',
        published: '182.943',
        today: '182.941',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
      { formula: 'Co(NO3)2·6H2O', name: 'cobalt(II) nitrate hexahydrate', published: '291.03' },
    ],
  },
  {
    source:
      'Supplier reprint of the table “Composition of concentrated reagent-grade acids, ammonium hydroxide, and sodium and potassium hydroxide solutions” (formula weights on the 12C = 12 scale, edition not stated)',
    rows: [
      { formula: 'KOH', name: 'potassium hydroxide', published: '56.105' },
      {
        formula: 'HNO3',
        name: 'nitric acid',
        published: '63.013',
        today: '63.012',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
      {
        formula: 'H3PO4',
        name: 'phosphoric acid',
        published: '97.995',
        today: '97.994',
        weights: iupac2007,
        why: 'IUPAC table of 2007',
      },
      {
        formula: 'HClO4',
        name: 'perchloric acid',
        published: '100.458',
        today: '100.45',
        weights: iupac1997,
        why: 'IUPAC table of 1997',
      },
    ],
  },
  {
    source:
      'thermodynamic data set, format jan19, based on LLNL data0.3245r46 (Wolery et al., 1986), column of mole weights; 24-element subset redistributed in a public repository',
    rows: [
      {
        formula: 'CaSO4·0.5H2O',
        name: 'bassanite',
        published: '145.1452',
        today: '145.14',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'MgSO4·7H2O',
        name: 'epsomite',
        published: '246.4690',
        today: '246.47',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'MgSO4·H2O',
        name: 'kieserite',
        published: '138.3778',
        today: '138.38',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'FeSO4·7H2O',
        name: 'melanterite',
        published: '278.0110',
        today: '278.01',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'Na2SO4',
        name: 'thenardite',
        published: '142.0371',
        today: '142.04',
        weights: llnlFiveDecimals,
        why: 'element table of the data set, Na and P to five decimals',
      },
      {
        formula: 'CaCl2·2H2O',
        name: 'calcium chloride dihydrate',
        published: '147.0164',
        today: '147.01',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'MnCl2·4H2O',
        name: 'manganese(II) chloride tetrahydrate',
        published: '197.9048',
        today: '197.90',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'KMgCl3·6H2O',
        name: 'carnallite',
        published: '277.8535',
        today: '277.84',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'KMgClSO4·3H2O',
        name: 'kainite',
        published: '248.9595',
        today: '248.95',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'K2CO3·1.5H2O',
        name: 'potassium carbonate sesquihydrate',
        published: '165.2286',
        today: '165.226',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'UO2(NO3)2·6H2O',
        name: 'uranyl nitrate hexahydrate',
        published: '502.1288',
        today: '502.13',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'UO2SO4·2.5H2O',
        name: 'uranyl sulfate 2.5-hydrate',
        published: '411.1234',
        today: '411.12',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'KCl',
        name: 'sylvite',
        published: '74.5513',
        today: '74.55',
        weights: llnl,
        why: 'element table of the data set',
      },
      {
        formula: 'CaCO3',
        name: 'calcite',
        published: '100.0892',
        today: '100.086',
        weights: llnl,
        why: 'element table of the data set',
      },
    ],
  },
]
