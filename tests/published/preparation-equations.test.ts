import { checkBalance, combine, type Equation, parseEquation, stageMultipliers } from '../../src/equation/index.js'
import { formatFraction } from '../../src/fraction.js'
import { checkPublished, type PublishedRow } from './check.js'
import { preparations } from './data/preparations/published.js'

/** What dissolves and what takes up hydrons beside the printed steps, where the overall equation is of whole salts. */
const relations: Readonly<Record<string, readonly string[]>> = {
  'tetraamminecopper-ii-sulfate-monohydrate': ['CuSO4·5H2O(s) -> Cu^2+(aq) + SO4^2-(aq) + 5 H2O(l)'],
  'potassium-trioxalatoferrate-iii-trihydrate-from-iron-ii-sulfate': [
    'FeSO4·7H2O(s) -> Fe^2+(aq) + SO4^2-(aq) + 7 H2O(l)',
    'HNO3(aq) -> H^+(aq) + NO3^-(aq)',
    'NH4^+(aq) -> NH3(aq) + H^+(aq)',
    '2 NH4^+(aq) + SO4^2-(aq) -> (NH4)2SO4(aq)',
  ],
  'barium-sulfate-gravimetric-precipitation': [
    'BaCl2(aq) -> Ba^2+(aq) + 2 Cl^-(aq)',
    'Na2SO4(aq) -> 2 Na^+(aq) + SO4^2-(aq)',
    'Na^+(aq) + Cl^-(aq) -> NaCl(aq)',
  ],
}

/** How often the steps run where not each runs once; 0 for a side reaction. */
const multipliers: Readonly<Record<string, string>> = {
  'ammonium-iron-ii-sulfate-hexahydrate-from-iron': '1, 0, 1',
  'potassium-trioxalatoferrate-iii-trihydrate-from-mohrs-salt': '2, 1/3, 1/3, 2',
  'potassium-trioxalatoaluminate-iii-trihydrate-from-aluminium': '1, 2, 2',
  'potassium-aluminium-sulfate-dodecahydrate-from-aluminium': '1, 1, 1, 1, 0',
  'potassium-trioxalatoferrate-iii-trihydrate-from-iron-ii-sulfate': '1, 3, 3, 3',
  'hexaamminecobalt-iii-chloride': '1, 4, 0',
  'copper-cycle-through-nitrate-hydroxide-oxide-and-sulfate': '1, 1, 1, 1, 1, 0, 0, 0',
  'magnesium-sulfate-heptahydrate-from-magnesium-or-its-carbonate': '1, 1, 0',
  'zinc-sulfate-heptahydrate-from-zinc': '1, 1, 0',
}

/** Both sides with their terms in the order of the alphabet. */
function sorted(equation: Equation): string {
  const side = (terms: Equation['left']): string =>
    terms
      .map(({ coefficient, formula, state }) => `${formatFraction(coefficient)} ${formula}${state}`)
      .sort()
      .join(' + ')
  return `${side(equation.left)} -> ${side(equation.right)}`
}

function rowsOf({ recipe, steps = [], overall = '' }: (typeof preparations)[number]): readonly PublishedRow[] {
  if (steps.length === 0) return []
  const stages = [...steps, ...(relations[recipe] ?? [])]
  const times = (): readonly string[] => stageMultipliers(stages, { overall }).map(formatFraction)
  const balanced = [...steps, overall].map((equation): PublishedRow => {
    const ours = (): string => String(checkBalance(equation))
    return { at: recipe, what: `the check of ${equation}`, published: 'Balanced, in lowest terms.', ours, agrees: true }
  })
  return [
    ...balanced,
    {
      at: recipe,
      what: 'the overall equation of the steps, terms sorted,',
      published: sorted(parseEquation(overall)),
      ours: () => sorted(combine(stages.map((equation, index) => ({ equation, times: times()[index] })))),
      agrees: true,
    },
    {
      at: recipe,
      what: 'how often each step runs',
      published: multipliers[recipe] ?? steps.map(() => '1').join(', '),
      ours: () => times().slice(0, steps.length).join(', '),
      agrees: true,
    },
  ]
}

checkPublished('Preparations from laboratory texts, the equations', preparations.flatMap(rowsOf))
