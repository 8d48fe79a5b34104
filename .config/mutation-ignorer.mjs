import { declareValuePlugin, PluginKind } from '@stryker-mutator/api/plugin'

/** What is worded for people: a test that fixed every sentence would only repeat it. Codes, positions and paths are not among them. */
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
  'text',
  'note',
  'says',
  'description',
])

/** Leaves sentences alone, by the name of what they are: no mutant of a wording is made. */
const wordings = {
  shouldIgnore(path) {
    const { parent, node } = path
    const isText = node.type === 'StringLiteral' || node.type === 'TemplateLiteral'
    if (!isText || parent?.type !== 'ObjectProperty' || parent.value !== node) return undefined
    return worded.has(parent.key.name) ? 'a wording' : undefined
  },
}

export const strykerPlugins = [declareValuePlugin(PluginKind.Ignore, 'wordings', wordings)]
