import { isInvisible } from './complaint.js'
import { withPlainLetters } from './look-alike.js'

/** Tags and commands of HTML and LaTeX, with what they mean. */
const markup: readonly (readonly [string, string])[] = [
  ['<sub>', ''],
  ['</sub>', ''],
  ['<sup>', '^'],
  ['</sup>', ''],
  ['&middot;', '·'],
  ['&nbsp;', ' '],
  ['\\cdot', '·'],
  ['\\ce{', ''],
  ['\\mathrm{', ''],
  ['\\,', ''],
  ['$', ''],
  ['_{', ''],
  ['_', ''],
  ['\\', ''],
  ['<b>', ''],
  ['</b>', ''],
  ['<i>', ''],
  ['</i>', ''],
  ['"', ''],
  ["'", ''],
  ['`', ''],
  ['“', ''],
  ['”', ''],
  ['„', ''],
  ['‘', ''],
  ['’', ''],
  ['«', ''],
  ['»', ''],
]

/** The text without markup and invisible characters, and with plain letters instead of those that look like them. */
export function cleanText(text: string): string {
  const bare = markup.reduce((rest, [from, to]) => rest.replaceAll(from, to), withPlainLetters(text))
  return withoutStrayBraces([...bare].filter((one) => !isHidden(one)).join(''))
}

function isHidden(character: string): boolean {
  const code = character.codePointAt(0) as number
  return code < 32 || (code >= 127 && code < 160) || isInvisible(code) || isMark(code)
}

/** Accents and rings that are set over the letter before them. */
function isMark(code: number): boolean {
  return (code >= 0x300 && code < 0x370) || (code >= 0x20d0 && code < 0x2100)
}

/** Closing braces that nothing opened belonged to markup. */
function withoutStrayBraces(text: string): string {
  let open = 0
  return [...text]
    .filter((one) => {
      if (one === '{') open += 1
      if (one === '}') open -= 1
      const isStray = open < 0
      if (isStray) open = 0
      return !isStray
    })
    .join('')
}
