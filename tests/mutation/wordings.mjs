/**
 * What is left alone, by rule. Wordings: a test that fixed every sentence would only repeat it. Tables: files in which
 * nothing is done; their rows are compared with their sources elsewhere.
 */
import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin'

/** Properties and parameters that hold what people read. Codes, positions, units, symbols and roles are not among them. */
const worded = new Set([
  'message',
  'expected',
  'hint',
  'advice',
  'asks',
  'did',
  'title',
  'label',
  'source',
  'note',
  'says',
  'description',
  'what',
  'words',
])
/** What a wording is put together with on its way into a property. */
const joining = new Set(['ConditionalExpression', 'LogicalExpression', 'BinaryExpression', 'TemplateLiteral'])
const comparing = new Set(['===', '!==', '==', '!=', '<', '>', '<=', '>=', 'in'])

const wordings = {
  shouldIgnore(path) {
    if (path.node.type === 'Program') return isTable(path) ? 'a table' : undefined
    return isText(path.node) && !isCompared(path) && (isWorded(path) || isSentence(path.node)) ? 'a wording' : undefined
  },
}

/** No function and no call in the whole file. */
function isTable(program) {
  let does = false
  const found = (path) => {
    does = true
    path.stop()
  }
  program.traverse({ Function: found, CallExpression: found, NewExpression: found })
  return !does
}

function isText({ type }) {
  return type === 'StringLiteral' || type === 'TemplateLiteral'
}

/** A text that something is compared with is a code, however it reads. */
function isCompared({ parent }) {
  return parent.type === 'SwitchCase' || (parent.type === 'BinaryExpression' && comparing.has(parent.operator))
}

function isWorded({ node, parent, parentPath, scope }) {
  if (parent.type === 'ObjectProperty') return parent.value === node && worded.has(parent.key.name)
  if (parent.type === 'CallExpression') return worded.has(parameterFor(node, parent, scope))
  return joining.has(parent.type) && !isCompared({ parent }) && parent.test !== node && isWorded(parentPath)
}

/** What a function of the same file calls this argument. */
function parameterFor(argument, call, scope) {
  const called = scope.getBinding(call.callee.name)?.path.node
  return called?.params?.[call.arguments.indexOf(argument)]?.name
}

/** Two words with a space between them, and no sign of a unit or of markup. */
function isSentence(node) {
  const text = node.type === 'StringLiteral' ? node.value : node.quasis.map(({ value }) => value.cooked).join('\0')
  return /\p{L}{2,}[,;:]? \p{L}{2,}/u.test(text) && !/[<>{}\\^=_]/.test(text)
}

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'wordings', wordings)]
