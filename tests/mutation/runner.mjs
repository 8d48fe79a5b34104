/**
 * Runs the tests for Stryker: one mutant, and one test file after the other until one fails. A test file counts as a whole,
 * with what it works out before its first test: if that throws, the mutant is found out.
 */
import { readdirSync } from 'node:fs'
import { join } from 'node:path'
import { commonTokens, declareClassPlugin, PluginKind, tokens } from '@stryker-mutator/api/plugin'
import { DryRunStatus, MutantRunStatus, TestStatus } from '@stryker-mutator/api/test-runner'
import { Modules } from './modules.mjs'
import { isSampled } from './sample.mjs'
import { compareFiles, firstFailure, stopped } from './test-file.mjs'

/** Tests of the project's shape, and long ones; the examples of the documentation are short, and run together. */
const examples = 'tests/documentation/generated'
const unused = /^tests\/(house|package)\//
const leftOut = /^tests\/(documentation|house|package)\/|^tests\/review\/honesty\.test\.ts$/

/** Milliseconds: no test takes nearly as long, but for a mutant that goes round for ever, or while mutants are counted. */
const [longest, longestCounting] = [20_000, 300_000]

/** What the instrumented files read and write. */
globalThis.__stryker__ ??= {}
const shared = globalThis.__stryker__

class FreshModulesRunner {
  static inject = tokens(commonTokens.options)
  #root = process.cwd()
  #modules = new Modules(this.#root)
  #times = new Map()
  #isStopped = false
  #sample

  constructor({ sample }) {
    this.#sample = sample
  }

  init() {
    compareFiles()
    for (const file of ['src', 'tests'].flatMap((folder) => filesIn(this.#root, folder, '.ts')))
      if (!unused.test(file)) this.#modules.prepare(join(this.#root, file), false)
  }

  capabilities() {
    return { reloadEnvironment: true }
  }

  /** Every file twice: as it is, for its time, and counting which mutants it reaches. */
  async dryRun() {
    const tests = []
    for (const id of [...filesIn(this.#root, 'tests', '.test.ts').filter((file) => !leftOut.test(file)), examples]) {
      await this.#run(id, () => false, longest)
      const timeSpentMs = this.#times.get(id)
      shared.currentTestId = id
      const outcome = statusOf(await this.#run(id, () => true, longestCounting))
      this.#times.set(id, timeSpentMs)
      tests.push({ id, name: id, fileName: id, timeSpentMs, ...outcome })
    }
    return { status: DryRunStatus.Complete, tests, mutantCoverage: shared.mutantCoverage }
  }

  async mutantRun({ activeMutant, sandboxFileName, testFilter, hitLimit }) {
    if (!isSampled(fromOne(activeMutant), this.#sample))
      return { status: MutantRunStatus.Error, errorMessage: 'not sampled' }
    if (this.#isStopped) throw new Error('A run was stopped, somewhere within a library: go on in a new process.')
    this.#modules.prepare(sandboxFileName, true)
    Object.assign(shared, { activeMutant: activeMutant.id, hitCount: 0, hitLimit })
    let nrOfTests = 0
    for (const id of this.#inOrder(testFilter, activeMutant)) {
      const failureMessage = await this.#run(id, (path) => path === sandboxFileName, longest)
      nrOfTests += 1
      this.#isStopped = failureMessage === stopped
      if (this.#isStopped) return { status: MutantRunStatus.Timeout, reason: `${id} went on for ever` }
      if (shared.hitCount > hitLimit) return { status: MutantRunStatus.Timeout, reason: 'reached far too often' }
      if (failureMessage !== undefined)
        return { status: MutantRunStatus.Killed, killedBy: [id], failureMessage, nrOfTests }
    }
    return { status: MutantRunStatus.Survived, nrOfTests }
  }

  /** The tests of the mutant's own folder first, then the quick ones: most mutants are found out soon. */
  #inOrder(ids, { fileName }) {
    const [, folder] = /src[\\/](\w+)[\\/]/.exec(fileName) ?? []
    const rank = (id) => (id.startsWith(`tests/${folder}/`) ? 0 : 1)
    const time = (id) => this.#times.get(id) ?? 0
    return [...ids].sort((a, b) => rank(a) - rank(b) || time(a) - time(b))
  }

  async #run(id, isMutated, milliseconds) {
    const start = performance.now()
    const files = (id === examples ? filesIn(this.#root, examples, '.test.ts') : [id]).map((file) =>
      join(this.#root, file),
    )
    const failure = await firstFailure(this.#modules, this.#root, files, isMutated, milliseconds)
    this.#times.set(id, performance.now() - start)
    return failure
  }
}

function filesIn(root, folder, ending) {
  return readdirSync(join(root, folder), { recursive: true })
    .map((path) => `${folder}/${path.replaceAll('\\', '/')}`)
    .filter((path) => path.endsWith(ending))
    .sort()
}

function statusOf(failureMessage) {
  return failureMessage === undefined ? { status: TestStatus.Success } : { status: TestStatus.Failed, failureMessage }
}

/** Stryker counts lines and columns from 0 here, and from 1 in its report. */
function fromOne({ location: { start, end }, ...mutant }) {
  const next = ({ line, column }) => ({ line: line + 1, column: column + 1 })
  return { ...mutant, location: { start: next(start), end: next(end) } }
}

export const strykerPlugins = [declareClassPlugin(PluginKind.TestRunner, 'fresh-modules', FreshModulesRunner)]

export const strykerValidationSchema = {
  properties: {
    sample: {
      description: 'Which mutants are tried.',
      type: 'object',
      default: { share: 1, seed: 1 },
      properties: { share: { type: 'number' }, seed: { type: 'number' } },
    },
  },
}
