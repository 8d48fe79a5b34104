import { codePoint } from '../formula/complaint.js'

/** The most characters of a text that a message shows. */
const longest = 120

/** A text in quotes for a message: short, and with the code of what a screen may not show. */
export function quote(text: string): string {
  return `"${brief(text)}"`
}

/** A text for a message, cut short where it is long. */
export function brief(text: string): string {
  const written = [...text.slice(0, 2 * longest)].map((one) => (isShown(one) ? one : `\\u{${codePoint(one)}}`))
  const shown = [...written.join('')]
  return shown.length <= longest ? shown.join('') : `${shown.slice(0, longest - 3).join('')}...`
}

/** Whether a screen shows the character: it is no control, has a width, and turns no text around. */
function isShown(character: string): boolean {
  const code = character.codePointAt(0) as number
  const isControl = code < 0x20 || (code >= 0x7f && code < 0xa0)
  const turnsOrHides = (code >= 0x200b && code <= 0x200f) || (code >= 0x2028 && code <= 0x202e)
  const isHalf = code >= 0xd800 && code <= 0xdfff
  return !isControl && !turnsOrHides && !isHalf && !(code >= 0x2060 && code <= 0x206f) && code !== 0xfeff
}
