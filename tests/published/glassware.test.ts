import { type GlasswareItem, glasswareTables, toleranceOf } from '../../src/solution/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { toTheDigitsOf } from './written-as.js'

type Capacity = `${number} mL`

/** Class A tolerances that a textbook prints, in mL by capacity; `ours` where ASTM International has another one. */
const printed: readonly { item: GlasswareItem; capacity: Capacity; tolerance: Capacity; ours?: Capacity }[] = [
  { item: 'transfer pipette', capacity: '5 mL', tolerance: '0.01 mL' },
  { item: 'transfer pipette', capacity: '10 mL', tolerance: '0.02 mL' },
  { item: 'transfer pipette', capacity: '25 mL', tolerance: '0.03 mL' },
  { item: 'transfer pipette', capacity: '50 mL', tolerance: '0.05 mL' },
  { item: 'transfer pipette', capacity: '100 mL', tolerance: '0.08 mL' },
  { item: 'volumetric flask', capacity: '25 mL', tolerance: '0.03 mL' },
  { item: 'volumetric flask', capacity: '50 mL', tolerance: '0.05 mL' },
  { item: 'volumetric flask', capacity: '100 mL', tolerance: '0.08 mL' },
  { item: 'volumetric flask', capacity: '250 mL', tolerance: '0.12 mL' },
  { item: 'volumetric flask', capacity: '500 mL', tolerance: '0.15 mL', ours: '0.20 mL' },
  { item: 'volumetric flask', capacity: '1000 mL', tolerance: '0.30 mL' },
  { item: 'volumetric flask', capacity: '2000 mL', tolerance: '0.50 mL' },
]

checkPublished(
  'Fifield F. W., Kealey D., Principles and Practice of Analytical Chemistry, Table 2.6 (the page read has no title; the book is from memory)',
  printed.map(
    ({ item, capacity, tolerance, ours }): PublishedRow => ({
      at: 'Table 2.6',
      what: `the tolerance of a ${item} of ${capacity}`,
      published: tolerance,
      ours: () => toTheDigitsOf(tolerance, toleranceOf(item, capacity, 'A', 'ASTM')),
      agrees: ours === undefined ? true : { ours, differs: 'the book has an older figure than the ASTM standard' },
    }),
  ),
)

const twice = (text: string): string => (2 * Number(text.split(' ')[0])).toFixed(3)

checkPublished(
  'ASTM E287, E288, E1272, scope: class B tolerances are twice those of class A',
  glasswareTables
    .filter(({ standard, item }) => standard === 'ASTM' && item !== 'transfer pipette')
    .flatMap(({ item, edition, sizes }) =>
      sizes.map(
        ({ capacity, division, A }): PublishedRow => ({
          at: `${edition}, scope`,
          what: `the class B tolerance of a ${item} of ${capacity} in mL`,
          published: twice(A),
          ours: () => toleranceOf(item, capacity, 'B', 'ASTM', division).value.toFixed(3),
          agrees: true,
        }),
      ),
    ),
)
