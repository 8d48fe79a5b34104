import { crc } from './solubility-sources.js'
import type { SolubilityTable } from './solubility-table.js'

/** Sulfates: mass percents as printed, by the solid that is stable. */
export const sulfateSolubilities: readonly SolubilityTable[] = [
  {
    salt: 'CuSO4',
    name: 'copper(II) sulfate',
    per: '100 g of solution',
    source: crc,
    note: 'The pentahydrate goes over into the trihydrate at about 95.9 °C.',
    phases: [
      {
        crystal: 'CuSO4·5H2O',
        evidence: 'from memory',
        celsius: [0, 10, 20, 25, 30, 40, 50, 60, 70, 80, 90],
        printed: ['12.4', '14.4', '16.7', '18.0', '19.3', '22.2', '25.4', '28.8', '32.4', '36.3', '40.3'],
      },
      {
        crystal: 'CuSO4·3H2O',
        evidence: 'from memory',
        celsius: [100],
        printed: ['43.5'],
      },
    ],
  },
  {
    salt: 'ZnSO4',
    name: 'zinc sulfate',
    per: '100 g of solution',
    source: crc,
    phases: [
      {
        crystal: 'ZnSO4·7H2O',
        evidence: 'solid-phase column',
        celsius: [0, 10, 20, 25, 30],
        printed: ['29.1', '32.0', '35.0', '36.6', '38.2'],
      },
      {
        crystal: 'ZnSO4·6H2O',
        evidence: 'solid-phase column',
        celsius: [40, 50],
        printed: ['41.3', '43.0'],
      },
      {
        crystal: 'ZnSO4·H2O',
        evidence: 'from memory',
        celsius: [60, 70, 80, 90, 100],
        printed: ['42.1', '41.0', '39.9', '38.8', '37.6'],
      },
    ],
  },
  {
    salt: 'MgSO4',
    name: 'magnesium sulfate',
    per: '100 g of solution',
    source: crc,
    note: 'Near 0 °C the stable solid is now usually written as the 11-hydrate; the heptahydrate is metastable there.',
    phases: [
      {
        crystal: 'MgSO4·12H2O',
        evidence: 'from memory',
        celsius: [0],
        printed: ['18.2'],
      },
      {
        crystal: 'MgSO4·7H2O',
        evidence: 'solid-phase column',
        celsius: [10, 20, 25, 30, 40],
        printed: ['21.7', '25.1', '26.3', '28.2', '30.9'],
      },
      {
        crystal: 'MgSO4·6H2O',
        evidence: 'solid-phase column',
        celsius: [50, 60],
        printed: ['33.4', '35.6'],
      },
      {
        crystal: 'MgSO4·H2O',
        evidence: 'solid-phase column',
        celsius: [70, 80, 90, 100],
        printed: ['36.9', '35.9', '34.7', '33.3'],
      },
    ],
  },
  {
    salt: 'NiSO4',
    name: 'nickel(II) sulfate',
    per: '100 g of solution',
    source: crc,
    note: 'Below 31.5 °C the hexahydrate is metastable and more soluble (44.4 g per 100 g water at 20 °C in another table).',
    phases: [
      {
        crystal: 'NiSO4·7H2O',
        evidence: 'phase-change mark',
        celsius: [0, 10, 20, 25, 30],
        printed: ['21.4', '24.4', '27.4', '28.8', '30.3'],
      },
      {
        crystal: 'NiSO4·6H2O',
        evidence: 'phase-change mark',
        celsius: [40, 50, 60, 70, 80, 90, 100],
        printed: ['32.0', '34.1', '35.8', '37.7', '39.9', '42.3', '44.8'],
      },
    ],
  },
  {
    salt: 'FeSO4',
    name: 'iron(II) sulfate',
    per: '100 g of solution',
    source: crc,
    phases: [
      {
        crystal: 'FeSO4·7H2O',
        evidence: 'from memory',
        celsius: [0, 10, 20, 25, 30, 40, 50],
        printed: ['13.5', '17.0', '20.8', '22.8', '24.8', '28.8', '32.8'],
      },
      {
        crystal: 'FeSO4·4H2O',
        evidence: 'from memory',
        celsius: [60],
        printed: ['35.5'],
      },
      {
        crystal: 'FeSO4·H2O',
        evidence: 'from memory',
        celsius: [70, 80, 90, 100],
        printed: ['33.6', '30.4', '27.1', '24.0'],
      },
    ],
  },
  {
    salt: 'CoSO4',
    name: 'cobalt(II) sulfate',
    per: '100 g of solution',
    source: crc,
    phases: [
      {
        crystal: 'CoSO4·7H2O',
        evidence: 'from memory',
        celsius: [0, 10, 20, 25, 30, 40],
        printed: ['19.9', '23.0', '26.1', '27.7', '29.2', '32.3'],
      },
      {
        crystal: 'CoSO4·6H2O',
        evidence: 'from memory',
        celsius: [50, 60],
        printed: ['34.4', '35.9'],
      },
      {
        crystal: 'CoSO4·H2O',
        evidence: 'from memory',
        celsius: [70, 80, 90, 100],
        printed: ['35.5', '33.2', '30.6', '27.8'],
      },
    ],
  },
  {
    salt: 'Na2SO4',
    name: 'sodium sulfate',
    per: '100 g of solution',
    source: crc,
    note: 'The decahydrate goes over into the anhydrous salt at 32.38 °C.',
    phases: [
      {
        crystal: 'Na2SO4·10H2O',
        evidence: 'solid-phase column',
        celsius: [20, 25, 30],
        printed: ['16.13', '21.94', '29.22'],
      },
      {
        crystal: 'Na2SO4',
        evidence: 'solid-phase column',
        celsius: [40, 50, 60, 70, 80, 90, 100],
        printed: ['32.35', '31.55', '30.90', '30.39', '30.02', '29.79', '29.67'],
      },
    ],
  },
  {
    salt: 'MnSO4',
    name: 'manganese(II) sulfate',
    per: '100 g of solution',
    source: crc,
    phases: [
      {
        crystal: 'MnSO4·7H2O',
        evidence: 'from memory',
        celsius: [0],
        printed: ['34.6'],
      },
      {
        crystal: 'MnSO4·5H2O',
        evidence: 'from memory',
        celsius: [10, 20],
        printed: ['37.3', '38.6'],
      },
      {
        crystal: 'MnSO4·H2O',
        evidence: 'from memory',
        celsius: [25, 30, 40, 50, 60, 70, 80, 90, 100],
        printed: ['38.9', '38.9', '37.7', '36.3', '34.6', '32.8', '30.8', '28.8', '26.7'],
      },
    ],
  },
  {
    salt: '(NH4)2SO4',
    name: 'ammonium sulfate',
    per: '100 g of solution',
    source: crc,
    phases: [
      {
        crystal: '(NH4)2SO4',
        evidence: 'from memory',
        celsius: [0, 10, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100],
        printed: ['41.3', '42.1', '42.9', '43.3', '43.8', '44.7', '45.6', '46.6', '47.5', '48.5', '49.5', '50.5'],
      },
    ],
  },
  {
    salt: 'K2SO4',
    name: 'potassium sulfate',
    per: '100 g of solution',
    source: crc,
    phases: [
      {
        crystal: 'K2SO4',
        evidence: 'from memory',
        celsius: [0, 10, 20, 25, 30, 40, 50, 60, 70, 80, 90, 100],
        printed: ['7.11', '8.46', '9.95', '10.7', '11.4', '12.9', '14.2', '15.5', '16.7', '17.7', '18.6', '19.3'],
      },
    ],
  },
  {
    salt: 'Al2(SO4)3',
    name: 'aluminium sulfate',
    per: '100 g of solution',
    source: crc,
    note: '18 is an idealised number of water; 16 to 17 is found in practice.',
    phases: [
      {
        crystal: 'Al2(SO4)3·18H2O',
        evidence: 'solid-phase column',
        celsius: [0, 25, 30, 40, 50, 60, 70, 80, 90, 100],
        printed: ['27.5', '27.8', '28.2', '29.2', '30.7', '32.6', '34.9', '37.6', '40.7', '44.2'],
      },
    ],
  },
]
