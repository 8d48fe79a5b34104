import type { Token } from './scan.js'
import { styles } from './styles.js'

/** A formula in its one plain spelling. */
export function plainText(tokens: readonly Token[]): string {
  return tokens.map(styles.plain.write).join('')
}
