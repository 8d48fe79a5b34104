/** Least and greatest usual oxidation number of an element in salts. */
export interface OxidationRangeRow {
  /** The elements with this range. */
  readonly symbols: string
  readonly least: number
  readonly greatest: number
  /** Where the row is from. */
  readonly source: string
}

const common = 'Common practice, no source; wide on purpose: what lies within is never doubted.'

/** The metals with the oxidation numbers they have in salts, oxides and complexes. */
export const oxidationRanges: readonly OxidationRangeRow[] = [
  { symbols: 'Li Na K Rb Cs Fr', least: 1, greatest: 1, source: common },
  { symbols: 'Be Mg Ca Sr Ba Ra Zn Cd', least: 2, greatest: 2, source: common },
  { symbols: 'Al', least: 3, greatest: 3, source: common },
  { symbols: 'Sc Y', least: 3, greatest: 3, source: common },
  { symbols: 'Hg', least: 1, greatest: 2, source: common },
  { symbols: 'Ag Cu Ga In Tl', least: 1, greatest: 3, source: common },
  { symbols: 'La Nd Pm Sm Eu Gd Ho Er Tm Yb Lu Ac', least: 2, greatest: 3, source: common },
  { symbols: 'Es Fm Md No Lr Cf', least: 2, greatest: 3, source: common },
  { symbols: 'Ce Pr Tb Dy Th Ti Zr Hf Sn Pb', least: 2, greatest: 4, source: common },
  { symbols: 'Cm Bk', least: 3, greatest: 4, source: common },
  { symbols: 'Fe', least: 2, greatest: 4, source: common },
  { symbols: 'Co Rh', least: 1, greatest: 4, source: common },
  { symbols: 'Ni Pd', least: 0, greatest: 4, source: common },
  { symbols: 'V Nb Ta', least: 2, greatest: 5, source: common },
  { symbols: 'Au', least: 1, greatest: 5, source: common },
  { symbols: 'Bi Pa', least: 3, greatest: 5, source: common },
  { symbols: 'Cr Mo W Pt Ir Po', least: 1, greatest: 6, source: common },
  { symbols: 'U Am', least: 2, greatest: 6, source: common },
  { symbols: 'Mn Tc Re', least: 1, greatest: 7, source: common },
  { symbols: 'Np Pu', least: 3, greatest: 7, source: common },
  { symbols: 'Ru Os', least: 0, greatest: 8, source: common },
  { symbols: 'Ge', least: -4, greatest: 4, source: common },
  { symbols: 'Sb', least: -3, greatest: 5, source: common },
]
