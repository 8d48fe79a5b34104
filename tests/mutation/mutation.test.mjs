import { mkdirSync, mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, beforeAll, describe, expect, it } from 'vitest'
import { Modules } from './modules.mjs'
import { interval, isSampled } from './sample.mjs'
import { firstFailure, stopped } from './test-file.mjs'

describe('a test file on its own', () => {
  const root = mkdtempSync(join(tmpdir(), 'mutation-'))
  const file = join(root, 'tests/some.test.ts')
  const outcomeOf = async (...lines) => {
    writeFileSync(file, ["import { describe, expect, it } from 'vitest'", ...lines].join('\n'))
    return firstFailure(new Modules(root), root, [file], () => true, 500)
  }

  beforeAll(() => {
    mkdirSync(join(root, 'tests'))
    writeFileSync(join(root, 'tests/setup.ts'), '')
    writeFileSync(join(root, 'tests/counter.ts'), 'let count: number = 0\nexport const next = () => (count += 1)')
  })
  afterAll(() => rmSync(root, { recursive: true }))

  it('passes when all its tests pass', async () => {
    expect(await outcomeOf("describe('a', () => it.each([[1, 1], [2, 2]])('%i', (a, b) => expect(a).toBe(b)))")).toBe(
      undefined,
    )
  })

  it('fails with its first failure, also one that is waited for', async () => {
    expect(await outcomeOf("it('a', async () => { await null; expect(1).toBe(2) })")).toMatch('expected 1 to be 2')
  })

  it('fails when what it works out before its first test throws', async () => {
    expect(
      await outcomeOf("describe('a', () => { throw new Error('at once') })", "it('b', () => expect(1).toBe(1))"),
    ).toBe('at once')
  })

  it('fails when it goes round for ever', async () => {
    expect(await outcomeOf("it('a', () => { for (;;); })")).toBe(stopped)
  })

  it('fails when it has no tests', async () => {
    expect(await outcomeOf("describe('a', () => {})")).toBe('no tests')
  })

  it('starts with new modules every time', async () => {
    writeFileSync(
      file,
      "import { expect, it } from 'vitest'\nimport { next } from './counter.js'\nit('a', () => expect(next()).toBe(1))",
    )
    const modules = new Modules(root)
    expect(await firstFailure(modules, root, [file], () => true, 500)).toBe(undefined)
    expect(await firstFailure(modules, root, [file], () => true, 500)).toBe(undefined)
  })
})

describe('a sample', () => {
  const mutants = Array.from({ length: 4000 }, (_, line) => ({
    fileName: '/somewhere/src/a/b.ts',
    location: { start: { line, column: 1 }, end: { line, column: 9 } },
    mutatorName: 'StringLiteral',
    replacement: '""',
  }))
  const chosen = (sample) => mutants.filter((mutant) => isSampled(mutant, sample))

  it('is the share asked for, and the same for the same seed, in whatever folder', () => {
    const tenth = chosen({ share: 0.1, seed: 1 })
    expect(tenth.length).toBeGreaterThan(340)
    expect(tenth.length).toBeLessThan(460)
    const elsewhere = mutants.map((mutant) => ({ ...mutant, fileName: 'src\\a\\b.ts' }))
    expect(elsewhere.filter((mutant) => isSampled(mutant, { share: 0.1, seed: 1 }))).toHaveLength(tenth.length)
    expect(chosen({ share: 0.1, seed: 2 })).not.toEqual(tenth)
  })

  it('is everything or nothing at the ends', () => {
    expect(chosen({ share: 1, seed: 1 })).toHaveLength(4000)
    expect(chosen({ share: 0, seed: 1 })).toHaveLength(0)
  })

  it('has the interval of Wilson, and none when it is everything', () => {
    const [low, high] = interval(90, 100, 1e9)
    expect(low).toBeCloseTo(0.826, 3)
    expect(high).toBeCloseTo(0.945, 3)
    expect(interval(90, 100, 100)).toEqual([0.9, 0.9])
  })
})
