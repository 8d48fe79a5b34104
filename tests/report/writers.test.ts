import { exact, quantity } from 'saltwright/quantity'
import { describe, expect, it } from 'vitest'
import { quantityText, type Sheet } from '../../src/report/sheet.js'
import { sheetAsHtml } from '../../src/report/write-html.js'
import { escapeLatex, sheetAsLatex } from '../../src/report/write-latex.js'
import { lineAsMarkdown, sheetAsMarkdown } from '../../src/report/write-markdown.js'
import { sheetAsText } from '../../src/report/write-text.js'

const sheet: Sheet = {
  title: 'Title',
  subtitle: ['of ', { formula: 'H2O' }],
  blocks: [
    { kind: 'heading', text: 'Head' },
    {
      kind: 'steps',
      steps: [
        { line: 'mix', details: [] },
        { line: 'heat', details: ['slowly', { quantity: exact('5 min') }] },
      ],
    },
    { kind: 'notes', lines: ['one', 'two'] },
    {
      kind: 'table',
      head: ['', 'mass'],
      rows: [
        ['H₂O', '3 g'],
        [{ formula: 'D2O' }, '10.5 g'],
      ],
      numeric: [1],
    },
    {
      kind: 'blanks',
      fields: [
        { label: 'vial', unit: 'g' },
        { label: 'long name', unit: 'mL' },
      ],
    },
  ],
}

describe('a sheet with one of each part', () => {
  it('as text', () => {
    expect(sheetAsText(sheet)).toBe(`Title
of H₂O
======

Head
----
1. mix
2. heat
   slowly
   5 min
- one
- two
       mass
H₂O     3 g
D₂O  10.5 g
vial       ______________ g
long name  ______________ mL
`)
  })

  it('as Markdown', () => {
    expect(sheetAsMarkdown(sheet)).toBe(`# Title

of H₂O

## Head

1. mix
2. heat
   - slowly
   - 5 min

- one
- two

|  | mass |
| --- | ---: |
| H₂O | 3 g |
| D₂O | 10.5 g |

- vial: \\_\\_\\_\\_\\_\\_\\_\\_ g
- long name: \\_\\_\\_\\_\\_\\_\\_\\_ mL
`)
  })

  it('as HTML', () => {
    expect(sheetAsHtml(sheet)).toBe(`<article>
<h1>Title</h1>
<p>of H<sub>2</sub>O</p>
<h2>Head</h2>
<ol>
<li>mix</li>
<li>heat
<ul>
<li>slowly</li>
<li>5 min</li>
</ul></li>
</ol>
<ul>
<li>one</li>
<li>two</li>
</ul>
<table>
<thead><tr><th></th><th align="right">mass</th></tr></thead>
<tbody>
<tr><td>H₂O</td><td align="right">3 g</td></tr>
<tr><td>D<sub>2</sub>O</td><td align="right">10.5 g</td></tr>
</tbody>
</table>
<ul>
<li>vial: ______________ g</li>
<li>long name: ______________ mL</li>
</ul>
</article>
`)
  })

  it('as LaTeX', () => {
    expect(sheetAsLatex(sheet)).toBe(`\\section*{Title}

of $\\mathrm{H_{2}O}$

\\subsection*{Head}

\\begin{enumerate}
\\item mix
\\item heat
\\begin{itemize}
\\item slowly
\\item 5 min
\\end{itemize}
\\end{enumerate}

\\begin{itemize}
\\item one
\\item two
\\end{itemize}

\\begin{tabular}{lr}
 & mass \\\\
\\hline
H₂O & 3 g \\\\
$\\mathrm{D_{2}O}$ & 10.5 g \\\\
\\end{tabular}

\\begin{itemize}
\\item vial: \\underline{\\hspace{4em}} g
\\item long name: \\underline{\\hspace{4em}} mL
\\end{itemize}
`)
  })
})

describe('lines of text', () => {
  const notes = (...lines: readonly string[]) =>
    sheetAsText({ title: '', subtitle: '', blocks: [{ kind: 'notes', lines }] })
  const words = (...lengths: readonly number[]) => lengths.map((length) => 'x'.repeat(length)).join(' ')

  it('have no more than 78 characters, unless a word has', () => {
    // two go to the sign of the note, one to the space
    expect(notes(words(40, 35))).toBe(`\n\n\n- ${words(40, 35)}\n`)
    expect(notes(words(40, 36))).toBe(`\n\n\n- ${words(40)}\n  ${words(36)}\n`)
    expect(notes(words(90, 90))).toBe(`\n\n\n- ${words(90)}\n  ${words(90)}\n`)
    expect(notes(`${'₂'.repeat(40)} ${'₂'.repeat(35)}`).split('\n')).toHaveLength(5)
  })

  it('under the title there are no more than that', () => {
    expect(sheetAsText({ title: words(100), subtitle: '', blocks: [] }).split('\n')[2]).toBe('='.repeat(78))
  })
})

describe('words of a recipe', () => {
  const broken = 'two \n  lines'

  it('stand in one line', () => {
    expect([escapeLatex(broken), lineAsMarkdown(broken)]).toEqual(['two lines', 'two lines'])
  })

  it('are no markup', () => {
    expect(escapeLatex('\\~^°·×&%$#_{}')).toBe(
      '\\textbackslash{}\\textasciitilde{}\\textasciicircum{}\\textdegree{}\\textperiodcentered{}\\texttimes{}\\&\\%\\$\\#\\_\\{\\}',
    )
    expect(lineAsMarkdown('\\`*_{}[]<>#|')).toBe('\\\\\\`\\*\\_\\{\\}\\[\\]\\<\\>\\#\\|')
    expect(sheetAsHtml({ ...sheet, title: '&<>"\'', blocks: [] })).toContain('<h1>&#38;&#60;&#62;&#34;&#39;</h1>')
  })
})

describe('a quantity on a sheet', () => {
  it.each([
    { q: quantity('100.'), shown: '100' },
    { q: quantity('100. g'), shown: '100 g' },
    { q: quantity('1.0 g'), shown: '1.0 g' },
    { q: quantity('10 g').minus(quantity('10 g')), shown: '0 g' },
    { q: quantity('1e12 g').minus(quantity('1e12 g')), shown: '0 g' },
    { q: quantity('1.0e5 g'), shown: '100000 g' },
  ])('$q is shown as $shown', ({ q, shown }) => expect(quantityText({ quantity: q })).toBe(shown))
})
