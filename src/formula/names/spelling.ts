/** Spellings that are read, and the one that the tables have. */
const spellings: readonly (readonly [string, string])[] = [
  ['sulph', 'sulf'],
  ['aluminum', 'aluminium'],
  ['cesium', 'caesium'],
  ['caaesium', 'caesium'],
  [' (', '('],
  [', anhydrous', ''],
  [' anhydrous', ''],
]

/** The name with single spaces, small first letters and the spelling of the tables. */
export function spellSystematically(name: string): string {
  const words = name.trim().split(' ').filter(Boolean)
  const small = words.map((word) => word.charAt(0).toLowerCase() + word.slice(1)).join(' ')
  return spellings.reduce((text, [from, to]) => text.replaceAll(from, to), small)
}
