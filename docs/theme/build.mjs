/** Writes the site: `npm run docs`. Published values are compared anew, so that the page on accuracy cannot be out of date. */
import { spawnSync } from 'node:child_process'
import { cpSync, mkdirSync, readFileSync, writeFileSync } from 'node:fs'
import { fileURLToPath } from 'node:url'
import { build } from 'esbuild'
import { accuracyPage, publishedRows } from './accuracy.mjs'
import { releaseOf } from './citation.mjs'

const root = new URL('../../', import.meta.url)
const path = (name) => fileURLToPath(new URL(name, root))
const { version } = releaseOf(readFileSync(path('CITATION.cff'), 'utf8'))

mkdirSync(path('reports'), { recursive: true })
run(process.execPath, ['.config/rollup.mjs'])
run('tsup', ['--silent'])
run(process.execPath, ['docs/schemas/build.mjs'])
comparePublishedValues()
run('typedoc', ['--options', '.config/typedoc.js', ...process.argv.slice(2)])
await bundleLibrary()
cpSync(path('dist/schemas'), path('site/schemas'), { recursive: true })
run(process.execPath, ['tests/documentation/check-site.mjs'])

function comparePublishedValues() {
  const report = 'reports/published.json'
  run('vitest', [
    'run',
    '--config',
    '.config/vitest.config.ts',
    '--project',
    'source',
    '--reporter=json',
    `--outputFile=${report}`,
    'tests/published',
  ])
  const rows = publishedRows(JSON.parse(readFileSync(path(report), 'utf8')))
  writeFileSync(path('reports/accuracy.md'), accuracyPage(rows, version))
}

/** One classic script with the library and what runs examples: it works from the file system, where modules do not. */
async function bundleLibrary() {
  await build({
    absWorkingDir: path('.'),
    entryPoints: ['docs/theme/live/run.mjs'],
    outfile: 'site/assets/live.js',
    alias: { saltwright: path('dist/index.js') },
    bundle: true,
    minify: true,
    format: 'iife',
    globalName: 'saltwrightExamples',
    target: 'es2022',
    logLevel: 'warning',
  })
}

function run(command, parameters) {
  const isNode = command === process.execPath
  const { status } = spawnSync(
    isNode ? command : 'npx',
    isNode ? parameters : ['--no-install', command, ...parameters],
    {
      cwd: path('.'),
      stdio: 'inherit',
    },
  )
  if (status !== 0) process.exit(status ?? 1)
}
