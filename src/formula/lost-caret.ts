import { closing, digitValue, kindAt, opening, plainDigits, runEnd, sign, signAt, small } from './characters.js'
import { endsPart } from './charge.js'
import { complain } from './complaint.js'
import type { FormulaError } from './formula-error.js'
import { isElement, isKnownIon, isMetal, isMolecularIon } from './known-ions.js'
import type { Scan } from './scan.js'

/**
 * Where a count ends whose digits are followed by a sign without a caret: how many of them belong to the charge. By this rule:
 *
 * 1. Behind several signs or a sign with digits (`SO4--`, `SO4-2`) the digits before are a count.
 * 2. Of the two readings, digits as count (`NO3-`) or last digit as charge (`SO42-`, `(SO4)2-`, `Fe3+`), a common ion wins.
 * 3. Behind a square bracket the digits are the charge: `[Fe(CN)6]4-`.
 * 4. Behind a metal alone they are the charge (`Zr4+`); behind anything else a lone digit is a count (`AlF2+`, `N2+`).
 * 5. Of two digits behind the ligands of a metal the last is the charge: `MnCl42-`, `GeO44-`.
 * 6. Where both or neither reading is usual (`O2-`, `VO2+`, `(H2O)2+`) the text is refused, and the hint shows both.
 *
 * @returns The end of the count; its start, where all digits belong to the charge.
 */
export function settleSign(scan: Scan, start: number, end: number): number {
  const { text } = scan
  const isRaised = kindAt(text, end) !== sign
  if (!endsPart(text, end + 1)) return end
  const known = knownReading(scan, end)
  if (known !== undefined) return known
  if (text.charAt(start - 1) === ']') return start
  if (isRaised || digitValue(text, end - 1) < 2) return end
  return unknownReading(scan, start, end)
}

/** The reading that is a common ion, if there is one. */
function knownReading(scan: Scan, end: number): number | undefined {
  const body = plainBody(scan, end)
  const direction = signAt(scan.text, end)
  const asCount = isKnownIon(body, direction)
  const asCharge = isKnownIon(unwrapped(body.slice(0, -1)), direction * digitValue(scan.text, end - 1))
  if (asCount && asCharge) throw ambiguous(scan, end)
  if (asCharge) return end - 1
  return asCount ? end : undefined
}

/** `SO4` of `(SO4)`: an ion in brackets of its own. */
function unwrapped(body: string): string {
  let depth = 0
  for (let at = 0; at < body.length - 1; at += 1) {
    const kind = kindAt(body, at)
    if (kind === opening) depth += 1
    if (kind === closing) depth -= 1
    if (depth === 0) return body
  }
  return kindAt(body, body.length - 1) === closing ? body.slice(1, -1) : body
}

/** The segment up to the sign, without spaces and with plain digits. */
function plainBody({ text, segment }: Scan, end: number): string {
  return plainDigits(text.slice(Math.max(segment, end - 40), end)).replaceAll(' ', '')
}

function unknownReading(scan: Scan, start: number, end: number): number {
  const isSingle = end - start === 1
  const written = plainBody(scan, start)
  const before = unwrapped(written)
  if (isMetal(before)) {
    if (isSingle && signAt(scan.text, end) > 0) return start
    throw ambiguous(scan, end)
  }
  if (isCrowded(scan, start, end)) return end - 1
  const isStrange = isElement(before) && !isMolecularIon(before, signAt(scan.text, end))
  if (!isSingle || isStrange || before !== written) throw ambiguous(scan, end)
  return end
}

/** Whether two digits stand behind the ligands of a metal: more than eight would find no room, so the last digit is a charge. */
function isCrowded({ text, segment }: Scan, start: number, end: number): boolean {
  const [ligands, charge] = [digitValue(text, start), digitValue(text, end - 1)]
  const isRoomy = end - start !== 2 || ligands < 2 || ligands > 8 || charge > 6
  const at = runEnd(text, segment, opening)
  const metal = text.slice(at, kindAt(text, at + 1) === small ? at + 2 : at + 1)
  return !isRoomy && isMetal(metal) && isLigand(text, start)
}

/** Whether a bracket, oxygen or a halogen ends before this place. */
function isLigand(text: string, end: number): boolean {
  return kindAt(text, end - 1) === closing || ['O', 'F', 'Cl', 'Br', 'I'].some((symbol) => text.endsWith(symbol, end))
}

function ambiguous(scan: Scan, end: number): FormulaError {
  const { text, segment } = scan
  const [before, digits, mark] = [text.slice(0, end - 1), text.slice(end - 1, end), text.slice(end, end + 1)]
  const stop = runEnd(text, end, sign)
  return complain(scan, {
    code: 'formula/ambiguous-charge',
    start: segment,
    end: stop,
    says: 'has a number that may be a count or a charge',
    expected: 'a charge behind a caret',
    hint: `${before}^${digits}${mark} or ${before}${digits}^${mark}?`,
  })
}
