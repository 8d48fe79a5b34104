import { invalidSet, problemsOfSet } from './check-set.js'

/**
 * A table of atomic weights: one of the built-in ones, the one on a course's wall, or an older edition. Plain data, so that it can
 * stand in a recipe or a file. What is calculated with a set is remembered by its identity: do not change one after use.
 */
export interface AtomicWeightSet {
  /** What results say they were calculated with: `IUPAC 1997`, `wall chart of Chemistry 1`. */
  readonly name: string
  /**
   * Atomic weights by symbol, each as printed: a value (`"63.546"`), a value with the bound that covers every normal material
   * (`"63.546 ± 0.003"` or `"63.546(3)"`), or an interval (`"[1.00784, 1.00811]"`).
   */
  readonly values: Readonly<Record<string, string>>
  /** Where elements that are not in `values` are looked up. Nowhere unless said, so that editions are not mixed unawares. */
  readonly extends?: AtomicWeights | undefined
  /** Year or edition. */
  readonly edition?: string | undefined
  /** Where the numbers come from. */
  readonly source?: string | undefined
}

/**
 * Which atomic weights to calculate with: `"abridged"` (five figures; the default everywhere), `"standard"` (full precision, an
 * interval gives its midpoint), or a set of one's own.
 */
export type AtomicWeights = 'abridged' | 'standard' | AtomicWeightSet

/**
 * Makes a set of atomic weights of one's own: the periodic table on the wall, or an older edition that a manual was written with.
 *
 * @param set - Its name and its values as printed; `extends` says where other elements are looked up (nowhere unless said).
 * @returns The set, checked and unchangeable, ready for every function that takes `weights`.
 * @throws {@link ElementError} `element/invalid-set`, with every mistake and its path in `problems`: there
 *   `element/unknown-symbol`, `element/not-text`, `element/bad-weight`, `element/bad-bound`.
 * @source Notations: Prohaska T. et al., Pure Appl. Chem. 2022, 94(5), 573-600, doi:10.1515/pac-2019-0603, Table 1.
 *
 * @example
 * ```ts
 * import { atomicWeight, atomicWeightSet } from 'saltwright/element'
 *
 * const wall = atomicWeightSet({ name: 'wall chart', values: { Zn: '65.39', S: '32.066' }, extends: 'abridged' })
 * atomicWeight('Zn', wall).toString() // => '65.39 g/mol'
 * atomicWeight('O', wall).toString() // => '15.999 g/mol'
 * atomicWeightSet({ name: 'typing slip', values: { ZN: '65.39' } }) // throws element/invalid-set
 * ```
 */
export function atomicWeightSet(set: AtomicWeightSet): AtomicWeightSet {
  checkSet(set)
  return copySet(set)
}

/** Refuses what is not a set of atomic weights. */
export function checkSet(set: unknown): void {
  const problems = problemsOfSet(set)
  if (problems.length > 0) throw invalidSet(problems)
}

function copySet(set: AtomicWeightSet): AtomicWeightSet {
  const { name, values, edition, source } = set
  const base = typeof set.extends === 'object' ? copySet(set.extends) : set.extends
  return Object.freeze({
    name,
    values: Object.freeze({ ...values }),
    ...(base === undefined ? {} : { extends: base }),
    ...(edition === undefined ? {} : { edition }),
    ...(source === undefined ? {} : { source }),
  })
}
