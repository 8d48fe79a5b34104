import { attempt, showFound } from '../errors.js'
import { dot, kindAt, skipSpaces, space } from './characters.js'
import type { Formula } from './formula.js'
import { FormulaError } from './formula-error.js'
import { type FormulaLike, formulaOf } from './formula-of.js'
import { parseFormula } from './parse.js'
import { readFormulaText } from './reading.js'
import { waterAmong } from './scan.js'

/**
 * The formula without its water of crystallisation: everything between dots that is water, inside brackets too. Water in the
 * coordination sphere (`[Cu(H2O)4]`) and hydroxide stay. The state is left out: the anhydrous salt is another substance.
 *
 * @param formula - A formula or its text.
 * @returns The rest of the same formula unit, a number in front included (`3CdSO4` of `3CdSO4·8H2O`); the formula itself where it
 *   holds no water of crystallisation.
 * @throws {@link FormulaError} Whatever {@link parseFormula} throws for a text, such as `formula/unknown-symbol`.
 *
 * @example
 * ```ts
 * import { anhydrous } from 'saltwright/formula'
 *
 * anhydrous('ZnSO4·7H2O').text // => 'ZnSO4'
 * anhydrous('[Cu(NH3)4]SO4·H2O').text // => '[Cu(NH3)4]SO4'
 * ```
 */
export function anhydrous(formula: FormulaLike): Formula {
  const whole = formulaOf(formula)
  if (whole.hydration?.isZero()) return whole
  const { waters } = readFormulaText(whole.text).scan
  return parseFormula(waters.reduceRight((text, water) => without(text, water.start, water.end), whole.text))
}

/** The text without a part, and without the dot that joins it: the one before it, or else the one behind it. */
function without(text: string, start: number, end: number): string {
  const before = dotBefore(text, start)
  if (before >= 0) return text.slice(0, before).trimEnd() + text.slice(end)
  return text.slice(0, start) + text.slice(skipSpaces(text, skipSpaces(text, end) + 1))
}

/** The place of the dot before a part, or of the x that is written for it; -1 where there is none. */
function dotBefore(text: string, start: number): number {
  let at = start - 1
  while (kindAt(text, at) === space) at -= 1
  return kindAt(text, at) === dot || text.charAt(at) === 'x' ? at : -1
}

/**
 * The formula with another number of water of crystallisation.
 *
 * @param formula - A formula or its text; water it already holds is replaced.
 * @param water - How many per formula unit: a number, a text such as `"8/3"` or `"½"`, or `"x"` for an unknown number. 0 gives
 *   the anhydrous formula.
 * @returns The hydrate.
 * @throws {@link FormulaError} `formula/bad-water-number`; `formula/only-water` where there is nothing but water; and whatever
 *   {@link parseFormula} throws for a text.
 *
 * @example
 * ```ts
 * import { withWater } from 'saltwright/formula'
 *
 * withWater('ZnSO4·7H2O', 1).text // => 'ZnSO4·H2O'
 * withWater('CdSO4', '8/3').text // => 'CdSO4·8/3H2O'
 * withWater('ZnSO4', -1) // throws formula/bad-water-number
 * ```
 */
export function withWater(formula: FormulaLike, water: number | string): Formula {
  const dry = anhydrous(formula)
  if (isOnlyWater(dry)) throw onlyWater(dry.text)
  if (typeof water !== 'number' && typeof water !== 'string') throw badNumber(showFound(water))
  const number = String(water)
  if (number === '0') return dry
  if (number.trim() === '' || !isWaterNumber(number)) throw badNumber(number)
  return parseFormula(`${dry.text}·${number === '1' ? '' : number}H2O`)
}

function isOnlyWater({ text }: Formula): boolean {
  return waterAmong(readFormulaText(text).scan, 0) > 0
}

/** Whether a text in front of H2O makes one part of water, behind a dot. */
function isWaterNumber(text: string): boolean {
  const trial = attempt(() => readFormulaText(`NaCl·${text}H2O`).scan)
  if (!trial.ok) return false
  const [, part, ...more] = trial.value.parts
  return part?.water === 1 && more.length === 0 && part.end - part.start === 3
}

function badNumber(found: string): FormulaError {
  return new FormulaError({
    code: 'formula/bad-water-number',
    message: `"${found}" is not a number of water molecules.`,
    found,
    expected: 'zero or more as a number, a fraction such as "8/3", or "x"',
  })
}

function onlyWater(found: string): FormulaError {
  return new FormulaError({
    code: 'formula/only-water',
    message: `"${found}" is water itself: it holds no water of crystallisation.`,
    found,
    expected: 'a salt',
  })
}
