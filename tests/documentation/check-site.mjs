/**
 * Looks through the built site for what no reader should meet: a link to nowhere, an anchor that is not there, a file that is fetched
 * from elsewhere, a page without its version and citation.
 */
import { existsSync, readdirSync, readFileSync } from 'node:fs'

const site = new URL('../../site/', import.meta.url)
const names = readdirSync(site, { recursive: true }).map((name) => name.replaceAll('\\', '/'))
const pages = new Map(names.filter((name) => name.endsWith('.html')).map((name) => [name, pageOf(name)]))
const problems = [...pages].flatMap(([name, page]) => [...brokenLinks(name, page), ...missing(name, page)])

for (const problem of problems) console.error(problem)
console.log(`${pages.size} pages of the site, ${problems.length} problems`)
process.exitCode = problems.length === 0 ? 0 : 1

function pageOf(name) {
  const html = readFileSync(new URL(name, site), 'utf8')
  return {
    html,
    anchors: new Set([...html.matchAll(/\sid="([^"]+)"/g)].map(([, id]) => decoded(id))),
    links: [...html.matchAll(/\s(?:href|src)="([^"]*)"/g)].map(([, link]) => decoded(link)),
    fetched: [...html.matchAll(/<(?:script|link|img|iframe)\b[^>]*\s(?:href|src)="([^"]*)"/g)].map(([, link]) => link),
  }
}

function brokenLinks(name, { links, fetched }) {
  const away = fetched.filter((link) => /^(?:https?:)?\/\//.test(link)).map((link) => `${name}: fetches ${link}`)
  const broken = links
    .filter((link) => !/^(?:https?:|mailto:|data:|#icon-)/.test(link))
    .filter((link) => leadsNowhere(name, link))
  return [...away, ...broken.map((link) => `${name}: no ${link}`)]
}

function leadsNowhere(name, link) {
  const target = new URL(link, new URL(name, site))
  const file = new URL(target.pathname, target)
  if (!existsSync(file)) return true
  const page = pages.get(decodeURIComponent(file.pathname.slice(site.pathname.length)))
  return target.hash.length > 1 && page !== undefined && !page.anchors.has(decodeURIComponent(target.hash.slice(1)))
}

function missing(name, { html }) {
  return ['class="edition"', 'class="cite"'].filter((mark) => !html.includes(mark)).map((mark) => `${name}: no ${mark}`)
}

function decoded(text) {
  return text.replaceAll('&amp;', '&').replaceAll('&quot;', '"').replaceAll('&#39;', "'").replaceAll('&lt;', '<')
}
