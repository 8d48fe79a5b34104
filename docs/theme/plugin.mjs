/** How TypeDoc writes our site: addresses that stay, guides by their titles, examples that run, a citation on every page. */
import { readFileSync } from 'node:fs'
import { Converter, JSX, PageEvent, ReflectionKind } from 'typedoc'
import { placeDocument, StableAddresses } from './addresses.mjs'
import { citationsOf, releaseOf } from './citation.mjs'

const release = releaseOf(readFileSync(new URL('../../CITATION.cff', import.meta.url), 'utf8'))

/** @param {import('typedoc').Application} app - TypeDoc, before it reads the project. */
export function load(app) {
  app.renderer.defineRouter('stable', StableAddresses)
  app.converter.on(Converter.EVENT_RESOLVE_BEGIN, ({ project }) => nameDocuments(project))
  app.converter.addUnknownSymbolResolver((reference, { project }, tag) => tag && exportedName(reference, project))
  app.renderer.on(PageEvent.END, (page) => {
    useOwnIcons(page)
    if (page.url === 'index.html') nameOnce(page)
  })
  app.renderer.hooks.on('content.end', (context) => citation(context.page))
  app.renderer.hooks.on('footer.begin', () => edition())
}

/** A guide is called by its first heading, and stands where its file does below `docs`. */
function nameDocuments(project) {
  for (const document of project.getReflectionsByKind(ReflectionKind.Document)) {
    const [, title] = document.content[0]?.text.match(/^# (.+)\n/) ?? []
    if (title === undefined) throw new Error(`${document.name}: a guide begins with its title`)
    placeDocument(document, document.name.replace(/^(?:docs|reports)\//, ''))
    document.name = title
  }
}

/** A link in a comment may name what another topic exports without importing it. */
function exportedName({ symbolReference }, project) {
  const [part, ...more] = symbolReference?.path ?? []
  if (part === undefined || more.length > 0) return undefined
  const target = project
    .getReflectionsByKind(ReflectionKind.SomeExport)
    .find(({ name, parent }) => name === part.path && parent?.kindOf(ReflectionKind.Module))
  return target && { target }
}

/** The icons stand in every page; those of another file may not be read where pages are opened from the file system. */
function useOwnIcons(page) {
  page.contents = page.contents?.replace(/"[^"]*assets\/icons\.svg#/g, '"#')
}

/** The readme of the start page begins with the name of the library itself. */
function nameOnce(page) {
  page.contents = page.contents?.replace(/<div class="tsd-page-title">[\s\S]*?<\/div>/, '')
}

function citation({ model, url }) {
  const title = model.isProject() ? `${release.title}: ${url.replace(/\.html$/, '')}` : model.getFullName()
  const { text, bibtex, csl } = citationsOf(release, { title, address: url })
  return element('details', { class: 'cite' }, [
    element('summary', {}, ['Cite this page']),
    element('p', { class: 'cite-text' }, [text]),
    element('pre', { tabindex: '0', 'aria-label': 'BibTeX' }, [bibtex]),
    element('pre', { tabindex: '0', 'aria-label': 'CSL-JSON' }, [csl]),
  ])
}

function edition() {
  return element('p', { class: 'edition' }, [`${release.title} ${release.version}, ${release.date}`])
}

function element(tag, attributes, children) {
  return JSX.createElement(tag, attributes, ...children)
}
