import type { Token } from './scan.js'

/** Atoms of one element with their count. */
export interface Atom {
  readonly kind: 'atom'
  readonly symbol: string
  readonly count: number
}

/** A bracket with its count. */
interface Group {
  readonly kind: 'group'
  readonly bracket: string
  readonly units: readonly Unit[]
  readonly count: number
}

/** A piece of a formula between the dots. */
export type Unit = Atom | Group

/** A part between the outermost dots. */
export interface Branch {
  /** The number in front, as written; `1` where there is none. */
  readonly times: string
  readonly units: readonly Unit[]
  /** The charge behind it; 0 where there is none. */
  readonly charge: number
}

/** What was built so far of an open bracket, or of a part. */
interface Open {
  readonly bracket: string
  readonly units: Unit[]
  readonly outer: Open | undefined
}

/**
 * The parts of a formula as trees of atoms and brackets.
 *
 * @returns Nothing where a tree would not tell enough: counts that are not whole, dots inside brackets, charges in the middle.
 */
export function treeOf(tokens: readonly Token[]): readonly Branch[] | undefined {
  const branches: Branch[] = []
  for (const piece of splitAtDots(tokens)) {
    const branch = branchOf(piece)
    if (branch === undefined) return undefined
    branches.push(branch)
  }
  return branches
}

function splitAtDots(tokens: readonly Token[]): readonly (readonly Token[])[] {
  const pieces: Token[][] = [[]]
  for (const token of tokens) {
    if (token.kind === 'dot') pieces.push([])
    else pieces.at(-1)?.push(token)
  }
  return pieces
}

function branchOf(tokens: readonly Token[]): Branch | undefined {
  const [first, last] = [tokens[0], tokens.at(-1)]
  const hasTimes = first?.kind === 'times' || first?.kind === 'unknown'
  const isCharged = last?.kind === 'charge'
  const units = unitsOf(tokens.slice(hasTimes ? 1 : 0, isCharged ? -1 : undefined))
  return units && { times: hasTimes ? first.text : '1', units, charge: isCharged ? chargeIn(last.text) : 0 }
}

/** `2-` as -2. */
function chargeIn(text: string): number {
  const size = Number.parseInt(text, 10)
  return (Number.isNaN(size) ? 1 : size) * (text.endsWith('-') ? -1 : 1)
}

function unitsOf(tokens: readonly Token[]): readonly Unit[] | undefined {
  let open: Open = { bracket: '', units: [], outer: undefined }
  for (const [index, token] of tokens.entries()) {
    const next = step(open, token, countIn(tokens[index + 1]))
    if (next === undefined) return undefined
    open = next
  }
  return open.outer === undefined ? open.units : undefined
}

/** The count that a piece is; 1 where it is none. */
export function countIn(token: Token | undefined): number {
  return token?.kind === 'count' ? Number(token.text) : 1
}

/** Takes one piece in; the bracket that is open afterwards, or nothing where the tree cannot be built. */
function step(open: Open, { kind, text }: Token, count: number): Open | undefined {
  if (kind === 'count') return Number.isInteger(Number(text)) ? open : undefined
  if (kind === 'open') return { bracket: text, units: [], outer: open }
  if (kind === 'symbol') {
    open.units.push({ kind: 'atom', symbol: text, count })
    return open
  }
  return kind === 'close' ? closed(open, count) : undefined
}

function closed({ bracket, units, outer }: Open, count: number): Open | undefined {
  outer?.units.push({ kind: 'group', bracket, units, count })
  return outer
}
