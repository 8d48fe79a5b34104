/** The page of a run of the benchmarks, as Markdown. */
export function pageOf({ results, machine, version }) {
  return `${[
    '# Benchmarks',
    `Measured with version ${version} on ${machine}, all routes of a table in one run and in turns; the least time of each counts, for what else the machine does only adds to it. Times on another machine differ; how the routes compare should not, by much. To measure on yours: \`npm ci && npm run build && npm run bench\`, from a clone.`,
    'A target is what we hold the library to. One that is missed says so here until it is met.',
    ...results.map(sectionOf),
  ].join('\n\n')}\n`
}

function sectionOf({ title, about, rows, targets }) {
  return [`## ${title}`, about, tableOf(rows), targetsOf(targets)].join('\n\n')
}

function tableOf(rows) {
  const withMemory = rows.some(({ memory }) => memory !== undefined)
  const head = ['| | µs |', '|---|---:|']
  const wide = ['| | µs | MB kept |', '|---|---:|---:|']
  const lines = rows.map(({ name, time, memory }) =>
    withMemory ? `| ${name} | ${shown(time)} | ${memory.toFixed(1)} |` : `| ${name} | ${shown(time)} |`,
  )
  return [...(withMemory ? wide : head), ...lines].join('\n')
}

function targetsOf(targets) {
  const lines = targets.map(
    ({ what, wanted, measured, met }) => `| ${what} | ${wanted} | ${shown(measured)} | ${met ? 'met' : '**missed**'} |`,
  )
  return ['| target | wanted | measured | |', '|---|---:|---:|---|', ...lines].join('\n')
}

/** Three figures, as no machine gives more. */
function shown(number) {
  return number >= 1000 ? number.toFixed(0) : String(Number(number.toPrecision(3)))
}
