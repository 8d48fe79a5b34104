/** What importing a door adds to an empty Node process, the least of some starts. */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { atMost } from './harness.mjs'

const root = new URL('../..', import.meta.url)
const { exports } = JSON.parse(readFileSync(new URL('package.json', root), 'utf8'))
const doors = Object.keys(exports).filter((door) => !door.endsWith('.json'))
const core = ['quantity', 'element', 'formula', 'equation', 'stoichiometry', 'solution', 'crystallisation', 'product']
const starts = 15

function start(code) {
  const begin = performance.now()
  execFileSync(process.execPath, ['--input-type=module', '-e', code], { cwd: root })
  return performance.now() - begin
}

export function measure() {
  const codes = ['', ...doors.map((door) => `import '${door.replace('.', 'saltwright')}'`)]
  const least = codes.map(() => Number.POSITIVE_INFINITY)
  for (let round = 0; round < starts; round += 1)
    for (const [index, code] of codes.entries()) least[index] = Math.min(least[index], start(code))
  const rows = doors.map((door, index) => ({
    name: door.replace('.', 'saltwright'),
    time: (least[index + 1] - least[0]) * 1000,
  }))
  const timeOf = (name) => rows.find((row) => row.name === name).time / 1000
  const slowestCore = Math.max(...core.map((door) => timeOf(`saltwright/${door}`)))
  return {
    title: 'Start-up',
    about: `Microseconds that importing adds to an empty Node process, which takes ${least[0].toFixed(0)} milliseconds here; the least of ${starts} starts.`,
    rows,
    targets: [
      atMost('milliseconds for the front door', 20, timeOf('saltwright')),
      atMost('milliseconds for the slowest core door', 10, slowestCore),
    ],
  }
}
