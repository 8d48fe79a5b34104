import type { Quantity } from '../../quantity/index.js'
import type { Calculation } from '../calculation.js'
import type { SlipContext } from '../context.js'
import { atHand, because, called, partsIn } from '../look-up.js'
import { instead, type Replacement } from '../replacement.js'
import type { Slip, SlipChange } from '../slip.js'

/** Weighings by difference: a gross mass less a tare. */
function differencesOf({ quantities }: Calculation): readonly Quantity[] {
  return quantities.filter(({ rule, operands }) => rule === 'difference' && operands[1]?.naming.role === 'tare')
}

function forgetsTare(calculation: Calculation): readonly SlipChange[] {
  return differencesOf(calculation).map((q) =>
    because(`${called(q)} without ${called(q.operands[1] as Quantity)}`, instead(q, q.operands[0] as Quantity)),
  )
}

/** A tare whose label speaks of paper is the filter paper's. */
function isPaper({ naming }: Quantity): boolean {
  return `${naming.label ?? ''} ${naming.of ?? ''}`.toLowerCase().includes('paper')
}

function takesOtherTare(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const others = atHand(context, 'tare', 'mass').filter((tare) => !isPaper(tare))
  return differencesOf(calculation).flatMap(({ operands }) => {
    const own = operands[1] as Quantity
    return others.map((tare) => because(`${called(own)}: ${called(tare)} instead`, instead(own, tare)))
  })
}

/** The filter paper weighed with the crystals; or one of the parts of a tare left out of it. */
function leavesPaperIn(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const papers = atHand(context, 'tare', 'mass').filter(isPaper)
  const added = differencesOf(calculation).flatMap((q) =>
    papers.map((paper) => because(`${called(q)} with ${called(paper)}`, more(q, paper))),
  )
  const parts = calculation.quantities
    .filter(({ rule, naming, operands }) => rule === 'sum' && naming.role === 'tare' && operands.length > 1)
    .flatMap((tare) =>
      tare.operands.map((part) => because(`${called(tare)} without ${called(part)}`, less(tare, part))),
    )
  return [...added, ...parts]
}

function more(q: Quantity, added: Quantity): Replacement {
  const size = added.to(q.unit as never).value.toNumber()
  return { replace: q, with: (now) => now.plus(added), estimate: (value) => value + size }
}

function less(q: Quantity, removed: Quantity): Replacement {
  const size = removed.to(q.unit as never).value.toNumber()
  return { replace: q, with: (now) => now.minus(removed), estimate: (value) => value - size }
}

function weighsTooSoon(calculation: Calculation, context: SlipContext): readonly SlipChange[] {
  const earlier = atHand(context, 'gross', 'mass')
  return partsIn(calculation, 'gross', 'mass').flatMap((gross) =>
    earlier.map((other) => because(`${called(gross)}: ${called(other)} instead`, instead(gross, other))),
  )
}

/** Slips in weighing. */
export const weighingSlips: readonly Slip[] = [
  {
    name: 'tare-left-in',
    group: 'weighing',
    did: 'Used the mass of container and product together.',
    advice: 'What else stood on the balance with the product?',
    evidence: 'reported',
    source: 'A forgotten tare is a listed reason for odd yields.',
    changes: forgetsTare,
  },
  {
    name: 'other-tare',
    group: 'weighing',
    did: 'Subtracted the tare of another container, or one without its cap or label.',
    advice: 'Compare the number on the container with the line of the tare.',
    evidence: 'inferred',
    source: 'No source found.',
    changes: takesOtherTare,
  },
  {
    name: 'paper-left-in',
    group: 'weighing',
    did: 'Weighed the product with the filter paper, or with another part of the tare, and did not subtract it.',
    advice: 'List all that was on the balance: is each of it subtracted?',
    evidence: 'printed',
    source: 'Procedures for precipitates weigh the paper beforehand for this reason.',
    changes: leavesPaperIn,
  },
  {
    name: 'weighed-too-soon',
    group: 'weighing',
    did: 'Used a weighing from before the mass was constant.',
    advice: 'Which of the weighings is the one after which nothing changed any more?',
    evidence: 'reported',
    source: 'Reports put yields of 117 % and 309 % down to water that was still there.',
    changes: weighsTooSoon,
  },
]
