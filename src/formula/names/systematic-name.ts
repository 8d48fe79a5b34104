import { attempt, type Outcome } from '../../errors.js'
import { FormulaError } from '../formula-error.js'
import { type FormulaLike, formulaOf } from '../formula-of.js'
import { tokensOf } from '../tokens.js'
import { treeOf } from '../tree.js'
import { additionName } from './addition-name.js'

/**
 * The systematic name of a salt, a hydrate or another addition compound, a simple complex, or one of their ions.
 *
 * Ions stand by the alphabet, cations first. Metals of more than one oxidation number carry it. Of one cation and one anion the
 * charges tell the numbers; of more the numbers are said: `aluminium potassium bis(sulfate) dodecahydrate`. Water is named as
 * hydrate where its number has a prefix, else, and every other addition, with the ratio: `cadmium sulfate—water (3/8)`.
 *
 * @param formula - A formula or its text.
 * @returns The name, in English, in lower case but for numerals.
 * @throws {@link FormulaError} `formula/not-nameable` for what is outside the tables (acids, most molecules, minerals of several
 *   variable metals, unusual ligands), and whatever {@link parseFormula} throws for a text.
 * @source IUPAC Red Book 2005: IR-5.3 (ions), IR-5.4 (proportions, order), IR-5.5 (addition compounds), IR-8.4 (anions of acids),
 *   IR-9.2 (complexes). Hemihydrate and sesquihydrate: common practice, no source.
 *
 * @example
 * ```ts
 * import { systematicName } from 'saltwright/formula'
 *
 * systematicName('CuSO4·5H2O') // => 'copper(II) sulfate pentahydrate'
 * systematicName('(NH4)2Fe(SO4)2·6H2O') // => 'diammonium iron(II) bis(sulfate) hexahydrate'
 * systematicName('K3[Fe(C2O4)3]·3H2O') // => 'potassium tris(oxalato)ferrate(III) trihydrate'
 * systematicName('H2SO4') // throws formula/not-nameable
 * ```
 */
export function systematicName(formula: FormulaLike): string {
  const { text } = formulaOf(formula)
  const branches = treeOf(tokensOf(text))
  const name = branches && additionName(branches)
  if (name === undefined) throw notNameable(text)
  return name
}

/**
 * The systematic name of a formula, or why there is none; otherwise as {@link systematicName}.
 *
 * @param formula - A formula or its text.
 * @returns `{ ok: true, value }` with the name, or `{ ok: false, error }` with what `systematicName` would throw.
 *
 * @example
 * ```ts
 * import { trySystematicName } from 'saltwright/formula'
 *
 * trySystematicName('ZnSO4·7H2O') // => { ok: true, value: 'zinc sulfate heptahydrate' }
 * ```
 */
export function trySystematicName(formula: FormulaLike): Outcome<string, FormulaError> {
  return attempt(() => systematicName(formula))
}

function notNameable(found: string): FormulaError {
  return new FormulaError({
    code: 'formula/not-nameable',
    message: `The name of "${found}" is outside the tables.`,
    found,
    expected: 'a salt, hydrate or simple complex of ions and ligands in the tables',
  })
}
