import { readFileSync } from 'node:fs'
import { OptionDefaults } from 'typedoc'

const { exports } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))
const topics = Object.keys(exports).filter((door) => door.startsWith('./') && !door.endsWith('.json'))

/** @type {Partial<import('typedoc').TypeDocOptions>} */
export default {
  // The front door comes last: a symbol's page belongs to its topic.
  entryPoints: [...topics.map((door) => `../src/${door.slice(2)}/index.ts`), '../src/index.ts'],
  tsconfig: '../src/tsconfig.json',
  out: '../site',
  readme: '../README.md',
  projectDocuments: ['../docs/*.md', '../docs/guides/*.md'],
  router: 'structure',
  sortEntryPoints: false,
  blockTags: [...OptionDefaults.blockTags, '@source'],
  excludeInternal: true,
  includeVersion: true,
  validation: { notExported: true, invalidLink: true, invalidPath: true, rewrittenLink: true, notDocumented: true },
  requiredToBeDocumented: [
    'Module',
    'Function',
    'Class',
    'Interface',
    'TypeAlias',
    'Variable',
    'Property',
    'Method',
    'Accessor',
  ],
  disableGit: true,
  disableSources: true,
}
