/** An acid that is taken as fully dissociated in dilute aqueous solution. */
export interface StrongAcid {
  /** The formula, as people write it. */
  readonly formula: string
  /** The anion that is left when every hydron has gone. */
  readonly anion: string
  /** How many hydrons one formula unit gives. */
  readonly hydrons: number
  /** Where it is listed. */
  readonly source: string
}

/** A cation whose dissolved salts are taken as fully dissociated. */
export interface SaltCation {
  /** How the cation stands in formulas, without its charge. */
  readonly written: string
  /** The charges it has in dissolved salts. */
  readonly charges: readonly number[]
  /** Whether its hydroxide is a strong base where it dissolves. */
  readonly strongBase: boolean
  /** Where it is listed. */
  readonly source: string
}

/** An anion whose dissolved salts are taken as fully dissociated. */
export interface SaltAnion {
  /** How the anion stands in formulas, without its charge. */
  readonly written: string
  /** Its charge. */
  readonly charge: number
  /** Where it is listed. */
  readonly source: string
}

/** A salt that stays largely undissociated in water. */
export interface WeakSalt {
  /** The formula, as people write it. */
  readonly formula: string
  /** Where it is listed. */
  readonly source: string
}

const acids = 'OpenStax, Chemistry 2e, section 4.2, Table 4.2 (common strong acids)'
const solubility = 'OpenStax, Chemistry 2e, section 4.2, Table 4.1 (solubilities of common ionic compounds)'
const bases = 'OpenStax, Chemistry 2e, section 14.3 (strong bases), from memory'
const named = 'OpenStax, Chemistry 2e, section 2.6 (monatomic and polyatomic ions), from memory'
const usual = 'Common practice, no source.'

/** The strong acids. Sulfuric acid is listed with both hydrons; an option of the ionic equation keeps the second. */
export const strongAcids: readonly StrongAcid[] = [
  { formula: 'HCl', anion: 'Cl^-', hydrons: 1, source: acids },
  { formula: 'HBr', anion: 'Br^-', hydrons: 1, source: acids },
  { formula: 'HI', anion: 'I^-', hydrons: 1, source: acids },
  { formula: 'HNO3', anion: 'NO3^-', hydrons: 1, source: acids },
  { formula: 'HClO4', anion: 'ClO4^-', hydrons: 1, source: acids },
  { formula: 'H2SO4', anion: 'SO4^2-', hydrons: 2, source: acids },
  { formula: 'HClO3', anion: 'ClO3^-', hydrons: 1, source: usual },
  { formula: 'HMnO4', anion: 'MnO4^-', hydrons: 1, source: usual },
]

/** The cations of dissolved salts. */
export const saltCations: readonly SaltCation[] = [
  { written: 'NH4', charges: [1], strongBase: false, source: solubility },
  { written: 'Li', charges: [1], strongBase: true, source: solubility },
  { written: 'Na', charges: [1], strongBase: true, source: solubility },
  { written: 'K', charges: [1], strongBase: true, source: solubility },
  { written: 'Rb', charges: [1], strongBase: true, source: solubility },
  { written: 'Cs', charges: [1], strongBase: true, source: solubility },
  { written: 'Be', charges: [2], strongBase: false, source: named },
  { written: 'Mg', charges: [2], strongBase: false, source: named },
  { written: 'Ca', charges: [2], strongBase: true, source: bases },
  { written: 'Sr', charges: [2], strongBase: true, source: bases },
  { written: 'Ba', charges: [2], strongBase: true, source: bases },
  { written: 'Al', charges: [3], strongBase: false, source: named },
  { written: 'Ga', charges: [3], strongBase: false, source: usual },
  { written: 'In', charges: [3], strongBase: false, source: usual },
  { written: 'Tl', charges: [1], strongBase: true, source: usual },
  { written: 'Sn', charges: [2], strongBase: false, source: named },
  { written: 'Pb', charges: [2], strongBase: false, source: named },
  { written: 'Bi', charges: [3], strongBase: false, source: usual },
  { written: 'Sc', charges: [3], strongBase: false, source: usual },
  { written: 'Y', charges: [3], strongBase: false, source: usual },
  { written: 'VO', charges: [2], strongBase: false, source: usual },
  { written: 'V', charges: [2, 3], strongBase: false, source: usual },
  { written: 'Ti', charges: [3], strongBase: false, source: usual },
  { written: 'Cr', charges: [2, 3], strongBase: false, source: named },
  { written: 'Mn', charges: [2], strongBase: false, source: named },
  { written: 'Fe', charges: [2, 3], strongBase: false, source: named },
  { written: 'Co', charges: [2, 3], strongBase: false, source: named },
  { written: 'Ni', charges: [2], strongBase: false, source: named },
  { written: 'Cu', charges: [2], strongBase: false, source: named },
  { written: 'Zn', charges: [2], strongBase: false, source: named },
  { written: 'Cd', charges: [2], strongBase: false, source: named },
  { written: 'Ag', charges: [1], strongBase: false, source: named },
  { written: 'Hg2', charges: [2], strongBase: false, source: named },
  { written: 'Hg', charges: [2], strongBase: false, source: named },
  { written: 'UO2', charges: [2], strongBase: false, source: usual },
  { written: 'Th', charges: [4], strongBase: false, source: usual },
  { written: 'La', charges: [3], strongBase: false, source: usual },
  { written: 'Ce', charges: [3, 4], strongBase: false, source: usual },
  { written: 'Pr', charges: [3], strongBase: false, source: usual },
  { written: 'Nd', charges: [3], strongBase: false, source: usual },
  { written: 'Sm', charges: [3], strongBase: false, source: usual },
  { written: 'Eu', charges: [2, 3], strongBase: false, source: usual },
  { written: 'Gd', charges: [3], strongBase: false, source: usual },
  { written: 'Tb', charges: [3], strongBase: false, source: usual },
  { written: 'Dy', charges: [3], strongBase: false, source: usual },
  { written: 'Ho', charges: [3], strongBase: false, source: usual },
  { written: 'Er', charges: [3], strongBase: false, source: usual },
  { written: 'Tm', charges: [3], strongBase: false, source: usual },
  { written: 'Yb', charges: [3], strongBase: false, source: usual },
  { written: 'Lu', charges: [3], strongBase: false, source: usual },
]

/** The anions of dissolved salts. */
export const saltAnions: readonly SaltAnion[] = [
  { written: 'F', charge: -1, source: solubility },
  { written: 'Cl', charge: -1, source: solubility },
  { written: 'Br', charge: -1, source: solubility },
  { written: 'I', charge: -1, source: solubility },
  { written: 'NO3', charge: -1, source: solubility },
  { written: 'ClO3', charge: -1, source: solubility },
  { written: 'C2H3O2', charge: -1, source: solubility },
  { written: 'HCO3', charge: -1, source: solubility },
  { written: 'SO4', charge: -2, source: solubility },
  { written: 'CO3', charge: -2, source: solubility },
  { written: 'CrO4', charge: -2, source: solubility },
  { written: 'PO4', charge: -3, source: solubility },
  { written: 'S', charge: -2, source: solubility },
  { written: 'OH', charge: -1, source: solubility },
  { written: 'CH3COO', charge: -1, source: named },
  { written: 'CH3CO2', charge: -1, source: named },
  { written: 'HCOO', charge: -1, source: usual },
  { written: 'CHO2', charge: -1, source: usual },
  { written: 'C2O4', charge: -2, source: named },
  { written: 'HC2O4', charge: -1, source: usual },
  { written: 'C4H4O6', charge: -2, source: usual },
  { written: 'C6H5O7', charge: -3, source: usual },
  { written: 'C6H5COO', charge: -1, source: usual },
  { written: 'CN', charge: -1, source: named },
  { written: 'SCN', charge: -1, source: usual },
  { written: 'OCN', charge: -1, source: usual },
  { written: 'N3', charge: -1, source: named },
  { written: 'NO2', charge: -1, source: named },
  { written: 'ClO', charge: -1, source: named },
  { written: 'ClO2', charge: -1, source: named },
  { written: 'ClO4', charge: -1, source: named },
  { written: 'BrO3', charge: -1, source: usual },
  { written: 'IO3', charge: -1, source: usual },
  { written: 'IO4', charge: -1, source: usual },
  { written: 'MnO4', charge: -1, source: named },
  { written: 'Cr2O7', charge: -2, source: named },
  { written: 'HSO4', charge: -1, source: named },
  { written: 'SO3', charge: -2, source: named },
  { written: 'HSO3', charge: -1, source: named },
  { written: 'S2O3', charge: -2, source: usual },
  { written: 'S4O6', charge: -2, source: usual },
  { written: 'S2O8', charge: -2, source: usual },
  { written: 'HS', charge: -1, source: usual },
  { written: 'HPO4', charge: -2, source: named },
  { written: 'H2PO4', charge: -1, source: named },
  { written: 'HPO3', charge: -2, source: usual },
  { written: 'H2PO2', charge: -1, source: usual },
  { written: 'P2O7', charge: -4, source: usual },
  { written: 'AsO4', charge: -3, source: usual },
  { written: 'H2AsO4', charge: -1, source: usual },
  { written: 'SeO4', charge: -2, source: usual },
  { written: 'SiF6', charge: -2, source: usual },
  { written: 'BF4', charge: -1, source: usual },
  { written: 'PF6', charge: -1, source: usual },
  { written: 'SiO3', charge: -2, source: usual },
  { written: 'MoO4', charge: -2, source: usual },
  { written: 'WO4', charge: -2, source: usual },
  { written: 'VO3', charge: -1, source: usual },
  { written: 'B4O7', charge: -2, source: usual },
]

/** Salts of these ions that stay largely undissociated. */
export const weakSalts: readonly WeakSalt[] = [
  { formula: 'HgCl2', source: usual },
  { formula: 'HgBr2', source: usual },
  { formula: 'Hg(CN)2', source: usual },
  { formula: 'Hg(CH3COO)2', source: usual },
  { formula: 'Hg(C2H3O2)2', source: usual },
]
