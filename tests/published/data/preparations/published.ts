/**
 * Twenty-one preparations from laboratory texts: their equations, what limits them, and how their amounts compare.
 *
 * The recipes beside this file name the text each was read in and what in it is from memory. `by: 'the source'` is printed there;
 * everything else was worked out from the printed masses and volumes with the abridged atomic weights of the IUPAC, apart from this
 * library, and given to four figures (equivalents to three, theoretical yields to five).
 */

/** A number that ours is to agree with, or one that differs for a known reason. */
export type Printed = string | PrintedDifference

/** A number that ours differs from. */
interface PrintedDifference {
  readonly printed: string
  /** What ours is. */
  readonly ours: string
  /** Why. */
  readonly differs: string
  /** The supply that gives the printed number when it takes the place of the recipe's. */
  readonly with?: Replacement
}

/** Another way to supply a substance. */
export interface Replacement {
  readonly of: string
  readonly form?: 'solution'
  readonly concentration?: string
  readonly asPrinted: string
}

/** How one supply compares with its need. */
export interface PublishedSupply {
  /** The substance, as in the equations of the recipe. */
  readonly of: string
  /** The stage it goes into, where it goes into two. */
  readonly stage?: string
  /** `overall` where the need leaves out what earlier stages left. */
  readonly need?: 'overall'
  /** Moles taken. */
  readonly used: Printed
  /** Moles needed. */
  readonly needed: Printed
  /** One divided by the other. */
  readonly equivalents: Printed
}

/** What is known of one recipe. */
export interface PublishedPreparation {
  /** The name of the recipe beside this file. */
  readonly recipe: string
  /** The equations of the text, main and side ones. */
  readonly steps?: readonly string[]
  /** Its overall equation. */
  readonly overall?: string
  /** Grams per mole of the product. */
  readonly molarMass?: string
  /** Moles and grams of product there can be at most. */
  readonly theoretical?: { readonly amount: Printed; readonly mass: Printed }
  /** What limits it, and who says so. */
  readonly limiting?: { readonly of: Printed; readonly by: 'the source' | 'its amounts' }
  /** How supplies compare with their need. */
  readonly supplies?: readonly PublishedSupply[]
  /** Why a claim of the sheet does not hold. */
  readonly claimFails?: string
  /** Yields that reports state for it. */
  readonly yields?: readonly PublishedYield[]
}

/** A yield that a report states. */
export interface PublishedYield {
  /** What it was made from: the substance that limits, and its mass. */
  readonly from: { readonly of: string; readonly mass: string }
  /** What was obtained. */
  readonly obtained: string
  /** Per cent, as stated. */
  readonly stated: Printed
}

const shortOxalate =
  'the double salt is meant to limit; by the printed masses potassium oxalate is 0.7 % short, so the two are practically equal'
const enoughOxalate = { of: 'K2C2O4', asPrinted: '3.60 g' }

export const preparations: readonly PublishedPreparation[] = [
  {
    recipe: 'iron-ii-sulfate-heptahydrate-from-iron',
    steps: ['Fe(s) + H2SO4(aq) -> FeSO4(aq) + H2(g)', 'FeSO4(aq) + 7 H2O(l) -> FeSO4·7H2O(s)'],
    overall: 'Fe(s) + H2SO4(aq) + 7 H2O(l) -> FeSO4·7H2O(s) + H2(g)',
    theoretical: { amount: '0.075000', mass: '20.850' },
    molarMass: '278.006',
    limiting: { of: 'H2SO4', by: 'its amounts' },
  },
  {
    recipe: 'ammonium-iron-ii-sulfate-hexahydrate-from-iron',
    steps: [
      'Fe(s) + H2SO4(aq) -> FeSO4(aq) + H2(g)',
      'FeCO3(s) + H2SO4(aq) -> FeSO4(aq) + CO2(g) + H2O(l)',
      'FeSO4(aq) + (NH4)2SO4(aq) + 6 H2O(l) -> (NH4)2Fe(SO4)2·6H2O(s)',
    ],
    overall: 'Fe(s) + H2SO4(aq) + (NH4)2SO4(aq) + 6 H2O(l) -> (NH4)2Fe(SO4)2·6H2O(s) + H2(g)',
    theoretical: { amount: '0.33300', mass: '130.58' },
    molarMass: '392.125',
    limiting: { of: 'H2SO4', by: 'its amounts' },
    supplies: [
      { of: 'Fe', used: '0.7163', needed: '0.6660', equivalents: '1.08' },
      {
        of: '(NH4)2SO4',
        used: '0.3406',
        needed: {
          printed: '0.3333',
          ours: '0.3330',
          differs: '222 cc of 6 N acid is rounded up to the two thirds of a mole that the book means by it',
          with: { of: 'H2SO4', asPrinted: '222.2 mL' },
        },
        equivalents: '1.02',
      },
    ],
  },
  {
    recipe: 'ammonium-iron-ii-sulfate-hexahydrate-from-sulfates',
    steps: ['FeSO4·7H2O(s) + (NH4)2SO4(s) -> (NH4)2Fe(SO4)2·6H2O(s) + H2O(l)'],
    overall: 'FeSO4·7H2O(s) + (NH4)2SO4(s) -> (NH4)2Fe(SO4)2·6H2O(s) + H2O(l)',
    theoretical: { amount: '0.025179', mass: '9.8734' },
    molarMass: '392.125',
    limiting: { of: 'FeSO4·7H2O', by: 'its amounts' },
    supplies: [{ of: '(NH4)2SO4', used: '0.02649', needed: '0.02518', equivalents: '1.05' }],
    claimFails: 'the sheet calls the mixture equimolar; ammonium sulfate is 5 % in excess',
  },
  {
    recipe: 'potassium-aluminium-sulfate-dodecahydrate-from-aluminium',
    steps: [
      '2 Al(s) + 2 KOH(aq) + 6 H2O(l) -> 2 K[Al(OH)4](aq) + 3 H2(g)',
      '2 K[Al(OH)4](aq) + H2SO4(aq) -> 2 Al(OH)3(s) + K2SO4(aq) + 2 H2O(l)',
      '2 Al(OH)3(s) + 3 H2SO4(aq) -> Al2(SO4)3(aq) + 6 H2O(l)',
      'K2SO4(aq) + Al2(SO4)3(aq) + 24 H2O(l) -> 2 KAl(SO4)2·12H2O(s)',
      '2 KOH(aq) + H2SO4(aq) -> K2SO4(aq) + 2 H2O(l)',
    ],
    overall: '2 Al(s) + 2 KOH(aq) + 4 H2SO4(aq) + 22 H2O(l) -> 2 KAl(SO4)2·12H2O(s) + 3 H2(g)',
    theoretical: { amount: '0.037062', mass: '17.581' },
    molarMass: '474.372',
    limiting: { of: 'Al', by: 'the source' },
    supplies: [
      { of: 'KOH', used: '0.07000', needed: '0.03706', equivalents: '1.89' },
      { of: 'H2SO4', need: 'overall', used: '0.1800', needed: '0.07412', equivalents: '2.43' },
      { of: 'H2SO4', used: '0.1800', needed: '0.09059', equivalents: '1.99' },
    ],
    yields: [{ from: { of: 'Al', mass: '1 g' }, obtained: '7.77 g', stated: '44' }],
  },
  {
    recipe: 'potassium-aluminium-sulfate-dodecahydrate-from-aluminium-3-molar',
    supplies: [
      { of: 'KOH', used: '0.07500', needed: '0.03706', equivalents: '2.02' },
      { of: 'H2SO4', used: '0.1050', needed: '0.09309', equivalents: '1.13' },
    ],
  },
  {
    recipe: 'ammonium-copper-ii-sulfate-hexahydrate',
    steps: ['CuSO4·5H2O(s) + (NH4)2SO4(s) + H2O(l) -> (NH4)2Cu(SO4)2·6H2O(s)'],
    overall: 'CuSO4·5H2O(s) + (NH4)2SO4(s) + H2O(l) -> (NH4)2Cu(SO4)2·6H2O(s)',
    theoretical: { amount: '0.10013', mass: '40.034' },
    molarMass: '399.826',
    limiting: { of: 'CuSO4·5H2O', by: 'its amounts' },
    supplies: [{ of: '(NH4)2SO4', used: '0.1003', needed: '0.1001', equivalents: '1.00' }],
  },
  {
    recipe: 'ammonium-copper-ii-sulfate-hexahydrate-4-g',
    supplies: [{ of: '(NH4)2SO4', used: '0.01514', needed: '0.01602', equivalents: '0.945' }],
  },
  {
    recipe: 'tetraamminecopper-ii-sulfate-monohydrate-25-g',
    supplies: [{ of: 'NH3', used: '0.5100', needed: '0.4005', equivalents: '1.27' }],
  },
  {
    recipe: 'tetraamminecopper-ii-sulfate-monohydrate',
    steps: [
      'Cu^2+(aq) + 2 NH3(aq) + 2 H2O(l) -> Cu(OH)2(s) + 2 NH4^+(aq)',
      'Cu(OH)2(s) + 2 NH4^+(aq) + 2 NH3(aq) -> [Cu(NH3)4]^2+(aq) + 2 H2O(l)',
      '[Cu(NH3)4]^2+(aq) + SO4^2-(aq) + H2O(l) -> [Cu(NH3)4]SO4·H2O(s)',
    ],
    overall: 'CuSO4·5H2O(s) + 4 NH3(aq) -> [Cu(NH3)4]SO4·H2O(s) + 4 H2O(l)',
    theoretical: { amount: '0.080103', mass: '19.685' },
    molarMass: '245.741',
    limiting: { of: 'CuSO4·5H2O', by: 'its amounts' },
    supplies: [{ of: 'NH3', used: '0.4350', needed: '0.3204', equivalents: '1.36' }],
  },
  {
    recipe: 'potassium-trioxalatoferrate-iii-trihydrate-from-mohrs-salt',
    steps: [
      '(NH4)2Fe(SO4)2·6H2O(s) + H2C2O4(aq) -> FeC2O4·2H2O(s) + (NH4)2SO4(aq) + H2SO4(aq) + 4 H2O(l)',
      '6 FeC2O4·2H2O(s) + 3 H2O2(aq) + 6 K2C2O4(aq) -> 4 K3[Fe(C2O4)3](aq) + 2 Fe(OH)3(s) + 12 H2O(l)',
      '2 Fe(OH)3(s) + 3 K2C2O4(aq) + 3 H2C2O4(aq) -> 2 K3[Fe(C2O4)3](aq) + 6 H2O(l)',
      'K3[Fe(C2O4)3](aq) + 3 H2O(l) -> K3[Fe(C2O4)3]·3H2O(s)',
    ],
    overall:
      '2 (NH4)2Fe(SO4)2·6H2O(s) + 3 H2C2O4(aq) + 3 K2C2O4(aq) + H2O2(aq) -> 2 K3[Fe(C2O4)3]·3H2O(s) + 2 (NH4)2SO4(aq) + 2 H2SO4(aq) + 8 H2O(l)',
    theoretical: {
      amount: { printed: '0.012751', ours: '0.012665', differs: shortOxalate, with: enoughOxalate },
      mass: { printed: '6.2638', ours: '6.2217', differs: shortOxalate, with: enoughOxalate },
    },
    molarMass: '491.238',
    limiting: {
      of: {
        printed: '(NH4)2Fe(SO4)2·6H2O',
        ours: 'K2C2O4',
        differs: shortOxalate,
        with: enoughOxalate,
      },
      by: 'its amounts',
    },
    supplies: [
      { of: 'H2C2O4', stage: 'Precipitate the oxalate', used: '0.01983', needed: '0.01275', equivalents: '1.56' },
      { of: 'K2C2O4', used: '0.01900', needed: '0.01913', equivalents: '0.993' },
    ],
    yields: [{ from: { of: '(NH4)2Fe(SO4)2·6H2O', mass: '4.987 g' }, obtained: '5.717 g', stated: '91.5' }],
  },
  {
    recipe: 'potassium-trioxalatoferrate-iii-trihydrate-from-mohrs-salt-7-5-g',
    supplies: [{ of: 'K2C2O4', used: '0.02700', needed: '0.02869', equivalents: '0.941' }],
    claimFails: 'the double salt is meant to limit; potassium oxalate is 6 % short of it and limits instead',
  },
  {
    recipe: 'potassium-trioxalatoferrate-iii-trihydrate-from-iron-iii-chloride',
    steps: [
      'FeCl3(aq) + 6 KOH(aq) + 3 H2C2O4(aq) -> K3[Fe(C2O4)3](aq) + 3 KCl(aq) + 6 H2O(l)',
      'K3[Fe(C2O4)3](aq) + 3 H2O(l) -> K3[Fe(C2O4)3]·3H2O(s)',
    ],
    overall: 'FeCl3(aq) + 6 KOH(aq) + 3 H2C2O4(aq) -> K3[Fe(C2O4)3]·3H2O(s) + 3 KCl(aq) + 3 H2O(l)',
    theoretical: { amount: '0.0079325', mass: '3.8967' },
    molarMass: '491.238',
    limiting: { of: 'H2C2O4', by: 'its amounts' },
    supplies: [
      { of: 'FeCl3', used: '0.01541', needed: '0.007932', equivalents: '1.94' },
      { of: 'KOH', used: '0.06773', needed: '0.04759', equivalents: '1.42' },
    ],
  },
  {
    recipe: 'potassium-trioxalatoferrate-iii-trihydrate-from-iron-iii-chloride-hexahydrate',
    supplies: [{ of: 'FeCl3', used: '0.009249', needed: '0.007932', equivalents: '1.17' }],
  },
  {
    recipe: 'potassium-trioxalatoferrate-iii-trihydrate-from-iron-ii-sulfate',
    steps: [
      '3 Fe^2+(aq) + NO3^-(aq) + 4 H^+(aq) -> 3 Fe^3+(aq) + NO(g) + 2 H2O(l)',
      'Fe^3+(aq) + 3 NH3(aq) + 3 H2O(l) -> Fe(OH)3(s) + 3 NH4^+(aq)',
      'Fe(OH)3(s) + 3 KHC2O4(aq) -> K3[Fe(C2O4)3](aq) + 3 H2O(l)',
      'K3[Fe(C2O4)3](aq) + 3 H2O(l) -> K3[Fe(C2O4)3]·3H2O(s)',
    ],
    overall:
      '3 FeSO4·7H2O(s) + HNO3(aq) + 6 NH3(aq) + 9 KHC2O4(aq) -> 3 K3[Fe(C2O4)3]·3H2O(s) + 3 (NH4)2SO4(aq) + NO(g) + 14 H2O(l)',
    theoretical: { amount: '0.11447', mass: '56.233' },
    molarMass: '491.238',
    limiting: { of: 'KHC2O4', by: 'its amounts' },
    supplies: [{ of: 'FeSO4·7H2O', used: '0.1259', needed: '0.1145', equivalents: '1.10' }],
  },
  {
    recipe: 'potassium-trioxalatoaluminate-iii-trihydrate-from-aluminium',
    steps: [
      '2 Al(s) + 2 KOH(aq) + 6 H2O(l) -> 2 K[Al(OH)4](aq) + 3 H2(g)',
      'K[Al(OH)4](aq) + 2 KOH(aq) + 3 H2C2O4(aq) -> K3[Al(C2O4)3](aq) + 6 H2O(l)',
      'K3[Al(C2O4)3](aq) + 3 H2O(l) -> K3[Al(C2O4)3]·3H2O(s)',
    ],
    overall: '2 Al(s) + 6 KOH(aq) + 6 H2C2O4(aq) -> 2 K3[Al(C2O4)3]·3H2O(s) + 3 H2(g)',
    theoretical: { amount: '0.018531', mass: '8.5682' },
    molarMass: '462.375',
    limiting: { of: 'Al', by: 'its amounts' },
    supplies: [
      { of: 'KOH', used: '0.06000', needed: '0.05559', equivalents: '1.08' },
      { of: 'H2C2O4', used: '0.06346', needed: '0.05559', equivalents: '1.14' },
    ],
  },
  {
    recipe: 'potassium-dioxalatocuprate-ii-dihydrate',
    steps: ['CuSO4·5H2O(s) + 2 K2C2O4·H2O(s) -> K2[Cu(C2O4)2]·2H2O(s) + K2SO4(aq) + 5 H2O(l)'],
    overall: 'CuSO4·5H2O(s) + 2 K2C2O4·H2O(s) -> K2[Cu(C2O4)2]·2H2O(s) + K2SO4(aq) + 5 H2O(l)',
    theoretical: { amount: '0.0080103', mass: '2.8341' },
    molarMass: '353.808',
    limiting: { of: 'CuSO4·5H2O', by: 'the source' },
    supplies: [{ of: 'K2C2O4·H2O', used: '0.03365', needed: '0.01602', equivalents: '2.10' }],
    yields: [
      {
        from: { of: 'CuSO4·5H2O', mass: '2.00 g' },
        obtained: '1.67 g',
        stated: {
          printed: '36.3',
          ours: '58.9',
          differs: 'the report took the anhydrous molar mass for the pentahydrate',
        },
      },
      {
        from: { of: 'CuSO4·5H2O', mass: '2.00 g' },
        obtained: '4.57 g',
        stated: '161',
      },
    ],
  },
  {
    recipe: 'hexaamminecobalt-iii-chloride',
    steps: [
      '4 CoCl2·6H2O(s) + 4 NH4Cl(aq) + 20 NH3(aq) + O2(g) -> 4 [Co(NH3)6]Cl3(aq) + 26 H2O(l)',
      '[Co(NH3)6]Cl3(aq) -> [Co(NH3)6]Cl3(s)',
      '2 CoCl2·6H2O(s) + 2 NH4Cl(aq) + 10 NH3(aq) + H2O2(aq) -> 2 [Co(NH3)6]Cl3(aq) + 14 H2O(l)',
    ],
    overall: '4 CoCl2·6H2O(s) + 4 NH4Cl(aq) + 20 NH3(aq) + O2(g) -> 4 [Co(NH3)6]Cl3(s) + 26 H2O(l)',
    theoretical: { amount: '0.099990', mass: '26.744' },
    molarMass: '267.469',
    limiting: { of: 'CoCl2·6H2O', by: 'its amounts' },
    supplies: [
      { of: 'NH4Cl', used: '0.3001', needed: '0.09999', equivalents: '3.00' },
      {
        of: 'NH3',
        used: {
          printed: '0.6700',
          ours: '0.6679',
          differs: '25 % of 0.910 g/mL is 13.36 mol/L, rounded to 13.4 mol/L before it was multiplied',
          with: { of: 'NH3', form: 'solution', concentration: '13.4 mol/L', asPrinted: '50 mL' },
        },
        needed: '0.5000',
        equivalents: '1.34',
      },
    ],
  },
  {
    recipe: 'hexaamminenickel-ii-chloride',
    steps: ['NiCl2·6H2O(s) + 6 NH3(aq) -> [Ni(NH3)6]Cl2(s) + 6 H2O(l)'],
    overall: 'NiCl2·6H2O(s) + 6 NH3(aq) -> [Ni(NH3)6]Cl2(s) + 6 H2O(l)',
    theoretical: { amount: '0.13463', mass: '31.205' },
    molarMass: '231.779',
    limiting: { of: 'NiCl2·6H2O', by: 'its amounts' },
    supplies: [{ of: 'NH3', used: '1.015', needed: '0.8078', equivalents: '1.26' }],
  },
  {
    recipe: 'tris-ethane-1-2-diamine-nickel-ii-chloride-dihydrate',
    steps: ['NiCl2·6H2O(s) + 3 C2H8N2(l) -> [Ni(C2H8N2)3]Cl2·2H2O(s) + 4 H2O(l)'],
    overall: 'NiCl2·6H2O(s) + 3 C2H8N2(l) -> [Ni(C2H8N2)3]Cl2·2H2O(s) + 4 H2O(l)',
    theoretical: { amount: '0.025244', mass: '8.7324' },
    molarMass: '345.923',
    limiting: { of: 'NiCl2·6H2O', by: 'its amounts' },
    supplies: [{ of: 'C2H8N2', used: '0.1496', needed: '0.07573', equivalents: '1.98' }],
  },
  {
    recipe: 'copper-cycle-through-nitrate-hydroxide-oxide-and-sulfate',
    steps: [
      'Cu(s) + 4 HNO3(aq) -> Cu(NO3)2(aq) + 2 NO2(g) + 2 H2O(l)',
      'Cu(NO3)2(aq) + 2 NaOH(aq) -> Cu(OH)2(s) + 2 NaNO3(aq)',
      'Cu(OH)2(s) -> CuO(s) + H2O(l)',
      'CuO(s) + H2SO4(aq) -> CuSO4(aq) + H2O(l)',
      'CuSO4(aq) + Zn(s) -> Cu(s) + ZnSO4(aq)',
      'HNO3(aq) + NaOH(aq) -> NaNO3(aq) + H2O(l)',
      'Zn(s) + 2 HCl(aq) -> ZnCl2(aq) + H2(g)',
      'Zn(s) + H2SO4(aq) -> ZnSO4(aq) + H2(g)',
    ],
    overall: '4 HNO3(aq) + 2 NaOH(aq) + H2SO4(aq) + Zn(s) -> 2 NO2(g) + 2 NaNO3(aq) + ZnSO4(aq) + 4 H2O(l)',
    theoretical: { amount: '0.0078683', mass: '0.50000' },
    molarMass: '63.546',
    limiting: { of: 'Cu', by: 'the source' },
    supplies: [
      { of: 'HNO3', used: '0.06400', needed: '0.03147', equivalents: '2.03' },
      { of: 'NaOH', used: '0.09000', needed: '0.04826', equivalents: '1.86' },
      { of: 'H2SO4', used: '0.09000', needed: '0.007868', equivalents: '11.4' },
      { of: 'Zn', need: 'overall', used: '0.03059', needed: '0.007868', equivalents: '3.89' },
    ],
    yields: [{ from: { of: 'Cu', mass: '0.2654 g' }, obtained: '0.2285 g', stated: '86.1' }],
  },
  {
    recipe: 'copper-ii-sulfate-pentahydrate-from-copper-ii-oxide',
    steps: ['CuO(s) + H2SO4(aq) -> CuSO4(aq) + H2O(l)', 'CuSO4(aq) + 5 H2O(l) -> CuSO4·5H2O(s)'],
    overall: 'CuO(s) + H2SO4(aq) + 4 H2O(l) -> CuSO4·5H2O(s)',
    theoretical: { amount: '0.040000', mass: '9.9871' },
    molarMass: '249.677',
    limiting: { of: 'H2SO4', by: 'the source' },
  },
  {
    recipe: 'magnesium-sulfate-heptahydrate-from-magnesium-or-its-carbonate',
    steps: [
      'Mg(s) + H2SO4(aq) -> MgSO4(aq) + H2(g)',
      'MgSO4(aq) + 7 H2O(l) -> MgSO4·7H2O(s)',
      'MgCO3(s) + H2SO4(aq) -> MgSO4(aq) + CO2(g) + H2O(l)',
    ],
    overall: 'Mg(s) + H2SO4(aq) + 7 H2O(l) -> MgSO4·7H2O(s) + H2(g)',
    theoretical: { amount: '0.040000', mass: '9.8586' },
    molarMass: '246.466',
    limiting: { of: 'H2SO4', by: 'the source' },
  },
  {
    recipe: 'zinc-sulfate-heptahydrate-from-zinc',
    steps: [
      'Zn(s) + H2SO4(aq) -> ZnSO4(aq) + H2(g)',
      'ZnSO4(aq) + 7 H2O(l) -> ZnSO4·7H2O(s)',
      'ZnO(s) + H2SO4(aq) -> ZnSO4(aq) + H2O(l)',
    ],
    overall: 'Zn(s) + H2SO4(aq) + 7 H2O(l) -> ZnSO4·7H2O(s) + H2(g)',
    molarMass: '287.541',
    limiting: { of: 'H2SO4', by: 'the source' },
  },
  {
    recipe: 'potassium-nitrate-from-sodium-nitrate-and-potassium-chloride',
    steps: ['NaNO3(aq) + KCl(aq) -> KNO3(aq) + NaCl(s)', 'KNO3(aq) -> KNO3(s)'],
    overall: 'NaNO3(aq) + KCl(aq) -> KNO3(s) + NaCl(s)',
    theoretical: { amount: '2.0121', mass: '203.43' },
    molarMass: '101.102',
    limiting: { of: 'KCl', by: 'its amounts' },
    supplies: [{ of: 'NaNO3', used: '2.235', needed: '2.012', equivalents: '1.11' }],
  },
  {
    recipe: 'barium-sulfate-gravimetric-precipitation',
    steps: ['Ba^2+(aq) + SO4^2-(aq) -> BaSO4(s)'],
    overall: 'BaCl2(aq) + Na2SO4(aq) -> BaSO4(s) + 2 NaCl(aq)',
    theoretical: { amount: '0.00052053', mass: '0.12148' },
    molarMass: '233.386',
    limiting: { of: 'SO4^2-', by: 'the source' },
  },
  {
    recipe: 'calcium-carbonate-precipitation',
    steps: ['CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + 2 NaCl(aq)'],
    overall: 'CaCl2(aq) + Na2CO3(aq) -> CaCO3(s) + 2 NaCl(aq)',
    theoretical: { amount: '0.012500', mass: '1.2511' },
    molarMass: '100.086',
    limiting: { of: 'CaCl2', by: 'its amounts' },
    supplies: [{ of: 'Na2CO3', used: '0.01750', needed: '0.01250', equivalents: '1.40' }],
  },
]
