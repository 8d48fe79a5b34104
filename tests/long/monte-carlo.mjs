/**
 * The law of propagation against the propagation of distributions (JCGM 101:2008): published examples are worked out again and again
 * with inputs drawn from their distributions, and the scatter of the results is compared with the propagated standard uncertainty, to
 * the numerical tolerance of JCGM 101:2008, 7.9.2. Takes some twenty seconds. Run `npm run build` first, then `node tests/long/monte-carlo.mjs`.
 */
import {
  antilogarithm,
  exact,
  expandedUncertainty,
  quantity,
  reconsider,
  standardUncertainty,
  sum,
} from 'saltwright/quantity'

const trials = 100_000
const random = generator(20240607)

/** A deviate of each distribution, of standard deviation 1. */
const deviates = {
  normal: () => Math.sqrt(-2 * Math.log(1 - random())) * Math.cos(2 * Math.PI * random()),
  rectangular: () => Math.sqrt(3) * (2 * random() - 1),
  triangular: () => Math.sqrt(6) * (random() + random() - 1),
  arcsine: () => Math.SQRT2 * Math.sin(2 * Math.PI * random()),
}

const rectangular = (halfWidth) => ({ halfWidth, distribution: 'rectangular' })
const triangular = (halfWidth) => ({ halfWidth, distribution: 'triangular' })

const examples = [
  {
    name: 'QUAM, Example A1: cadmium standard, mg/L',
    result: () => {
      const mass = quantity('100.28', { uncertainty: '0.05' })
      const purity = quantity('0.9999', { uncertainty: rectangular('0.0001') })
      const vessel = quantity('100.0', { uncertainty: triangular('0.1') })
      const filling = quantity('0', { uncertainty: '0.02' })
      const temperature = quantity('0', { uncertainty: rectangular('0.084') })
      return exact(1000)
        .times(mass)
        .times(purity)
        .dividedBy(sum([vessel, filling, temperature]))
    },
  },
  {
    name: 'QUAM, Example A2: sodium hydroxide against hydrogen phthalate, mol/L',
    result: () => {
      const repeatability = quantity('1', { uncertainty: '0.0005' })
      const linearity = () => quantity('0', { uncertainty: rectangular('0.00015') })
      const mass = sum([exact('0.3888'), linearity(), linearity()])
      const purity = quantity('1', { uncertainty: rectangular('0.0005') })
      const molar = quantity('204.2212', { uncertainty: '0.0038' })
      const volume = quantity('18.64', { uncertainty: [triangular('0.03'), rectangular('0.006')] })
      return repeatability.times(exact(1000)).times(mass).times(purity).dividedBy(molar.times(volume))
    },
  },
  {
    name: 'Harvey, Example 4.8: hydronium from pH 3.72 ± 0.03, mol/L',
    result: () => antilogarithm(exact(0).minus(quantity('3.72', { uncertainty: '0.03' }))),
  },
  {
    name: 'JCGM 101:2008, 9.2.3: four rectangular inputs',
    result: () => sum(Array.from({ length: 4 }, () => quantity('0', { uncertainty: rectangular('1.7320508') }))),
  },
]

for (const { name, result } of examples) {
  const q = result()
  const drawn = Array.from({ length: trials }, () => draw(q)).sort((a, b) => a - b)
  const mean = drawn.reduce((total, value) => total + value, 0) / trials
  const deviation = Math.sqrt(drawn.reduce((total, value) => total + (value - mean) ** 2, 0) / (trials - 1))
  const propagated = standardUncertainty(q).value.toNumber()
  const tolerance = 0.5 * 10 ** (Math.floor(Math.log10(propagated)) - 1)
  const half = expandedUncertainty(q, { level: 0.95 }).expandedUncertainty.value.toNumber()
  const ends = [drawn[Math.round(trials * 0.025)], drawn[Math.round(trials * 0.975)]]
  const agrees = Math.abs(deviation - propagated) <= tolerance
  console.log(name)
  console.log(
    `  propagated ${propagated.toPrecision(3)}, drawn ${deviation.toPrecision(3)}: ${agrees ? 'agree' : 'DIFFER'}`,
  )
  console.log(
    `  95 % within ±${half.toPrecision(3)}, drawn ${ends.map((end) => (end - mean).toPrecision(3)).join(' to ')}`,
  )
  if (!agrees) process.exitCode = 1
}

/** The result with every input drawn from its distribution. */
function draw(q) {
  const isDrawn = ({ input }) => input?.uncertainty !== undefined
  return reconsider(q, { replace: isDrawn, with: (input) => input.plus(shift(input)) }).value.toNumber()
}

/** How far an input is off this time; in a draw each input is asked once, so that what is shared stays shared. */
function shift({ input }) {
  const { standard, distribution } = input.uncertainty
  return exact((standard.toNumber() * deviates[distribution]()).toPrecision(15))
}

/** Uniform numbers from 0 to 1, always the same ones: splitmix32. */
function generator(seed) {
  let state = seed
  return () => {
    state = (state + 0x9e3779b9) | 0
    let mixed = state ^ (state >>> 16)
    mixed = Math.imul(mixed, 0x21f0aaad)
    mixed ^= mixed >>> 15
    mixed = Math.imul(mixed, 0x735a2d97)
    return ((mixed ^ (mixed >>> 15)) >>> 0) / 4294967296
  }
}
