/** Signs that stand for heat, temperature and light over an arrow; none of them is part of a formula. */
const signs = ['Δ', '∆', '°', '℃', 'ν', 'λ', '🔥']

/** Words that name conditions or catalysts, in lower case. */
const words = [
  'heat',
  'heated',
  'warm',
  'boil',
  'cool',
  'ice',
  'cat',
  'catalyst',
  'light',
  'uv',
  'hv',
  'reflux',
  'electrolysis',
  'ignite',
  'spark',
  'pressure',
  'temp',
  'temperature',
  'room temperature',
  'rt',
]

/** Energy in its usual disguises, in lower case. */
const energies = ['heat', 'energy', 'light', 'hv', 'hν', 'electricity', 'δ', 'δh']

/** Units of energy, in lower case. */
const energyUnits = ['kj', 'kj/mol', 'kcal', 'kcal/mol', 'ev']

/** Whether a text names a condition rather than a substance: `heat`, `Δ`, `[500 °C]`, `cat.`. */
export function isConditionText(text: string): boolean {
  if (signs.some((sign) => text.includes(sign))) return true
  return words.includes(bare(text))
}

/** Whether a term is energy, not matter: `heat`, `hν`, the `kJ` of `286 kJ`. */
export function isEnergyText(text: string): boolean {
  const word = bare(text)
  return energies.includes(word) || energyUnits.includes(word)
}

/** A text in lower case without the brackets, dashes, dots and spaces around it. */
function bare(text: string): string {
  let [start, end] = [0, text.length]
  while (start < end && around.includes(text.charAt(start))) start += 1
  while (end > start && around.includes(text.charAt(end - 1))) end -= 1
  return text.slice(start, end).toLowerCase()
}

const around = ' \t\n()[]{}-–—.,:;^'
