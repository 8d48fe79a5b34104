import type { Assessment } from './assessment-type.js'
import type { Finding } from './finding.js'

type Draft = Omit<Assessment, 'findings' | 'correctedYield'>

/** What a yield of nothing or of more than everything calls for. */
export function yieldFindings({ percentYield, actual, theoretical }: Draft): readonly Finding[] {
  const numbers = { actual: actual.mass, theoretical: theoretical.mass, percentYield }
  if (actual.mass.value.isZero()) {
    return [
      { code: 'nothing-obtained', severity: 'doubt', message: 'No product was obtained.', numbers, path: ['product'] },
    ]
  }
  if (!percentYield.value.gt(100)) return []
  const beyond = actual.mass.minus(theoretical.mass).named({ label: 'beyond the theoretical yield' })
  return [
    {
      code: 'yield-over-100',
      severity: 'problem',
      message: 'The yield is over 100 %. It is given as found; the explanations are in the order to look at them.',
      numbers: { ...numbers, beyond },
      path: ['product'],
    },
  ]
}

/** That the limiting supply was not recorded. */
export function usedFindings({ used, limiting }: Draft): readonly Finding[] {
  return used
    .filter(({ recorded, substance }) => !recorded && limiting.includes(substance))
    .map(({ substance, measure }) => ({
      code: 'supply-not-recorded',
      severity: 'remark',
      message: `What was used of ${substance} is not recorded, so the planned amount counts.`,
      numbers: { planned: measure },
      path: ['supplies'],
    }))
}
