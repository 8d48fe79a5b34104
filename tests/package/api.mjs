/**
 * Compares the public surface, signatures included, with the reports under version control in `tests/package/api`, one per door; so that
 * no name and no parameter changes unseen. `npm run api`; with `-- --update` it writes them anew, to be read before they are committed.
 */
import { mkdirSync, readFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { Extractor, ExtractorConfig } from '@microsoft/api-extractor'

const path = (name) => fileURLToPath(new URL(`../../${name}`, import.meta.url))
const { exports } = JSON.parse(readFileSync(path('package.json'), 'utf8'))
const topics = Object.keys(exports).filter((door) => door.startsWith('./') && !door.endsWith('.json'))
const localBuild = process.argv.includes('--update')

const none = { default: { logLevel: 'none' } }
const quiet = {
  compilerMessageReporting: { default: { logLevel: 'error' } },
  extractorMessageReporting: none,
  tsdocMessageReporting: none,
}

mkdirSync(path('reports/api'), { recursive: true })
mkdirSync(path('tests/package/api'), { recursive: true })
const changed = topics.filter((door) => !isAsReported(door.slice(2)))
for (const door of changed) console.error(`${door}: the surface differs from tests/package/api; compare reports/api`)
console.log(`${topics.length} doors, ${changed.length} changed`)
process.exitCode = changed.length === 0 || localBuild ? 0 : 1

function isAsReported(topic) {
  const config = ExtractorConfig.prepare({
    configObject: {
      projectFolder: path('.'),
      mainEntryPointFilePath: path(`dist/${topic}/index.d.ts`),
      newlineKind: 'lf',
      compiler: { tsconfigFilePath: path('src/tsconfig.json') },
      apiReport: {
        enabled: true,
        reportFileName: `${topic}.api.md`,
        reportFolder: path('tests/package/api'),
        reportTempFolder: path('reports/api'),
      },
      docModel: { enabled: false },
      dtsRollup: { enabled: false },
      tsdocMetadata: { enabled: false },
      messages: quiet,
    },
    configObjectFullPath: undefined,
    packageJsonFullPath: path('package.json'),
  })
  const result = Extractor.invoke(config, { localBuild, messageCallback: (message) => hush(message) })
  return !result.apiReportChanged
}

/** What TypeDoc and the tests look at already. */
function hush(message) {
  if (message.logLevel !== 'error') message.handled = true
}
