import type { Given } from '../stoichiometry/given.js'

/** When a series of weighings counts as constant. A criterion has `within` or `perGram`. */
export interface ConstantMassCriterion {
  /** The largest difference between two successive weighings; text is exact. */
  readonly within?: Given<'mass'>
  /** The largest difference per gram of substance taken; text is exact. */
  readonly perGram?: Given<'mass'>
  /** What has to happen between the two weighings. */
  readonly between?: string
  /** Who says so. */
  readonly source: string
  /** True where nobody looked it up again in the source. */
  readonly fromMemory?: true
}

/** The name of a criterion. */
export type ConstantMassCriterionName =
  | 'ph-eur'
  | 'usp'
  | 'chp'
  | 'analytical-balance'
  | 'crucible'
  | 'two-milligrams'
  | 'school-balance'
  | 'one-per-cent'

/** The criteria by name. They contradict one another, so one has to be chosen; none is the default. */
export const constantMassCriteria: Readonly<Record<ConstantMassCriterionName, ConstantMassCriterion>> = {
  'ph-eur': {
    within: '0.5 mg',
    between: 'at least 30 min more drying',
    source: 'European Pharmacopoeia, General Notices 1.2 (dried to constant mass) and 2.2.32',
  },
  usp: {
    perGram: '0.50 mg',
    between: 'another hour of drying',
    source: 'United States Pharmacopeia, General Notices (dried to constant weight)',
    fromMemory: true,
  },
  chp: {
    within: '0.3 mg',
    source: 'Chinese Pharmacopoeia, General Notices (constant weight), quoted in a comparison table',
  },
  'analytical-balance': {
    within: '0.3 mg',
    source:
      'Talbot, An Introductory Course of Quantitative Chemical Analysis (1921): successive weighings within 0.0003 g',
  },
  crucible: { within: '0.2 mg', source: 'Laboratory texts on crucibles, of uneven authority' },
  'two-milligrams': { within: '2 mg', source: 'Laboratory texts, on about 2 g; of uneven authority' },
  'school-balance': { within: '10 mg', source: 'Common practice in schools with balances that read 0.01 g, no source' },
  'one-per-cent': { perGram: '10 mg', source: 'Laboratory texts: 1 % of the net mass; of uneven authority' },
}
