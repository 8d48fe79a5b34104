// Prints a bench sheet at another scale: node plan.mjs "0.0250 mol"
import { readFileSync } from 'node:fs'
import { benchSheet, isSaltwrightError, planPreparation } from 'saltwright'

const [amount = '0.0400 mol'] = process.argv.slice(2)
const recipe = JSON.parse(readFileSync(new URL('../recipes/zinc-sulfate.json', import.meta.url), 'utf8'))

try {
  const plan = planPreparation({ ...recipe, scale: { of: recipe.product, amount } })
  console.log(benchSheet(plan))
} catch (error) {
  if (!isSaltwrightError(error)) throw error
  for (const { path, message, hint } of error.problems ?? [error]) {
    console.error([path?.join('.'), message, hint].filter(Boolean).join(' | '))
  }
  process.exitCode = 1
}
