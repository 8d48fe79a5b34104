import fc from 'fast-check'
import { describe, expect, it } from 'vitest'
import { exactNullSpace } from '../../src/equation/exact-null-space.js'
import { extremeSolutions, independentVectors } from '../../src/equation/extreme-solutions.js'
import { smallNullSpace } from '../../src/equation/small-null-space.js'
import { exactSolutions, independentSolutions } from '../../src/equation/solutions.js'
import { parseFormula } from '../../src/formula/index.js'

const entry = fc.integer({ min: -9, max: 9 })
const matrix = fc
  .tuple(fc.integer({ min: 1, max: 8 }), fc.integer({ min: 1, max: 8 }))
  .chain(([rows, columns]) =>
    fc.array(fc.array(entry, { minLength: columns, maxLength: columns }), { minLength: rows, maxLength: rows }),
  )

function products(rows: readonly (readonly bigint[])[], vector: readonly bigint[]): readonly bigint[] {
  return rows.map((row) => row.reduce((sum, value, index) => sum + value * vector[index]!, 0n))
}

describe('the null space', () => {
  it('holds what it should: every vector solves every row, and each has a column of its own', () => {
    fc.assert(
      fc.property(matrix, (numbers) => {
        const rows = numbers.map((row) => row.map(BigInt))
        const vectors = exactNullSpace(rows, rows[0]!.length)
        for (const vector of vectors) expect(products(rows, vector).every((value) => value === 0n)).toBe(true)
        for (const vector of vectors) {
          const own = vector.findIndex(
            (value, index) => value !== 0n && vectors.every((o) => o === vector || o[index] === 0n),
          )
          expect(own).toBeGreaterThanOrEqual(0)
        }
      }),
    )
  })

  it('is the same on plain numbers, up to the sign', () => {
    fc.assert(
      fc.property(matrix, (numbers) => {
        const exact = exactNullSpace(
          numbers.map((row) => row.map(BigInt)),
          numbers[0]!.length,
        )
        const small = smallNullSpace(
          numbers.map((row) => [...row]),
          numbers[0]!.length,
        )
        const upright = (vector: readonly bigint[]): string => {
          const turned = vector.find((value) => value !== 0n)! < 0n ? vector.map((value) => -value) : vector
          return turned.join(',')
        }
        expect(small?.map((vector) => upright(vector.map(BigInt)))).toEqual(exact.map(upright))
      }),
    )
  })

  it('is left to whole numbers of any size where plain numbers would not be exact', () => {
    const large = 94_906_267 // its square is just above 2 ** 53
    expect(
      smallNullSpace(
        [
          [large, 1, 0],
          [1, large, 1],
        ],
        3,
      ),
    ).toBeUndefined()
    expect(
      smallNullSpace(
        [
          [large, 0, 1],
          [0, large - 1, 1],
        ],
        3,
      ),
    ).toBeUndefined()
  })

  // the sums of what is subtracted, of products and of scaled entries are 2 ** 53, and one less or as much less as can be
  it.each([
    {
      rows: [
        [1, 2 ** 26],
        [2 ** 26, 2 ** 52],
      ],
      vector: undefined,
    },
    {
      rows: [
        [1, 2 ** 26],
        [2 ** 26 - 1, 2 ** 52 - 2 ** 26],
      ],
      vector: [-(2 ** 26), 1],
    },
    { rows: [[1, 2 ** 53]], vector: undefined },
    { rows: [[1, 2 ** 53 - 1]], vector: [1 - 2 ** 53, 1] },
    { rows: [[2 ** 53, 1]], vector: undefined },
    { rows: [[2 ** 53 - 1, 1]], vector: [-1, 2 ** 53 - 1] },
  ])('of $rows on plain numbers is $vector', ({ rows, vector }) => {
    expect(smallNullSpace(rows, 2)).toEqual(vector && [vector])
  })

  it('of an empty matrix is everything', () => {
    expect(exactNullSpace([], 2)).toEqual([
      [1n, 0n],
      [0n, 1n],
    ])
    expect(smallNullSpace([], 2)).toEqual([
      [1, 0],
      [0, 1],
    ])
  })
})

describe('solutions', () => {
  const formula = fc
    .array(fc.tuple(fc.constantFrom('H', 'C', 'O', 'N', 'Cl'), fc.integer({ min: 1, max: 1000 })), {
      minLength: 1,
      maxLength: 3,
    })
    .map((atoms) => parseFormula(atoms.map(([symbol, count]) => `${symbol}${count}`).join('')))

  it('are those of exact arithmetic, up to the sign', () => {
    fc.assert(
      fc.property(fc.array(formula, { minLength: 2, maxLength: 8 }), (species) => {
        const sizes = (vectors: readonly (readonly bigint[])[]): readonly string[] =>
          vectors.map((vector) =>
            (vector.find((value) => value !== 0n)! < 0n ? vector.map((value) => -value) : vector).join(),
          )
        expect(sizes(independentSolutions(species, 1))).toEqual(sizes(exactSolutions(species, 1)))
      }),
    )
  })

  it('without negative numbers are found, none of them a mixture of others', () => {
    fc.assert(
      fc.property(
        fc.array(formula, { minLength: 2, maxLength: 6 }),
        fc.integer({ min: 1, max: 5 }),
        (species, leftCount) => {
          const rays = extremeSolutions(species, leftCount) ?? []
          for (const ray of rays) {
            expect(ray.every((value) => value >= 0n)).toBe(true)
            const inside = rays.filter(
              (other) => other !== ray && other.every((value, index) => value === 0n || ray[index] !== 0n),
            )
            expect(inside).toEqual([])
          }
          const dimension = exactSolutions(species, leftCount).length
          expect(rays.length === 0 ? 0 : independentVectors(rays).length).toBeLessThanOrEqual(dimension)
        },
      ),
    )
  })

  it('hold for counts beyond plain numbers', () => {
    const counts = new Map([['H', { numerator: 2n ** 60n, denominator: 1n }]])
    const one = new Map([['H', { numerator: 1n, denominator: 1n }]])
    expect(
      independentSolutions(
        [
          { counts: one, charge: 0 },
          { counts, charge: 0 },
        ],
        1,
      ),
    ).toEqual([[2n ** 60n, 1n]])
  })
})
