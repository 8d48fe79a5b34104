import { asDimension, type Quantity, type Role } from '../quantity/index.js'
import { walk } from '../quantity/walk.js'

/** A calculation as a review looks at it: what came out, and everything that it was made from. */
export interface Calculation {
  /** What came out. */
  readonly result: Quantity
  /** Everything it was made from and the result itself, operands before results. A molar mass is one, without its atomic weights. */
  readonly quantities: readonly Quantity[]
  /** @returns The quantities in a role, each once, under the name that they have in it. */
  inRole(role: Role): readonly Quantity[]
  /** @returns What a quantity goes into directly. */
  usersOf(q: Quantity): readonly Quantity[]
  /** @returns Its place in `quantities`; undefined where the calculation does not use it. */
  placeOf(q: Quantity): number | undefined
}

/** The same measurement or the same result has one key, whatever it is called where. */
type Key = object | string

function keyOf({ input, operands }: Quantity): Key {
  return input === undefined ? operands : (input.id ?? input)
}

class ReadCalculation implements Calculation {
  readonly result: Quantity
  readonly quantities: readonly Quantity[]
  readonly #places: ReadonlyMap<Key, number>
  readonly #roles: ReadonlyMap<Role, ReadonlyMap<Key, Quantity>>
  readonly #users: ReadonlyMap<Key, readonly Quantity[]>

  constructor(result: Quantity) {
    const found = collect(result)
    this.result = result
    this.quantities = found.quantities
    this.#places = found.places
    this.#roles = found.roles
    this.#users = found.users
  }

  inRole(role: Role): readonly Quantity[] {
    return [...(this.#roles.get(role)?.values() ?? [])]
  }

  usersOf(q: Quantity): readonly Quantity[] {
    return this.#users.get(keyOf(q)) ?? []
  }

  placeOf(q: Quantity): number | undefined {
    return this.#places.get(keyOf(q))
  }
}

/** What was read of calculations, as long as somebody holds on to them. */
const known: WeakMap<Quantity, Calculation> = /* @__PURE__ */ new WeakMap()

/** Reads a calculation, once. */
export function calculationOf(result: Quantity): Calculation {
  const found = known.get(result) ?? new ReadCalculation(asDimension(result, result.dimension))
  known.set(result, found)
  return found
}

interface Collected {
  readonly quantities: Quantity[]
  readonly places: Map<Key, number>
  readonly roles: Map<Role, Map<Key, Quantity>>
  readonly users: Map<Key, Quantity[]>
}

function collect(result: Quantity): Collected {
  const found: Collected = { quantities: [], places: new Map(), roles: new Map(), users: new Map() }
  noteRole(found, result)
  walk(result, {
    below: partsOf,
    isDone: (q) => found.places.has(keyOf(q)),
    finish: (q) => note(found, q),
  })
  return found
}

function note(found: Collected, q: Quantity): void {
  found.places.set(keyOf(q), found.quantities.length)
  found.quantities.push(q)
  for (const part of partsOf(q)) {
    noteRole(found, part)
    const users = found.users.get(keyOf(part))
    if (users === undefined) found.users.set(keyOf(part), [q])
    else users.push(q)
  }
}

/** One measurement may stand in several roles: a chosen amount is a scale here and a theoretical yield there. */
function noteRole({ roles }: Collected, q: Quantity): void {
  const { role } = q.naming
  if (role === undefined) return
  const alike = roles.get(role) ?? new Map<Key, Quantity>()
  if (!alike.has(keyOf(q))) alike.set(keyOf(q), q)
  roles.set(role, alike)
}

/** What a quantity was made from, as far as a person would look: a molar mass is read off as one number. */
export function partsOf(q: Quantity): readonly Quantity[] {
  return q.rule === 'weightedSum' && q.naming.role === 'molar mass' ? [] : q.operands
}

/** Whether a quantity, in whatever unit, stands under a fraction line directly above it. */
export function isDivisor(calculation: Calculation, q: Quantity): boolean {
  const forms = [q] // and on the way those of it in other units; no recursion, for there may be any number
  for (const form of forms) {
    const place = calculation.placeOf(form)
    for (const user of calculation.usersOf(form)) {
      if (isForm(user)) forms.push(user)
      else if (user.rule === 'quotient' && calculation.placeOf(user.operands[1] as Quantity) === place) return true
    }
  }
  return false
}

/** Whether a quantity is its operand in another unit, or rounded. */
function isForm({ rule }: Quantity): boolean {
  return rule === 'conversion' || rule === 'rounded'
}
