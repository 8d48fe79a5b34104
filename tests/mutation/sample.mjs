import { createHash } from 'node:crypto'

/**
 * Whether a mutant is among those tried: the same ones every time for a seed, whatever else has changed.
 *
 * @param mutant - As the report has it: lines and columns count from 1.
 * @param sample - `share` of the mutants, from 0 to 1, and the `seed` that chooses them.
 */
export function isSampled({ fileName, location, mutatorName, replacement }, { share, seed }) {
  const file = fileName.replaceAll('\\', '/').replace(/^.*\/src\//, 'src/')
  const { start, end } = location
  const identity = [seed, file, start.line, start.column, end.line, end.column, mutatorName, replacement].join(' ')
  return createHash('sha256').update(identity).digest().readUInt32BE() / 2 ** 32 < share
}

/** Low and high end of the 95 % interval of Wilson for the share found in a sample of `tried` from `all`. */
export function interval(found, tried, all) {
  const left = all > 1 ? Math.sqrt((all - tried) / (all - 1)) : 0
  const z = 1.96 * left
  const share = found / tried
  const middle = (share + (z * z) / (2 * tried)) / (1 + (z * z) / tried)
  const half = (z / (1 + (z * z) / tried)) * Math.sqrt((share * (1 - share)) / tried + (z * z) / (4 * tried * tried))
  return [middle - half, middle + half]
}
