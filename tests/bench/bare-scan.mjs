/** Counts the atoms of a formula and nothing else: no charges, no checks, whole numbers only, wrong text gives wrong counts. */
export function scanAtoms(text) {
  const stack = [new Map()]
  let at = 0
  let times = 1
  const number = () => {
    let value = 0
    let code = text.charCodeAt(at)
    while (code >= 48 && code <= 57) {
      value = value * 10 + code - 48
      at += 1
      code = text.charCodeAt(at)
    }
    return value || 1
  }
  const add = (symbol, count) => {
    const top = stack[stack.length - 1]
    top.set(symbol, (top.get(symbol) ?? 0) + count)
  }
  while (at < text.length) {
    const code = text.charCodeAt(at)
    at += 1
    if (code >= 65 && code <= 90) {
      const small = text.charCodeAt(at)
      const length = small >= 97 && small <= 122 ? 2 : 1
      const symbol = text.slice(at - 1, at - 1 + length)
      at += length - 1
      add(symbol, number() * times)
    } else if (code === 40 || code === 91) stack.push(new Map())
    else if (code === 41 || code === 93) {
      const group = stack.pop()
      const count = number()
      for (const [symbol, inside] of group) add(symbol, inside * count)
    } else if (code === 0xb7) times = number()
  }
  return stack[0]
}
