import type { StockReagent } from './stock-strength.js'

const supplierTable =
  'a supplier’s table, Composition of concentrated reagent-grade acids, ammonium hydroxide, and sodium and potassium hydroxide solutions, read in three web pages that print the same figures'
const openStax =
  'OpenStax, Chemistry 2e, Appendix F, Composition of Commercial Acids and Bases; its density is the specific gravity'
const webPage =
  'web page, Molarity of Commercially Supplied Concentrated Acids and Bases; its density is the specific gravity at 25 °C'
const metalSupplier = 'a metal supplier’s web page, Molarities of Concentrated Acids and Bases'
const handbook =
  'CRC Handbook of Chemistry and Physics, 102nd edition (2021), Concentrative Properties of Aqueous Solutions, 20 °C, read in a public copy'
const usualStrength = 'usual commercial strength, from memory'
const peroxideData = 'supplier data for 30 % hydrogen peroxide, from memory'

/**
 * Concentrated acids, alkalis and hydrogen peroxide as they are sold, each strength as its source prints it, slips of the source
 * included: `checkConcentration` finds them. Nominal values: the assay on the bottle takes precedence.
 */
export const stockReagents: readonly StockReagent[] = [
  {
    name: 'sulfuric acid',
    formula: 'H2SO4',
    strengths: [
      { massFraction: '96 %', density: '1.84 g/mL', printed: '18 mol/L', source: supplierTable },
      { massFraction: '96 %', density: '1.84 g/mL', printed: '18.0 mol/L', source: openStax },
      { massFraction: '95 %', density: '1.84 g/mL', printed: '17.822 mol/L', source: webPage },
      { massFraction: '96 %', density: '1.8355 g/mL', printed: '17.966 mol/L', source: handbook },
      { massFraction: '98 %', density: '1.8361 g/mL', printed: '18.346 mol/L', source: handbook },
    ],
  },
  {
    name: 'hydrochloric acid',
    formula: 'HCl',
    strengths: [
      { massFraction: '37.2 %', density: '1.18 g/mL', printed: '12.1 mol/L', source: supplierTable },
      { massFraction: '36 %', density: '1.18 g/mL', printed: '11.6 mol/L', source: openStax },
      { massFraction: '37 %', density: '1.2 g/mL', printed: '12.178 mol/L', source: webPage },
      { massFraction: '36 %', density: '1.176 g/mL', printed: '11.61 mol/L', source: webPage },
      { massFraction: '32 %', density: '1.1594 g/mL', printed: '10.175 mol/L', source: handbook },
      { massFraction: '36 %', density: '1.1791 g/mL', printed: '11.642 mol/L', source: handbook },
      { massFraction: '38 %', density: '1.1886 g/mL', printed: '12.388 mol/L', source: handbook },
    ],
  },
  {
    name: 'nitric acid',
    formula: 'HNO3',
    strengths: [
      { massFraction: '69.6 %', density: '1.41 g/mL', printed: '15.6 mol/L', source: supplierTable },
      { massFraction: '71 %', density: '1.42 g/mL', printed: '16.0 mol/L', source: openStax },
      { massFraction: '70 %', density: '1.413 g/mL', printed: '15.698 mol/L', source: webPage },
      { massFraction: '70 %', density: '1.42 g/mL', printed: '15.8 mol/L', source: metalSupplier },
    ],
  },
  {
    name: 'phosphoric acid',
    formula: 'H3PO4',
    strengths: [
      { massFraction: '85.5 %', density: '1.71 g/mL', printed: '14.8 mol/L', source: supplierTable },
      { massFraction: '85 %', density: '1.70 g/mL', printed: '14.7 mol/L', source: openStax },
      { massFraction: '85 %', density: '1.685 g/mL', printed: '14.615 mol/L', source: webPage },
    ],
  },
  {
    name: 'acetic acid, glacial',
    formula: 'CH3COOH',
    strengths: [
      { massFraction: '99.8 %', density: '1.05 g/mL', printed: '17.4 mol/L', source: supplierTable },
      { massFraction: '99.5 %', density: '1.05 g/mL', printed: '17.4 mol/L', source: openStax },
      { massFraction: '99.6 %', density: '1.05 g/mL', printed: '17.4 mol/L', source: webPage },
      { massFraction: '100 %', density: '1.0477 g/mL', printed: '17.447 mol/L', source: handbook },
    ],
  },
  {
    name: 'perchloric acid',
    formula: 'HClO4',
    strengths: [
      { massFraction: '70.5 %', density: '1.67 g/mL', printed: '11.7 mol/L', source: supplierTable },
      { massFraction: '70 %', density: '1.67 g/mL', printed: '11.65 mol/L', source: openStax },
      {
        massFraction: '61.3 %',
        density: '1.67 g/mL',
        printed: '9.5 mol/L',
        source: supplierTable,
        note: 'the density printed is that of the 70 % acid; 1.54 g/mL fits the concentration',
      },
      { massFraction: '60 %', density: '1.54 g/mL', printed: '9.2 mol/L', source: usualStrength, fromMemory: true },
    ],
  },
  {
    name: 'hydrofluoric acid',
    formula: 'HF',
    strengths: [
      { massFraction: '49 %', density: '1.19 g/mL', printed: '28.9 mol/L', source: supplierTable },
      { massFraction: '40 %', density: '1.13 g/mL', printed: '22.6 mol/L', source: usualStrength, fromMemory: true },
    ],
  },
  {
    name: 'ammonia solution',
    formula: 'NH3',
    strengths: [
      {
        massFraction: '28.0 %',
        density: '0.90 g/mL',
        printed: '14.5 mol/L',
        source: supplierTable,
        note: 'the concentration fits the 56.6 % of NH4OH printed beside it, which are 27.5 % of NH3',
      },
      { massFraction: '56.6 %', basis: 'NH4OH', density: '0.90 g/mL', printed: '14.5 mol/L', source: supplierTable },
      { massFraction: '28 %', density: '0.90 g/mL', printed: '14.8 mol/L', source: openStax },
      { massFraction: '28 %', density: '0.90 g/mL', printed: '14.8 mol/L', source: webPage },
      { massFraction: '24 %', density: '0.9102 g/mL', printed: '12.826 mol/L', source: handbook },
      { massFraction: '26 %', density: '0.9040 g/mL', printed: '13.801 mol/L', source: handbook },
      { massFraction: '28 %', density: '0.8980 g/mL', printed: '14.764 mol/L', source: handbook },
      { massFraction: '30 %', density: '0.8920 g/mL', printed: '15.713 mol/L', source: handbook },
    ],
  },
  {
    name: 'sodium hydroxide solution',
    formula: 'NaOH',
    strengths: [
      { massFraction: '50.5 %', density: '1.53 g/mL', printed: '19.4 mol/L', source: supplierTable },
      { massFraction: '50 %', density: '1.53 g/mL', printed: '19.1 mol/L', source: openStax },
      { massFraction: '50.0 %', density: '1.515 g/mL', printed: '18.938 mol/L', source: webPage },
    ],
  },
  {
    name: 'potassium hydroxide solution',
    formula: 'KOH',
    strengths: [
      { massFraction: '45 %', density: '1.45 g/mL', printed: '11.7 mol/L', source: supplierTable },
      { massFraction: '45.0 %', density: '1.456 g/mL', printed: '11.677 mol/L', source: webPage },
      { massFraction: '44 %', density: '1.4331 g/mL', printed: '11.239 mol/L', source: handbook },
      { massFraction: '46 %', density: '1.4560 g/mL', printed: '11.938 mol/L', source: handbook },
    ],
  },
  {
    name: 'hydrogen peroxide',
    formula: 'H2O2',
    strengths: [
      { massFraction: '30 %', density: '1.11 g/mL', printed: '9.79 mol/L', source: peroxideData, fromMemory: true },
    ],
  },
  {
    name: 'formic acid',
    formula: 'HCOOH',
    strengths: [
      {
        massFraction: '90 %',
        density: '1.13 g/mL',
        printed: '23.6 mol/L',
        source: supplierTable,
        note: 'the density printed does not belong to 90 % acid; about 1.205 g/mL fits the concentration',
      },
      { massFraction: '95 %', density: '1.22 g/mL', printed: '25.179 mol/L', source: webPage },
      { massFraction: '70 %', density: '1.1586 g/mL', printed: '17.619 mol/L', source: handbook },
    ],
  },
]
