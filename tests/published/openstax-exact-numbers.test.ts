import { exact, type Quantity, quantity } from '../../src/quantity/index.js'
import { checkPublished } from './check.js'

const classOf = (q: Quantity): string => (q.significantFigures === null ? 'exact' : 'uncertain')

checkPublished('OpenStax, Chemistry 2e, section 1.5 (module m68690), exercise on exact numbers', [
  {
    at: 'seconds in an hour',
    what: 'the seconds in an hour',
    published: 'exact',
    ours: () => classOf(exact('1 h').to('s')),
    agrees: true,
  },
  {
    at: 'grams in your weight',
    what: 'a mass that was weighed',
    published: 'uncertain',
    ours: () => classOf(quantity('70.3 kg').to('g')),
    agrees: true,
  },
  {
    at: 'volume of water drunk in one day',
    what: 'a volume that was measured',
    published: 'uncertain',
    ours: () => classOf(quantity('1.8 L')),
    agrees: true,
  },
])
