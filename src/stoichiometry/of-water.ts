/** Whether an element is one of water, of acids and of nearly every precipitate: it says little of the ratio of two substances. */
export function isOfWater(symbol: string): boolean {
  return symbol === 'H' || symbol === 'O'
}
