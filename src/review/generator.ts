/** Gives numbers from 0 (included) to 1 (not included), the same ones for the same seed. */
export type Generator = () => number

const modulus = 2_147_483_647
const multiplier = 48_271

/**
 * A small generator that is the same everywhere: multiplicative congruential, modulus 2^31 - 1 and multiplier 48 271 (Park, Miller and
 * Stockmeyer, Communications of the ACM 1993, 36(7), 105-110). Good enough to vary questions, not for anything secret.
 */
export function generatorFrom(seed: number, stream = 0): Generator {
  let state = 1 + ((seed * 7919 + stream * 104_729) % (modulus - 1))
  const next = (): number => {
    state = (state * multiplier) % modulus
    return (state - 1) / (modulus - 1)
  }
  for (let warm = 0; warm < 8; warm += 1) next()
  return next
}
