import { type Ion, ionsOf, type Strictness } from './ions.js'
import type { Token } from './scan.js'
import { molecules } from './tables/molecules.js'
import { type Branch, treeOf, type Unit } from './tree.js'

/** What the usual charges of the ions of a formula add up to. */
export interface ChargeSum {
  /** Least and greatest sum. */
  readonly least: number
  readonly greatest: number
  /** The ions, part by part. */
  readonly ions: readonly Ion[]
}

const knownMolecules: ReadonlySet<string> = /* @__PURE__ */ new Set(/* @__PURE__ */ listMolecules())

/** Adds up the charges of the ions of a formula; nothing where its letters do not say, or where no ions are. */
export function chargeSum(branches: readonly Branch[], strictness: Strictness): ChargeSum | undefined {
  const ions: Ion[] = []
  for (const { units, times } of branches) {
    const found = isHalogen(units) ? [] : ionsOf(units, strictness)
    if (found === undefined) return undefined
    ions.push(...found.map((ion) => ({ ...ion, count: ion.count * timesAs(times) })))
  }
  const isSalt = ions.some(({ least }) => least > 0) && ions.some(({ greatest }) => greatest < 0)
  return isSalt ? { least: sumOf(ions, 'least'), greatest: sumOf(ions, 'greatest'), ions } : undefined
}

/** Whether a part is a molecule of two halogen atoms, as in `KI·I2`: it has no charge. */
function isHalogen([first, ...more]: readonly Unit[]): boolean {
  const isAlone = first?.kind === 'atom' && more.length === 0
  return isAlone && first.count === 2 && ['F', 'Cl', 'Br', 'I'].includes(first.symbol)
}

/** A number in front of a part; an unknown number stands before water, which has no charge. */
function timesAs(text: string): number {
  const [top, bottom = 1] = text.split('/').map(Number)
  return Number(top) / bottom || 0
}

function sumOf(ions: readonly Ion[], end: 'least' | 'greatest'): number {
  return ions.reduce((sum, ion) => sum + ion.count * ion[end], 0)
}

/** Whether a formula is a salt or oxide of usual ions that add up to zero, or a well-known molecule, with or without water. */
export function isPlausible(tokens: readonly Token[]): boolean {
  const branches = treeOf(tokens)
  if (branches === undefined || branches.some(({ charge }) => charge !== 0)) return false
  if (branches.length === 1 && knownMolecules.has(tokens.map(({ text }) => text).join(''))) return true
  const sum = chargeSum(branches, 'usual')
  return sum !== undefined && sum.least <= 0.001 && sum.greatest >= -0.001
}

function listMolecules(): string[] {
  return molecules.flatMap(({ formulas }) => formulas.split(' '))
}
