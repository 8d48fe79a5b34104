import { exactNullSpace } from './exact-null-space.js'
import { type Composition, exactMatrix, smallMatrix } from './integer-matrix.js'
import { withoutCommonDivisor } from './integers.js'
import { smallNullSpace } from './small-null-space.js'

/**
 * Every set of coefficients that balances some species: the independent ones, as whole numbers without common divisor.
 * Plain numbers where they are surely exact, otherwise whole numbers of any size.
 *
 * @param species - The species of the left side, then those of the right.
 * @param leftCount - How many stand on the left; a negative coefficient moves a species to the other side.
 * @returns An empty list where nothing balances, one vector where the answer is unique.
 */
export function independentSolutions(
  species: readonly Composition[],
  leftCount: number,
): readonly (readonly bigint[])[] {
  const matrix = smallMatrix(species, leftCount)
  const small = matrix === undefined ? undefined : smallNullSpace(matrix, species.length)
  return small === undefined ? exactSolutions(species, leftCount) : small.map((vector) => vector.map(BigInt))
}

/** The same by whole numbers of any size from the start. */
export function exactSolutions(species: readonly Composition[], leftCount: number): readonly (readonly bigint[])[] {
  const { rows, scales } = exactMatrix(species, leftCount)
  const vectors = exactNullSpace(rows, species.length)
  return vectors.map((vector) => withoutCommonDivisor(vector.map((value, index) => value * (scales[index] as bigint))))
}
