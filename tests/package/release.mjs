/**
 * A release, or its rehearsal: `npm run release` goes through everything up to `npm publish --dry-run`; `npm run release -- --publish`
 * publishes, with a statement of provenance where it runs in a service that can sign one (`npm help publish`).
 */
import { execFileSync } from 'node:child_process'
import { readFileSync } from 'node:fs'
import { root } from './install.mjs'

const real = process.argv.includes('--publish')
const { version } = JSON.parse(readFileSync(`${root}package.json`, 'utf8'))

step('everything is committed', () => run('git', ['status', '--porcelain'], 'pipe').trim() === '')
step(`the changelog has a section for ${version}`, () =>
  readFileSync(`${root}CHANGELOG.md`, 'utf8').includes(`\n## ${version}`),
)
step('dependencies are as locked', () => run('npm', ['ls', '--all'], 'ignore'))
step('everything holds', () => run('npm', ['test']))
step('two builds give the same tarball', () => run('node', ['tests/package/reproducible.mjs']))
step('it runs wherever it is promised to', () => run('node', ['tests/runtimes/run.mjs']))
step(real ? 'publish' : 'rehearse publishing', () =>
  run('npm', ['publish', '--access', 'public', ...(real ? ['--provenance'] : ['--dry-run'])]),
)
console.log(real ? `\nPublished ${version}. Now tag it: git tag v${version}` : '\nNothing was published.')

/** A step that returns false or fails ends the release. */
function step(what, holds) {
  console.log(`\n== ${what}`)
  try {
    if (holds() !== false) return
  } catch (error) {
    console.error(error.message)
  }
  console.error(`Not so: ${what}.`)
  process.exit(1)
}

function run(command, args, stdio = 'inherit') {
  return execFileSync(command, args, { cwd: root, encoding: 'utf8', stdio: ['ignore', stdio, 'inherit'] })
}
