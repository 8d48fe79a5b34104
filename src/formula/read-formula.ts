import type { Decimal } from '../decimal.js'
import { showing } from '../display.js'
import type { Fraction } from '../fraction.js'
import { formsOf } from './forms.js'
import type { Formula, FormulaNote, Part, State } from './formula.js'
import { notesOn } from './notes.js'
import type { Scan, ScannedPart } from './scan.js'
import { chargeOf, chargeOfPart, compositionOf, countsOf, countsOfPart, hydrationOf, plainFraction } from './totals.js'

/** A formula as it was read. What is asked of it is worked out once, when it is asked first. */
class OwnFormula implements Formula {
  readonly text: string
  readonly charge: number
  readonly state: State | undefined
  readonly #scan: Scan
  #parts: readonly Part[] | undefined
  #composition: ReadonlyMap<string, Decimal> | undefined
  #counts: ReadonlyMap<string, Fraction> | undefined
  #hydration: Decimal | null | undefined
  #notes: readonly FormulaNote[] | undefined

  constructor(scan: Scan, state: State | undefined) {
    this.text = scan.text
    this.charge = chargeOf(scan)
    this.state = state
    this.#scan = scan
    Object.freeze(this)
  }

  get parts(): readonly Part[] {
    this.#parts ??= Object.freeze(this.#scan.parts.map((part) => new ReadPart(this.#scan, part)))
    return this.#parts
  }

  get composition(): ReadonlyMap<string, Decimal> {
    this.#composition ??= compositionOf(this.#scan)
    return this.#composition
  }

  get counts(): ReadonlyMap<string, Fraction> {
    this.#counts ??= countsOf(this.#scan)
    return this.#counts
  }

  get hydration(): Decimal | null {
    if (this.#hydration === undefined) this.#hydration = hydrationOf(this.#scan)
    return this.#hydration
  }

  get notes(): readonly FormulaNote[] {
    this.#notes ??= notesOn(this.text)
    return this.#notes
  }

  toString(): string {
    return this.text
  }

  toJSON(): string {
    return this.text
  }
}

/** Makes a formula from its scan, and tells one that this copy of the library made. */
export const ReadFormula: new (scan: Scan, state: State | undefined) => Formula = /* @__PURE__ */ showing(
  OwnFormula,
  ({ text }) => formsOf(text),
)

/** One part of a formula as it was read. */
class ReadPart implements Part {
  readonly text: string
  readonly charge: number
  readonly #scan: Scan
  readonly #part: ScannedPart
  #times: Fraction | null | undefined
  #counts: ReadonlyMap<string, Fraction> | undefined

  constructor(scan: Scan, part: ScannedPart) {
    this.text = scan.text.slice(part.start, part.end).trimEnd()
    this.charge = chargeOfPart(scan, part)
    this.#scan = scan
    this.#part = part
    Object.freeze(this)
  }

  get times(): Fraction | null {
    if (this.#times === undefined) this.#times = timesOf(this.#part)
    return this.#times
  }

  get counts(): ReadonlyMap<string, Fraction> {
    this.#counts ??= countsOfPart(this.#scan, this.#part)
    return this.#counts
  }
}

function timesOf({ top, bottom, unknown }: ScannedPart): Fraction | null {
  return unknown ? null : plainFraction(top, bottom)
}
