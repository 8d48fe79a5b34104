import { type DisplayForms, showing } from '../display.js'
import type { Arrow, Equation, Term } from './equation.js'
import { writeEquation } from './write-equation.js'

/** What an equation consists of; without a text it is written in plain notation when that is first asked for. */
interface EquationParts {
  readonly left: readonly Term[]
  readonly right: readonly Term[]
  readonly arrow: Arrow
  readonly text?: string
}

class WrittenEquation implements Equation {
  readonly left: readonly Term[]
  readonly right: readonly Term[]
  readonly arrow: Arrow
  #text: string | undefined

  constructor({ left, right, arrow, text }: EquationParts) {
    this.left = Object.freeze(left)
    this.right = Object.freeze(right)
    this.arrow = arrow
    this.#text = text
    Object.freeze(this)
  }

  static isOwn(value: object): boolean {
    return #text in value
  }

  get text(): string {
    this.#text ??= writeEquation(this, 'plain')
    return this.#text
  }

  toString(): string {
    return this.text
  }

  toJSON(): string {
    return this.text
  }
}

const ShownEquation: typeof WrittenEquation = /* @__PURE__ */ showing(WrittenEquation, formsOf)

function formsOf(equation: Equation): DisplayForms {
  const [plain, html, latex] = (['unicode', 'html', 'latex'] as const).map((style) => writeEquation(equation, style))
  return { 'text/plain': `${plain}`, 'text/html': `${html}`, 'text/latex': `$${latex}$` }
}

/** An equation that cannot be changed, from terms that cannot. */
export function makeEquation(parts: EquationParts): Equation {
  return new ShownEquation(parts)
}

/** Whether an object was made by `makeEquation` of this copy of the library. */
export function isOwnEquation(value: object): boolean {
  return WrittenEquation.isOwn(value)
}
