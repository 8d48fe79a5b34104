import { blanchard, lange, perry, polish, supplier, wikipedia } from './solubility-sources.js'

/** A second opinion: another table of the same salt. */
export interface SecondTable {
  /** The anhydrous salt, written as in the first table. */
  readonly salt: string
  /** Where it is printed. */
  readonly source: string
  /** Temperatures in degrees Celsius, ascending. */
  readonly celsius: readonly number[]
  /** Grams of the anhydrous salt per 100 g of water, as printed. */
  readonly printed: readonly string[]
}

/**
 * Second tables, for comparison only: they name no solid. Rows that head their values with a hydrate are left out, as it is not
 * clear what they count.
 */
export const secondSolubilities: readonly SecondTable[] = [
  {
    salt: 'CuSO4',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['14.3', '20.7', '28.5', '40', '55', '75.4'],
  },
  {
    salt: 'CuSO4',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['14', '23', '75'],
  },
  {
    salt: 'ZnSO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 100],
    printed: ['41.6', '47.2', '53.8', '61.3', '70.5', '75.4', '71.1', '60.5'],
  },
  {
    salt: 'ZnSO4',
    source: polish,
    celsius: [0, 20],
    printed: ['41.9', '54.4'],
  },
  {
    salt: 'MgSO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100],
    printed: ['25.5', '30.4', '35.1', '39.7', '44.7', '50.4', '54.8', '59.2', '54.8', '52.9', '50.2'],
  },
  {
    salt: 'MgSO4',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['27', '39', '74'],
  },
  {
    salt: 'FeSO4',
    source: wikipedia,
    celsius: [20, 40, 50, 60, 70, 90, 100],
    printed: ['28.8', '40', '48', '60', '73.3', '101', '79.9'],
  },
  {
    salt: 'FeSO4',
    source: blanchard,
    celsius: [0, 30, 90],
    printed: ['16', '33', '43'],
  },
  {
    salt: 'CoCl2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['43.5', '47.7', '52.9', '59.7', '69.5', '93.8', '97.6', '101', '106'],
  },
  {
    salt: 'CoCl2',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['42', '53', '104'],
  },
  {
    salt: 'CoSO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['25.5', '30.5', '36.1', '42', '48.8', '55', '53.8', '45.3', '38.9'],
  },
  {
    salt: 'CoSO4',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['26', '39', '83'],
  },
  {
    salt: 'Na2CO3',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['7', '12.5', '21.5', '39.7', '49', '46', '43.9', '43.9', '45.5'],
  },
  {
    salt: 'Na2CO3',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['7', '21.5', '48.5', '46.4', '45.8', '45.5'],
  },
  {
    salt: 'Na2S2O3',
    source: wikipedia,
    celsius: [0, 20, 40, 80, 100],
    printed: ['71.5', '73', '77.6', '90.8', '97.2'],
  },
  {
    salt: 'KNO3',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100],
    printed: ['13.3', '20.9', '31.6', '45.8', '63.9', '85.5', '110.0', '138', '169', '202', '246'],
  },
  {
    salt: 'KNO3',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['13.3', '31.6', '63.9', '110.0', '169', '246'],
  },
  {
    salt: 'NaCl',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100],
    printed: ['35.65', '35.72', '35.89', '36.09', '36.37', '36.69', '37.04', '37.46', '37.93', '38.47', '38.99'],
  },
  {
    salt: 'NaCl',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['35.7', '36.0', '36.6', '37.3', '38.4', '39.8'],
  },
  {
    salt: 'NH4Cl',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100],
    printed: ['29.4', '33.2', '37.2', '41.4', '45.8', '50.4', '55.3', '60.2', '65.6', '71.2', '77.3'],
  },
  {
    salt: 'NH4Cl',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['29.4', '37.2', '45.8', '55.2', '65.6', '77.3'],
  },
  {
    salt: 'NH4Cl',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['29', '39', '77'],
  },
  {
    salt: 'NH4Cl',
    source: supplier,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['29.7', '37.56', '46', '55.3', '65.6', '77.3'],
  },
  {
    salt: 'NH4Cl',
    source: perry,
    celsius: [0, 10, 20],
    printed: ['29.4', '33.3', '37.2'],
  },
  {
    salt: 'CaCl2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['59.5', '64.7', '74.5', '100', '128', '137', '147', '154', '159'],
  },
  {
    salt: 'CaCl2',
    source: polish,
    celsius: [0, 20, 60, 80, 100],
    printed: ['59.5', '74.5', '136.8', '147.0', '159'],
  },
  {
    salt: 'CaCl2',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['60', '88', '159'],
  },
  {
    salt: 'BaCl2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['31.2', '33.5', '35.8', '38.1', '40.8', '46.2', '52.5', '55.8', '59.4'],
  },
  {
    salt: 'BaCl2',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['31.6', '35.7', '40.7', '46.4', '52.4', '58.8'],
  },
  {
    salt: 'BaCl2',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['32', '37', '59'],
  },
  {
    salt: 'Pb(NO3)2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 100],
    printed: ['37.5', '46.2', '54.3', '63.4', '72.1', '91.6', '111', '133'],
  },
  {
    salt: 'Pb(NO3)2',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['38', '61', '139'],
  },
  {
    salt: 'Na2SO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['4.9', '9.1', '19.5', '40.8', '48.8', '45.3', '43.7', '42.7', '42.5'],
  },
  {
    salt: 'Na2SO4',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['5.0', '19.4', '48.8', '45.3', '43.7', '42.5'],
  },
  {
    salt: 'NaC2H3O2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['36.2', '40.8', '46.4', '54.6', '65.6', '139', '153', '161', '170'],
  },
  {
    salt: 'KClO3',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['3.3', '5.2', '7.3', '10.1', '13.9', '23.8', '37.5', '46', '56.3'],
  },
  {
    salt: 'NiCl2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 100],
    printed: ['53.4', '56.3', '66.8', '70.6', '73.2', '81.2', '86.6', '87.6'],
  },
  {
    salt: 'MnSO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['52.9', '59.7', '62.9', '62.9', '60', '53.6', '45.6', '40.9', '35.3'],
  },
  {
    salt: '(NH4)2SO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 80, 100],
    printed: ['70.6', '73', '75.4', '78.1', '81.2', '84.3', '87.4', '94.1', '103'],
  },
  {
    salt: '(NH4)2SO4',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['71', '77', '103'],
  },
  {
    salt: '(NH4)2SO4',
    source: perry,
    celsius: [0],
    printed: ['70.6'],
  },
  {
    salt: 'Na3PO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['4.5', '8.2', '12.1', '16.3', '20.2', '20.9', '60', '68.1', '77'],
  },
  {
    salt: 'K2Cr2O7',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 80],
    printed: ['4.7', '7', '12.3', '18.1', '26.3', '34', '45.6', '73'],
  },
  {
    salt: 'KMnO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60],
    printed: ['2.83', '4.31', '6.34', '9.03', '12.6', '16.9', '22.1'],
  },
  {
    salt: 'KCl',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 80, 90, 100],
    printed: ['28', '31.2', '34.2', '37.2', '40.1', '42.6', '45.8', '51.3', '53.9', '56.3'],
  },
  {
    salt: 'K2SO4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['7.4', '9.3', '11.1', '13', '14.8', '18.2', '21.4', '22.9', '24.1'],
  },
  {
    salt: 'NaHCO3',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60],
    printed: ['7', '8.1', '9.6', '11.1', '12.7', '16'],
  },
  {
    salt: 'NaHCO3',
    source: polish,
    celsius: [0, 20, 40, 60],
    printed: ['6.9', '9.6', '12.7', '16.4'],
  },
  {
    salt: 'NaNO3',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 100],
    printed: ['73', '80.8', '87.6', '94.9', '102', '122', '148', '180'],
  },
  {
    salt: 'NaNO3',
    source: polish,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['73', '88', '104', '124', '148', '180'],
  },
  {
    salt: 'Ba(NO3)2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 100],
    printed: ['4.95', '6.77', '9.02', '11.5', '14.1', '20.4', '27.2', '34.4'],
  },
  {
    salt: 'KOH',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 100],
    printed: ['95.7', '103', '112', '126', '134', '154', '178'],
  },
  {
    salt: 'KOH',
    source: polish,
    celsius: [0, 20, 50, 100],
    printed: ['97', '112', '140', '178'],
  },
  {
    salt: 'CuCl2',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90, 100],
    printed: ['68.6', '70.9', '73', '77.3', '87.6', '96.5', '104', '108', '120'],
  },
  {
    salt: 'CuCl2',
    source: blanchard,
    celsius: [0, 25, 100],
    printed: ['71', '79', '108'],
  },
  {
    salt: '(NH4)2C2O4',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 80, 90, 100],
    printed: ['2.2', '3.21', '4.45', '6.09', '8.18', '10.3', '14.0', '22.4', '27.9', '34.7'],
  },
  {
    salt: 'K3[Fe(CN)6]',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 60, 100],
    printed: ['30.2', '38', '46', '53', '59.3', '70', '91'],
  },
  {
    salt: 'Al2(SO4)3',
    source: wikipedia,
    celsius: [0, 10, 20, 30, 40, 50, 60, 70, 80, 90, 100],
    printed: ['31.2', '33.5', '36.4', '40.4', '45.8', '52.2', '59.2', '66.2', '73', '80.8', '89.0'],
  },
  {
    salt: 'Al2(SO4)3',
    source: supplier,
    celsius: [0, 20, 40, 60, 80, 100],
    printed: ['31.2', '36.44', '45.6', '58', '73', '89'],
  },
  {
    salt: 'Al2(SO4)3',
    source: perry,
    celsius: [0, 10, 20],
    printed: ['31.2', '33.5', '36.4'],
  },
  {
    salt: 'KAl(SO4)2',
    source: lange,
    celsius: [0, 10, 20, 30, 40, 60, 80, 90],
    printed: ['3.00', '3.99', '5.90', '8.39', '11.7', '24.8', '71.0', '109'],
  },
  {
    salt: 'KHC4H4O6',
    source: wikipedia,
    celsius: [20, 100],
    printed: ['0.6', '62'],
  },
]
