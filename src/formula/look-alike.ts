import { lookAlikes } from './tables/look-alikes.js'

/** What a character looks like, and where it is from. */
export interface LookAlike {
  /** The plain character. */
  readonly plain: string
  /** `Cyrillic`, or `wide or ornamented` for Latin letters and digits in fancy dress. */
  readonly kind: string
}

/** The plain character that a letter or digit of another kind looks like, if any. */
export function lookAlike(character: string): LookAlike | undefined {
  for (const { alphabet, letters, like } of lookAlikes) {
    const index = letters.indexOf(character)
    if (index >= 0) return { plain: like.charAt(index), kind: alphabet }
  }
  const plain = character.normalize('NFKC').replace('\u2212', '-')
  if (plain !== character && isPlainText(plain)) return { plain, kind: 'wide or ornamented' }
  const base = character.normalize('NFD').charAt(0)
  return base !== character && isPlainText(base) ? { plain: base, kind: 'marked' } : undefined
}

/** Whether a text is letters, digits and signs that every keyboard has. */
function isPlainText(text: string): boolean {
  for (const character of text) if (character < '!' || character > '~') return false
  return true
}

/** The text with every look-alike replaced by what it looks like. */
export function withPlainLetters(text: string): string {
  return [...text]
    .map((character) => (character > '\u007f' ? (lookAlike(character)?.plain ?? character) : character))
    .join('')
}
