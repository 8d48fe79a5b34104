import type { RoundingRemark } from './agreement.js'
import type { Candidate } from './candidate.js'
import type { UnitRemark } from './other-unit.js'
import type { Verdict } from './review.js'

/** What a review says is drawn from. */
export interface Findings {
  readonly verdict: Verdict
  readonly rounding: RoundingRemark | undefined
  readonly unit: UnitRemark | undefined
  readonly candidates: readonly Candidate[]
}

/** What to look at, in a sentence or two: kind, short, and without the answer. */
export function adviceOn(findings: Findings): string {
  const { verdict, rounding, unit, candidates } = findings
  if (verdict === 'agrees') return 'This agrees.'
  if (verdict === 'rounding') return `The value is right. ${onRounding(rounding as RoundingRemark)}`
  if (verdict === 'unit') return `The number is right. ${onUnit(unit as UnitRemark)}`
  const more = unit === undefined ? [] : [onUnit(unit)]
  return [verdict === 'slip' ? onSlips(candidates) : onNothing, ...more].join(' ')
}

const onNothing =
  'No single known slip gives this number. Go through the steps one by one, with units, and compare each number with where it came from.'

const roundingAdvice: Readonly<Record<RoundingRemark['kind'], string>> = {
  'too many figures': 'It has more figures than the numbers that went in can carry: which of them has the fewest?',
  'too few figures': 'It could be given to more figures: how many do the numbers that went in have?',
  'not a multiple': 'To which steps is it to be rounded? It is no multiple of them.',
  'other tie rule': 'For a lone 5 at the end this course rounds by the other rule.',
  'cut off': 'Look at the digit after the last one: is it rounded, or cut off?',
  'rounded away': 'The last digit is one off: was something rounded on the way?',
}

function onRounding({ kind }: RoundingRemark): string {
  return roundingAdvice[kind]
}

function onUnit({ kind }: UnitRemark): string {
  return kind === 'missing' ? 'Which unit belongs to it?' : 'Look at its unit once more.'
}

/** The advice of the best candidate; and that there are others, where there are. */
function onSlips(candidates: readonly Candidate[]): string {
  const [first] = candidates as [Candidate, ...Candidate[]]
  const [second] = candidates.slice(1).filter(({ fit }) => fit === first.fit)
  if (second === undefined) return first.advice
  const others = first.alike.length === 1 ? 'Something else gives' : `${first.alike.length} other slips give`
  return `${first.advice} ${others} the same number at these digits; another thing to look at: ${lowerFirst(second.advice)}`
}

function lowerFirst(sentence: string): string {
  return sentence.charAt(0).toLowerCase() + sentence.slice(1)
}
