import type { Assessment, UsedSupply } from './assessment-type.js'
import type { Finding } from './finding.js'
import { practically } from './plan-findings.js'
import type { Excess } from './plan-type.js'

type Needed = UsedSupply & { readonly excess: Excess }

/** That a bench used so little of something that it limits in the place of what was planned to. */
export function limitFindings(
  planned: readonly string[],
  { used, limiting }: Pick<Assessment, 'used' | 'limiting'>,
): readonly Finding[] {
  const needed = used.filter((supply): supply is Needed => supply.excess !== undefined)
  const meant = needed.filter(({ substance }) => planned.includes(substance))
  const others = needed.filter(({ substance }) => limiting.includes(substance) && !planned.includes(substance))
  return others.filter((other) => meant.every((each) => isBelow(other, each))).map((other) => otherLimits(other, meant))
}

function isBelow({ excess: { equivalents: a } }: Needed, { excess: { equivalents: b } }: Needed): boolean {
  return b.value.minus(a.value).gt(b.value.times(practically))
}

function otherLimits({ substance, amount, excess }: Needed, meant: readonly Needed[]): Finding {
  const names = meant.map((each) => each.substance).join(' and ')
  return {
    code: 'other-limits',
    severity: 'doubt',
    message: `By what was used, ${substance} limits, not ${names} as planned; the theoretical yield counts it so.`,
    numbers: { used: amount, equivalents: excess.equivalents },
    path: ['supplies'],
  }
}
