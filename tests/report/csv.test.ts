import { describe, expect, it } from 'vitest'
import { csvOf } from '../../src/report/csv.js'

describe('comma-separated values', () => {
  it.each([
    { cell: 'plain', written: 'plain' },
    { cell: '', written: '' },
    { cell: 3.5, written: '3.5' },
    { cell: -3.5, written: '-3.5' },
    { cell: '-3.5e-7', written: '-3.5e-7' },
    { cell: '+12', written: '+12' },
    { cell: '-12e10', written: '-12e10' },
    { cell: '-12.25E+10', written: '-12.25E+10' },
    { cell: '-12.', written: "'-12." },
    { cell: '-12e', written: "'-12e" },
    { cell: '-12+1', written: "'-12+1" },
    { cell: '--12', written: "'--12" },
    { cell: '-cmd-12', written: "'-cmd-12" },
    { cell: 'a=1', written: 'a=1' },
    { cell: 'two\r', written: '"two\r"' },
    { cell: '＋1', written: "'＋1" },
    { cell: '－1', written: "'－1" },
    { cell: '＠1', written: "'＠1" },
    { cell: '\nx', written: '"\'\nx"' },
    { cell: 'a,b', written: '"a,b"' },
    { cell: 'say "no"', written: '"say ""no"""' },
    { cell: 'two\nlines', written: '"two\nlines"' },
    { cell: '=1+1', written: "'=1+1" },
    { cell: '+cmd', written: "'+cmd" },
    { cell: '-2+3', written: "'-2+3" },
    { cell: '@sum', written: "'@sum" },
    { cell: '\tx', written: "'\tx" },
    { cell: '\rx', written: '"\'\rx"' },
    { cell: '＝1', written: "'＝1" },
  ])('$cell', ({ cell, written }) => expect(csvOf([[cell]])).toBe(`${written}\r\n`))

  it('has a line for each row, ended as RFC 4180 says', () => {
    expect(
      csvOf([
        ['a', 1],
        ['b', 2],
      ]),
    ).toBe('a,1\r\nb,2\r\n')
    expect(csvOf([])).toBe('')
  })
})
