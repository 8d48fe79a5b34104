/**
 * The benchmarks: `npm run build && npm run bench -- [names] [--long] [--write]`. All routes of a workload are measured in one run, and
 * what counts is how they compare. Each workload has a process of its own, which no other has filled with its leavings. `--write` puts
 * the tables into docs/benchmarks.md.
 */
import { execFileSync } from 'node:child_process'
import { readFileSync, writeFileSync } from 'node:fs'
import { cpus, platform } from 'node:os'
import { parseArgs } from 'node:util'
import { pageOf } from './page.mjs'

const names = ['formulas', 'balancing', 'quantity', 'yields', 'preparations', 'reviews', 'start-up', 'scaling']
const { values, positionals } = parseArgs({
  allowPositionals: true,
  options: {
    long: { type: 'boolean', default: false },
    write: { type: 'boolean', default: false },
    one: { type: 'string' },
  },
})
if (values.one !== undefined) {
  const { measure } = await import(`./${values.one}.mjs`)
  process.stdout.write(JSON.stringify(measure(values)))
  process.exit()
}
const { version } = JSON.parse(readFileSync(new URL('../../package.json', import.meta.url), 'utf8'))
const machine = `${cpus().length} × ${cpus()[0].model.trim()}, ${platform()}, Node ${process.versions.node}`
const results = []

console.log(machine)
for (const name of positionals.length > 0 ? positionals : names) {
  const result = inItsOwnProcess(name)
  results.push(result)
  print(result)
}
if (values.write)
  writeFileSync(new URL('../../docs/benchmarks.md', import.meta.url), pageOf({ results, machine, version }))

function inItsOwnProcess(name) {
  const args = [import.meta.filename, '--one', name, ...(values.long ? ['--long'] : [])]
  return JSON.parse(execFileSync(process.execPath, args, { encoding: 'utf8', stdio: ['ignore', 'pipe', 'inherit'] }))
}

function print({ title, about, rows, targets }) {
  console.log(`\n${title}\n${about}`)
  for (const { name, time, memory } of rows)
    console.log(
      `  ${name.padEnd(56)}${time.toFixed(2).padStart(12)} us${memory === undefined ? '' : `  ${memory.toFixed(1)} MB`}`,
    )
  for (const { what, wanted, measured, met } of targets)
    console.log(`  ${met ? 'met   ' : 'MISSED'}  ${measured.toFixed(2)} ${what} (${wanted})`)
}
