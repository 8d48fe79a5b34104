import type { Token } from './scan.js'

/** Whether a molecule holds more hydrogen than its carbon, nitrogen and phosphorus can bind: C6H1206 is none. */
export function hasTooMuchHydrogen(tokens: readonly Token[]): boolean {
  const most = 2 * atoms(tokens, 'C') + atoms(tokens, 'N') + atoms(tokens, 'P') + 4
  return atoms(tokens, 'H') > most
}

/** How often a symbol stands in a list of symbols and counts; brackets are not multiplied out. */
function atoms(tokens: readonly Token[], symbol: string): number {
  return tokens.reduce((sum, { text }, index) => (text === symbol ? sum + countBehind(tokens[index + 1]) : sum), 0)
}

function countBehind(token: Token | undefined): number {
  return token?.kind === 'count' ? Number(token.text) : 1
}
