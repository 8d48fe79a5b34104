import { describe, expect, it } from 'vitest'
import { fencedBlocks } from './blocks.mjs'
import { testBody } from './claims.mjs'
import { testFiles } from './examples.mjs'

const fence = '```'

/** A guide from lines, with `~~~` for the fences. */
function guide(...lines) {
  return fencedBlocks('docs/guide.md', lines.join('\n').replaceAll('~~~', fence))
}

function body(...lines) {
  return testBody({ file: 'docs/guide.md', line: 1, code: lines.join('\n') }).body.trim()
}

describe('finding blocks', () => {
  it('knows file, line, language, words and code', () => {
    expect(guide('Text', '', '~~~ts no-run needs a network', 'f()', '', 'g()', '~~~')).toEqual([
      { file: 'docs/guide.md', line: 3, language: 'ts', words: 'no-run needs a network', code: 'f()\n\ng()' },
    ])
  })

  it('takes the indentation of a list off', () => {
    expect(guide('- item', '  ~~~ts', '  f()', '    .g()', '  ~~~')[0].code).toBe('f()\n  .g()')
  })

  it('reads doc comments of a source file, not its code', () => {
    const source = [
      '/**',
      ' * Does f.',
      ` * ${fence}ts`,
      ' * f() // => 1',
      ' *',
      ` * ${fence}`,
      ' */',
      `a = '${fence}ts'`,
    ]
    expect(fencedBlocks('src/f.ts', source.join('\n')).map(({ line, code }) => [line, code])).toEqual([
      [3, 'f() // => 1\n'],
    ])
  })

  it.each([
    ['a guide', 'docs/guide.md', `${fence}ts\nf()`],
    ['a doc comment', 'src/f.ts', `/**\n * ${fence}ts\n * f()\n */`],
  ])('refuses a fence left open in %s', (_, file, text) => {
    expect(() => fencedBlocks(file, text)).toThrow('the fence is not closed')
  })
})

describe('turning claims into checks', () => {
  it.each([
    ['a value', ['f(1) // => 2'], 'expect(f(1), "docs/guide.md:2").toEqual(2) // => 2'],
    ['a binding', ['const x = f() // => [1]'], 'const x = f(); expect(x, "docs/guide.md:2").toEqual([1]) // => [1]'],
    [
      'an error',
      ["f('') // throws formula/empty"],
      `expect(await codeOf(async () => (f(''))), "docs/guide.md:2").toBe('formula/empty') // throws formula/empty`,
    ],
    [
      'a printed line',
      ['console.log(1.5) // prints 1.5'],
      'console.log(1.5); expect(console.printed.at(-1), "docs/guide.md:2").toBe("1.5") // prints 1.5',
    ],
    ['a statement in an if', ['if (x) f() // => 1'], 'if (x) expect(f(), "docs/guide.md:2").toEqual(1) // => 1'],
  ])('%s', (_, code, expected) => {
    expect(body(...code)).toBe(expected)
  })

  it('a statement over several lines, and a value over several lines', () => {
    expect(body('f(', '  1,', ') // => {', '//   a: 1,', '//   b: 2 }', 'g()')).toContain(
      'expect(f(\n  1,\n), "docs/guide.md:4").toEqual({ a: 1, b: 2 }) // => {',
    )
  })

  it('a value on the line below', () => {
    expect(body('f()', '// => 1', 'g() // => 2')).toBe(
      'expect(f(), "docs/guide.md:2").toEqual(1)\n// => 1\nexpect(g(), "docs/guide.md:4").toEqual(2) // => 2',
    )
  })

  it('puts imports apart', () => {
    expect(testBody({ file: 'a.md', line: 1, code: "import { f } from 'x'\n\nf() // => 1" })).toMatchObject({
      imports: ["import { f } from 'x'"],
      claims: 1,
    })
  })

  it.each([
    ['behind nothing', ['// => 1'], 'a claim must stand right behind a statement'],
    ['inside a statement', ['f(', '  1, // => 1', ')'], 'a claim must stand right behind a statement'],
    ['that is no value', ['f() // => 3.98 g'], '"3.98 g" is not a value in TypeScript'],
    ['about a pattern', ['const { a } = f() // => 1'], 'claim the value of one name, not of a pattern'],
    ['about two names', ['const a = 1, b = 2 // => 2'], 'one declaration per claim'],
  ])('refuses a claim %s', (_, code, message) => {
    expect(() => body(...code)).toThrow(message)
  })
})

describe('writing tests', () => {
  it('one per example, in a file of its own, with every claim counted', () => {
    const [first, second, ...others] = testFiles(
      guide('~~~ts', 'f() // => 1', 'g() // => 2', '~~~', '~~~ts', 'h() // => 3', '~~~'),
    )
    expect(others).toEqual([])
    expect([first.name, second.name]).toEqual(['docs.guide.md.1.test.ts', 'docs.guide.md.5.test.ts'])
    expect(first.text).toContain("it('docs/guide.md:1', async () => {\nexpect.assertions(2)\n")
  })

  it('a block fenced as printed text is all that the example above prints', () => {
    const [{ text }] = testFiles(guide('~~~ts', 'console.log(1)', '~~~', 'prints', '~~~text prints', '1', '~~~'))
    expect(text).toContain(`expect(console.text(), 'docs/guide.md:1').toBe("1")`)
    expect(text).toContain('expect.assertions(1)')
  })

  it('a continued example runs the ones before it, and imports once', () => {
    const blocks = guide(
      '~~~ts',
      "import f from 'f'",
      'const a = f() // => 1',
      '~~~',
      '~~~ts continued',
      'a // => 1',
      '~~~',
    )
    const { text } = testFiles(blocks)[1]
    expect(text.match(/import f/g)).toHaveLength(1)
    expect(text).toContain('expect.assertions(2)')
    expect(text).toContain('console.clear()')
  })

  it('nothing for other languages, and for an example that says why it cannot run', () => {
    expect(testFiles(guide('~~~json', '{}', '~~~', '~~~ts no-run needs a browser', 'f()', '~~~'))).toEqual([])
  })

  it.each([
    ['claims nothing', ['~~~ts', 'f()', '~~~'], 'the example claims nothing'],
    ['does not run for no reason', ['~~~ts no-run', 'f()', '~~~'], 'after "ts" may stand'],
    ['hides behind another name', ['~~~js', 'f()', '~~~'], 'write "ts"'],
  ])('refuses an example that %s', (_, lines, message) => {
    expect(() => testFiles(guide(...lines))).toThrow(`docs/guide.md:1 ${message}`)
  })
})
