import { exact, type Quantity, quantity, squareRoot, standardUncertainty } from '../../src/quantity/index.js'
import { checkPublished } from './check.js'

const stated = quantity('0.25 g')
/** A number that was rounded to its last digit lies within half a unit of it: the half-width of a rectangular distribution. */
const halfWidth = standardUncertainty(stated, { unstated: 'implied' }).times(squareRoot(exact(3)))
const shown = (q: Quantity): string => `${q.value.toFixed(3)} ${q.unit}`

checkPublished('European Pharmacopoeia, General Notices (quantities in tests)', [
  {
    at: '0.25 g',
    what: 'the interval that the digits of 0.25 g imply',
    published: '0.245 g to 0.255 g',
    ours: () => `${shown(stated.minus(halfWidth))} to ${shown(stated.plus(halfWidth))}`,
    agrees: true,
  },
])
