import { exact, type Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import { because, called, isOfYield } from '../look-up.js'
import { molarMassesOf } from '../molar-masses.js'
import { instead, timesNumber } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** A change of unit that was not made: the number stays what it was. */
function forgetsConversion(from: string, to: string, factor: string): Slip['changes'] {
  return ({ quantities }) =>
    quantities
      .filter((q) => q.rule === 'conversion' && q.unit === to && q.operands[0]?.unit === from)
      .map((q) => because(`${called(q)}: ${from} as ${to}`, timesNumber(q, factor)))
}

/** The result a thousand times too large or too small. */
function mistakesSize(dimension: Quantity['dimension'], factors: readonly string[]): Slip['changes'] {
  return ({ result }) =>
    result.dimension === dimension
      ? factors.map((factor) => because(`${called(result)} times ${factor}`, timesNumber(result, factor)))
      : []
}

/** The ways of several descriptions together. */
function anyOf(...ways: readonly Slip['changes'][]): Slip['changes'] {
  return (calculation, context) => ways.flatMap((way) => way(calculation, context))
}

/** The number of moles in the place of the mass: multiplied by no molar mass. */
function writesMoles(calculation: Calculation): readonly SlipChange[] {
  if (calculation.result.dimension !== 'mass') return []
  return molarMassesOf(calculation)
    .filter(({ divides }) => !divides)
    .map(({ of, quantities }) =>
      because(`molar mass of ${of} left out`, ...quantities.map((q) => instead(q, exact('1 g/mol')))),
    )
}

/** The place of a per cent: a fraction, a hundred times too much, a place lost. */
function misplacesPerCent(calculation: Calculation): readonly SlipChange[] {
  const { result } = calculation
  const isPerCent = result.unit === '%' || (result.dimension === 'ratio' && isOfYield(calculation))
  if (!isPerCent) return []
  return ['0.01', '100', '0.1', '10', '0.001'].map((factor) =>
    because(`${called(result)} times ${factor}`, timesNumber(result, factor)),
  )
}

const prefixes = ['1000', '0.001']

/** Slips with units. */
export const unitSlips: readonly Slip[] = [
  {
    name: 'millilitres-as-litres',
    group: 'units',
    did: 'Used a volume in millilitres where litres belong.',
    advice: 'Look at the unit of the volume beside the unit of the concentration: do they match?',
    evidence: 'printed',
    source: 'Preparation sheets make the conversion a step of its own.',
    changes: /* @__PURE__ */ anyOf(
      /* @__PURE__ */ forgetsConversion('mL', 'L', '1000'),
      /* @__PURE__ */ mistakesSize('volume', ['1000']),
    ),
  },
  {
    name: 'litres-as-millilitres',
    group: 'units',
    did: 'Read a volume that came out in litres as millilitres.',
    advice: 'In which unit does this division come out? Picture the volume in a measuring cylinder.',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ anyOf(
      /* @__PURE__ */ forgetsConversion('L', 'mL', '0.001'),
      /* @__PURE__ */ mistakesSize('volume', ['0.001']),
    ),
  },
  {
    name: 'milligrams-and-grams',
    group: 'units',
    did: 'Mixed up milligrams and grams.',
    advice: 'Picture the mass on the balance: is its size plausible?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ anyOf(
      /* @__PURE__ */ forgetsConversion('mg', 'g', '1000'),
      /* @__PURE__ */ forgetsConversion('g', 'mg', '0.001'),
      /* @__PURE__ */ mistakesSize('mass', prefixes),
    ),
  },
  {
    name: 'millimoles-and-moles',
    group: 'units',
    did: 'Mixed up millimoles and moles.',
    advice: 'Look at the prefix of the unit: is the size of the amount plausible for what was weighed?',
    evidence: 'inferred',
    source: 'No source found.',
    changes: /* @__PURE__ */ anyOf(
      /* @__PURE__ */ forgetsConversion('mmol', 'mol', '1000'),
      /* @__PURE__ */ forgetsConversion('mol', 'mmol', '0.001'),
      /* @__PURE__ */ mistakesSize('amount', prefixes),
    ),
  },
  {
    name: 'moles-as-grams',
    group: 'units',
    did: 'Wrote the number of moles in the place of the grams.',
    advice: 'This looks like an amount: what turns moles into grams?',
    evidence: 'related',
    source:
      'Gulacar, Overton, Bowman and Fynewever, Chem. Educ. Res. Pract. 2013, doi:10.1039/c3rp00029j (abstract): the step between mole and mass is skipped.',
    changes: writesMoles,
  },
  {
    name: 'per-cent-place',
    group: 'units',
    did: 'Gave a per cent as a fraction, multiplied by a hundred twice, or lost a decimal place.',
    advice: 'Estimate first: is it about a half, nearly all, or a tenth? Then look at where the decimal point stands.',
    evidence: 'reported',
    source: 'A report states 100 % × 0.2285 / 0.2654 = .086.',
    changes: misplacesPerCent,
  },
]
