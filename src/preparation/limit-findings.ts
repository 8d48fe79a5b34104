import type { Assessment, UsedSupply } from './assessment-type.js'
import type { Finding } from './finding.js'

/** Two supplies whose equivalents are within one per cent are practically equal. */
const practically = '0.01'

/** That a bench used so little of something that it limits in the place of what was planned to. */
export function limitFindings(
  planned: readonly string[],
  { used, limiting }: Pick<Assessment, 'used' | 'limiting'>,
): readonly Finding[] {
  const meant = used.filter(({ substance }) => planned.includes(substance))
  const others = used.filter(({ substance }) => limiting.includes(substance) && !planned.includes(substance))
  return others.filter((other) => meant.every((each) => isBelow(other, each))).map((other) => otherLimits(other, meant))
}

function isBelow({ excess: a }: UsedSupply, { excess: b }: UsedSupply): boolean {
  if (a === undefined || b === undefined) return false
  return b.equivalents.value.minus(a.equivalents.value).gt(b.equivalents.value.times(practically))
}

function otherLimits({ substance, amount, excess }: UsedSupply, meant: readonly UsedSupply[]): Finding {
  const names = meant.map((each) => each.substance).join(' and ')
  return {
    code: 'other-limits',
    severity: 'doubt',
    message: `By what was used, ${substance} limits, not ${names} as planned; the theoretical yield counts it so.`,
    numbers: { used: amount, ...(excess && { equivalents: excess.equivalents }) },
    path: ['supplies'],
  }
}
