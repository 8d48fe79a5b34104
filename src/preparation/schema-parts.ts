import * as z from 'zod/mini'
import { tryParseEquation } from '../equation/index.js'
import { attempt, type Outcome, SaltwrightError } from '../errors.js'
import { tryParseFormula } from '../formula/index.js'
import { type Dimension, exact, type Quantity, tryQuantity } from '../quantity/index.js'

/** Schemas by what they are of: the same text is checked in many places of a document, and making a schema is not cheap. */
const made: Map<string, z.ZodMiniString> = /* @__PURE__ */ new Map()

function once(of: string, make: () => z.ZodMiniString): z.ZodMiniString {
  const schema = made.get(of) ?? make()
  made.set(of, schema)
  return schema
}

/** A text that another reader of the library must accept; its error becomes a problem at this place. */
function readable(read: (text: string) => Outcome<unknown>): z.ZodMiniString {
  return z.string().check(
    z.check((context) => {
      const outcome = read(context.value)
      if (outcome.ok) return
      const { code, message, position, found, expected, hint } = outcome.error
      const params = { code, position, found, expected, hint }
      context.issues.push({ code: 'custom', input: context.value, message, params })
    }),
  )
}

type Read = (text: string) => Outcome<Quantity>

/** A choice is exact, so it has no uncertainty. */
const asChoice: Read = (text) => attempt(() => exact(text as '1 g'))

/** A chosen number above zero with a unit of one of the dimensions; a temperature may be anything. */
export function numberOf(...dimensions: readonly Dimension[]): z.ZodMiniString {
  const fits = ({ dimension, value }: Quantity): boolean => dimension === 'temperature' || value.gt(0)
  return once(`number ${dimensions}`, () => quantityText(asChoice, dimensions, 'above zero', fits))
}

/** A chosen share of a whole, above zero and up to all of it: `99.5 %`, `0.5`. */
export function shareText(): z.ZodMiniString {
  return once('share', () => shareBy(asChoice))
}

/** A share of a whole that was measured. */
export function shareReading(): z.ZodMiniString {
  return once('share, measured', () => shareBy(tryQuantity))
}

function shareBy(read: Read): z.ZodMiniString {
  return quantityText(read, ['ratio'], 'above zero and at most 100 %', (share) => {
    const part = (share as Quantity<'ratio'>).to('1').value
    return part.gt(0) && part.lte(1)
  })
}

/** A reading of zero or more with a unit of the dimension. */
export function readingOf(dimension: Dimension): z.ZodMiniString {
  const fits = ({ value }: Quantity): boolean => value.gte(0)
  return once(`reading ${dimension}`, () => quantityText(tryQuantity, [dimension], 'of zero or more', fits))
}

function quantityText(
  read: Read,
  dimensions: readonly Dimension[],
  range: string,
  fits: (q: Quantity) => boolean,
): z.ZodMiniString {
  return readable((text) => {
    const outcome = read(text)
    if (!outcome.ok) return outcome
    if (!dimensions.includes(outcome.value.dimension))
      return refused('preparation/wrong-dimension', text, dimensions, range)
    return fits(outcome.value) ? outcome : refused('preparation/not-positive', text, dimensions, range)
  })
}

function refused(code: string, found: string, dimensions: readonly Dimension[], range: string): Outcome<never> {
  const expected = `${dimensions.map(wordsFor).join(' or ')} ${range}${dimensions.includes('ratio') ? '' : ', with its unit'}`
  return { ok: false, error: new SaltwrightError({ code, message: `"${found}" is not ${expected}.`, found, expected }) }
}

/** The text of a formula. */
export function formulaText(): z.ZodMiniString {
  return once('formula', () => readable(tryParseFormula))
}

/** The text of an equation. */
export function equationText(): z.ZodMiniString {
  return once('equation', () => readable(tryParseEquation))
}

/** Text for people, not empty. */
export function words(): z.ZodMiniString {
  return once('words', () => z.string().check(z.minLength(1), z.maxLength(2000)))
}

/** `amountConcentration` as people say it: an amount concentration. */
function wordsFor(dimension: Dimension): string {
  const spoken = dimension.replace(/[A-Z]/g, (letter) => ` ${letter.toLowerCase()}`)
  return `${/^[ae]/.test(spoken) ? 'an' : 'a'} ${spoken}`
}
