import { expect, it } from 'vitest'
import { read } from './files.js'

const { version } = JSON.parse(read('package.json')) as { version: string }
const newest = read('CHANGELOG.md').match(/^## (\S+) - (\d{4}-\d{2}-\d{2})$/m) ?? []

it('the changelog, the citation file and the package name the same version', () => {
  expect(newest[1]).toBe(version)
  expect(read('CITATION.cff')).toContain(`\nversion: ${version}\n`)
})

it('the citation file carries the date of the newest release', () => {
  expect(read('CITATION.cff')).toContain(`\ndate-released: "${newest[2]}"\n`)
})

it('pins every version, as the next major of most tools needs a newer Node', () => {
  const { dependencies, devDependencies } = JSON.parse(read('package.json')) as Record<string, Record<string, string>>
  const versions = Object.entries({ ...dependencies, ...devDependencies })
  expect(versions.filter(([, range]) => !/^\d+\.\d+\.\d+$/.test(range))).toEqual([])
})

it('needs two packages at run time', () => {
  const { dependencies } = JSON.parse(read('package.json')) as { dependencies: object }
  expect(Object.keys(dependencies)).toEqual(['decimal.js', 'zod'])
})
