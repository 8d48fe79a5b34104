import { parse } from 'acorn'

/** What the code of a page may be given, under names nobody writes. */
export const runtimeName = '$live'

/**
 * Prepares an example for running in a page: imports become look-ups, and every statement that only has a value shows it.
 *
 * @param {string} before - JavaScript of the examples that it continues: it runs, and shows nothing.
 * @param {string} code - JavaScript of a module, without types.
 * @returns {string} The body of an async function of one argument, the runtime.
 */
export function instrument(before, code) {
  const parts = [partOf(before, 'run'), partOf(code, 'show')]
  const imports = new Map(parts.flatMap((part) => part.imports))
  const lookups = [...imports].map(([local, expression]) => `const ${local} = ${expression}`)
  return ['"use strict"', ...lookups, ...parts.map(({ body }) => body)].join('\n')
}

/** The imports of a piece of code, and the code without them, each value handed to the runtime by its method. */
function partOf(code, method) {
  const program = parse(code, { ecmaVersion: 'latest', sourceType: 'module', allowAwaitOutsideFunction: true })
  const nodes = program.body.flatMap(statementsIn)
  const imports = nodes.filter(({ type }) => type === 'ImportDeclaration')
  const values = nodes.filter(({ type }) => type === 'ExpressionStatement')
  const edits = [
    ...imports.map(({ start, end }) => ({ start, end, text: '' })),
    ...values.map(({ expression }) => handedOver(expression, code, method)),
  ]
  return { imports: imports.flatMap(importedNames), body: edited(code, edits) }
}

/** A statement and those inside it, as far as no function begins. */
function statementsIn(node) {
  const inner = [node.body, node.block, node.handler?.body, node.finalizer, node.consequent, node.alternate]
    .flat()
    .filter((child) => child?.type.endsWith('Statement'))
  const within = node.type.endsWith('Declaration') ? [] : inner.flatMap(statementsIn)
  return [node, ...within]
}

function importedNames({ source, specifiers }) {
  const door = `${runtimeName}.door(${JSON.stringify(source.value)})`
  return specifiers.map(({ type, local, imported }) => {
    if (type === 'ImportNamespaceSpecifier') return [local.name, door]
    const name = type === 'ImportDefaultSpecifier' ? 'default' : (imported.name ?? imported.value)
    return [local.name, `${runtimeName}.named(${JSON.stringify(source.value)}, ${JSON.stringify(name)})`]
  })
}

function handedOver({ start, end }, code, method) {
  const text = code.slice(start, end)
  return { start, end, text: `await ${runtimeName}.${method}(${JSON.stringify(text)}, async () => (${text}\n))` }
}

function edited(code, edits) {
  let text = ''
  let at = 0
  for (const { start, end, text: put } of edits.sort((a, b) => a.start - b.start)) {
    text += code.slice(at, start) + put
    at = end
  }
  return text + code.slice(at)
}
