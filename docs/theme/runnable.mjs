import { plainJavaScript } from './plain-javascript.mjs'

/**
 * Marks the examples of rendered Markdown, so that a page can offer to edit and run them. To be given to the Markdown parser.
 *
 * @param {object} parser - The parser that renders comments and guides.
 */
export function markExamples(parser) {
  const { fence } = parser.renderer.rules
  parser.renderer.rules.fence = (tokens, index, options, environment, renderer) => {
    const html = fence(tokens, index, options, environment, renderer)
    const { info, content } = tokens[index]
    const [language, ...words] = info.trim().split(/\s+/)
    if (language !== 'ts' || words[0] === 'no-run') return html
    const continued = words[0] === 'continued' ? ' data-continued' : ''
    return `<div class="example" data-code="${parser.utils.escapeHtml(plainJavaScript(content))}"${continued}>${html}</div>\n`
  }
}
