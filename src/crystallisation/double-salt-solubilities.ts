import { blanchard, blanchardDoubleSalt, olderHandbook, perry, supplier, unnamed } from './solubility-sources.js'
import type { SolubilityTable } from './solubility-table.js'

/** Double salts, complexes and acids that the large table leaves out. */
export const doubleSaltSolubilities: readonly SolubilityTable[] = [
  {
    salt: '(NH4)2Fe(SO4)2',
    name: 'ammonium iron(II) sulfate',
    per: '100 g of water',
    source: blanchardDoubleSalt,
    note: 'The book warns that it counts the anhydrous salt. Another table (17.8 at 0 °C, 26.9 at 20 °C) does not say what it counts and is left out.',
    phases: [
      {
        crystal: '(NH4)2Fe(SO4)2·6H2O',
        evidence: 'from memory',
        celsius: [0, 10, 20, 30, 40, 50, 70],
        printed: ['12', '17', '22', '28', '33', '40', '52'],
      },
    ],
  },
  {
    salt: 'KAl(SO4)2',
    name: 'potassium aluminium sulfate',
    per: '100 g of water',
    source: supplier,
    note: 'Two tables part widely between 40 and 60 °C; plan nothing there on one of them alone. The alum melts in its own water near 92 °C.',
    phases: [
      {
        crystal: 'KAl(SO4)2·12H2O',
        evidence: 'formula of the row',
        celsius: [0, 20, 40, 60, 80, 90],
        printed: ['2.96', '6.01', '13.6', '33.3', '72', '109'],
      },
    ],
  },
  {
    salt: 'NH4Al(SO4)2',
    name: 'ammonium aluminium sulfate',
    per: '100 g of water',
    source: perry,
    note: 'Three tables spread by 24 % at 0 °C and by 53 % at 80 °C.',
    phases: [
      {
        crystal: 'NH4Al(SO4)2·12H2O',
        evidence: 'solid-phase column',
        celsius: [0, 10, 20],
        printed: ['2.1', '4.99', '7.74'],
      },
    ],
  },
  {
    salt: 'H2C2O4',
    name: 'oxalic acid',
    per: '100 g of water',
    source: blanchard,
    phases: [
      {
        crystal: 'H2C2O4·2H2O',
        evidence: 'formula of the row',
        celsius: [0, 25, 70],
        printed: ['3.5', '11.4', '64'],
      },
    ],
  },
  {
    salt: 'KHC4H4O6',
    name: 'potassium hydrogen tartrate',
    per: '100 g of water',
    source: unnamed,
    note: 'No primary source is named; another table has 0.6 at 20 °C.',
    phases: [
      {
        crystal: 'KHC4H4O6',
        evidence: 'from memory',
        celsius: [20, 100],
        printed: ['0.37', '6.10'],
      },
    ],
  },
  {
    salt: 'KCr(SO4)2',
    name: 'potassium chromium(III) sulfate',
    per: '100 g of water, weighed as crystals',
    source: olderHandbook,
    note: 'No series over temperature was found. The solution turns green and crystallises badly once heated above about 50 to 60 °C.',
    fromMemory: true,
    phases: [
      {
        crystal: 'KCr(SO4)2·12H2O',
        evidence: 'from memory',
        celsius: [25],
        printed: ['24.39'],
      },
    ],
  },
  {
    salt: 'K3[Fe(C2O4)3]',
    name: 'potassium trioxalatoferrate(III)',
    per: '100 g of water, weighed as crystals',
    source: olderHandbook,
    note: 'No series over temperature was found: two values of an older handbook.',
    fromMemory: true,
    phases: [
      {
        crystal: 'K3[Fe(C2O4)3]·3H2O',
        evidence: 'from memory',
        celsius: [0, 100],
        printed: ['4.7', '117.7'],
      },
    ],
  },
]
