import { exact, roundTo } from '../../src/quantity/index.js'
import { checkPublished } from './check.js'

// Feet and inches are no units of the library; the factors are exact, so the numbers are taken as exact ratios and rounded once.
const feet = exact(36).times(exact('0.3048'))
const inches = exact(36).times(exact('2.54'))

checkPublished('NIST Special Publication 811, 2008 ed.', [
  {
    at: 'Appendix B.7.2',
    what: '36 ft in metres, unrounded',
    published: '10.9728',
    ours: () => feet.toString(),
    agrees: true,
  },
  {
    at: 'Appendix B.7.2',
    what: '36 ft in metres, to the three figures whose relative error is like that of 36',
    published: '11.0',
    ours: () => roundTo(feet, { figures: 3 }).toString(),
    agrees: true,
  },
])

checkPublished('NIST Letter Circular LC 1137, Metric Style Guide', [
  {
    at: 'rounding',
    what: '36 in in centimetres, unrounded',
    published: '91.44',
    ours: () => inches.toString(),
    agrees: true,
  },
  {
    at: 'rounding',
    what: '36 in in centimetres, to the figures of 36',
    published: '91',
    ours: () => roundTo(inches, { figures: 2 }).toString(),
    agrees: true,
  },
])
