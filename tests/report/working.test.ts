import katex from 'katex'
import { describe, expect, it } from 'vitest'
import { atomicWeight } from '../../src/element/index.js'
import { molarMass } from '../../src/formula/index.js'
import {
  antilogarithm,
  constant,
  exact,
  logarithm,
  naturalLogarithm,
  power,
  type Quantity,
  quantity,
  roundTo,
  squareRoot,
  weightedSum,
  working,
} from '../../src/quantity/index.js'
import { writeWorking } from '../../src/report/working.js'
import { refusal } from '../quantity/refusal.js'

const mass = quantity('3.255 g', { symbol: 'm', of: 'ZnO', label: 'mass of zinc oxide' })
const molar = constant('81.379 g/mol', { symbol: 'M', of: 'ZnO' })
const amount = mass.dividedBy(molar).named({ symbol: 'n', of: 'ZnO', label: 'amount of zinc oxide' })
const acid = quantity('3.00 mol/L', { symbol: 'c', of: 'H2SO4' })
const volume = amount
  .times(exact('1.10', { symbol: 'f' }))
  .dividedBy(acid)
  .to('mL')
  .named({ symbol: 'V', of: 'H2SO4', label: 'volume of acid' })

const [x, y] = [quantity('2.50', { symbol: 'x' }), quantity('-1.5e-9', { symbol: 'y', of: 'words & more' })]
const warm = quantity('25.0 degC', { symbol: 'T', label: 'bath' })
const oddOnes: readonly { readonly what: string; readonly q: Quantity }[] = [
  { what: 'a whole plan', q: volume },
  { what: 'powers and roots', q: power(squareRoot(x).plus(y), 2) },
  { what: 'functions', q: naturalLogarithm(x).plus(logarithm(x)).plus(antilogarithm(y)).named({ symbol: 'Δm' }) },
  { what: 'temperatures', q: warm.minus(quantity('20.0 degC', { symbol: 'T' })) },
  {
    what: 'per cent',
    q: mass
      .dividedBy(quantity('5.00 g', { symbol: 'm', of: 'mix' }))
      .to('%')
      .named({ symbol: 'w' }),
  },
  { what: 'compound units', q: quantity('4.18 J/(g K)', { symbol: 'cp' }).times(mass) },
  { what: 'words as names', q: quantity('1.0', { label: '50 % of {all}' }).plus(x).named({ label: 'a_b^c' }) },
  { what: 'nothing named', q: quantity('3.98 g').dividedBy(quantity('79.545 g/mol')) },
  { what: 'strange symbols', q: quantity('1.0', { symbol: '\\x{' }).plus(quantity('1.0', { symbol: 'é' })) },
  { what: 'brackets', q: x.minus(y).times(squareRoot(x)).dividedBy(power(y, 2)) },
  {
    what: 'a name of two letters below, with a number',
    q: quantity('1.0', { symbol: 'ΔrH' }).plus(quantity('2.0', { symbol: 'ΔrH' })),
  },
]

/** Every formula in a text of LaTeX, compiled; anything that is not LaTeX throws. */
function compiled(latex: string): string[] {
  const formulas = [...latex.matchAll(/\\\[([\s\S]*?)\\\]/g)].map(([, formula]) => formula as string)
  return formulas.map((formula) =>
    katex.renderToString(formula, { displayMode: true, throwOnError: true, strict: 'error' }),
  )
}

describe('a calculation as text', () => {
  it('line by line, the signs below each other', () => {
    expect(writeWorking(working(volume))).toBe(`Amount of zinc oxide
n(ZnO) = m(ZnO) / M(ZnO)
       = 3.255 g / (81.379 g/mol)
       = 0.0399980 mol
       ≈ 0.04000 mol

Volume of acid
V(H2SO4) = n(ZnO) · f / c(H2SO4)
         = 0.0399980 mol × 1.10 / (3.00 mol/L)
         = 14.666 mL
         ≈ 14.7 mL
`)
  })

  it('with what was given first, if asked for', () => {
    expect(writeWorking(working(amount), 'text', { given: true })).toBe(`Mass of zinc oxide
m(ZnO) = 3.255 g

M(ZnO) = 81.379 g/mol

Amount of zinc oxide
n(ZnO) = m(ZnO) / M(ZnO)
       = 3.255 g / (81.379 g/mol)
       = 0.0399980 mol
       ≈ 0.04000 mol
`)
  })

  it.each([
    { q: mass, is: 'Mass of zinc oxide\nm(ZnO) = 3.255 g\n' },
    { q: mass.to('mg'), is: 'Mass of zinc oxide\nm(ZnO) = 3.255 g\n       = 3255 mg\n' },
    {
      q: quantity('3.98 g').dividedBy(quantity('79.545 g/mol')),
      is: '3.98 g / (79.545 g/mol)\n= 0.050035 mol\n≈ 0.0500 mol\n',
    },
    {
      q: quantity('2.00 g').plus(quantity('1.00 g')).named({ label: 'total mass' }),
      is: 'Total mass\ntotal mass = 2.00 g + 1.00 g\n           = 3.00 g\n',
    },
    {
      q: quantity('-2.5', { symbol: 'x' }).minus(quantity('-1.5e-9', { symbol: 'x' })),
      is: 'x₁ − x₂\n= (−2.5) − (−1.5 × 10⁻⁹)\n= −2.500\n≈ −2.5\n',
    },
    {
      q: antilogarithm(quantity('-6.52', { symbol: 'x' })).named({ symbol: 'a' }),
      is: 'a = 10^x\n  = 10^(−6.52)\n  = 3.020 × 10⁻⁷\n  ≈ 3.0 × 10⁻⁷\n',
    },
    {
      q: quantity('1.0', { label: 'x' }).plus(quantity('2.0', { label: 'x' })),
      is: 'x (1) + x (2)\n= 1.0 + 2.0\n= 3.0\n',
    },
    {
      q: exact(2).times(squareRoot(quantity('2.25', { symbol: 'x' }))),
      is: '2 · √(x)\n= 2 × √(2.25)\n= 3.00\n',
    },
    { q: logarithm(quantity('0.10', { symbol: 'x' })), is: 'log10(x)\n= log10(0.10)\n= −1.00\n' },
    { q: roundTo(quantity('25.0 mL', { symbol: 'V' }), { figures: 2 }), is: 'V = 25.0 mL\n  = 25 mL\n' },
  ])('$is', ({ q, is }) => expect(writeWorking(working(q))).toBe(is))
})

describe('as Markdown', () => {
  it('with symbols slanted, formulas with small figures, and hard line ends', () => {
    expect(writeWorking(working(volume), 'markdown')).toBe(`**Amount of zinc oxide**

*n*(ZnO) = *m*(ZnO) / *M*(ZnO) \\
= 3.255 g / (81.379 g/mol) \\
= 0.0399980 mol \\
≈ 0.04000 mol

**Volume of acid**

*V*(H₂SO₄) = *n*(ZnO) · *f* / *c*(H₂SO₄) \\
= 0.0399980 mol × 1.10 / (3.00 mol/L) \\
= 14.666 mL \\
≈ 14.7 mL
`)
  })

  it('with powers of ten', () => {
    const text = writeWorking(working(quantity('1.5e-9 g', { symbol: 'm' })), 'markdown')
    expect(text).toBe('*m* = 1.5 × 10⁻⁹ g\n')
  })

  it('with words escaped', () => {
    const odd = quantity('1.0 g', { symbol: 'm', of: 'dish [1] *' }).plus(quantity('2.0 g', { label: '<b>x</b>' }))
    const text = writeWorking(working(odd.named({ label: '# _total_' })), 'markdown')
    expect(text).toContain('**\\# \\_total\\_**')
    expect(text).toContain('*m*(dish \\[1\\] \\*) + \\<b\\>x\\</b\\>')
  })
})

describe('as HTML', () => {
  it('a fragment', () => {
    expect(writeWorking(working(amount), 'html')).toBe(`<div>
<p><b>Amount of zinc oxide</b></p>
<p><i>n</i>(ZnO) = <i>m</i>(ZnO) / <i>M</i>(ZnO)<br>
= 3.255 g / (81.379 g/mol)<br>
= 0.0399980 mol<br>
≈ 0.04000 mol</p>
</div>
`)
  })

  it('with signs below and above', () => {
    const a = quantity('1.0080', { symbol: 'Ar', of: 'H' })
    const b = quantity('1.5e-9', { symbol: 'Ar', of: 'H' })
    const q = power(a, 2).plus(logarithm(b)).named({ symbol: 'ΔrH' })
    expect(writeWorking(working(q), 'html')).toContain(
      '<i>Δ</i><sub>r</sub><i>H</i> = <i>A</i><sub>r,1</sub>(H)<sup>2</sup> + log<sub>10</sub>(<i>A</i><sub>r,2</sub>(H))<br>',
    )
    expect(writeWorking(working(q), 'html')).toContain('log<sub>10</sub>(1.5 × 10<sup>−9</sup>)')
  })

  it('with everything escaped', () => {
    const evil = '<script>alert("&")</script>'
    const q = quantity('1.0 g', { symbol: evil, of: evil })
      .plus(quantity('2.0 g', { label: evil }))
      .named({ label: evil })
    expect(writeWorking(working(q), 'html')).not.toMatch(/<script|<\/script|"/)
  })
})

describe('as LaTeX', () => {
  it('aligned at the signs, with fraction bars', () => {
    expect(writeWorking(working(volume), 'latex')).toBe(`Amount of zinc oxide
\\[\\begin{aligned}
n(\\mathrm{ZnO}) &= \\frac{m(\\mathrm{ZnO})}{M(\\mathrm{ZnO})} \\\\
&= \\frac{3.255\\,\\mathrm{g}}{81.379\\,\\mathrm{g/mol}} \\\\
&= 0.0399980\\,\\mathrm{mol} \\\\
&\\approx 0.04000\\,\\mathrm{mol}
\\end{aligned}\\]

Volume of acid
\\[\\begin{aligned}
V(\\mathrm{H_{2}SO_{4}}) &= \\frac{n(\\mathrm{ZnO}) \\cdot f}{c(\\mathrm{H_{2}SO_{4}})} \\\\
&= \\frac{0.0399980\\,\\mathrm{mol} \\times 1.10}{3.00\\,\\mathrm{mol/L}} \\\\
&= 14.666\\,\\mathrm{mL} \\\\
&\\approx 14.7\\,\\mathrm{mL}
\\end{aligned}\\]
`)
  })

  it.each(oddOnes)('compiles: $what', ({ q }) => {
    expect(compiled(writeWorking(working(q), 'latex', { given: true })).length).toBeGreaterThan(0)
  })
})

/* Read the difference before you accept a new one with `vitest -u`. */
describe('odd calculations', () => {
  it.each(['text', 'markdown', 'html', 'latex'] as const)('as %s', async (format) => {
    const written = oddOnes.map(({ what, q }) => `${what}\n\n${writeWorking(working(q), format, { given: true })}`)
    await expect(written.join('\n')).toMatchFileSnapshot(`documents/odd-workings.${format}.txt`)
  })
})

describe('what is refused', () => {
  it.each([
    { call: () => writeWorking(working(mass), 'pdf' as never), code: 'report/unknown-format' },
    { call: () => writeWorking(working(mass), 'toString' as never), code: 'report/unknown-format' },
    { call: () => writeWorking(null as never), code: 'report/not-a-working' },
    { call: () => writeWorking(mass as never), code: 'report/not-a-working' },
    { call: () => writeWorking({ steps: [null], given: [] } as never), code: 'report/not-a-working' },
    { call: () => writeWorking({ steps: [{ terms: 5 }], given: [] } as never), code: 'report/not-a-working' },
    { call: () => writeWorking({ steps: [] } as never), code: 'report/not-a-working' },
  ])('$code', ({ call, code }) => expect(refusal(call).code).toBe(code))
})

describe('molar masses', () => {
  const written = (q: Quantity): string => writeWorking(working(q))
  const back = (formula: string, weights?: 'standard'): string =>
    written(quantity('4.20 g').dividedBy(molarMass(formula)).times(molarMass(formula, { weights })))

  it('that are one have one symbol and one line', () => {
    expect(back('MgCO3').match(/Molar mass of MgCO3/g)).toHaveLength(1)
    expect(back('MgCO3')).toContain('(4.20 g / M(MgCO3)) · M(MgCO3)')
  })

  it('that differ have two', () => {
    expect(back('MgCO3', 'standard')).toContain('M₂(MgCO3) = ')
    const made = (times: number) => weightedSum([{ times, of: atomicWeight('O') }])
    const oxygen = { symbol: 'M', of: 'oxygen', label: 'molar mass of oxygen', role: 'molar mass' } as const
    const both = quantity('1.00 g')
      .dividedBy(made(2).named(oxygen))
      .plus(quantity('1.00 g').dividedBy(made(3).named(oxygen)))
    expect(written(both)).toContain('M₂(oxygen) = 3 · M(O)')
  })

  it('of an atom are its atomic weight, without a line', () => {
    expect(back('Al')).not.toContain('Molar mass')
    expect(back('Al')).toContain('(4.20 g / M(Al)) · M(Al)')
    expect(written(molarMass('Al'))).toContain('26.982 g/mol')
    expect(written(quantity('2.00 g').dividedBy(molarMass('H2')).named({ symbol: 'n', of: 'H2' }))).toContain(
      'M(H2) = 2 · M(H)',
    )
  })
})
