import { molarMass } from '../../src/formula/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { type PrintedMolarMass, printedMolarMasses } from './data/molar-masses.js'
import { toTheDigitsOf, unroundedTo } from './written-as.js'

function rowOf({ formula, name, published, today, weights, why }: PrintedMolarMass): PublishedRow {
  const printed = `${published} g/mol`
  return {
    at: formula,
    what: `the molar mass of ${name}`,
    published: printed,
    ours: () => toTheDigitsOf(printed, molarMass(formula)),
    agrees:
      today === undefined
        ? true
        : {
            ours: `${today} g/mol`,
            differs: String(why),
            explained: () => unroundedTo(printed, molarMass(formula, { weights })),
          },
  }
}

for (const { source, rows } of printedMolarMasses) checkPublished(source, rows.map(rowOf))
