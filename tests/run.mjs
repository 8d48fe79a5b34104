/**
 * Everything that must hold before a change is accepted, cheapest first; stops at the first step that fails.
 * The last line counts the tests; a step that fails without failing a test counts as one failure.
 */
import { spawnSync } from 'node:child_process'
import { existsSync, readFileSync, rmSync } from 'node:fs'

const steps = ['lint', 'build', 'examples', 'typecheck', 'unit', 'package', 'size', 'api']
const plain = process.stdout.isTTY ? {} : { NO_COLOR: '1' }
const report = new URL('../reports/vitest.json', import.meta.url)

rmSync(report, { force: true })
const failed = steps.find((step) => !succeeds(step))
const { numPassedTests = 0, numFailedTests = 0 } = existsSync(report) ? JSON.parse(readFileSync(report, 'utf8')) : {}
const failures = failed === undefined ? numFailedTests : Math.max(numFailedTests, 1)

if (failed !== undefined) console.log(`\nThe step "${failed}" failed: npm run ${failed}`)
console.log(`\n${numPassedTests} passed, ${failures} failed`)
process.exitCode = failures === 0 ? 0 : 1

function succeeds(step) {
  console.log(`\n== ${step}`)
  const start = performance.now()
  const { status } = spawnSync('npm', ['run', '--silent', step], {
    stdio: 'inherit',
    env: { ...process.env, ...plain },
  })
  console.log(`== ${step}: ${status === 0 ? 'ok' : 'FAILED'}, ${((performance.now() - start) / 1000).toFixed(1)} s`)
  return status === 0
}
