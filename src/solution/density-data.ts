import type { DensityTable } from './density-table.js'

const handbook =
  'CRC Handbook of Chemistry and Physics, 102nd edition (2021), Concentrative Properties of Aqueous Solutions, 20 °C, read in a public copy'

/** Densities of solutions against mass fraction, in the order of the mass fraction. */
export const densityTables: readonly DensityTable[] = [
  {
    substance: 'H2SO4',
    celsius: '20',
    source: handbook,
    points: [
      ['0 %', '0.9982 g/mL'], // water: OpenStax, Chemistry 2e, Appendix E
      ['1 %', '1.0049 g/mL'],
      ['5 %', '1.0318 g/mL'],
      ['10 %', '1.0661 g/mL'],
      ['20 %', '1.1398 g/mL'],
      ['30 %', '1.2191 g/mL'],
      ['40 %', '1.3028 g/mL'],
      ['50 %', '1.3952 g/mL'],
      ['60 %', '1.4987 g/mL'],
      ['66 %', '1.5646 g/mL'],
      ['70 %', '1.6105 g/mL'],
      ['76 %', '1.6810 g/mL'],
      ['80 %', '1.7272 g/mL'],
      ['84 %', '1.7693 g/mL'],
      ['90 %', '1.8144 g/mL'],
      ['92 %', '1.8240 g/mL'],
      ['94 %', '1.8312 g/mL'],
      ['96 %', '1.8355 g/mL'],
      ['98 %', '1.8361 g/mL'],
      ['100 %', '1.8305 g/mL'],
    ],
  },
  {
    substance: 'KOH',
    celsius: '20',
    source: handbook,
    points: [
      ['1 %', '1.0068 g/mL'],
      ['5 %', '1.0419 g/mL'],
      ['10 %', '1.0873 g/mL'],
      ['15 %', '1.1341 g/mL'],
      ['20 %', '1.1818 g/mL'],
      ['24 %', '1.2210 g/mL'],
      ['30 %', '1.2813 g/mL'],
      ['36 %', '1.3444 g/mL'],
      ['40 %', '1.3881 g/mL'],
      ['44 %', '1.4331 g/mL'],
      ['46 %', '1.4560 g/mL'],
      ['50 %', '1.5024 g/mL'],
    ],
  },
  {
    substance: 'C2H5OH',
    celsius: '20',
    source: handbook,
    points: [
      ['1 %', '0.9963 g/mL'],
      ['5 %', '0.9893 g/mL'],
      ['10 %', '0.9819 g/mL'],
      ['20 %', '0.9687 g/mL'],
      ['30 %', '0.9539 g/mL'],
      ['40 %', '0.9352 g/mL'],
      ['50 %', '0.9139 g/mL'],
      ['60 %', '0.8911 g/mL'],
      ['70 %', '0.8676 g/mL'],
      ['80 %', '0.8436 g/mL'],
      ['90 %', '0.8180 g/mL'],
      ['96 %', '0.8013 g/mL'],
      ['100 %', '0.7893 g/mL'],
    ],
  },
]
