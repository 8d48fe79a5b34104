import { describe, expect, it } from 'vitest'
import { filesUnder, read } from './files.js'

/** The code of a file, without comment lines. */
function codeOf(file: string): string {
  const lines = read(file).split('\n')
  return lines.filter((line) => !/^\s*(\*|\/\*|\/\/)/.test(line)).join('\n')
}

const source = filesUnder('src/')
  .filter((file) => file.endsWith('.ts'))
  .map(codeOf)
  .join('\n')
const tests = filesUnder('tests/')
  .filter((file) => file.endsWith('.ts'))
  .map(codeOf)
  .join('\n')

/** The codes that the types of all folders list: `'formula/unknown-symbol'`. */
const codes = [...source.matchAll(/^ {2}\| '([a-z]+\/[a-z-]+)'$/gm)].map(([, code]) => code as string)

/** How often a code is written out in full, so that a search finds it. */
function occurrences(text: string, code: string): number {
  return [...text.matchAll(new RegExp(`${code}(?![\\w-])`, 'g'))].length
}

describe('the codes of errors and findings', () => {
  it('are many, each listed once', () => {
    expect(codes.length).toBeGreaterThan(20)
    expect(codes.filter((code, index) => codes.indexOf(code) !== index)).toEqual([])
  })

  it('are all used', () => {
    expect(codes.filter((code) => occurrences(source, code) < 2)).toEqual([])
  })

  it('are all met in the tests', () => {
    expect(codes.filter((code) => occurrences(tests, code) === 0)).toEqual([])
  })
})
