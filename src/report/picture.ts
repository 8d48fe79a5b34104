/**
 * A picture as a specification in Vega-Lite (version 5), an open grammar of graphics: plain data that notebooks, editors and web pages
 * draw. Numbers in it are for drawing; what is written beside them is written as everywhere else.
 */
export interface Picture {
  /** Which grammar it is written in. */
  readonly $schema: 'https://vega.github.io/schema/vega-lite/v5.json'
  /** Its heading, and what it rests on. */
  readonly title: {
    /** The heading. */
    readonly text: string
    /** Lines under it. */
    readonly subtitle: readonly string[]
  }
  /** What it shows, in words, for those who cannot see it. */
  readonly description: string
  /** Everything else that the grammar knows. */
  readonly [key: string]: unknown
}

/** What a picture says beside what it draws. */
export interface PictureWords {
  readonly title: string
  readonly subtitle?: readonly string[]
  readonly description: string
}

/** Colours that stay apart for most eyes and in grey (Okabe and Ito, Color Universal Design, 2008; from memory). */
export const colours = {
  blue: '#0072b2',
  orange: '#e69f00',
  green: '#009e73',
  red: '#d55e00',
  grey: '#6b6b6b',
} as const

const config = {
  font: 'sans-serif',
  background: 'white',
  view: { stroke: null },
  axis: { labelFontSize: 12, titleFontSize: 12, titleFontWeight: 'normal', gridColor: '#e4e4e4' },
  legend: { orient: 'bottom', labelFontSize: 12, titleFontSize: 12, titleFontWeight: 'normal' },
  title: { anchor: 'start', fontSize: 15, subtitleFontSize: 12, subtitlePadding: 4, offset: 10 },
} as const

/** Characters of a heading's line. */
const lineWidth = 90

/** Puts a drawing and its words together. */
export function pictureOf({ title, subtitle = [], description }: PictureWords, drawing: object): Picture {
  return {
    $schema: 'https://vega.github.io/schema/vega-lite/v5.json',
    title: { text: title, subtitle: subtitle.flatMap(linesOf) },
    description,
    width: 480,
    ...drawing,
    config,
  }
}

/** The grammar does not wrap a heading. */
function linesOf(text: string): readonly string[] {
  const lines: string[] = []
  let line = ''
  for (const word of text.split(' ')) {
    if (line !== '' && line.length + word.length >= lineWidth) {
      lines.push(line)
      line = ''
    }
    line += line === '' ? word : ` ${word}`
  }
  return [...lines, line]
}

/** An axis of numbers. */
export function numbers(field: string, title: string, more: object = {}): object {
  return { field, type: 'quantitative', title, ...more }
}

/** Names in the order given, with colours of their own. */
export function coloured(
  field: string,
  title: string | null,
  names: readonly string[],
  range: readonly string[],
): object {
  return { field, type: 'nominal', title, scale: { domain: names, range: range.slice(0, names.length) } }
}
