import { expect, it } from 'vitest'
import { entries } from './files.js'

const allowed = [
  'CHANGELOG.md',
  'CITATION.cff',
  'DEVELOPERS.md',
  'LICENSE',
  'README.md',
  'biome.json',
  'docs',
  'package-lock.json',
  'package.json',
  'src',
  'tests',
  'tsconfig.json',
  'tsup.config.ts',
]

it('the top level holds the project and nothing else', () => {
  expect(entries().filter((name) => !name.startsWith('.'))).toEqual(allowed)
})
