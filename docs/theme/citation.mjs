/**
 * @typedef {object} Release What a citation needs to know of the version.
 * @property {string} title - What the library is called.
 * @property {string} version - Its version.
 * @property {string} date - When it was released, as `2026-11-25`.
 * @property {string} author - Who is named as its author.
 */

/**
 * Reads a release from the text of CITATION.cff.
 *
 * @param {string} cff - The file's content.
 * @returns {Release} What it says.
 */
export function releaseOf(cff) {
  const field = (name) => cff.match(new RegExp(`^[ -]*${name}: "?([^"\n]+)"?$`, 'm'))?.[1]
  const release = {
    title: field('title'),
    version: field('version'),
    date: field('date-released'),
    author: field('name'),
  }
  for (const [name, value] of Object.entries(release))
    if (value === undefined) throw new Error(`CITATION.cff: no ${name}`)
  return release
}

/**
 * Writes the citation of one page in the three forms that course materials use.
 *
 * @param {Release} release - The version.
 * @param {{ title: string, address: string }} page - What the page is called, and where it stands on the site.
 * @returns {{ text: string, bibtex: string, csl: string }} The citation as a sentence, as BibTeX and as CSL-JSON.
 */
export function citationsOf(release, page) {
  return { text: asText(release, page), bibtex: asBibtex(release, page), csl: asCsl(release, page) }
}

function asText({ author, title, version, date }, page) {
  return `${author}, “${page.title}”, documentation of ${title}, version ${version}, ${date}, ${page.address}.`
}

function asBibtex({ author, title, version, date }, page) {
  const [year, month, day] = date.split('-')
  return [
    `@manual{${keyOf(title, version, page)},`,
    `  author  = {{${author}}},`,
    `  title   = {{${escapeTex(page.title)}}},`,
    `  note    = {Documentation of ${title}, version ${version}, page ${escapeTex(page.address)}},`,
    `  year    = {${year}},`,
    `  month   = {${Number(month)}},`,
    `  day     = {${Number(day)}}`,
    '}',
  ].join('\n')
}

function asCsl({ author, title, version, date }, page) {
  const item = {
    id: keyOf(title, version, page),
    type: 'webpage',
    author: [{ literal: author }],
    title: page.title,
    'container-title': `Documentation of ${title}`,
    version,
    section: page.address,
    issued: { 'date-parts': [date.split('-').map(Number)] },
  }
  return JSON.stringify([item], null, 2)
}

function keyOf(title, version, { address }) {
  return `${title}-${version}-${address.replace(/\.html$/, '').replace(/[^A-Za-z0-9]+/g, '-')}`
}

function escapeTex(text) {
  return text.replace(/[&%$#_{}]/g, '\\$&')
}
