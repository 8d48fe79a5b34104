/** Molecules that are written often and are no salts: what is read as one of them is not doubted. */
export interface MoleculeRow {
  /** Formulas, separated by spaces. */
  readonly formulas: string
  /** Where the row is from. */
  readonly source: string
}

const tableIX = 'IUPAC Red Book 2005, Table IX; from memory'
const allotropes = 'IUPAC Red Book 2005, IR-3.4.3 (allotropes of definite molecular formula); from memory'
const common = 'Common practice, no source.'

/** Common molecules of few atoms. */
export const molecules: readonly MoleculeRow[] = [
  { formulas: 'H2 D2 N2 O2 O3 F2 Cl2 Br2 I2 P4 S8', source: allotropes },
  { formulas: 'H2O D2O HDO HTO T2O H2O2 NH3 ND3 N2H4 NH2OH HN3', source: tableIX },
  { formulas: 'CO CO2 CS2 COS OCS CSe2 C3O2 HCN HNCO HOCN HNCS', source: tableIX },
  { formulas: 'NO NO2 N2O N2O3 N2O4 N2O5 NO3 HNO2 HNO3', source: tableIX },
  { formulas: 'SO2 SO3 H2S H2SO3 H2SO4 H2S2O3 SF4 SF6 S2Cl2 SCl2 SOCl2 SO2Cl2 SOF2 SO2F2', source: tableIX },
  { formulas: 'P4O6 P4O10 P2O3 P2O5 PH3 PCl3 PCl5 POCl3 POBr3 POF3 PF3 PF5 PBr3 PI3 PSCl3', source: tableIX },
  { formulas: 'SiO2 SiCl4 SiF4 SiH4 B2O3 BF3 BCl3 BBr3 BI3 B2H6 As2O3 As2O5 AsCl3 AsH3', source: tableIX },
  { formulas: 'HF HCl HBr HI HClO HOCl HClO2 HClO3 HClO4 HBrO3 HIO3 HIO4 H5IO6', source: tableIX },
  { formulas: 'Cl2O ClO2 Cl2O6 Cl2O7 I2O5 ICl ICl3 IBr IF5 IF7 ClF ClF3 BrF3 BrF5 OF2 O2F2', source: tableIX },
  { formulas: 'NOCl NOBr NOF NO2Cl NO2F NOF3 HOF NF3 NCl3 NI3 INO INO2 INO3', source: tableIX },
  { formulas: 'COCl2 COF2 COBr2 CSCl2 CCl4 CF4 CBr4 CI4 CFCl3 CF2Cl2 CF3Cl', source: common },
  { formulas: 'SeO2 SeO3 H2Se H2SeO3 H2SeO4 TeO2 TeO3 H2Te XeF2 XeF4 XeF6 XeO3', source: tableIX },
  { formulas: 'H3PO4 H3PO3 H3PO2 HPO3 H4P2O7 H3BO3 HBO2 H2CO3 H4SiO4 H2SiO3 H3AsO4 H3AsO3', source: tableIX },
  { formulas: 'CH4 C2H2 C2H4 C2H6 C3H8 C6H6 CH3OH C2H5OH HCOOH CH3COOH CH2O HCHO CO(NH2)2', source: common },
]
