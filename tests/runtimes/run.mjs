/**
 * The packed tarball in every runtime that is promised: `npm run build && npm run runtimes`. Runtimes and compilers come from the npm
 * registry into a folder of their own, which stays for the next time; Chromium from where it is installed (CHROMIUM, or
 * /usr/bin/chromium). What cannot be had is counted as skipped.
 */
import { execFileSync } from 'node:child_process'
import { cpSync, existsSync, mkdirSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { build } from 'esbuild'
import { chromium } from 'playwright-core'
import { placeWithPackage, root } from '../package/install.mjs'

const tools = join(tmpdir(), 'saltwright-runtimes')
const machine = `${process.platform}-${process.arch}`
const nodes = [20, 22, 24, 26]
const packages = {
  ...Object.fromEntries(nodes.map((major) => [`node-${major}`, `node-${machine}@${major}`])),
  deno: `@deno/${machine}${process.platform === 'linux' ? '-glibc' : ''}`,
  bun: `@oven/bun-${machine}`,
  'typescript-5.4': 'typescript@5.4.5',
  'typescript-7': 'typescript@7.0.2',
}
const counts = { passed: 0, failed: 0, skipped: 0 }

for (const [name, from] of Object.entries(packages)) install(name, from)
const place = placeWithPackage()
cpSync(join(root, 'tests/runtimes'), place, { recursive: true })
cpSync(join(root, 'tests/package/consumers'), place, { recursive: true })

for (const major of nodes) {
  const node = join(tools, `node-${major}`, 'node_modules/tool/bin/node')
  script(`Node ${major}, ES module`, node, ['as-module.mjs'])
  script(`Node ${major}, CommonJS`, node, ['as-commonjs.cjs'])
}
const deno = join(tools, 'deno/node_modules/tool/deno')
script('Deno, ES module', deno, ['run', '--allow-read', '--no-lock', '--node-modules-dir=manual', 'as-module.mjs'])
script('Deno, CommonJS', deno, ['run', '--allow-read', '--no-lock', '--node-modules-dir=manual', 'as-commonjs.cjs'])
const bun = join(tools, 'bun/node_modules/tool/bin/bun')
script('Bun, ES module', bun, ['as-module.mjs'])
script('Bun, CommonJS', bun, ['as-commonjs.cjs'])
await browser(process.env.CHROMIUM ?? '/usr/bin/chromium')
for (const compiler of ['typescript-5.4', 'typescript-7']) {
  for (const resolution of ['node16', 'nodenext', 'bundler']) compiled(compiler, resolution)
}

rmSync(place, { recursive: true })
console.log(`\n${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`)
process.exitCode = counts.failed === 0 ? 0 : 1

/** One package under the name `tool`, without its scripts: what a runtime's package holds is the program itself. */
function install(name, from) {
  const folder = join(tools, name)
  if (existsSync(join(folder, 'node_modules/tool'))) return
  mkdirSync(folder, { recursive: true })
  writeFileSync(join(folder, 'package.json'), '{ "private": true }\n')
  try {
    const args = ['install', '--no-audit', '--no-fund', '--ignore-scripts', `tool@npm:${from}`]
    execFileSync('npm', args, { cwd: folder, stdio: 'ignore' })
  } catch {
    console.log(`${from} cannot be had`)
  }
}

function script(what, program, args) {
  if (!existsSync(program)) return told(what, 'skipped', 'not installed')
  return attempt(what, () => execFileSync(program, args, { cwd: place, encoding: 'utf8', stdio: 'pipe' }).trim())
}

async function browser(executablePath) {
  if (!existsSync(executablePath)) return told('Chromium', 'skipped', 'not installed')
  try {
    const entryPoints = [join(place, 'page.mjs')]
    const { outputFiles } = await build({
      entryPoints,
      bundle: true,
      format: 'iife',
      platform: 'browser',
      write: false,
    })
    const opened = await chromium.launch({ executablePath, args: ['--no-sandbox'] })
    const page = await opened.newPage()
    await page.addScriptTag({ content: outputFiles[0].text })
    const checks = await page.evaluate(() => globalThis.checked)
    await opened.close()
    return told(`Chromium ${opened.version()}`, 'passed', `${checks} checks`)
  } catch (error) {
    return told('Chromium', 'failed', error.message)
  }
}

/** The declarations as a consumer compiles them, without skipping any. */
function compiled(compiler, moduleResolution) {
  const tsc = join(tools, compiler, 'node_modules/tool/bin/tsc')
  const what = `${compiler}, ${moduleResolution}`
  if (!existsSync(tsc)) return told(what, 'skipped', 'not installed')
  const isBundler = moduleResolution === 'bundler'
  const compilerOptions = {
    module: isBundler ? 'esnext' : moduleResolution,
    moduleResolution,
    noEmit: true,
    strict: true,
  }
  const settings = { ...compilerOptions, target: 'es2022', lib: ['es2022'], types: ['node'], skipLibCheck: false }
  const include = isBundler ? ['*.mts'] : ['*.mts', '*.cts']
  writeFileSync(join(place, 'tsconfig.json'), JSON.stringify({ compilerOptions: settings, include }))
  return attempt(what, () => {
    execFileSync(process.execPath, [tsc, '-p', '.'], { cwd: place, encoding: 'utf8', stdio: 'pipe' })
    return 'compiles'
  })
}

function attempt(what, run) {
  try {
    return told(what, 'passed', run())
  } catch (error) {
    return told(what, 'failed', `${error.stdout ?? ''}${error.stderr ?? error.message}`)
  }
}

function told(what, outcome, details) {
  counts[outcome] += 1
  console.log(`${what.padEnd(28)} ${outcome.padEnd(8)} ${details}`)
}
