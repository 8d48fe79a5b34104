import { isPlausible } from './balance.js'
import { isOrganic } from './case-slips.js'
import type { FormulaNote } from './formula.js'
import { metalRange } from './ions.js'
import { hasTooMuchHydrogen } from './organic.js'
import type { Token } from './scan.js'
import { slipNote } from './slip-note.js'

/** Characters that look like what was meant: zero for O, I or one for l, numerals in brackets, Ac for acetyl, a slash for a dot. */
export function letterSlips(tokens: readonly Token[]): readonly FormulaNote[] {
  const certain = tokens.flatMap((_, index) => [...oxidationNumber(tokens, index), ...acetyl(tokens, index)])
  if (certain.length > 0 || isPlausible(tokens)) return certain
  return tokens.flatMap((_, index) => [
    ...zeroForO(tokens, index),
    ...letterForL(tokens, index),
    ...slashForDot(tokens, index),
  ])
}

/** The tokens with some of them replaced. */
function replaced(tokens: readonly Token[], index: number, length: number, by: readonly Token[]): readonly Token[] {
  return [...tokens.slice(0, index), ...by, ...tokens.slice(index + length)]
}

/** `Fe203`: each zero behind another digit may be the letter. */
function zeroForO(tokens: readonly Token[], index: number): readonly FormulaNote[] {
  const token = tokens[index] as Token
  if (token.kind !== 'count') return []
  for (let at = token.text.indexOf('0', 1); at > 0; at = token.text.indexOf('0', at + 1)) {
    const meant = replaced(tokens, index, 1, asOxygen(token, at))
    const isLikely = isOrganic(tokens) ? hasTooMuchHydrogen(tokens) && !hasTooMuchHydrogen(meant) : isPlausible(meant)
    if (isLikely && isWellFormed(token.text, at)) return [zeroNote(token, meant)]
  }
  return []
}

/** Neither a count of 1 before the letter, nor a zero or point behind it. */
function isWellFormed(text: string, at: number): boolean {
  return text.slice(0, at) !== '1' && Number.isInteger(Number(text)) && !text.startsWith('0', at + 1)
}

function asOxygen(token: Token, at: number): readonly Token[] {
  const behind = token.text.slice(at + 1)
  const oxygen: Token = { ...token, kind: 'symbol', text: 'O' }
  return [{ ...token, text: token.text.slice(0, at) }, oxygen, ...(behind === '' ? [] : [{ ...token, text: behind }])]
}

function zeroNote({ text, start, end }: Token, meant: readonly Token[]): FormulaNote {
  return slipNote('likely-letter-o', `"${text}" is read as a count, with the digit zero.`, start, end, meant)
}

/** `NaCI` and `NaC1`: what follows a carbon atom may be the second letter of chlorine. */
function letterForL(tokens: readonly Token[], index: number): readonly FormulaNote[] {
  const [carbon, behind] = [tokens[index] as Token, tokens[index + 1]]
  if (carbon.text !== 'C' || behind === undefined || isOrganic(tokens)) return []
  const isOne = behind.kind === 'count' && behind.text.startsWith('1')
  if (behind.text !== 'I' && !isOne) return []
  const chlorine: Token = { ...carbon, end: behind.end, text: 'Cl' }
  const count = isOne ? behind.text.slice(1) : ''
  const meant = replaced(tokens, index, 2, count === '' ? [chlorine] : [chlorine, { ...behind, text: count }])
  const message = `"C${behind.text}" is read as carbon${isOne ? '' : ' and iodine'}.`
  return isPlausible(meant) ? [slipNote('likely-letter-l', message, carbon.start, behind.end, meant)] : []
}

/** `CuSO4/5H2O`: a slash between a count and the number of waters. */
function slashForDot(tokens: readonly Token[], index: number): readonly FormulaNote[] {
  const token = tokens[index] as Token
  const [count, waters] = token.text.split('/')
  if (waters === undefined) return []
  const dot: Token = { ...token, kind: 'dot', text: '·' }
  const meant = replaced(tokens, index, 1, [
    { ...token, text: count as string },
    dot,
    { ...dot, kind: 'times', text: waters },
  ])
  const isWater =
    meant
      .slice(index + 3)
      .map(({ text }) => text)
      .join('') === 'H2O'
  if (!isWater || !isPlausible(meant)) return []
  return [slipNote('likely-dot', `"${token.text}" is read as a fraction.`, token.start, token.end, meant)]
}

/** `Cu(I)Cl`: iodine or vanadium alone in round brackets behind a metal, without a count. */
function oxidationNumber(tokens: readonly Token[], index: number): readonly FormulaNote[] {
  const [metal, open, numeral, close, count] = tokens.slice(index, index + 5)
  const isNumeral = open?.text === '(' && (numeral?.text === 'I' || numeral?.text === 'V') && close?.kind === 'close'
  if (!isNumeral || metal === undefined || metalRange(metal.text) === undefined || count?.kind === 'count') return []
  const meant = replaced(tokens, index + 1, 3, [])
  const message = `"(${numeral.text})" is read as an element, not as an oxidation number.`
  return [slipNote('likely-oxidation-number', message, open.start, close.end, meant)]
}

/** `NaOAc`. */
function acetyl(tokens: readonly Token[], index: number): readonly FormulaNote[] {
  const [oxygen, actinium] = [tokens[index] as Token, tokens[index + 1]]
  if (oxygen.text !== 'O' || actinium?.text !== 'Ac') return []
  const letters = [
    ['C', '2'],
    ['H', '3'],
    ['O', '2'],
  ].flatMap(([symbol, count]) => [
    { ...oxygen, kind: 'symbol', text: symbol } as Token,
    { ...oxygen, kind: 'count', text: count } as Token,
  ])
  const meant = replaced(tokens, index, 2, letters)
  return [
    slipNote('likely-abbreviation', '"Ac" is read as actinium, not as acetyl.', actinium.start, actinium.end, meant),
  ]
}
