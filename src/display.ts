/**
 * What a notebook or a console shows of a value, in several forms: it takes the richest that it knows.
 */
export interface DisplayForms {
  /** For a console. */
  readonly 'text/plain': string
  /** For a page; all words escaped. */
  readonly 'text/html'?: string
  /** For typesetting. */
  readonly 'text/latex'?: string
}

/** Under which notebooks ask a value for its forms: the open convention of the kernels for JavaScript. */
const notebookDisplay: unique symbol = /* @__PURE__ */ Symbol.for('Jupyter.display') as never

/** Under which the consoles of Node and Deno ask a value how it is printed. */
const consoleDisplay: unique symbol = /* @__PURE__ */ Symbol.for('nodejs.util.inspect.custom') as never

/**
 * Gives the values of a class a way to show themselves: in a console their text, in a notebook their forms. Methods that are named by
 * a symbol of one's own, if they stand in the class, keep a bundler from dropping the class where nobody uses it.
 *
 * @param made - The class.
 * @param forms - The forms of one of its values.
 * @returns The same class.
 */
export function showing<C extends { readonly prototype: object }>(
  made: C,
  forms: (value: C['prototype']) => DisplayForms,
): C {
  Object.defineProperty(made.prototype, consoleDisplay, { value: textOf })
  Object.defineProperty(made.prototype, notebookDisplay, {
    value(this: C['prototype']): DisplayForms {
      return forms(this)
    },
  })
  return made
}

function textOf(this: object): string {
  return String(this)
}

/** A value that can be summed up in a heading, a table of two columns and some lines. */
export interface Summary {
  readonly title: string
  readonly rows: readonly (readonly [what: string, value: string])[]
  readonly notes: readonly string[]
}

/**
 * Gives plain data a way to show itself, which neither JSON nor a comparison sees; to be called before it is frozen.
 *
 * @param value - The data.
 * @param summary - Sums it up, when it is shown.
 * @returns The same object.
 */
export function withSummary<T extends object>(value: T, summary: (value: T) => Summary): T {
  const shown = (): DisplayForms => formsOf(summary(value))
  Object.defineProperty(value, notebookDisplay, { value: shown })
  return Object.defineProperty(value, consoleDisplay, { value: () => shown()['text/plain'] })
}

function formsOf(summary: Summary): DisplayForms {
  return { 'text/plain': asText(summary), 'text/html': asHtml(summary) }
}

function asText({ title, rows, notes }: Summary): string {
  const width = rows.reduce((most, [what]) => Math.max(most, what.length), 0)
  const lines = rows.map(([what, value]) => `  ${what.padEnd(width)}  ${value}`)
  return [title, ...lines, ...notes.map((note) => `- ${note}`)].join('\n')
}

function asHtml({ title, rows, notes }: Summary): string {
  const lines = rows.map(
    ([what, value]) => `<tr><th align="left">${escapeHtml(what)}</th><td>${escapeHtml(value)}</td></tr>`,
  )
  const list = notes.length === 0 ? '' : `<ul>${notes.map((note) => `<li>${escapeHtml(note)}</li>`).join('')}</ul>`
  return `<p><strong>${escapeHtml(title)}</strong></p><table>${lines.join('')}</table>${list}`
}

/** Text that HTML shows as it is. */
export function escapeHtml(text: string): string {
  return text.replace(/[&<>"']/g, (sign) => `&#${sign.charCodeAt(0)};`)
}
