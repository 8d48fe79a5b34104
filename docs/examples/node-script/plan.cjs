// The same with CommonJS: node plan.cjs "0.0250 mol"
const { readFileSync } = require('node:fs')
const { join } = require('node:path')
const { benchSheet, planPreparation } = require('saltwright')

const [amount = '0.0400 mol'] = process.argv.slice(2)
const recipe = JSON.parse(readFileSync(join(__dirname, '../recipes/zinc-sulfate.json'), 'utf8'))

console.log(benchSheet(planPreparation({ ...recipe, scale: { of: recipe.product, amount } })))
