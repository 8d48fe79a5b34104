/**
 * Numbers that look random and are the same for the same seed, so that every finding can be had again.
 *
 * @param {number} seed - Any whole number.
 */
export function randomOf(seed) {
  let state = seed >>> 0
  /** From 0 to below 1 (the mulberry32 generator). */
  function fraction() {
    state = (state + 0x6d2b79f5) >>> 0
    let mixed = Math.imul(state ^ (state >>> 15), state | 1)
    mixed ^= mixed + Math.imul(mixed ^ (mixed >>> 7), mixed | 61)
    return ((mixed ^ (mixed >>> 14)) >>> 0) / 4294967296
  }
  /** A whole number from 0 to below a limit. */
  const below = (limit) => Math.floor(fraction() * limit)
  /** One of a list. */
  const pick = (list) => list[below(list.length)]
  /** Whether something happens that happens once in so many times. */
  const oneIn = (times) => below(times) === 0
  /** Several of something, from none to a limit, short lists more often. */
  const many = (most, make) => Array.from({ length: Math.min(below(most + 1), below(most + 1)) }, make)
  return { fraction, below, pick, oneIn, many }
}
