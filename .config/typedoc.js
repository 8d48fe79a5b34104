import { readFileSync } from 'node:fs'
import { OptionDefaults } from 'typedoc'
import { markExamples } from '../docs/theme/runnable.mjs'

const { exports } = JSON.parse(readFileSync(new URL('../package.json', import.meta.url), 'utf8'))
const topics = Object.keys(exports).filter((door) => door.startsWith('./') && !door.endsWith('.json'))

/** In the order in which they are listed. */
const guides = [
  'first-bench-sheet',
  'formulas-and-hydrates',
  'balanced-equations',
  'figures-and-rounding',
  'uncertainty',
  'plan-and-audit',
  'cooling-and-loss',
  'yield-and-purity',
  'reviewing-answers',
  'pictures',
  'in-a-notebook',
  'in-a-web-page',
  'in-other-software',
  'citing',
  'cautions-and-limits',
]

/** @type {Partial<import('typedoc').TypeDocOptions>} */
export default {
  // The front door comes last: a symbol's page belongs to its topic.
  entryPoints: [...topics.map((door) => `../src/${door.slice(2)}/index.ts`), '../src/index.ts'],
  tsconfig: '../src/tsconfig.json',
  out: '../site',
  readme: '../README.md',
  projectDocuments: [...guides.map((name) => `../docs/guides/${name}.md`), '../docs/*.md', '../reports/accuracy.md'],
  plugin: ['../docs/theme/plugin.mjs'],
  router: 'stable',
  markdownItLoader: markExamples,
  customCss: '../docs/theme/theme.css',
  customJs: '../docs/theme/page.mjs',
  navigation: { includeGroups: false, includeCategories: false },
  lang: 'en',
  hideGenerator: true,
  includeHierarchySummary: false,
  treatWarningsAsErrors: true,
  intentionallyNotExported: [
    // What the types of quantities are worked out with: an editor shows their results.
    ...[
      'WithUnit',
      'Quotients',
      'Products',
      'Units',
      'UnitsByDimension',
      'Merge',
      'Spelled',
      'SpellingOf',
      'operations',
    ],
    // Described where they are met: exact fractions, decimals of decimal.js, a quantity with what is known of it.
    ...['Fraction', 'Decimal', 'AtomicWeight'],
  ],
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
