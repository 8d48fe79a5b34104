/** The code of a hazard statement: `H314`. */
export type HazardCode =
  | 'H220'
  | 'H221'
  | 'H225'
  | 'H226'
  | 'H228'
  | 'H251'
  | 'H252'
  | 'H261'
  | 'H270'
  | 'H271'
  | 'H272'
  | 'H280'
  | 'H290'
  | 'H300'
  | 'H301'
  | 'H302'
  | 'H310'
  | 'H312'
  | 'H314'
  | 'H315'
  | 'H317'
  | 'H318'
  | 'H319'
  | 'H330'
  | 'H331'
  | 'H332'
  | 'H334'
  | 'H335'
  | 'H336'
  | 'H340'
  | 'H341'
  | 'H350'
  | 'H350i'
  | 'H360D'
  | 'H360Df'
  | 'H360F'
  | 'H360FD'
  | 'H361d'
  | 'H372'
  | 'H373'
  | 'H400'
  | 'H410'
  | 'H411'
  | 'EUH066'
  | 'EUH071'

/**
 * Hazard statements by code, in the wording of the United Nations; the two EUH are supplemental statements of the European Union.
 *
 * @source UN GHS, 10th revised edition, list of hazard statement codes, read in a public copy; EUH: EU CLP, the same.
 */
export const hazardStatements: Readonly<Record<HazardCode, string>> = {
  H220: 'Extremely flammable gas',
  H221: 'Flammable gas',
  H225: 'Highly flammable liquid and vapour',
  H226: 'Flammable liquid and vapour',
  H228: 'Flammable solid',
  H251: 'Self-heating; may catch fire',
  H252: 'Self-heating in large quantities; may catch fire',
  H261: 'In contact with water releases flammable gas',
  H270: 'May cause or intensify fire; oxidizer',
  H271: 'May cause fire or explosion; strong oxidizer',
  H272: 'May intensify fire; oxidizer',
  H280: 'Contains gas under pressure; may explode if heated',
  H290: 'May be corrosive to metals',
  H300: 'Fatal if swallowed',
  H301: 'Toxic if swallowed',
  H302: 'Harmful if swallowed',
  H310: 'Fatal in contact with skin',
  H312: 'Harmful in contact with skin',
  H314: 'Causes severe skin burns and eye damage',
  H315: 'Causes skin irritation',
  H317: 'May cause an allergic skin reaction',
  H318: 'Causes serious eye damage',
  H319: 'Causes serious eye irritation',
  H330: 'Fatal if inhaled',
  H331: 'Toxic if inhaled',
  H332: 'Harmful if inhaled',
  H334: 'May cause allergy or asthma symptoms or breathing difficulties if inhaled',
  H335: 'May cause respiratory irritation',
  H336: 'May cause drowsiness or dizziness',
  H340: 'May cause genetic defects',
  H341: 'Suspected of causing genetic defects',
  H350: 'May cause cancer',
  H350i: 'May cause cancer by inhalation',
  H360D: 'May damage the unborn child',
  H360Df: 'May damage the unborn child; Suspected of damaging fertility',
  H360F: 'May damage fertility',
  H360FD: 'May damage fertility; May damage the unborn child',
  H361d: 'Suspected of damaging the unborn child',
  H372: 'Causes damage to organs through prolonged or repeated exposure',
  H373: 'May cause damage to organs through prolonged or repeated exposure',
  H400: 'Very toxic to aquatic life',
  H410: 'Very toxic to aquatic life with long lasting effects',
  H411: 'Toxic to aquatic life with long lasting effects',
  EUH066: 'Repeated exposure may cause skin dryness or cracking',
  EUH071: 'Corrosive to the respiratory tract',
}

/** The code of a pictogram: `GHS05`. */
export type Pictogram = 'GHS01' | 'GHS02' | 'GHS03' | 'GHS04' | 'GHS05' | 'GHS06' | 'GHS07' | 'GHS08' | 'GHS09'

/** What the pictograms show. */
export const pictograms: Readonly<Record<Pictogram, string>> = {
  GHS01: 'exploding bomb',
  GHS02: 'flame',
  GHS03: 'flame over circle',
  GHS04: 'gas cylinder',
  GHS05: 'corrosion',
  GHS06: 'skull and crossbones',
  GHS07: 'exclamation mark',
  GHS08: 'health hazard',
  GHS09: 'environment',
}
