import ts from 'typescript'

const claimLine = /^\s*\/\/ (=>|throws|prints) +(.*)$/
const continuation = /^\s*\/\/ {3,}(.*)$/ // the next lines of a value that does not fit on one

/**
 * Turns the code of one block into the body of a test.
 *
 * @param {import('./blocks.mjs').Block} block - A block fenced as `ts`.
 * @returns {{ imports: string[], body: string, claims: number }} Import lines apart, as they belong to the top of a file.
 */
export function testBody({ file, line, code }) {
  const source = ts.createSourceFile(file, code, ts.ScriptTarget.ES2022, true)
  const place = (position) => `${file}:${line + 1 + source.getLineAndCharacterOfPosition(position).line}`
  const imports = source.statements.filter(ts.isImportDeclaration)
  const claims = claimedStatements(source)
  const edits = [
    ...imports.map((node) => ({ start: node.getStart(), end: node.end, text: '' })),
    ...claims.map((claim) => checked(claim, place(claim.node.end))),
  ]
  const written = code.split('\n').filter((text) => /\/\/ (=>|throws|prints) /.test(text)).length
  if (written !== claims.length)
    throw new Error(`${place(0)} a claim must stand right behind a statement, or on the line below it`)
  return { imports: imports.map((node) => node.getText()), body: edited(code, edits), claims: claims.length }
}

/** Every statement, however deep, with a claim behind it. */
function claimedStatements(source) {
  const claims = []
  const visit = (node) => {
    const claim = ts.isExpressionStatement(node) || ts.isVariableStatement(node) ? claimBehind(node, source) : undefined
    if (claim) claims.push({ node, ...claim })
    ts.forEachChild(node, visit)
  }
  visit(source)
  return claims
}

/** The claim on the line where the statement ends, or alone on the next. */
function claimBehind(node, source) {
  const lines = source.text.slice(node.end).split('\n')
  const at = lines[0].trim() === '' ? 1 : 0
  const [, kind, first] = lines[at]?.match(claimLine) ?? []
  if (kind === undefined) return undefined
  const below = lines.slice(at + 1)
  const end = below.findIndex((line) => !continuation.test(line))
  const more = below.slice(0, end === -1 ? undefined : end).map((line) => line.match(continuation)[1])
  return { kind, text: kind === '=>' ? [first, ...more].join(' ') : first.trim() }
}

/** The edit that puts the check of a claim into the code. */
function checked({ node, kind, text }, place) {
  const at = JSON.stringify(place)
  if (kind === 'prints') return after(node, `expect(console.printed.at(-1), ${at}).toBe(${JSON.stringify(text)})`)
  if (kind === 'throws') {
    const attempt = `codeOf(async () => (${expressionOf(node, place).getText()}))`
    return { start: node.getStart(), end: node.end, text: `expect(await ${attempt}, ${at}).toBe('${text}')` }
  }
  requireExpression(text, place)
  if (ts.isVariableStatement(node)) return after(node, `expect(${nameOf(node, place)}, ${at}).toEqual(${text})`)
  const actual = expressionOf(node, place).getText()
  return { start: node.getStart(), end: node.end, text: `expect(${actual}, ${at}).toEqual(${text})` }
}

function after(node, text) {
  return { start: node.end, end: node.end, text: `; ${text}` }
}

function expressionOf(node, place) {
  const expression = ts.isVariableStatement(node) ? soleDeclaration(node, place).initializer : node.expression
  if (expression === undefined) throw new Error(`${place} there is no expression to check`)
  return expression
}

function nameOf(node, place) {
  const { name } = soleDeclaration(node, place)
  if (!ts.isIdentifier(name)) throw new Error(`${place} claim the value of one name, not of a pattern`)
  return name.text
}

function soleDeclaration(node, place) {
  const [first, ...others] = node.declarationList.declarations
  if (others.length > 0) throw new Error(`${place} one declaration per claim`)
  return first
}

function requireExpression(text, place) {
  const { diagnostics } = ts.transpileModule(`(${text})`, { reportDiagnostics: true })
  if (diagnostics.length > 0) throw new Error(`${place} "${text}" is not a value in TypeScript`)
}

/** Applies the edits from the last to the first, so that the positions of the others stay right. */
function edited(code, edits) {
  const backwards = edits.toSorted((a, b) => b.start - a.start)
  return backwards.reduce((text, { start, end, text: by }) => text.slice(0, start) + by + text.slice(end), code)
}
