import { attempt, type Outcome, showFound } from '../../errors.js'
import type { Formula } from '../formula.js'
import { FormulaError } from '../formula-error.js'
import { parseFormula } from '../parse.js'
import { guests } from '../tables/guests.js'
import { oldNames } from '../tables/old-names.js'
import { readSaltName } from './named-salt.js'
import { spellSystematically } from './spelling.js'
import { splitAddition } from './split-addition.js'

/** Longest name that is read. */
const longest = 300

/**
 * The formula of a systematic name: of a salt, a hydrate or another addition compound, a simple complex, or an ion (`sulfate ion`,
 * or the name of one ion alone). All that {@link systematicName} writes is read, and also older ligand names (`hexacyanoferrate`),
 * `hydrogen carbonate` in two words, names of double salts without numbers (`ammonium iron(II) sulfate`: the smallest that are
 * neutral), and the spellings sulph-, aluminum, cesium.
 *
 * @param name - The name, in English.
 * @returns The formula.
 * @throws {@link FormulaError} `formula/unknown-name` with the word that is outside the tables; `formula/not-text`.
 * @source IUPAC Red Book 2005: IR-5.3 to IR-5.5, IR-8.4, IR-9.2; order of the ligands in a formula: IR-9.2.3.1.
 *
 * @example
 * ```ts
 * import { formulaFromName } from 'saltwright/formula'
 *
 * formulaFromName('zinc sulfate heptahydrate').text // => 'ZnSO4·7H2O'
 * formulaFromName('potassium hexacyanidoferrate(III)').text // => 'K3[Fe(CN)6]'
 * formulaFromName('ferrous sulfate') // throws formula/unknown-name
 * ```
 */
export function formulaFromName(name: string): Formula {
  if (typeof name !== 'string') throw notText(name)
  if (name.length > longest) throw unknownName(name, name.slice(0, 40))
  const parts = splitAddition(spellSystematically(name))
  const texts = parts.map(({ name: part, times }) => times + partFormula(name, part))
  return parseFormula(texts.join('·'))
}

/**
 * The formula of a systematic name, or why there is none; otherwise as {@link formulaFromName}.
 *
 * @param name - The name, in English.
 * @returns `{ ok: true, value }` with the formula, or `{ ok: false, error }` with what `formulaFromName` would throw.
 *
 * @example
 * ```ts
 * import { tryFormulaFromName } from 'saltwright/formula'
 *
 * const outcome = tryFormulaFromName('cupric sulfate')
 * if (!outcome.ok) outcome.error.hint // => 'copper(II)?'
 * ```
 */
export function tryFormulaFromName(name: string): Outcome<Formula, FormulaError> {
  return attempt(() => formulaFromName(name))
}

function partFormula(whole: string, part: string): string {
  const guest = guests.find(({ name }) => name === part)
  if (guest !== undefined) return guest.formula
  const salt = readSaltName(part)
  if ('unknown' in salt) throw unknownName(whole, salt.unknown)
  return salt.formula
}

function unknownName(whole: string, word: string): FormulaError {
  const start = Math.max(whole.toLowerCase().indexOf(word.toLowerCase()), 0)
  const modern = oldNames.find(({ old }) => old === word)?.name
  return new FormulaError({
    code: 'formula/unknown-name',
    message: `${showFound(word)} is not a name, or names ions that make no neutral salt.`,
    position: { start, end: start + word.length },
    found: word,
    expected: 'the systematic name of a salt, hydrate, simple complex or ion',
    hint: modern === undefined ? undefined : `${modern}?`,
  })
}

function notText(found: unknown): FormulaError {
  return new FormulaError({
    code: 'formula/not-text',
    message: `${showFound(found)} is not a name.`,
    found: showFound(found),
    expected: 'a name as text, such as "zinc sulfate heptahydrate"',
  })
}
