import { expandedUncertainty, quantity, standardUncertainty, sum } from '../../src/quantity/index.js'
import { checkPublished } from './check.js'
import { unroundedTo } from './written-as.js'

const four = sum(Array.from({ length: 4 }, () => quantity('0', { uncertainty: '1' })))

checkPublished('JCGM 101:2008, 9.2 (four normal inputs added up)', [
  {
    at: '9.2.2, Table 2',
    what: 'the standard uncertainty',
    published: '2.0',
    ours: () => unroundedTo('2.0', standardUncertainty(four)),
    agrees: true,
  },
  {
    at: '9.2.2, Table 2',
    what: 'half the interval that holds 95 %',
    published: '3.92',
    ours: () => unroundedTo('3.92', expandedUncertainty(four, { level: 0.95 }).expandedUncertainty),
    agrees: true,
  },
])
