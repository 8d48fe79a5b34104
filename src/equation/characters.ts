/** Whether a character code is white space of any width, a line break included. */
export function isSpace(code: number): boolean {
  if (code <= 0x20) return code === 0x20 || (code >= 0x09 && code <= 0x0d)
  if (code < 0xa0) return false
  return code === 0xa0 || (code >= 0x2000 && code <= 0x200a) || isRareSpace(code)
}

function isRareSpace(code: number): boolean {
  return code === 0x202f || code === 0x205f || code === 0x3000 || code === 0x2028 || code === 0x2029
}

/** Whether a character code is one of the digits 0 to 9. */
export function isDigit(code: number): boolean {
  return code >= 0x30 && code <= 0x39
}

/** Whether a text is one small letter. */
export function isSmallLetter(text: string): boolean {
  return text.length === 1 && text >= 'a' && text <= 'z'
}

/** Whether a character code is a hyphen, a dash or a minus sign. */
export function isDash(code: number): boolean {
  return code === 0x2d || code === 0x2212 || (code >= 0x2010 && code <= 0x2015) || code === 0xff0d
}

/** Whether a character code is a plus sign, of usual or full width. */
export function isPlus(code: number): boolean {
  return code === 0x2b || code === 0xff0b
}

/** The first place from `at` on, before `end`, that is not white space. */
export function skipSpaces(text: string, at: number, end: number): number {
  let next = at
  while (next < end && isSpace(text.charCodeAt(next))) next += 1
  return next
}

/** The place after the last character before `end`, not before `start`, that is not white space. */
export function trimEnd(text: string, start: number, end: number): number {
  let last = end
  while (last > start && isSpace(text.charCodeAt(last - 1))) last -= 1
  return last
}

/** The place after the digits that begin at `at`. */
export function skipDigits(text: string, at: number, end: number): number {
  let next = at
  while (next < end && isDigit(text.charCodeAt(next))) next += 1
  return next
}
