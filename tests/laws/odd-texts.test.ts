import { readFileSync } from 'node:fs'
import {
  type SaltwrightError,
  type Term,
  tryParseEquation,
  tryParseFormula,
  tryQuantity,
  trySystematicName,
} from 'saltwright'
import { expect, it } from 'vitest'

/** What a reader gives: the outcome of its text. */
type Outcome<T> = { readonly ok: true; readonly value: T } | { readonly ok: false; readonly error: SaltwrightError }

/** How each reader tells what it read. */
const readers: Readonly<Record<string, (text: string) => string>> = {
  formulas: reading(tryParseFormula, ({ text, charge, composition, notes }) => {
    const atoms = [...composition].map(([symbol, count]) => `${symbol} ${count}`).join(' ')
    const name = trySystematicName(text)
    const doubts = notes.map(({ code, suggestion }) => `${code} ${suggestion ?? ''}`)
    return [text, atoms, charge, name.ok ? name.value : name.error.code, ...doubts].join(', ')
  }),
  equations: reading(tryParseEquation, ({ left, right, arrow }) => {
    const side = (terms: readonly Term[]): string => terms.map(shown).join(' + ')
    return [side(left), arrow, side(right)].join(' ')
  }),
  quantities: reading(tryQuantity, (q) => `${q}, ${q.value} ${q.unit}, ${q.significantFigures}`),
}

function shown({ coefficient: { numerator, denominator }, formula, state }: Term): string {
  return `${numerator}/${denominator} ${formula} ${state ?? ''}`.trim()
}

function reading<T>(read: (text: string) => Outcome<T>, show: (value: T) => string) {
  return (text: string): string => {
    const outcome = read(text)
    if (outcome.ok) return show(outcome.value)
    const { code, position: at, found, hint } = outcome.error
    return [code, at && `${at.start} to ${at.end}`, JSON.stringify(found), hint?.endsWith('?') && hint]
      .filter(Boolean)
      .join(', ')
  }
}

/*
 * Each document holds odd texts, made up at random once, with what is made of them: read the difference before you accept
 * a new one with `vitest -u`. To add a text, add its line.
 */
it.each(Object.entries(readers))('odd %s are read as before', async (name, read) => {
  const document = readFileSync(new URL(`documents/${name}.txt`, import.meta.url), 'utf8')
  const texts = document.split('\n').flatMap((line) => (line === '' ? [] : [line.split(/(?<=") => /)[0] as string]))
  const lines = texts.map((text) => `${text} => ${read(JSON.parse(text) as string)}\n`)
  await expect(lines.join('')).toMatchFileSnapshot(`documents/${name}.txt`)
})
