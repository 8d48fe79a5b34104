import { existsSync } from 'node:fs'
import { describe, expect, it } from 'vitest'
import { entries, filesUnder, read, root } from './files.js'

const pages = [...entries(), ...filesUnder('docs/')].filter((file) => file.endsWith('.md'))

/** The targets of a page's links within the project, as URLs. */
function linksOf(page: string): readonly URL[] {
  return [...read(page).matchAll(/\]\(([^)\s]+)\)/g)]
    .map(([, target]) => target as string)
    .filter((target) => !/^[a-z]+:/.test(target))
    .map((target) => new URL(target, new URL(page, root)))
}

/** The anchors of a page's headings, as hosts of Markdown make them. */
function anchorsOf(page: URL): readonly string[] {
  const headings = read(page.pathname.slice(root.pathname.length)).match(/^#+ .*$/gm) ?? []
  return headings.map((heading) =>
    heading
      .replace(/^#+ /, '')
      .toLowerCase()
      .replace(/[^\p{L}\p{N} _-]/gu, '')
      .replaceAll(' ', '-'),
  )
}

function leadsNowhere(link: URL): boolean {
  const page = new URL(link.pathname, link)
  if (!existsSync(page)) return true
  return link.hash !== '' && !anchorsOf(page).includes(decodeURIComponent(link.hash.slice(1)))
}

describe.each(pages)('%s', (page) => {
  it('links to pages and headings that exist', () => {
    const broken = linksOf(page).filter(leadsNowhere)
    expect(broken.map(({ pathname, hash }) => pathname + hash)).toEqual([])
  })
})
