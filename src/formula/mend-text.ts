import { dot, kindAt, skipSpaces } from './characters.js'

const openings = '([{'
const closings = ')]}'

/** The text with every bracket closed by its partner: closing brackets changed, dropped or added. */
export function withMatchingBrackets(text: string): string {
  const open: string[] = []
  let mended = ''
  for (const one of text) {
    if (openings.includes(one)) open.push(closings.charAt(openings.indexOf(one)))
    mended += closings.includes(one) ? (open.pop() ?? '') : one
  }
  return mended + open.reverse().join('')
}

/** The text without dots at its ends, and with one dot where there were several. */
export function withSingleDots(text: string): string {
  let mended = ''
  for (let at = 0; at < text.length; at += 1) {
    const isKept = kindAt(text, at) !== dot || (mended !== '' && isFollowed(text, at + 1))
    if (isKept) mended += text.charAt(at)
  }
  return mended.trim()
}

/** The text without its spaces, where none stands between two digits: lowered digits often stand apart in copied text. */
export function withoutSpaces(text: string): string {
  const words = text.split(' ').filter(Boolean)
  const isSplit = words.some((word, index) => isDigitAt(word, 0) && isDigitAt(words[index - 1] ?? '', -1))
  return isSplit ? text : words.join('')
}

function isDigitAt(word: string, at: number): boolean {
  const character = word.at(at) ?? ''
  return character >= '0' && character <= '9'
}

/** Whether something other than a dot and the end follows. */
function isFollowed(text: string, at: number): boolean {
  const next = skipSpaces(text, at)
  return next < text.length && kindAt(text, next) !== dot
}
