import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { accuracyPage, publishedRows } from '../../docs/theme/accuracy.mjs'
import { citationsOf, releaseOf } from '../../docs/theme/citation.mjs'
import { describe as described, textOf } from '../../docs/theme/live/describe.mjs'
import { instrument } from '../../docs/theme/live/instrument.mjs'
import { run } from '../../docs/theme/live/run.mjs'
import { plainJavaScript } from '../../docs/theme/plain-javascript.mjs'

describe('an example as a reader edits it', () => {
  it.each([
    ['a type of a constant', 'const a: Mass = f()', 'const a = f()'],
    ['an import of types', "import type { A } from 'x'\nf()", 'f()'],
    ['a type among imports', "import { a, type B, c } from 'x'", "import { a, c } from 'x'"],
    ['a type as the last import', "import { a, type B } from 'x'", "import { a } from 'x'"],
    ['imports of nothing but types', "import { type B } from 'x'\nf()", 'f()'],
    ['an assertion', "f('3,98 g' as never)", "f('3,98 g')"],
    ['an assertion inside another', 'f([a as B] as const)', 'f([a])'],
    ['an argument of types', 'f<Mass>(a!)', 'f(a)'],
    ['types of a function', 'const f = (a: A): B => a', 'const f = (a) => a'],
    ['an interface', 'interface A { b: string }\nf()', 'f()'],
    ['a claim', "f() // => 'x'\ng()", 'f()\ng()'],
    ['a claim below', "f()\n// => ['x',\n//     'y']\ng()", 'f()\ng()'],
    ['a refusal', 'f() // throws a/b', 'f()'],
  ])('loses %s', (_, code, plain) => expect(plainJavaScript(code)).toBe(plain))

  it('keeps its comments and its layout', () => {
    const code = "// a comment\nconst a = {\n  b: 'http://x', // another\n}"
    expect(plainJavaScript(code)).toBe(code)
  })
})

describe('an example that runs in a page', () => {
  const shownBy = async (code, before = '') => {
    const shown = []
    await run(before, code, (each) => shown.push(each))
    return shown
  }

  it('shows the value of every statement that is one', async () => {
    const code = "import { molarMass } from 'saltwright/formula'\nconst m = molarMass('ZnSO4')\nm.toString()\nm.unit"
    expect(await shownBy(code)).toEqual([
      { kind: 'value', source: 'm.toString()', text: "'161.44 g/mol'" },
      { kind: 'value', source: 'm.unit', text: "'g/mol'" },
    ])
  })

  it('shows what is printed, and a sheet as HTML', async () => {
    expect(await shownBy("console.log('a', 1)\n'<article>\\n</article>'")).toEqual([
      { kind: 'print', text: 'a 1' },
      { kind: 'value', source: "'<article>\\n</article>'", html: '<article>\n</article>' },
    ])
  })

  it('goes on after a refusal and shows its code and its hint', async () => {
    const [refused, next] = await shownBy("import { quantity } from 'saltwright'\nquantity('3,98 g')\n1 + 1")
    expect(refused.kind).toBe('error')
    expect(refused.text.split('\n')[0]).toBe('quantity/decimal-comma')
    expect(next.text).toBe('2')
  })

  it('continues others without showing them again, and imports twice', async () => {
    const before = "import { exact } from 'saltwright'\nconst a = exact(2)\na.value\nconsole.log('x')"
    const code = "import { exact } from 'saltwright'\na.times(exact(3)).toString()"
    expect(await shownBy(code, before)).toEqual([
      { kind: 'value', source: 'a.times(exact(3)).toString()', text: "'6'" },
    ])
  })

  it.each([
    ['a name that is not exported', "import { nothing } from 'saltwright'", 'saltwright exports no nothing'],
    ['another package', "import { x } from 'elsewhere'\nx()", 'Only saltwright can be imported here'],
    ['a slip of the keyboard', 'const = 1', 'Unexpected token'],
  ])('says what is wrong with %s', async (_, code, message) => {
    const [shown] = await shownBy(code)
    expect(shown.kind).toBe('error')
    expect(shown.text).toContain(message)
  })

  it('reaches statements in blocks, not those of functions', () => {
    const body = instrument('', 'if (a) {\n  b()\n}\nconst f = () => {\n  c()\n}\nfunction g() {\n  d()\n}')
    expect(body.match(/\$live\.show\("([^"]*)"/g)).toEqual(['$live.show("b()"'])
  })
})

describe('a value on a page', () => {
  it.each([
    ["'a'", 'a', undefined],
    ['"it\'s"', "it's", undefined],
    ['undefined', undefined, undefined],
    ['1n', 1n, undefined],
    ["[1, 'b', [2]]", [1, 'b', [2]], undefined],
    ["{ a: 1, b: 'c' }", { a: 1, b: 'c', d: undefined }, undefined],
    ["Map(1) {'a' => 1}", new Map([['a', 1]]), "Map(1) { 'a' => 1 }"],
  ])('is written %s', (text, value, other) => expect(textOf(value, 0)).toBe(other ?? text))

  it('takes several lines where one is too short', () => {
    expect(textOf(Array(3).fill('x'.repeat(30)), 0).split('\n')).toHaveLength(5)
  })

  it('shows itself as HTML where it can', () => {
    const value = { [Symbol.for('Jupyter.display')]: () => ({ 'text/html': '<b>x</b>' }) }
    expect(described(value)).toEqual({ html: '<b>x</b>' })
  })
})

describe('a citation', () => {
  const release = releaseOf(readFileSync(new URL('../../CITATION.cff', import.meta.url), 'utf8'))
  const { text, bibtex, csl } = citationsOf(release, { title: 'formula.molarMass', address: 'formula/molarMass.html' })

  it('names the version and the page in every form', () => {
    for (const form of [text, bibtex, csl]) {
      expect(form).toContain(release.version)
      expect(form).toContain('formula/molarMass.html')
    }
  })

  it('is CSL-JSON with a date', () => {
    expect(JSON.parse(csl)[0].issued['date-parts'][0]).toEqual(release.date.split('-').map(Number))
  })

  it('is BibTeX with braces that match', () => {
    expect([...bibtex].filter((sign) => sign === '{').length).toBe([...bibtex].filter((sign) => sign === '}').length)
  })

  it('is refused where the file lacks something', () => expect(() => releaseOf('title: x')).toThrow('no version'))
})

describe('the page on accuracy', () => {
  const row = { source: 'A | book', at: 'Table 1', what: 'mass', published: '1.00 g', ours: '1.00 g', agrees: true }
  const other = { ...row, at: 'Table 2', ours: '1.01 g', agrees: false, differs: 'rounded on the way' }
  const report = (meta, status = 'passed') => ({ testResults: [{ assertionResults: [{ status, meta }] }] })

  it('takes the values that a run compared', () => {
    expect(publishedRows(report({ published: row }))).toEqual([{ ...row, passed: true }])
  })

  it('is not written from a run that failed or compared nothing', () => {
    expect(() => publishedRows(report({ published: row }, 'failed'))).toThrow('1 published values')
    expect(() => publishedRows(report({}))).toThrow('no published values')
  })

  it('counts, and shows what differs with its reason', () => {
    const page = accuracyPage([row, other], '1.2.3')
    expect(page).toContain('**2 published values**')
    expect(page).toContain('**1 agree**')
    expect(page).toContain('| mass<br>A \\| book, Table 2 | 1.00 g | 1.01 g | rounded on the way |')
  })
})
