import { chargeSum, isPlausible } from './balance.js'
import type { FormulaNote } from './formula.js'
import type { Token } from './scan.js'
import { slipNote } from './slip-note.js'
import { usualOxygens } from './tables/usual-oxygens.js'
import { treeOf } from './tree.js'

/** An oxoanion with one oxygen atom too many or too few, where the usual one would make a salt: `CuSO5`. */
export function oddOxoanions(tokens: readonly Token[]): readonly FormulaNote[] {
  if (isPlausible(tokens)) return []
  return tokens.flatMap((token, index) => oddOxoanion(tokens, token, index))
}

function oddOxoanion(tokens: readonly Token[], centre: Token, index: number): readonly FormulaNote[] {
  const [oxygen, count] = tokens.slice(index + 1, index + 3)
  if (oxygen?.text !== 'O' || count?.kind !== 'count') return []
  const written = Number(count.text)
  const near = nearestUsual(centre.text, written)
  const meant = tokens.map((token) => (token === count ? { ...count, text: String(near) } : token))
  if (near === undefined || !isSimpleSalt(meant, written - near)) return []
  const message = `"${centre.text}O${count.text}" has an unusual number of oxygen atoms.`
  return [slipNote('odd-oxoanion', message, centre.start, count.end, meant)]
}

/** The usual number of oxygen atoms that is one off what is written; nothing where what is written is usual. */
function nearestUsual(centre: string, written: number): number | undefined {
  const usual = usualOxygens.find(({ symbol }) => symbol === centre)?.oxygens ?? [written]
  return usual.includes(written) ? undefined : usual.find((number) => Math.abs(number - written) === 1)
}

/** Whether this is a salt, no acid, and an oxygen atom more does not make it a basic salt: Pb2SO5 is PbO·PbSO4. */
function isSimpleSalt(tokens: readonly Token[], more: number): boolean {
  const sum = chargeSum(treeOf(tokens) ?? [], 'usual')
  if (sum === undefined || sum.least > 0 || sum.greatest < 0) return false
  const isBasic = more > 0 && sum.greatest >= 2
  return !isBasic && sum.ions.every(({ text }) => text !== 'H')
}
