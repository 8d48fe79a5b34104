/**
 * How many standard uncertainties either side hold a share of a normal distribution, or of Student's t where degrees of freedom are
 * limited: the two-sided quantile, to better than 1e-8 for shares up to 0.999 999.
 */
export function studentQuantile(level: number, degrees: number): number {
  if (degrees > manyDegrees) return fromNormal(normalQuantile(level), degrees)
  return solve((t) => studentShare(t, degrees), level)
}

/** Beyond so many degrees of freedom the expansion about the normal distribution is exact to a double. */
const manyDegrees = 1000

/** Cornish-Fisher expansion: Abramowitz and Stegun, 26.7.5. */
function fromNormal(z: number, degrees: number): number {
  if (degrees === Number.POSITIVE_INFINITY) return z
  const [first, second] = [(z ** 3 + z) / 4, (5 * z ** 5 + 16 * z ** 3 + 3 * z) / 96]
  const third = (3 * z ** 7 + 19 * z ** 5 + 17 * z ** 3 - 15 * z) / 384
  return z + first / degrees + second / degrees ** 2 + third / degrees ** 3
}

function normalQuantile(level: number): number {
  return solve(normalShare, level)
}

/** Share of a normal distribution within z either side, as a series of positive terms: Abramowitz and Stegun, 26.2.11. */
function normalShare(z: number): number {
  let term = z
  let total = z
  for (let odd = 3; term > total * 1e-17; odd += 2) {
    term *= (z * z) / odd
    total += term
  }
  return 2 * total * Math.exp((-z * z) / 2 - Math.log(2 * Math.PI) / 2)
}

/** Share of Student's t within t either side: Abramowitz and Stegun, 26.7.1. */
function studentShare(t: number, degrees: number): number {
  const square = t * t
  return 1 - incompleteBeta(degrees / (degrees + square), square / (degrees + square), degrees / 2, 1 / 2)
}

/** Where a rising function of a positive number takes a value, by halving until a double is exhausted. */
function solve(share: (x: number) => number, level: number): number {
  let [low, high] = [0, 1]
  while (share(high) < level && high < 1e300) [low, high] = [high, high * 2]
  for (let middle = (low + high) / 2; middle > low && middle < high; middle = (low + high) / 2) {
    if (share(middle) < level) low = middle
    else high = middle
  }
  return low
}

/** The regularised incomplete beta function of x and 1 - x: Abramowitz and Stegun, 26.5.8 and 6.2.2. */
function incompleteBeta(x: number, rest: number, a: number, b: number): number {
  if (x > (a + 1) / (a + b + 2)) return 1 - incompleteBeta(rest, x, b, a)
  const logBeta = logGamma(a) + logGamma(b) - logGamma(a + b)
  return (Math.exp(a * Math.log(x) + b * Math.log(rest) - logBeta) / a) * betaFraction(x, a, b)
}

/** The continued fraction of the incomplete beta function by the modified Lentz method: Thompson and Barnett, 1986. */
function betaFraction(x: number, a: number, b: number): number {
  let c = 1
  let d = 1 / (1 - ((a + b) * x) / (a + 1))
  let value = d
  for (let m = 1; m < 1000; m += 1) {
    const even = (m * (b - m) * x) / ((a + 2 * m - 1) * (a + 2 * m))
    d = 1 / (1 + even * d)
    c = 1 + even / c
    value *= d * c
    const odd = (-(a + m) * (a + b + m) * x) / ((a + 2 * m) * (a + 2 * m + 1))
    d = 1 / (1 + odd * d)
    c = 1 + odd / c
    value *= d * c
    if (Math.abs(d * c - 1) < 1e-16) break
  }
  return value
}

/** Stirling's series above 15, reached by the recurrence: Abramowitz and Stegun, 6.1.40 and 6.1.15. */
function logGamma(x: number): number {
  let product = 1
  let y = x
  for (; y < 15; y += 1) product *= y
  const inverse = 1 / (y * y)
  const series = (1 / 12 - inverse * (1 / 360 - inverse * (1 / 1260 - inverse * (1 / 1680 - inverse / 1188)))) / y
  return (y - 0.5) * Math.log(y) - y + Math.log(2 * Math.PI) / 2 + series - Math.log(product)
}
