// Plans a preparation and assesses what a bench made of it: node docs/examples/demo.mjs [recipe] [bench]
import { readFileSync } from 'node:fs'
import { assessmentSheet, assessPreparation, benchSheet, planPreparation } from 'saltwright'

const [name = 'zinc-sulfate', bench = 'bench-1'] = process.argv.slice(2)
const read = (path) => JSON.parse(readFileSync(new URL(path, import.meta.url), 'utf8'))

const plan = planPreparation(read(`recipes/${name}.json`))
console.log(benchSheet(plan))

const assessment = assessPreparation(plan, read(`records/${name}-${bench}.json`))
console.log(assessmentSheet(assessment))
