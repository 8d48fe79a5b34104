import { isQuantity, type Quantity } from '../../src/quantity/index.js'

/**
 * How the numbers in a result are named, and those they were made from: symbol, role and substance of each, and whether
 * there is a label. Labels themselves may be reworded. Of a molar mass nothing further is listed.
 */
export function namesIn(result: unknown): readonly string[] {
  const seen = new Set<unknown>()
  const names: string[] = []
  const visit = (value: unknown): void => {
    if (typeof value !== 'object' || value === null || seen.has(value)) return
    seen.add(value)
    if (isQuantity(value) && Object.keys(value.naming).length > 0) names.push(nameOf(value))
    for (const part of partsOf(value)) visit(part)
  }
  visit(result)
  return names
}

function partsOf(value: object): readonly unknown[] {
  if (!isQuantity(value)) return Object.values(value)
  return value.naming.role === 'molar mass' ? [] : value.operands
}

function nameOf({ naming: { symbol, role, of, label } }: Quantity): string {
  return [symbol ?? '-', role ?? '-', of ?? '-', ...(label ? [] : ['no label'])].join(', ')
}
