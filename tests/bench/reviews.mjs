/** Reviews: one wrong answer against all slips, and a class of a thousand worksheets of ten answers. */
import { readFileSync } from 'node:fs'
import { planClass } from 'saltwright/preparation'
import { contextOf, reviewAnswer, reviewClass, worksheetOf } from 'saltwright/review'
import { atMost, timed } from './harness.mjs'

const recipe = JSON.parse(
  readFileSync(new URL('../../docs/examples/recipes/potassium-aluminium-sulfate.json', import.meta.url), 'utf8'),
)
const benches = Array.from({ length: 1000 }, (_, index) => ({
  name: `Bench ${index + 1}`,
  scale: { amount: `0.0${200 + (index % 700)} mol` },
}))

/** Worksheets of ten answers: seven right, a slip, what follows from it, and a number that means nothing. */
function worksheets() {
  return planClass(recipe, benches).benches.map(({ name, plan }) => {
    const right = worksheetOf(plan).questions.map((question) => [question.id, answerTo(question, 1)])
    const { mass } = plan.theoretical
    const wrong = {
      'molar-mass-of-product': '258.19 g/mol',
      'theoretical-yield': `${mass.value.times('0.54428').toPrecision(4)} g`,
      'volume-of-KOH': '3.217 mL',
    }
    const answers = { ...Object.fromEntries(right), ...wrong }
    return { plan, filled: { format: 'saltwright/worksheet@1', bench: name, answers } }
  })
}

function answerTo(question, factor) {
  if (question.kind === 'choice') return question.right[0]
  const { value, unit } = question.expected
  return `${value.times(factor).toPrecision(4)} ${unit}`
}

/** Least time for a thousand worksheets that nobody has looked at before: what was found out about a plan is remembered with it. */
function freshClass() {
  const times = Array.from({ length: 3 }, () => {
    const filled = worksheets()
    const start = performance.now()
    reviewClass(filled)
    return performance.now() - start
  })
  return Math.min(...times)
}

export function measure() {
  const plans = worksheets().map(({ plan }) => plan)
  const contexts = plans.map((plan) => contextOf(plan))
  const wrong = () => {
    for (const [index, { theoretical }] of plans.entries())
      reviewAnswer(theoretical.mass.named({}), '3.217 g', { context: contexts[index] })
  }
  const answers = timed([{ name: 'a wrong answer, against all slips', run: wrong }], { rounds: 5, items: plans.length })
  const seconds = freshClass() / 1000
  return {
    title: 'Reviews',
    about: 'Microseconds. Each answer is to a question of its own: every bench has another scale.',
    rows: [...answers, { name: 'a worksheet of ten answers', time: (seconds * 1e6) / benches.length }],
    targets: [
      atMost('microseconds for a wrong answer against all slips', 500, answers[0].time),
      atMost('seconds for a thousand worksheets of ten answers', 5, seconds),
    ],
  }
}
