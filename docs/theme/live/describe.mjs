const display = Symbol.for('Jupyter.display')

/**
 * How a value is shown on a page: as HTML where it offers that or is a sheet or worked lines written as HTML, as text otherwise.
 *
 * @param {unknown} value - Anything.
 * @returns {{ html: string } | { text: string }} Ready to be put into the page.
 */
export function describe(value) {
  const rich = value?.[display]?.()['text/html']
  if (typeof rich === 'string') return { html: rich }
  if (typeof value === 'string' && /^<(?:article|div)>\n/.test(value)) return { html: value }
  return { text: textOf(value, 0) }
}

/**
 * Any value as text, as a console would write it.
 *
 * @param {unknown} value - Anything.
 * @param {number} depth - How deep in other values it stands.
 * @returns {string} A line, or more where it does not fit on one.
 */
export function textOf(value, depth) {
  if (typeof value === 'string') return depth === 0 && value.includes('\n') ? value : quoted(value)
  if (typeof value === 'bigint') return `${value}n`
  if (typeof value === 'function') return `function ${value.name}`
  if (typeof value !== 'object' || value === null) return String(value)
  if (Array.isArray(value))
    return list(
      '[',
      value.map((each) => textOf(each, depth + 1)),
      ']',
      depth,
    )
  if (value instanceof Map) {
    const entries = [...value].map(([key, each]) => `${textOf(key, depth + 1)} => ${textOf(each, depth + 1)}`)
    return list(`Map(${value.size}) {`, entries, '}', depth)
  }
  if (value.toString !== Object.prototype.toString) return String(value)
  const entries = Object.entries(value).filter(([, each]) => each !== undefined)
  return list(
    '{',
    entries.map(([key, each]) => `${key}: ${textOf(each, depth + 1)}`),
    '}',
    depth,
  )
}

function quoted(text) {
  return text.includes("'") ? JSON.stringify(text) : `'${text.replaceAll('\\', '\\\\').replaceAll('\n', '\\n')}'`
}

function list(open, items, close, depth) {
  const space = open === '[' ? '' : ' '
  const line = items.length === 0 ? open + close : `${open}${space}${items.join(', ')}${space}${close}`
  if (line.length <= 76 - 2 * depth && !line.includes('\n')) return line
  const indent = '  '.repeat(depth + 1)
  return `${open}\n${items.map((item) => `${indent}${item},`).join('\n')}\n${'  '.repeat(depth)}${close}`
}
