/** A complex ion that is often written without its caret or its square brackets. */
export interface ComplexIonRow {
  /** Its formula without charge and without square brackets. */
  readonly formula: string
  /** Its charges. */
  readonly charges: readonly number[]
  /** Where the row is from. */
  readonly source: string
}

const common = 'Common practice, no source.'

/** Complex ions by what people write in front of the charge: they tell `Fe(CN)63-` from sixty-three cyanides. */
export const complexIons: readonly ComplexIonRow[] = [
  { formula: 'Fe(CN)6', charges: [-3, -4], source: common },
  { formula: 'FeSCN', charges: [2], source: common },
  { formula: 'FeNCS', charges: [2], source: common },
  { formula: 'Fe(SCN)', charges: [2], source: common },
  { formula: 'Fe(H2O)6', charges: [2, 3], source: common },
  { formula: 'Fe(C2O4)3', charges: [-3], source: common },
  { formula: 'Al(H2O)6', charges: [3], source: common },
  { formula: 'Al(C2O4)3', charges: [-3], source: common },
  { formula: 'Al(OH)6', charges: [-3], source: common },
  { formula: 'AlF6', charges: [-3], source: common },
  { formula: 'FeF6', charges: [-3], source: common },
  { formula: 'Cr(H2O)6', charges: [2, 3], source: common },
  { formula: 'Cr(C2O4)3', charges: [-3], source: common },
  { formula: 'Cr(NH3)6', charges: [3], source: common },
  { formula: 'Cr(OH)6', charges: [-3], source: common },
  { formula: 'Co(H2O)6', charges: [2, 3], source: common },
  { formula: 'Co(NH3)6', charges: [2, 3], source: common },
  { formula: 'Co(NO2)6', charges: [-3], source: common },
  { formula: 'Co(SCN)4', charges: [-2], source: common },
  { formula: 'CoCl4', charges: [-2], source: common },
  { formula: 'Ni(H2O)6', charges: [2], source: common },
  { formula: 'Ni(NH3)6', charges: [2], source: common },
  { formula: 'Ni(CN)4', charges: [-2], source: common },
  { formula: 'NiCl4', charges: [-2], source: common },
  { formula: 'Cu(H2O)6', charges: [2], source: common },
  { formula: 'Cu(H2O)4', charges: [2], source: common },
  { formula: 'Cu(NH3)4', charges: [2], source: common },
  { formula: 'Cu(OH)4', charges: [-2], source: common },
  { formula: 'Cu(C2O4)2', charges: [-2], source: common },
  { formula: 'Cu(CN)4', charges: [-2, -3], source: common },
  { formula: 'CuCl4', charges: [-2], source: common },
  { formula: 'Zn(H2O)6', charges: [2], source: common },
  { formula: 'Zn(NH3)4', charges: [2], source: common },
  { formula: 'Zn(OH)4', charges: [-2], source: common },
  { formula: 'Zn(CN)4', charges: [-2], source: common },
  { formula: 'ZnCl4', charges: [-2], source: common },
  { formula: 'Cd(NH3)4', charges: [2], source: common },
  { formula: 'Cd(CN)4', charges: [-2], source: common },
  { formula: 'Mn(H2O)6', charges: [2], source: common },
  { formula: 'Ag(S2O3)2', charges: [-3], source: common },
  { formula: 'HgCl4', charges: [-2], source: common },
  { formula: 'HgI4', charges: [-2], source: common },
  { formula: 'PbCl4', charges: [-2], source: common },
  { formula: 'Pb(OH)4', charges: [-2], source: common },
  { formula: 'PbI4', charges: [-2], source: common },
  { formula: 'Sn(OH)6', charges: [-2], source: common },
  { formula: 'SnCl6', charges: [-2], source: common },
  { formula: 'Pb(OH)6', charges: [-2], source: common },
  { formula: 'PtCl4', charges: [-2], source: common },
  { formula: 'PtCl6', charges: [-2], source: common },
  { formula: 'PdCl4', charges: [-2], source: common },
  { formula: 'TiF6', charges: [-2], source: common },
  { formula: 'TaF7', charges: [-2], source: common },
  { formula: 'B4O5(OH)4', charges: [-2], source: common },
  { formula: 'UO2(CO3)2', charges: [-2], source: common },
  { formula: 'UO2(CO3)3', charges: [-4], source: common },
]
