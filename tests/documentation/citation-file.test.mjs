import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const text = readFileSync(new URL('../../CITATION.cff', import.meta.url), 'utf8')
const keys = [...text.matchAll(/^([a-z-]+):/gm)].map(([, key]) => key)

/** The keys that the Citation File Format 1.2.0 knows at the top of a file. */
const known = [
  'abstract',
  'authors',
  'cff-version',
  'commit',
  'contact',
  'date-released',
  'doi',
  'identifiers',
  'keywords',
  'license',
  'license-url',
  'message',
  'preferred-citation',
  'references',
  'repository',
  'repository-artifact',
  'repository-code',
  'title',
  'type',
  'url',
  'version',
]

describe('the citation file', () => {
  it('has every key that the format requires', () => {
    expect(keys).toEqual(expect.arrayContaining(['authors', 'cff-version', 'message', 'title']))
  })

  it('has no key that the format does not know, and none twice', () => {
    expect(keys.filter((key) => !known.includes(key))).toEqual([])
    expect(new Set(keys).size).toBe(keys.length)
  })

  it.each([
    ['the version of the format', /^cff-version: 1\.2\.0$/m],
    ['that it is software', /^type: software$/m],
    ['a date as the format wants it', /^date-released: "\d{4}-\d{2}-\d{2}"$/m],
    ['an author by a name', /^authors:\n {2}- name: \S/m],
  ])('says %s', (_, line) => expect(text).toMatch(line))

  it('claims no identifier: those are for sources', () => expect(keys).not.toContain('doi'))
})
