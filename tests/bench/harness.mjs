/**
 * Times several routes to the same result, in turns so that all of them meet the same machine. The least time of a route counts, for
 * whatever else the machine does only adds to it.
 *
 * @param routes - Each with a name and a function that does the whole work once, or `times` times over: a quick route beside a slow one
 * would else show how long the memory takes to come back after the other.
 * @param options - How many rounds, and for how many items the work is, so that times are per item.
 * @returns The routes with their times in microseconds per item.
 */
export function timed(routes, { rounds = 20, items = 1 } = {}) {
  const best = routes.map(() => Number.POSITIVE_INFINITY)
  for (let round = 0; round < rounds + 3; round += 1) {
    for (const [index, { run }] of routes.entries()) {
      const spent = once(run)
      if (round >= 3) best[index] = Math.min(best[index], spent)
    }
  }
  return routes.map(({ name, times = 1 }, index) => ({ name, time: (best[index] * 1000) / items / times }))
}

function once(run) {
  const start = performance.now()
  run()
  return performance.now() - start
}

/** How many times as long one route takes as another. */
export function ratio(rows, slow, fast) {
  const time = (name) => rows.find((row) => row.name === name).time
  return time(slow) / time(fast)
}

/** That one thing is so many times as fast as another, at least. */
export function atLeast(what, wanted, measured) {
  return { what, wanted: `at least ${wanted}`, measured, met: measured >= wanted }
}

/** That something is so much at most. */
export function atMost(what, wanted, measured, unit = '') {
  return { what, wanted: `at most ${wanted}${unit}`, measured, met: measured <= wanted, unit }
}
