import { Decimal } from '../../decimal.js'
import { asDimension, exact, type Quantity } from '../../quantity/index.js'
import { roundToPlace } from '../../quantity/rounding.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { because, called } from '../look-up.js'
import { instead } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** A number with more digits was not copied by hand. */
const mostDigits = 20

/** Numbers with two digits that stand side by side swapped: each way that changes the number and keeps its size. */
function swapped(value: Decimal, place: number): readonly Decimal[] {
  const digits = value.gt(0) ? value.div(`1e${place}`).toFixed(0) : ''
  const found: Decimal[] = []
  if (digits.length > mostDigits) return found
  for (let at = 0; at < digits.length - 1; at += 1) {
    const [one, two] = [digits.charAt(at), digits.charAt(at + 1)]
    if (one === two || (at === 0 && two === '0')) continue
    found.push(new Decimal(`${digits.slice(0, at)}${two}${one}${digits.slice(at + 2)}`).times(`1e${place}`))
  }
  return found
}

/** Readings that were copied from somewhere; a constant or a coefficient is not. */
function readingsOf({ quantities }: Calculation): readonly Quantity[] {
  return quantities.filter(({ input, dimension }) => input?.kind === 'measured' && dimension === 'mass')
}

function swapsReading(q: Quantity): readonly SlipChange[] {
  const { value, unit, input } = q
  return swapped(value, input?.writtenPlace as number).map((other) =>
    because(`${called(q)} as ${other.toFixed()} ${unit}`, instead(q, valued(other, q))),
  )
}

function valued(value: Decimal, { unit, dimension }: Quantity): Quantity {
  return asDimension(exact(`${value.toString()} ${unit}` as '1 g'), dimension as 'mass')
}

/** The right answer with two digits swapped. */
function swapsAnswer({ result }: Calculation, { answer }: SlipContext): readonly SlipChange[] {
  if (answer === undefined) return []
  return swapped(roundToPlace(result.value, answer.place, 'half-even'), answer.place).map((other) =>
    because(`${called(result)} with two digits swapped`, instead(result, valued(other, result))),
  )
}

/** Slips in copying. */
export const copyingSlips: readonly Slip[] = [
  {
    name: 'digits-swapped',
    group: 'copying',
    did: 'Swapped two digits of a reading or of the answer.',
    advice: 'Compare each number with where it was copied from, digit by digit.',
    evidence: 'inferred',
    source: 'No source found.',
    readsAnswer: true,
    changes: (calculation, context) => [
      ...readingsOf(calculation).flatMap(swapsReading),
      ...swapsAnswer(calculation, context),
    ],
  },
]
