/** The oxidation numbers of some elements in salts, oxides and complexes. */
export interface OxidationRangeRow {
  /** The elements, by symbol. */
  readonly symbols: string
  /** Least and greatest of all that are known: what lies within is never doubted. */
  readonly known: readonly [least: number, greatest: number]
  /** Least and greatest of those that are usual in salts: what is suggested lies within. */
  readonly usual: readonly [least: number, greatest: number]
  /** Where the row is from. */
  readonly source: string
}

const common = 'Common practice, no source.'

/** The metals and metalloids that stand as cations, with their oxidation numbers. */
export const oxidationRanges: readonly OxidationRangeRow[] = [
  { symbols: 'Li Na K Rb Cs Fr', known: [1, 1], usual: [1, 1], source: common },
  { symbols: 'Be Mg Ca Sr Ba Ra Zn Cd', known: [2, 2], usual: [2, 2], source: common },
  { symbols: 'Al Sc Y', known: [3, 3], usual: [3, 3], source: common },
  { symbols: 'Hg', known: [1, 2], usual: [1, 2], source: common },
  { symbols: 'Ag', known: [1, 3], usual: [1, 1], source: common },
  { symbols: 'Cu', known: [1, 3], usual: [1, 2], source: common },
  { symbols: 'Ga In', known: [1, 3], usual: [3, 3], source: common },
  { symbols: 'Tl', known: [1, 3], usual: [1, 3], source: common },
  { symbols: 'La Nd Pm Sm Gd Ho Er Tm Yb Lu Ac Cf Es Fm Md No Lr', known: [2, 3], usual: [3, 3], source: common },
  { symbols: 'Eu', known: [2, 3], usual: [2, 3], source: common },
  { symbols: 'Ce', known: [2, 4], usual: [3, 4], source: common },
  { symbols: 'Pr Tb Dy', known: [2, 4], usual: [3, 3], source: common },
  { symbols: 'Zr Hf Th', known: [2, 4], usual: [4, 4], source: common },
  { symbols: 'Ti', known: [2, 4], usual: [3, 4], source: common },
  { symbols: 'Sn Pb', known: [2, 4], usual: [2, 4], source: common },
  { symbols: 'Ge', known: [-4, 4], usual: [4, 4], source: common },
  { symbols: 'Sb', known: [-3, 5], usual: [3, 5], source: common },
  { symbols: 'Bi', known: [3, 5], usual: [3, 3], source: common },
  { symbols: 'Fe', known: [2, 4], usual: [2, 3], source: common },
  { symbols: 'Co', known: [1, 4], usual: [2, 3], source: common },
  { symbols: 'Rh', known: [1, 4], usual: [3, 3], source: common },
  { symbols: 'Ni', known: [0, 4], usual: [2, 2], source: common },
  { symbols: 'Pd', known: [0, 4], usual: [2, 4], source: common },
  { symbols: 'V', known: [2, 5], usual: [2, 5], source: common },
  { symbols: 'Nb Ta', known: [2, 5], usual: [5, 5], source: common },
  { symbols: 'Pa', known: [3, 5], usual: [5, 5], source: common },
  { symbols: 'Cr', known: [1, 6], usual: [2, 6], source: common },
  { symbols: 'Mo W', known: [1, 6], usual: [4, 6], source: common },
  { symbols: 'Pt', known: [1, 6], usual: [2, 4], source: common },
  { symbols: 'Ir', known: [1, 6], usual: [3, 4], source: common },
  { symbols: 'Po', known: [2, 6], usual: [2, 4], source: common },
  { symbols: 'Mn', known: [1, 7], usual: [2, 4], source: common },
  { symbols: 'Tc Re', known: [1, 7], usual: [4, 7], source: common },
  { symbols: 'U', known: [2, 6], usual: [3, 6], source: common },
  { symbols: 'Np Pu', known: [3, 7], usual: [3, 6], source: common },
  { symbols: 'Am Cm Bk', known: [2, 6], usual: [3, 3], source: common },
  { symbols: 'Ru', known: [0, 8], usual: [2, 4], source: common },
  { symbols: 'Os', known: [0, 8], usual: [4, 8], source: common },
  { symbols: 'Au', known: [1, 5], usual: [1, 3], source: common },
]
