import { anions } from '../tables/anions.js'
import type { Branch } from '../tree.js'
import type { Constituent } from './constituent.js'
import { constituentsOf } from './constituents.js'
import { multiplied } from './numerals.js'

/**
 * The name of a salt, an ion or a complex. Of one kind of cation and anion each, the charges tell the numbers; of more, they are
 * said by prefixes.
 *
 * @returns Nothing where it is outside the tables.
 */
export function saltName(branch: Branch): string | undefined {
  const constituents = constituentsOf(branch)
  if (constituents === undefined) return undefined
  if (branch.charge !== 0) return ionName(constituents)
  const isPlain = kinds(constituents, 1) <= 1 && kinds(constituents, -1) <= 1
  const words = constituents.map((one) => (isPlain ? one.name : withNumber(one)))
  return words.includes(undefined) ? undefined : words.join(' ')
}

function ionName([ion, ...others]: readonly Constituent[]): string | undefined {
  return ion === undefined || others.length > 0 ? undefined : `${ion.name} ion`
}

function kinds(constituents: readonly Constituent[], sign: number): number {
  return constituents.filter(({ charge }) => Math.sign(charge) === sign).length
}

function withNumber({ name, count, charge, formula }: Constituent): string | undefined {
  const isComplex = formula.startsWith('[')
  const isGrouped = isComplex || (charge < 0 && (isOxoanion(name) || isOtherAnion(`di${name}`)))
  return multiplied(name, count, isGrouped)
}

/** Oxoanions that are not known to join into larger ones: two of them need no brackets. */
const single = [
  'nitrate',
  'nitrite',
  'chlorate',
  'perchlorate',
  'bromate',
  'iodate',
  'formate',
  'acetate',
  'thiocyanate',
]

function isOxoanion(name: string): boolean {
  return (name.endsWith('ate') || name.endsWith('ite')) && !single.includes(name)
}

/** Whether a name with a prefix is the name of another anion: disulfide. */
function isOtherAnion(name: string): boolean {
  return anions.some((row) => row.name === name)
}
