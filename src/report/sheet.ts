import { Decimal } from '../decimal.js'
import type { Equation } from '../equation/index.js'
import type { Quantity } from '../quantity/index.js'

/** A piece of a line: words, or something that each format writes in its own way. */
export type Piece =
  | string
  | { readonly formula: string }
  | { readonly equation: Equation }
  | { readonly quantity: Quantity }

/** A line of a sheet. */
export type Line = Piece | readonly Piece[]

/** A part of a sheet. */
export type Block =
  | { readonly kind: 'heading'; readonly text: string }
  | { readonly kind: 'steps'; readonly steps: readonly Step[] }
  | { readonly kind: 'notes'; readonly lines: readonly Line[] }
  | {
      readonly kind: 'table'
      readonly head: readonly string[]
      readonly rows: readonly (readonly Line[])[]
      readonly numeric: readonly number[]
    }
  | { readonly kind: 'blanks'; readonly fields: readonly Blank[] }

/** One numbered step with what is done in it. */
export interface Step {
  /** Its name and equation. */
  readonly line: Line
  /** Sentences under it. */
  readonly details: readonly Line[]
}

/** A line to be filled in by hand. */
interface Blank {
  /** What is to be written there. */
  readonly label: string
  /** Its unit. */
  readonly unit: string
}

/** A sheet for the bench or the file, apart from how it is written. */
export interface Sheet {
  /** Its heading. */
  readonly title: string
  /** What stands under the heading. */
  readonly subtitle: Line
  /** Its parts, in order. */
  readonly blocks: readonly Block[]
}

/** In which format a sheet is written. */
export type SheetFormat = 'text' | 'markdown' | 'html' | 'latex'

/** The pieces of a line. */
export function piecesOf(line: Line): readonly Piece[] {
  return Array.isArray(line) ? (line as readonly Piece[]) : [line as Piece]
}

/** Fewer figures are for readers of data: 4 g known to tens is not shown as nothing, nor a yield of 111 % as 100 %. */
const leastFigures = 2

/**
 * A quantity as a sheet shows it: the lone point of `100.` and powers of ten are for readers of data, not of sheets. Where the digits end
 * before the units, it has two of them at least.
 */
export function quantityText({ quantity }: { readonly quantity: Quantity }): string {
  const text = quantity.toString()
  const figures = quantity.significantFigures
  if (figures === null || !endsBeforeUnits(text, figures)) return text.replace(/\.(?= |$)/, '').replace(/^0e\d+/, '0')
  const digits = quantity.value.toSignificantDigits(Math.max(leastFigures, figures), Decimal.ROUND_HALF_EVEN)
  return text.replace(/^\S+/, digits.toFixed())
}

/** Whether there are places of no meaning before the point, as in `0e1`, `2.5e3` and a `250` of two figures; up to a million. */
function endsBeforeUnits(text: string, figures: number): boolean {
  const [, digits = '', power] = /^-?(\d+)(?:\.\d+)?(e[1-6])?(?: |$)/.exec(text) ?? []
  return power !== undefined || digits.length > figures
}
