import {
  correlationCoefficient,
  exact,
  type Quantity,
  quantity,
  squareRoot,
  standardUncertainty,
  sum,
} from '../../src/quantity/index.js'
import { checkPublished } from './check.js'
import { unroundedTo } from './written-as.js'

type Ratio = Quantity<'ratio'>

/** Temperatures of the thermometer less 20 °C, exact in the source, and the corrections that were observed, in degrees Celsius. */
const readings = [
  ['1.521', '-0.171'],
  ['2.012', '-0.169'],
  ['2.512', '-0.166'],
  ['3.003', '-0.159'],
  ['3.507', '-0.164'],
  ['3.999', '-0.165'],
  ['4.513', '-0.156'],
  ['5.002', '-0.157'],
  ['5.503', '-0.159'],
  ['6.010', '-0.161'],
  ['6.511', '-0.160'],
] as const
const t = readings.map(([temperature]) => exact(temperature))
const count = exact(readings.length)

interface Line {
  readonly intercept: Ratio
  readonly slope: Ratio
}

const dot = (a: readonly Ratio[], b: readonly Ratio[]): Ratio =>
  sum(a.map((one, index) => one.times(b[index] as Ratio)))

/** The straight line through the corrections, by least squares: formulas (H.13a) and (H.13b). */
function lineThrough(b: readonly Ratio[]): Line {
  const [sumB, sumT, tt, bt] = [sum(b), sum(t), dot(t, t), dot(b, t)]
  const determinant = count.times(tt).minus(sumT.times(sumT))
  return {
    intercept: sumB.times(tt).minus(bt.times(sumT)).dividedBy(determinant),
    slope: count.times(bt).minus(sumB.times(sumT)).dividedBy(determinant),
  }
}

const at = ({ intercept, slope }: Line, temperature: Ratio): Ratio => intercept.plus(slope.times(temperature))

/** The sum of the squared deviations from the line, and the standard deviation that follows with n - 2 degrees of freedom. */
const plainly = readings.map(([, correction]) => exact(correction))
const deviations = plainly.map((b, index) => b.minus(at(lineThrough(plainly), t[index] as Ratio)))
const squares = dot(deviations, deviations)
const deviation = squareRoot(squares.dividedBy(exact(readings.length - 2)))

/** The same line through corrections of which each is as uncertain as the deviations show. */
const corrections = readings.map(([, correction]) =>
  quantity(correction, { uncertainty: deviation.value.toString() as '1' }),
)
const line = lineThrough(corrections)
const prediction = at(line, exact(10))
const u = (q: Ratio): Ratio => standardUncertainty(q)

checkPublished('JCGM 100:2008, H.3 (calibration of a thermometer by a straight line)', [
  ...(
    [
      ['Table H.6', 'the intercept', '-0.1712', line.intercept],
      ['Table H.6', 'the standard uncertainty of the intercept', '0.0029', u(line.intercept)],
      ['Table H.6', 'the slope', '0.00218', line.slope],
      ['Table H.6', 'the standard uncertainty of the slope', '0.00067', u(line.slope)],
      ['H.3.2, as computed by the GUM Tree Calculator 1.5.1', 'the sum of squares', '0.000110096583109', squares],
      ['H.3.3', 'the correction at 30 °C', '-0.1494', prediction],
      ['H.3.3', 'its standard uncertainty', '0.0041', u(prediction)],
    ] as const
  ).map(([where, what, published, q]) => ({
    at: where,
    what,
    published,
    ours: () => unroundedTo(published, q),
    agrees: true as const,
  })),
  {
    at: 'Table H.6',
    what: 'the correlation of intercept and slope',
    published: '-0.930',
    ours: () => correlationCoefficient(line.intercept, line.slope).toFixed(3),
    agrees: true,
  },
])
