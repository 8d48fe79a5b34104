/**
 * Runs the projects under `docs/examples` against the packed tarball, as their readers would: `npm run examples:run`. The Deno script,
 * the web page and the notebook need Deno (`npm install deno`, or its path in DENO), Chromium (Debian: chromium) and Jupyter (Debian:
 * jupyter-nbconvert); where one is missing the example is counted as skipped, with `--all` as failed.
 */
import { execFileSync, spawn } from 'node:child_process'
import { cpSync, existsSync, readFileSync, rmSync } from 'node:fs'
import { createServer } from 'node:http'
import { join } from 'node:path'
import { placeWithPackage, root } from './install.mjs'
import { checkNotebook } from './notebook.mjs'

const place = placeWithPackage()
const examples = join(place, 'examples')
cpSync(join(root, 'docs/examples'), examples, { recursive: true })

const deno = programIn([process.env.DENO, join(root, 'node_modules/.bin/deno'), '/usr/bin/deno', '/usr/local/bin/deno'])
const chromium = programIn([process.env.CHROMIUM, '/usr/bin/chromium'])
const jupyter = programIn(['/usr/bin/jupyter', '/usr/local/bin/jupyter'])
const contentTypes = { html: 'text/html', js: 'text/javascript', mjs: 'text/javascript' }
const counts = { passed: 0, failed: 0, skipped: 0 }

await example('a script as an ES module', async () => {
  expectIn(node('node-script/plan.mjs', '0.0250 mol'), 'Bench sheet for 0.0250 mol')
})
await example('a script as CommonJS', async () => {
  expectIn(node('node-script/plan.cjs', '0.0250 mol'), 'Bench sheet for 0.0250 mol')
})
await example('a TypeScript project', async () => {
  const folder = join(examples, 'typescript-project')
  execFileSync('node', [join(root, 'node_modules/typescript/bin/tsc'), '-p', folder], { stdio: 'inherit' })
  expectIn(node('typescript-project/audit.js'), 'limited by FeSO4')
})
await example('an HTTP service', checkService)
await example('a web page with an import map', checkPage, { chromium })
await example(
  'a Deno script',
  async () => expectIn(run(deno, ['run', 'yield.ts'], 'deno-script'), 'yield: 64.111(11) %'),
  { deno },
)
await example('a notebook', async () => checkNotebook(join(examples, 'notebook'), { deno, jupyter }), { deno, jupyter })

rmSync(place, { recursive: true, force: true })
console.log(`${counts.passed} passed, ${counts.failed} failed, ${counts.skipped} skipped`)
process.exitCode = counts.failed === 0 ? 0 : 1

async function example(what, check, needs = {}) {
  const missing = Object.keys(needs).filter((name) => needs[name] === undefined)
  const outcome = missing.length === 0 ? await outcomeOf(check) : `no ${missing.join(', no ')}`
  const state =
    outcome === undefined ? 'passed' : missing.length > 0 && !process.argv.includes('--all') ? 'skipped' : 'failed'
  counts[state] += 1
  console.log(`${state}: ${what}${outcome === undefined ? '' : `: ${outcome}`}`)
}

async function outcomeOf(check) {
  try {
    await check()
    return undefined
  } catch (error) {
    return error.message
  }
}

function programIn(paths) {
  return paths.find((path) => path !== undefined && existsSync(path))
}

function node(...args) {
  return run(process.execPath, args)
}

function run(program, args, folder = '.') {
  return execFileSync(program, args, { cwd: join(examples, folder), encoding: 'utf8' })
}

function expectIn(text, part) {
  if (!text.includes(part)) throw new Error(`expected “${part}” in what it prints:\n${text}`)
}

/** Starts the service on any free port, asks it for everything it knows and for what it must refuse, and stops it. */
async function checkService() {
  const service = spawn(process.execPath, ['http-service/server.mjs'], {
    cwd: examples,
    env: { ...process.env, PORT: '0' },
  })
  try {
    const port = await new Promise((resolve, reject) => {
      service.stdout.on('data', (data) => resolve(String(data).match(/port (\d+)/)?.[1]))
      service.on('exit', () => reject(new Error('the service stopped')))
    })
    await checkAnswers(`http://127.0.0.1:${port}`)
  } finally {
    service.kill()
  }
}

async function checkAnswers(base) {
  const recipe = JSON.parse(readFileSync(join(examples, 'recipes/zinc-sulfate.json'), 'utf8'))
  const records = JSON.parse(readFileSync(join(examples, 'records/zinc-sulfate-bench-1.json'), 'utf8'))
  const worksheet = { format: 'saltwright/worksheet@1', bench: 'Bench 1', answers: {} }
  const asked = [
    ['POST', '/plans', recipe, 200, ({ theoretical }) => theoretical.mass.unit === 'g'],
    ['POST', '/assessments', { recipe, records }, 200, ({ percentYield }) => percentYield.unit === '%'],
    ['POST', '/reviews', { recipe, worksheet }, 200, (review) => Array.isArray(review.answers)],
    ['POST', '/plans', { ...recipe, product: 'ZnS04' }, 422, ({ code, problems }) => code && problems.length > 0],
    ['POST', '/plans', 'no JSON', 400, ({ code }) => code === 'service/not-json'],
    ['POST', '/plans', ' '.repeat(200_000), 413, ({ code }) => code === 'service/too-long'],
    ['POST', '/assessments', null, 422, ({ code }) => code === 'service/not-an-object'],
    ['GET', '/plans', undefined, 404, ({ code }) => code === 'service/no-such-route'],
  ]
  for (const [method, path, content, status, isRight] of asked) {
    const body = typeof content === 'string' ? content : JSON.stringify(content)
    const response = await fetch(base + path, { method, body })
    const answer = await response.json()
    if (response.status !== status || !isRight(answer))
      throw new Error(`${method} ${path}: ${response.status} ${JSON.stringify(answer).slice(0, 300)}`)
  }
}

/** Serves the folder that holds the packages, and uses the page in a headless browser. */
async function checkPage() {
  const server = createServer(serveFile).listen(0, '127.0.0.1')
  const { chromium: browsers } = await import('playwright-core')
  const browser = await browsers.launch({ executablePath: chromium, args: ['--no-sandbox'] })
  try {
    const page = await browser.newPage()
    const complaints = []
    page.on('console', (message) => message.type() === 'error' && complaints.push(message.text()))
    page.on('pageerror', (error) => complaints.push(error.message))
    await page.goto(`http://127.0.0.1:${server.address().port}/examples/web-page/index.html`)
    await page.waitForSelector('output article')
    expectIn(await page.textContent('output'), '3.255 g')
    await page.fill('input', '0,0250 mol')
    await page.click('button')
    expectIn(await page.textContent('[role="alert"]'), '0.0250 mol')
    if (complaints.length > 0) throw new Error(complaints.join('\n'))
  } finally {
    await browser.close()
    server.close()
  }
}

function serveFile(request, response) {
  const file = join(place, decodeURIComponent(new URL(request.url, 'http://127.0.0.1').pathname))
  if (!existsSync(file)) return response.writeHead(404).end()
  response.writeHead(200, { 'content-type': contentTypes[file.split('.').at(-1)] ?? 'application/octet-stream' })
  response.end(readFileSync(file))
}
