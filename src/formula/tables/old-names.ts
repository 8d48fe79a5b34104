/** A name of a cation that systematic names have replaced. */
export interface OldNameRow {
  readonly old: string
  /** The name to use. */
  readonly name: string
  /** Where the row is from. */
  readonly source: string
}

const common = 'Common practice, no source.'

/** Names with -ous and -ic: read by nobody here, but their meaning is told. */
export const oldNames: readonly OldNameRow[] = [
  { old: 'ferrous', name: 'iron(II)', source: common },
  { old: 'ferric', name: 'iron(III)', source: common },
  { old: 'cuprous', name: 'copper(I)', source: common },
  { old: 'cupric', name: 'copper(II)', source: common },
  { old: 'mercurous', name: 'mercury(I)', source: common },
  { old: 'mercuric', name: 'mercury(II)', source: common },
  { old: 'stannous', name: 'tin(II)', source: common },
  { old: 'stannic', name: 'tin(IV)', source: common },
  { old: 'plumbous', name: 'lead(II)', source: common },
  { old: 'plumbic', name: 'lead(IV)', source: common },
  { old: 'chromous', name: 'chromium(II)', source: common },
  { old: 'chromic', name: 'chromium(III)', source: common },
  { old: 'cobaltous', name: 'cobalt(II)', source: common },
  { old: 'cobaltic', name: 'cobalt(III)', source: common },
  { old: 'manganous', name: 'manganese(II)', source: common },
  { old: 'manganic', name: 'manganese(III)', source: common },
  { old: 'nickelous', name: 'nickel(II)', source: common },
  { old: 'potash', name: 'potassium', source: common },
]
