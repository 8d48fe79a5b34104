/** What importing a door adds to a program of one empty file, the least of some starts. */
import { execFileSync } from 'node:child_process'
import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs'
import { join } from 'node:path'
import { fileURLToPath } from 'node:url'
import { atMost } from './harness.mjs'

const root = fileURLToPath(new URL('../..', import.meta.url))
const { exports } = JSON.parse(readFileSync(join(root, 'package.json'), 'utf8'))
const doors = Object.keys(exports).filter((door) => !door.endsWith('.json'))
const core = ['quantity', 'element', 'formula', 'equation', 'stoichiometry', 'solution', 'crystallisation', 'product']
const starts = 15

function start(program) {
  const begin = performance.now()
  execFileSync(process.execPath, [program])
  return performance.now() - begin
}

/** Programs in a folder of the package, whose own name they import. */
function timesOf(codes) {
  const folder = mkdtempSync(join(root, 'dist', 'start-up-'))
  const programs = codes.map((code, index) => {
    const program = join(folder, `${index}.mjs`)
    writeFileSync(program, code)
    return program
  })
  const least = codes.map(() => Number.POSITIVE_INFINITY)
  for (let round = 0; round < starts; round += 1)
    for (const [index, program] of programs.entries()) least[index] = Math.min(least[index], start(program))
  rmSync(folder, { recursive: true })
  return least
}

export function measure() {
  const least = timesOf(['', ...doors.map((door) => `import '${door.replace('.', 'saltwright')}'`)])
  const rows = doors.map((door, index) => ({
    name: door.replace('.', 'saltwright'),
    time: (least[index + 1] - least[0]) * 1000,
  }))
  const timeOf = (name) => rows.find((row) => row.name === name).time / 1000
  const slowestCore = Math.max(...core.map((door) => timeOf(`saltwright/${door}`)))
  return {
    title: 'Start-up',
    about: `Microseconds that one line with an import adds to a program that is an empty file, which takes ${least[0].toFixed(0)} milliseconds here; the least of ${starts} starts. Most of it is the engine reading the source.`,
    rows,
    targets: [
      atMost('milliseconds for the front door', 20, timeOf('saltwright')),
      atMost('milliseconds for the slowest core door', 10, slowestCore),
    ],
  }
}
