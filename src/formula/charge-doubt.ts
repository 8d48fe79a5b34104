import { type ChargeSum, chargeSum } from './balance.js'
import type { FormulaNote } from './formula.js'
import type { Ion } from './ions.js'
import { isElement } from './known-ions.js'
import { commonDivisor } from './numeral.js'
import { plainText } from './plain-text.js'
import type { Token } from './scan.js'
import { treeOf } from './tree.js'

/** A neutral formula of usual ions whose charges, with everything that is known of them, cannot add up to zero: `NaSO4`. */
export function chargeDoubt(tokens: readonly Token[]): readonly FormulaNote[] {
  const branches = treeOf(tokens)
  if (branches === undefined || branches.some(({ charge }) => charge !== 0)) return []
  const sum = chargeSum(branches, 'known')
  if (sum === undefined || (sum.least <= 1e-6 && sum.greatest >= -1e-6) || isAlloy(sum)) return []
  const suggestion = neutralSalt(tokens, sum.ions)
  const hint = suggestion === undefined ? '' : ` Was ${suggestion} meant?`
  const message = `The usual charges add up to ${spellSum(sum)}, not to zero.${hint}`
  const position = { start: 0, end: (tokens.at(-1) as Token).end }
  return [{ code: 'charges-do-not-add-up', message, position, suggestion }]
}

/** Whether so much charge is left over that the metals are none of ions: `Sm2Fe17N3`. */
function isAlloy({ least }: ChargeSum): boolean {
  return least > 20
}

function spellSum({ least, greatest }: ChargeSum): string {
  const shown = [least, greatest].map((charge) => (charge > 0 ? `+${round(charge)}` : round(charge)))
  return shown[0] === shown[1] ? `${shown[0]}` : `${shown[0]} to ${shown[1]}`
}

function round(charge: number): string {
  return String(Math.round(charge * 100) / 100)
}

/** The salt of two ions with fixed charges in the numbers that make it neutral, with what follows its first dot. */
function neutralSalt(tokens: readonly Token[], ions: readonly Ion[]): string | undefined {
  const charged = ions.filter(({ least, greatest }) => least !== 0 || greatest !== 0)
  const isOpen = charged.some(({ least, greatest }) => least !== greatest) || tokens.some(isComplex)
  const texts = new Set(charged.map(({ text }) => text))
  if (isOpen || texts.size !== 2) return undefined
  const cation = first(charged.filter(({ least }) => least > 0))
  const anion = first(charged.filter(({ least }) => least < 0))
  const salt = pairUp(cation, anion) + plainText(tokens.slice(dotPlace(tokens)))
  return salt === plainText(tokens) ? undefined : salt
}

function isComplex({ text }: Token): boolean {
  return text === '[' || text === '{'
}

/** One ion of several: they differ in their counts only. */
function first(ions: readonly Ion[]): Ion {
  return ions[0] as Ion
}

/** The place of the first dot behind the salt; the end where there is none. */
function dotPlace(tokens: readonly Token[]): number {
  const place = tokens.findIndex(({ kind }) => kind === 'dot')
  return place < 0 ? tokens.length : place
}

function pairUp(cation: Ion, anion: Ion): string {
  const divisor = commonDivisor(cation.least, -anion.least)
  return withCount(cation.text, -anion.least / divisor) + withCount(anion.text, cation.least / divisor)
}

function withCount(text: string, count: number): string {
  if (count === 1) return text
  return isElement(text) ? `${text}${count}` : `(${text})${count}`
}
