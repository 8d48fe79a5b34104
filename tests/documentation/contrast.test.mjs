import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

const read = (path) => readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8')

/** The colours of the site: those that TypeDoc sets, and ours, which come after them. */
const colours = new Map(
  [
    ...`${read('node_modules/typedoc/static/style.css')}${read('docs/theme/theme.css')}`.matchAll(
      /--((?:light|dark)-[a-z-]+):\s*(#[0-9a-f]{6})\b/g,
    ),
  ].map(([, name, value]) => [name, value]),
)

const grounds = ['color-background', 'color-background-secondary', 'code-background', 'shown']
const words = ['color-text', 'color-text-aside', 'color-link', 'refused']
const kinds = [...colours.keys()]
  .filter((name) => name.startsWith('light-color-ts-'))
  .map((name) => name.replace('light-', ''))

/** WCAG 2.2, relative luminance of an sRGB colour. */
function luminance(hex) {
  const [red, green, blue] = [1, 3, 5]
    .map((at) => Number.parseInt(hex.slice(at, at + 2), 16) / 255)
    .map((part) => (part <= 0.04045 ? part / 12.92 : ((part + 0.055) / 1.055) ** 2.4))
  return 0.2126 * red + 0.7152 * green + 0.0722 * blue
}

/** WCAG 2.2, contrast ratio. */
function contrast(one, other) {
  const [light, dark] = [luminance(one), luminance(other)].sort((a, b) => b - a)
  return (light + 0.05) / (dark + 0.05)
}

describe.each(['light', 'dark'])('in the %s scheme', (scheme) => {
  const colour = (name) => colours.get(`${scheme}-${name}`)

  it('knows every colour that it looks at', () => {
    expect(
      [...grounds, ...words, ...kinds].filter((name) => colour(name) === undefined && !kinds.includes(name)),
    ).toEqual([])
    expect(kinds.length).toBeGreaterThan(10)
  })

  it.each(grounds)('words stand out from %s by 4.5 to 1 or more', (ground) => {
    expect(words.filter((word) => contrast(colour(word), colour(ground)) < 4.5)).toEqual([])
  })

  it('names in the colours of their kinds do so on a page', () => {
    const set = kinds.filter((kind) => colour(kind) !== undefined)
    expect(set.filter((kind) => contrast(colour(kind), colour('color-background')) < 4.5)).toEqual([])
  })

  it('the focus of the keyboard stands out by 3 to 1 or more', () => {
    expect(contrast(colour('color-focus-outline'), colour('color-background'))).toBeGreaterThan(3)
  })
})
