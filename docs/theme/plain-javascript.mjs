import ts from 'typescript'

/**
 * An example as a reader can edit and run it in a page: without types, and without the claims that the tests check.
 *
 * @param {string} code - A block fenced as `ts`.
 * @returns {string} JavaScript with the same layout.
 */
export function plainJavaScript(code) {
  const source = ts.createSourceFile('example.ts', code, ts.ScriptTarget.ES2022, true)
  const cuts = []
  const visit = (node) => {
    const own = cutsFor(node)
    cuts.push(...own)
    if (!own.some(({ end }) => end >= node.end)) ts.forEachChild(node, visit)
    else if (isWrapped(node)) visit(node.expression)
  }
  visit(source)
  return withoutClaims(without(code, cuts))
}

/** What of a node is only there for the compiler. */
function cutsFor(node) {
  if (ts.isInterfaceDeclaration(node) || ts.isTypeAliasDeclaration(node)) return [whole(node)]
  if (ts.isImportDeclaration(node) && importsTypesOnly(node)) return [whole(node)]
  if (ts.isImportSpecifier(node) && node.isTypeOnly) return [withComma(node)]
  if (isWrapped(node)) return [{ start: node.expression.end, end: node.end }]
  const annotation =
    ts.isVariableDeclaration(node) || ts.isFunctionLike(node) || ts.isParameter(node) ? node.type : undefined
  const parameters = node.typeArguments ?? node.typeParameters
  return [
    ...(annotation ? [{ start: annotation.pos - 1, end: annotation.end }] : []),
    ...(parameters ? [{ start: parameters.pos - 1, end: parameters.end + 1 }] : []),
  ]
}

/** `x as T`, `x satisfies T`, `x!`. */
function isWrapped(node) {
  return ts.isAsExpression(node) || ts.isSatisfiesExpression(node) || ts.isNonNullExpression(node)
}

function importsTypesOnly({ importClause }) {
  if (importClause?.isTypeOnly) return true
  const names = importClause?.namedBindings
  return names !== undefined && ts.isNamedImports(names) && names.elements.every(({ isTypeOnly }) => isTypeOnly)
}

function whole(node) {
  const { text } = node.getSourceFile()
  return { start: node.getStart(), end: text[node.end] === '\n' ? node.end + 1 : node.end }
}

/** A name of a list with the comma behind it, or the one before it where it is the last. */
function withComma(node) {
  const { elements } = node.parent
  const next = elements[elements.indexOf(node) + 1]
  if (next !== undefined) return { start: node.getStart(), end: next.getStart() }
  const before = elements[elements.indexOf(node) - 1]
  return { start: before?.end ?? node.getStart(), end: node.end }
}

function without(code, cuts) {
  let text = ''
  let at = 0
  for (const { start, end } of cuts.sort((a, b) => a.start - b.start)) {
    if (start < at) continue
    text += code.slice(at, start)
    at = end
  }
  return text + code.slice(at)
}

/** A claim and the lines that go on with it; code before it on the line stays. */
function withoutClaims(code) {
  const kept = []
  let inClaim = false
  for (const line of code.split('\n')) {
    const [, before] = line.match(/^(.*?) *\/\/ (?:=>|throws|prints) /) ?? []
    const goesOn = inClaim && /^\s*\/\/ {3,}/.test(line)
    inClaim = before !== undefined || goesOn
    if (before !== undefined && before.trim() !== '') kept.push(before)
    else if (!inClaim) kept.push(line)
  }
  return kept.join('\n').trim()
}
