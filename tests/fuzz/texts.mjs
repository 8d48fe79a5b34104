/** Characters that readers have to tell apart, and some that no reader wants. */
const strange = [
  ...'0123456789.,+-−±×·•∙⋅*x^()[]{}/½⅓¼²³⁺⁻₂₇ΑΟсΗ',
  ...'\u00a0\u2009\u200b\u202e\ufeff\u0000\u007f\t\n\r',
  '\ud800',
  '\udfff',
  '\ud83e\uddea',
  'e\u0301',
  '\u212a',
  '\uff10',
  '\uff23\uff55',
]

const hostile = [
  '__proto__',
  'constructor',
  'toString',
  'hasOwnProperty',
  '1e999999999',
  '1e-999999999',
  '9'.repeat(400),
  `0.${'0'.repeat(300)}1`,
  'NaN',
  'Infinity',
  '-0',
  '0x10',
  '1n',
  '(((((((((',
  '<sub>2</sub>',
  '=1+1',
  '\\frac',
]

/** One change to a text: something taken out, put in, doubled, moved, or replaced by part of another text. */
function changed(random, text, others) {
  const [from, size] = [random.below(text.length + 1), 1 + random.below(4)]
  const [before, piece, after] = [text.slice(0, from), text.slice(from, from + size), text.slice(from + size)]
  const other = random.pick(others)
  const at = random.below(other.length + 1)
  return random.pick([
    () => before + after,
    () => before + random.pick(strange) + piece + after,
    () => before + random.pick(strange) + after,
    () => before + piece + piece + after,
    () => before + piece + other.slice(at, at + 1 + random.below(6)) + after,
    () => before + other.slice(at),
    () => after + piece + before,
    () => before + random.pick(hostile) + after,
    () => before + piece.toUpperCase() + after.toLowerCase(),
  ])()
}

/** A text with some changes. */
export function mutated(random, text, others) {
  let result = text
  for (let times = 1 + random.below(4); times > 0; times -= 1) result = changed(random, result, others)
  return result
}

/** A text without any sense, of the characters that readers know. */
export function nonsense(random, alphabet) {
  return random.many(40, () => (random.oneIn(3) ? random.pick(strange) : random.pick(alphabet))).join('')
}

/** A piece of text again and again: deep nesting, long lists, long numbers. */
export function repeated(random, pieces, longest) {
  const piece = random.pick(pieces)
  const times = Math.ceil((random.fraction() ** 3 * longest) / piece.length)
  return piece.repeat(times) + (random.oneIn(2) ? '' : random.pick(pieces))
}
