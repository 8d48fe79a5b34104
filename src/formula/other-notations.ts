import { capital, digit, digitValue, kindAt, opening, runEnd, sign, small, superscript } from './characters.js'
import { cleanText } from './clean-text.js'
import { widestRange } from './ions.js'

const states = ['aq', 's', 'l', 'g']

/** `CO2,g`, `NaCl aq`: the text with its state in brackets, without a comma or semicolon at its end. */
export function withBracketedState(text: string): string {
  const state = states.find((word) => text.endsWith(`,${word}`) || text.endsWith(` ${word}`))
  const body = state === undefined ? text : text.slice(0, -state.length).trimEnd()
  const bare = body.endsWith(',') || body.endsWith(';') ? body.slice(0, -1) : body
  return state === undefined ? bare : `${bare}(${state})`
}

/** `CuSO4-5H2O`, `CuSO4 + 5 H2O`, `CuSO4_5H2O`: the text with a dot before its numbered water; nothing where there is none. */
export function withDotBeforeWater(text: string): string | undefined {
  const at = Math.max(...['-', '–', '+', '_'].map((joint) => text.lastIndexOf(joint)))
  const behind = text.slice(at + 1).trimStart()
  const number = runEnd(behind, 0, digit)
  const isWater = at > 0 && number > 0 && behind.slice(number).trimStart() === 'H2O'
  return isWater ? `${text.slice(0, at).trimEnd()}·${behind}` : undefined
}

/** `KFe3+3(SO4)2(OH)6`, `NaFe3+[Si2O6]`: the text without the charges that are written behind metals in mineral names. */
export function withoutMetalCharges(text: string): string | undefined {
  let mended = ''
  for (let at = 0; at < text.length; at += 1) {
    const isMarked =
      mended !== '' && kindAt(text, at) === digit && text.charAt(at + 1) === '+' && isMetalCharge(text, at)
    if (isMarked) at += 1
    else mended += text.charAt(at)
  }
  return mended === text ? undefined : mended
}

/** Whether a digit, with a plus behind it, is a known charge of the metal before it. */
function isMetalCharge(text: string, at: number): boolean {
  const start = kindAt(text, at - 1) === small ? at - 2 : at - 1
  const [least, greatest] = widestRange(text.slice(Math.max(start, 0), at)) ?? [1, 0]
  const charge = digitValue(text, at)
  return charge >= Math.max(least, 2) && charge <= greatest
}

/** `SO4=`, `PO4≡`: the text with the charge of two or three that its last sign meant of old. */
export function withOldCharge(text: string): string {
  if (text.endsWith('=')) return `${text.slice(0, -1)}^2-`
  return text.endsWith('≡') ? `${text.slice(0, -1)}^3-` : text
}

/** `H²O`: the text with its raised digits on the line. */
export function withLoweredDigits(text: string): string {
  return [...text]
    .map((one) => (kindAt(one, 0) === superscript && digitValue(one, 0) >= 0 ? digitValue(one, 0) : one))
    .join('')
}

/** `CuSO4?`: the text without marks of a sentence at its end, and without marks over its letters. */
export function withoutExclamation(text: string): string {
  return cleanText(text.endsWith('?') || text.endsWith('!') ? text.slice(0, -1) : text)
}

/** `CH3-CH2-OH`, `HC≡CH`: the text without its bonds. */
export function withoutBonds(text: string): string {
  let mended = ''
  for (let at = 0; at < text.length; at += 1) if (!isBond(text, at)) mended += text.charAt(at)
  return mended
}

function isBond(text: string, at: number): boolean {
  const behind = kindAt(text, at + 1)
  const isSign = '=≡#'.includes(text.charAt(at)) || kindAt(text, at) === sign
  return isSign && (behind === capital || behind === opening)
}

/** `γ-Al2O3`, `(η5-C5H5)2Fe`: the text without its Greek letter and what belongs to it. */
export function withoutGreek(text: string): string {
  const at = [...text].findIndex((one) => one >= 'α' && one <= 'ω')
  const behind = runEnd(text, at + 1, digit)
  return text.slice(0, at) + text.slice(kindAt(text, behind) === sign ? behind + 1 : behind)
}
