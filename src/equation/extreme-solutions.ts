import { reduceRows } from './exact-null-space.js'
import { type Composition, exactMatrix } from './integer-matrix.js'
import { withoutCommonDivisor } from './integers.js'

type Vector = readonly bigint[]

/** A set of coefficients, none negative, that satisfies the rows looked at so far. */
interface Ray {
  readonly vector: Vector
  /** One bit for each species that takes part. */
  readonly support: bigint
}

/** More rays than this are not followed: the number may double with every row. */
const maxRays = 100

/**
 * The simplest reactions some species can make up without changing sides: the extreme rays of the cone of solutions
 * without negative coefficients, found row by row (double description method).
 *
 * @returns The rays, or nothing where there are too many.
 */
export function extremeSolutions(species: readonly Composition[], leftCount: number): readonly Vector[] | undefined {
  const { rows, scales } = exactMatrix(species, leftCount)
  let rays: readonly Ray[] = species.map((_, index) => unitRay(index, species.length))
  for (const row of rows) {
    rays = nextRays(rays, row)
    if (rays.length > maxRays) return undefined
  }
  return rays.map(({ vector }) => withoutCommonDivisor(vector.map((value, index) => value * (scales[index] as bigint))))
}

/** Of some vectors, one or more, the first ones that are independent of those before them. */
export function independentVectors(vectors: readonly Vector[]): readonly Vector[] {
  const columns = (vectors[0] as Vector).map((_, index) => vectors.map((vector) => vector[index] as bigint))
  return reduceRows(columns, vectors.length).pivots.map((pivot) => vectors[pivot] as Vector)
}

function unitRay(index: number, length: number): Ray {
  return { vector: Array.from({ length }, (_, at) => (at === index ? 1n : 0n)), support: 1n << BigInt(index) }
}

/** The rays that also satisfy one more row: those that do already, and pairs of the others that make up for each other. */
function nextRays(rays: readonly Ray[], row: Vector): readonly Ray[] {
  const valued = rays.map((ray) => ({ ray, value: product(row, ray.vector) }))
  const above = valued.filter(({ value }) => value > 0n)
  const below = valued.filter(({ value }) => value < 0n)
  const kept = valued.filter(({ value }) => value === 0n).map(({ ray }) => ray)
  const made = above.flatMap((a) => below.filter((b) => areNeighbours(a.ray, b.ray, rays)).map((b) => joined(a, b)))
  return [...kept, ...made]
}

/** Two rays span an edge of the cone where no third ray lives on the species of both. */
function areNeighbours(a: Ray, b: Ray, rays: readonly Ray[]): boolean {
  const both = a.support | b.support
  return !rays.some((ray) => ray !== a && ray !== b && (ray.support & ~both) === 0n)
}

function joined(a: { ray: Ray; value: bigint }, b: { ray: Ray; value: bigint }): Ray {
  const vector = a.ray.vector.map((entry, index) => entry * -b.value + (b.ray.vector[index] as bigint) * a.value)
  return { vector: withoutCommonDivisor(vector), support: a.ray.support | b.ray.support }
}

function product(row: Vector, vector: Vector): bigint {
  return vector.reduce((sum, value, index) => sum + value * (row[index] as bigint), 0n)
}
