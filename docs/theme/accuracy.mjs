/**
 * @typedef {import('../../tests/published/check.ts').PublishedRecord} PublishedRecord
 */

/**
 * The published values that a test run compared with ours.
 *
 * @param {object} report - What Vitest's JSON reporter wrote.
 * @returns {PublishedRecord[]} In the order of the run, sources together.
 */
export function publishedRows(report) {
  const tests = report.testResults.flatMap(({ assertionResults }) => assertionResults)
  const rows = tests.flatMap(({ status, meta }) =>
    meta?.published ? [{ ...meta.published, passed: status === 'passed' }] : [],
  )
  if (rows.length === 0) throw new Error('The test run compared no published values.')
  const failed = rows.filter(({ passed }) => !passed)
  if (failed.length > 0) throw new Error(`${failed.length} published values are not as their tests say.`)
  return rows
}

/**
 * Writes the page on accuracy: every published value beside ours, counted at the top, those that differ first.
 *
 * @param {PublishedRecord[]} rows - The compared values.
 * @param {string} version - The version of the library they were compared with.
 * @returns {string} Markdown.
 */
export function accuracyPage(rows, version) {
  const sources = bySource(rows)
  const differing = rows.filter(({ agrees }) => !agrees)
  return [
    '# Accuracy',
    `Version ${version} was compared with **${rows.length} published values** from **${sources.size} sources**, a textbook counted once for each chapter or preparation. ` +
      `**${rows.length - differing.length} agree** to the last printed digit; **${differing.length} differ**, each with its reason. ` +
      'This page is written from the run of the tests, so that it says what is, not what was meant. No tolerance is widened to make a value agree.',
    '## Where we differ',
    ...(differing.length === 0 ? ['Nowhere.'] : [table(differing, differingColumns)]),
    '## By source',
    table([...sources], sourceColumns),
    '## Every value',
    ...[...sources].flatMap(([source, own]) => folded(`${source} (${own.length})`, table(own, rowColumns))),
    '',
  ].join('\n\n')
}

/** Opened by a click: the page has thousands of rows. */
function folded(title, content) {
  return [
    `<details><summary>${title.replace(/[&<>]/g, (sign) => `&#${sign.charCodeAt(0)};`)}</summary>`,
    content,
    '</details>',
  ]
}

function bySource(rows) {
  const groups = new Map()
  for (const row of rows) groups.set(row.source, [...(groups.get(row.source) ?? []), row])
  return groups
}

const differingColumns = {
  'what, and where it is published': ({ what, source, at }) => `${what}\n${source}, ${at}`,
  published: ({ published }) => published,
  ours: ({ ours }) => ours,
  why: ({ differs }) => differs,
}

const sourceColumns = {
  source: ([source]) => source,
  values: ([, own]) => String(own.length),
  agree: ([, own]) => String(own.filter(({ agrees }) => agrees).length),
  differ: ([, own]) => String(own.filter(({ agrees }) => !agrees).length),
}

const rowColumns = {
  where: ({ at }) => at,
  what: ({ what }) => what,
  published: ({ published }) => published,
  ours: ({ ours }) => ours,
  agreement: ({ agrees, differs }) => (agrees ? 'agrees' : `differs: ${differs}`),
}

function table(rows, columns) {
  const names = Object.keys(columns)
  const cells = rows.map((row) => names.map((name) => escaped(columns[name](row))))
  return [names, names.map(() => '---'), ...cells].map((line) => `| ${line.join(' | ')} |`).join('\n')
}

function escaped(text) {
  return text.replace(/[\\`*_{}[\]<>#|~^]/g, '\\$&').replaceAll('\n', '<br>')
}
