import { slips } from 'saltwright/review'
import { type Figures, figuresMeasured, type Measurement, type Score, seeds, totalOf } from './honesty.js'

/** The measurement as a page of the documentation. */
export function honestyPage({ recipes, questions, at, right }: Measurement): string {
  const totals = figuresMeasured.map((figures) => totalOf(at[figures].slips.values()))
  const random = figuresMeasured.map((figures) => at[figures].random)
  return `# How honest a review is

A review names slips that would give a stated answer. This page says how often it names the right one, and how often it
blames a slip for a number that has nothing to do with it. It is written by the tests (\`tests/review/honesty.test.ts\`) with
fixed seeds (${seeds.cases} for scales and records, ${seeds.numbers} for the wrong numbers); a test fails when it is out of date.

## What was measured

Every recipe of the documentation and of the published checks (${recipes}) was planned at two random scales, from a third of
its own to three times it, with made-up records of a bench. Each question of its worksheet that has a number for an answer (${questions} in
all: amounts, masses, volumes, molar mass, theoretical yield, mass of product, per cent yield) was answered in four ways:

- *Slips.* Every slip that applies to the question was made once, and its result stated to three and to four figures. It
  counts as *first* where the review names it first, and as *found* where it is among the slips that fit best. Slips that give
  the same number at the stated digits cannot be told apart; the review says so and lists them all.
- *Rounded on the way.* The same, with every result on the way rounded to one figure more than stated. It counts as found
  where the slip is named at all.
- *Numbers that mean nothing.* Four numbers for each question, spread evenly on a logarithmic scale from a tenth of the right answer
  to ten times it. Each that is put down to a single slip is a false alarm.
- *Right answers*, rounded by both rules for a lone 5 to three figures, to four, and to those that are justified.

Slips whose result is the right answer at the stated figures are left out: nobody can see them.

## Results

| | 3 figures | 4 figures |
| --- | ---: | ---: |
| slips simulated | ${totals.map(({ simulated }) => simulated).join(' | ')} |
| found | ${totals.map(({ tied, simulated }) => percent(tied, simulated)).join(' | ')} |
| first | ${totals.map(({ first, simulated }) => percent(first, simulated)).join(' | ')} |
| slips that fit as well, on average | ${totals.map(({ alike, simulated }) => (alike / simulated).toFixed(2)).join(' | ')} |
| found when rounded on the way | ${totals.map(({ rough, simulated }) => percent(rough, simulated)).join(' | ')} |
| numbers that mean nothing | ${random.map(({ stated }) => stated).join(' | ')} |
| put down to a slip | ${random.map(({ blamed, stated }) => percent(blamed, stated, 2)).join(' | ')} |
| of these, to the last digit | ${random.map(({ blamedToTheDigits, stated }) => percent(blamedToTheDigits, stated, 2)).join(' | ')} |

Of ${right.stated} right answers ${right.faulted.length === 0 ? 'none was' : `${right.faulted.length} were`} faulted.

## By slip

How often each was simulated, found and named first, at four figures and at three.

| slip | simulated | found, 4 | first, 4 | found, 3 | first, 3 |
| --- | ---: | ---: | ---: | ---: | ---: |
${slips.flatMap(({ name }) => rowOf(name, at)).join('\n')}

Slips that are not in the table do not apply to any question of these recipes, or need something at hand that these benches did
not have; each of them has a worked example in the tests.

## What it means

- A slip that shares its number with others is found, and not always first: an excess of two and a mole ratio of one to two
  give the same volume. The order among such slips goes by what is known of them, which is judgement, not frequency.
- A result that misses a slip's number by one in the last digit is still put down to it, after those that fit to the
  digit: results are rounded on the way. This is where most of the false alarms come from.
- With two figures nearly any number fits some slip. Ask for three.
`
}

function rowOf(name: string, at: Measurement['at']): readonly string[] {
  const scores = ([4, 3] as const).map((figures: Figures) => at[figures].slips.get(name))
  if (scores.every((score) => score === undefined)) return []
  const cells = scores.flatMap((score) => shares(score))
  return [`| ${name} | ${scores[0]?.simulated ?? 0} | ${cells.join(' | ')} |`]
}

function shares(score: Score | undefined): readonly string[] {
  return score === undefined ? ['', ''] : [percent(score.tied, score.simulated), percent(score.first, score.simulated)]
}

function percent(part: number, whole: number, decimals = 1): string {
  return `${((100 * part) / whole).toFixed(decimals)} %`
}
