/**
 * @typedef {object} Block A fenced block of a guide or of a doc comment.
 * @property {string} file - Path from the root of the project.
 * @property {number} line - Line of the opening fence, counted from 1.
 * @property {string} language - First word after the fence.
 * @property {string} words - The rest of the fence's line.
 * @property {string} code - What stands between the fences.
 */

/**
 * Finds the fenced blocks of a Markdown file, or of the doc comments of a TypeScript file.
 *
 * @param {string} file - Path from the root of the project; `.ts` is read as source.
 * @param {string} text - The file's content.
 * @returns {Block[]} In the order in which they stand.
 */
export function fencedBlocks(file, text) {
  const blocks = []
  let open
  for (const [index, raw] of text.split('\n').entries()) {
    const line = file.endsWith('.ts') ? commentLine(raw) : raw
    if (open === undefined) open = openingFence(line, { file, line: index + 1 })
    else if (line?.trim() === open.fence) {
      blocks.push(finished(open))
      open = undefined
    } else if (line === undefined) throw new Error(`${file}:${open.line} the fence is not closed`)
    else open.lines.push(line.slice(0, open.indent).trim() === '' ? line.slice(open.indent) : line)
  }
  if (open !== undefined) throw new Error(`${file}:${open.line} the fence is not closed`)
  return blocks
}

/** What stands behind the star of a doc comment's line; undefined outside a comment and on its last line. */
function commentLine(raw) {
  const line = raw.trimStart()
  if (!line.startsWith('*') || line.startsWith('*/')) return undefined
  return line.startsWith('* ') ? line.slice(2) : line.slice(1)
}

function openingFence(line, place) {
  const [, indent, fence, language, words] = line?.match(/^( *)(`{3,})([^\s`]*) *([^`]*)$/) ?? []
  return fence && { ...place, indent: indent.length, fence, language, words: words.trim(), lines: [] }
}

function finished({ file, line, language, words, lines }) {
  return { file, line, language, words, code: lines.join('\n') }
}
