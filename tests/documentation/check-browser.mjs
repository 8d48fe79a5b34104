/**
 * Opens the built site in a headless browser, from the file system, as a reader would: `npm run docs:check`. Looks at navigation,
 * search, an example that runs, both colour schemes, a phone and print; anything the page complains about in its console is a failure.
 * Pictures of what was seen stay in `reports/site`.
 */
import { mkdirSync, rmSync } from 'node:fs'
import { chromium } from 'playwright-core'

const site = new URL('../../site/', import.meta.url)
const pictures = new URL('../../reports/site/', import.meta.url)
const executablePath = process.env.CHROMIUM ?? '/usr/bin/chromium'

rmSync(pictures, { recursive: true, force: true })
mkdirSync(pictures, { recursive: true })
const browser = await chromium.launch({ executablePath, args: ['--no-sandbox'] })
const failures = []
let checks = 0

await onPage('desktop', { viewport: { width: 1280, height: 900 }, colorScheme: 'light' }, async (page) => {
  await visit(page, 'index.html')
  await seen('the start page is titled', (await page.title()).startsWith('saltwright'))
  await page.waitForSelector('.tsd-navigation a')
  await seen('the start page has one heading of the first rank', (await page.locator('h1').count()) === 1)
  await picture(page, 'start')

  await page.click('.tsd-navigation a:has-text("A first bench sheet")')
  await page.waitForURL('**/guides/first-bench-sheet.html')
  await seen('a guide has one heading of the first rank', (await page.locator('h1').count()) === 1)
  await picture(page, 'guide')

  await runExample(page, 1)
  await seen('an example shows its values', (await outputOf(page)).includes("'11.502 g'"))
  await page.locator('.example-editor').fill("plan.theoretical.mass.to('mg').toString()")
  await page.click('.example-run')
  await page.waitForFunction(() => !document.querySelector('.example-output').textContent.includes('Running'))
  await seen(
    'an edited example may not use what it does not import',
    (await outputOf(page)).includes('plan is not defined'),
  )
  await picture(page, 'example-refused')
})

await onPage('examples', { viewport: { width: 1280, height: 900 }, colorScheme: 'dark' }, async (page) => {
  await visit(page, 'guides/first-bench-sheet.html')
  await runExample(page, 2)
  await seen('a sheet that is printed is shown', (await outputOf(page)).includes('Weigh and measure'))
  await picture(page, 'example-dark')
  await visit(page, 'guides/first-bench-sheet.html')
  await runExample(page, 3)
  await seen('a sheet written as HTML is rendered', (await page.locator('.shown-value article table').count()) > 0)
  await picture(page, 'example-sheet')
  await visit(page, 'guides/reviewing-answers.html')
  await runExample(page, (await page.locator('.example').count()) - 1)
  await seen('worked lines are rendered', (await page.locator('.shown-value i').count()) > 0)
  await visit(page, 'formula/parseFormula.html')
  await runExample(page, 0)
  await seen('an example of the reference runs', (await outputOf(page)).length > 0)
  await seen('what is refused is shown with its code', (await outputOf(page)).includes('formula/'))
  await picture(page, 'reference-dark')
})

await onPage('search', { viewport: { width: 1280, height: 900 }, colorScheme: 'light' }, async (page) => {
  await visit(page, 'index.html')
  await page.click('#tsd-search-trigger')
  await page.locator('#tsd-search-input').pressSequentially('percentYield')
  await page.waitForSelector('#tsd-search-results li a')
  await picture(page, 'search')
  await page.click('#tsd-search-results li a')
  await page.waitForURL(/percentYield/)
  await seen('search leads to the page of a function', page.url().includes('product/percentYield.html'))
})

await onPage('keyboard', { viewport: { width: 1280, height: 900 } }, async (page) => {
  await visit(page, 'guides/citing.html')
  await page.keyboard.press('Tab')
  const outline = await page.evaluate(() => getComputedStyle(document.activeElement).outlineStyle)
  await seen('the focus of the keyboard can be seen', outline === 'solid')
  await page.locator('.cite summary').focus()
  await page.keyboard.press('Enter')
  await seen('a citation opens by keyboard', await page.locator('.cite-text').isVisible())
  await seen('it carries the version', (await page.locator('.cite').textContent()).includes('version'))
  await page.locator('.cite').scrollIntoViewIfNeeded()
  await page.waitForTimeout(300)
  await picture(page, 'citation')
})

await onPage('accuracy', { viewport: { width: 1280, height: 900 } }, async (page) => {
  await visit(page, 'accuracy.html')
  await seen(
    'published values are counted',
    /compared with \d+ published values/.test(await page.locator('.col-content').textContent()),
  )
  await picture(page, 'accuracy')
})

await onPage(
  'phone',
  { viewport: { width: 390, height: 844 }, isMobile: true, hasTouch: true, deviceScaleFactor: 2 },
  async (page) => {
    for (const address of ['index.html', 'guides/uncertainty.html', 'product/percentYield.html', 'accuracy.html']) {
      await visit(page, address)
      const overflow = await page.evaluate(() => document.documentElement.scrollWidth - window.innerWidth)
      await seen(`${address} is no wider than a phone`, overflow <= 0)
      await picture(page, `phone-${address.replace(/\W/g, '-')}`)
    }
    await page.tap('#tsd-toolbar-menu-trigger')
    await page.waitForSelector('.tsd-navigation a', { state: 'visible' })
    await page.waitForTimeout(500) // the menu slides in
    await picture(page, 'phone-menu')
  },
)

await onPage('print', { viewport: { width: 800, height: 1100 } }, async (page) => {
  await visit(page, 'guides/plan-and-audit.html')
  await page.emulateMedia({ media: 'print' })
  await seen('navigation is not printed', !(await page.locator('.col-sidebar').isVisible()))
  await picture(page, 'print')
})

await browser.close()
for (const failure of failures) console.error(failure)
console.log(`${checks - failures.length} passed, ${failures.length} failed`)
process.exitCode = failures.length === 0 ? 0 : 1

/** Runs a part with a page of its own; what the browser complains about counts against it. */
async function onPage(part, options, look) {
  const context = await browser.newContext(options)
  const page = await context.newPage()
  const fail = (text) => failures.push(`${part}: ${text}`)
  page.on('console', (message) => message.type() === 'error' && fail(message.text()))
  page.on('pageerror', (error) => fail(error.message))
  page.on('request', (request) => /^https?:/.test(request.url()) && fail(`fetches ${request.url()}`))
  try {
    await look(page)
  } catch (error) {
    checks += 1
    fail(error.message)
  }
  await context.close()
}

async function visit(page, address) {
  await page.goto(new URL(address, site).href)
  await page.waitForFunction(() => document.body.style.display !== 'none')
}

async function runExample(page, index) {
  await page.locator('.example').nth(index).locator('.example-open').click()
  await page.waitForFunction(() => !document.querySelector('.example-output').textContent.includes('Running'))
}

function outputOf(page) {
  return page.locator('.example-output').first().textContent()
}

async function seen(what, holds) {
  checks += 1
  if (!holds) failures.push(what)
}

function picture(page, name) {
  return page.screenshot({ path: new URL(`${name}.png`, pictures).pathname })
}
