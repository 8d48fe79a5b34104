import { describe, expect, it } from 'vitest'
import { entries, filesUnder, read } from './files.js'

const ourFiles = [
  ...filesUnder('src/'),
  ...filesUnder('tests/'),
  ...filesUnder('docs/'),
  ...filesUnder('.config/'),
  ...filesUnder('.ci/'),
  ...entries().filter((name) => /\.(md|json|ts|cff)$/.test(name)),
].filter((file) => /\.(ts|mts|cts|js|mjs|cjs|json|md|cff|txt|csv|html|css|ipynb)$/.test(file) || !file.includes('.', 1))

/** Lines of our files that match, with their address. */
function lines(pattern: RegExp, files: readonly string[] = ourFiles): string[] {
  return files.flatMap((file) =>
    read(file)
      .split('\n')
      .flatMap((line, index) => (pattern.test(line) ? [`${file}:${index + 1} ${line.trim()}`] : [])),
  )
}

describe('what is written nowhere in the project', () => {
  it('looks into more than a few files', () => expect(ourFiles.length).toBeGreaterThan(20))

  it.each([
    ['a path of somebody’s machine', /(?:^|[\s"'`(=])\/(?:home|root|Users|work|mnt|opt|srv|tmp)\/\w/],
    ['a drive of somebody’s machine', /\b[A-Z]:\\Users/],
    ['the host of a package registry', /\b(?:registry|npm|deb|pypi)\.[a-z]+\.(?:org|com|net|io)\b/],
    ['the number of an issue', /\bissue\s+#?\d/i],
    ['a mark of unfinished work', /\b(?:T[O]DO|FIX[M]E)\b/],
  ])('%s', (_, pattern) => {
    expect(lines(pattern)).toEqual([])
  })

  it('an excuse from coverage without a reason', () => {
    expect(lines(/(?:v8|c8|istanbul) ignore (?!.*-- \w)/, filesUnder('src/'))).toEqual([])
  })
})
