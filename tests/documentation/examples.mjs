import { testBody } from './claims.mjs'

/**
 * Writes the test files of one document.
 *
 * @param {import('./blocks.mjs').Block[]} blocks - All fenced blocks of the document.
 * @returns {{ name: string, text: string }[]} One file per example that runs.
 */
export function testFiles(blocks) {
  const files = []
  let chain = [] // the example at hand, after those it continues
  for (const [index, block] of blocks.entries()) {
    if (!isExample(block)) continue
    const example = { ...testBody(block), printed: printedBelow(blocks[index + 1]) }
    if (example.claims === 0 && example.printed === undefined)
      throw new Error(`${at(block)} the example claims nothing`)
    chain = block.words === 'continued' ? [...chain, example] : [example]
    files.push({ name: `${block.file.replaceAll('/', '.')}.${block.line}.test.ts`, text: testText(at(block), chain) })
  }
  return files
}

function isExample(block) {
  if (['js', 'javascript', 'typescript'].includes(block.language)) {
    throw new Error(`${at(block)} write "ts", so that the example is run, or "ts no-run" and the reason`)
  }
  if (block.language !== 'ts') return false
  if (/^no-run \S/.test(block.words)) return false
  if (['', 'continued'].includes(block.words)) return true
  throw new Error(`${at(block)} after "ts" may stand "continued", or "no-run" and the reason`)
}

/** The block fenced as `text prints` under an example: all that the example prints. */
function printedBelow(next) {
  return next?.language === 'text' && next.words === 'prints' ? next.code : undefined
}

function testText(place, chain) {
  const bodies = chain.map(({ body, printed }) => `${body}\n${printedCheck(printed, place)}`)
  return `import { expect, it } from 'vitest'
import { codeOf, Console } from '../console.js'
${[...new Set(chain.flatMap(({ imports }) => imports))].join('\n')}

it('${place}', async () => {
expect.assertions(${chain.reduce((sum, { claims, printed }) => sum + claims + (printed === undefined ? 0 : 1), 0)})
const console = new Console()
${bodies.join('\nconsole.clear()\n')}
})
`
}

function printedCheck(printed, place) {
  return printed === undefined ? '' : `expect(console.text(), '${place}').toBe(${JSON.stringify(printed.trimEnd())})`
}

function at({ file, line }) {
  return `${file}:${line}`
}
