/**
 * Runs one test file in new modules, up to its first failure. `describe` and `it` are written here, because Vitest
 * needs most of a second to start for every mutant; what a test expects is judged by Vitest itself.
 */
import { readFileSync } from 'node:fs'
import { dirname, join, resolve } from 'node:path'
import { Script } from 'node:vm'
import { chai, expect, expectTypeOf } from 'vitest'

let current = ''

/** Compares with files here: Vitest's own would write the file where it is missing, and wants to know its test. */
export function compareFiles() {
  chai.util.addMethod(chai.Assertion.prototype, 'toMatchFileSnapshot', function matches(path) {
    expect(this._obj).toBe(readFileSync(resolve(dirname(current), path), 'utf8'))
  })
}

/**
 * Runs a test file, or several in one set of modules.
 *
 * @param isMutated - Whether the mutants of a file are wanted.
 * @param milliseconds - How long a file may take up to its first test, and each test up to where it waits.
 * @returns Nothing where every test passed, otherwise what the first failure says.
 */
export async function firstFailure(modules, root, files, isMutated, milliseconds) {
  const tests = []
  const set = modules.newSet({ vitest: vocabulary(tests, () => set.forget()) }, isMutated)
  try {
    within(milliseconds, () => set.load(join(root, 'tests/setup.ts')))
    for (const file of files) {
      current = file
      within(milliseconds, () => set.load(file))
    }
    for (const test of tests) await within(milliseconds, test)
    return tests.length === 0 ? 'no tests' : undefined
  } catch (error) {
    if (error?.code === 'ERR_SCRIPT_EXECUTION_TIMEOUT') return stopped
    return String(error?.message ?? error)
  }
}

/** What is said of a run that was stopped. */
export const stopped = 'stopped, for it took too long'

/** Stops what goes round for ever. */
function within(timeout, run) {
  globalThis.__run = run
  return call.runInThisContext({ timeout })
}

const call = new Script('__run()')

/** What test files import from Vitest. */
function vocabulary(tests, resetModules) {
  const it = (_name, run) => void tests.push(() => run({ task: { meta: {} } }))
  const describe = (_name, body) => void body()
  return {
    it: Object.assign(it, { each: eachOf(it) }),
    describe: Object.assign(describe, { each: eachOf(describe) }),
    expect,
    expectTypeOf,
    vi: { resetModules },
  }
}

function eachOf(make) {
  return (cases) => (name, run) => {
    for (const one of cases) make(name, () => (Array.isArray(one) ? run(...one) : run(one)))
  }
}
