import { showFound, unlessForged } from '../errors.js'
import { isQuantity } from '../quantity/index.js'
import { type ReportCode, ReportError } from './report-error.js'

/** A kind of document that reports are written of. */
interface DocumentKind {
  /** The error for anything else. */
  readonly code: Extract<ReportCode, 'report/not-a-plan' | 'report/not-an-assessment'>
  /** What it is called. */
  readonly name: string
  /** What its `format` says. */
  readonly format: string
  /** One of its quantities, which is plain data once it has been JSON. */
  readonly sample: (document: never) => unknown
  /** The function that makes it. */
  readonly maker: string
  /** From what it is made again once it has been JSON. */
  readonly madeFrom: string
}

/** The plan of a preparation. */
export const planKind: DocumentKind = {
  code: 'report/not-a-plan',
  name: 'the plan of a preparation',
  format: 'saltwright/plan@1',
  sample: ({ theoretical }: { readonly theoretical: { readonly mass: unknown } }) => theoretical.mass,
  maker: 'planPreparation',
  madeFrom: 'the recipe in it',
}

/** The plan of a class. */
export const classPlanKind: DocumentKind = {
  code: 'report/not-a-plan',
  name: 'the plan of a class',
  format: 'saltwright/class-plan@1',
  sample: ({ liquidWaste }: { readonly liquidWaste: unknown }) => liquidWaste,
  maker: 'planClass',
  madeFrom: 'its recipe, benches and options',
}

/** An assessment. */
export const assessmentKind: DocumentKind = {
  code: 'report/not-an-assessment',
  name: 'an assessment',
  format: 'saltwright/assessment@1',
  sample: ({ percentYield }: { readonly percentYield: unknown }) => percentYield,
  maker: 'assessPreparation',
  madeFrom: 'its recipe, which is kept apart, and the records in it',
}

/** Writes a report of a document, after a look at whether it is one; a forged one that cannot be written is none. */
export function reportOf<T, R>(kind: DocumentKind, document: T, write: (document: T) => R): R {
  const written = (): R => {
    if (isOfKind(kind, document)) return write(document)
    throw notOfKind(kind, document)
  }
  return unlessForged(written, (cause) => notOfKind(kind, document, cause))
}

function isOfKind({ format, sample }: DocumentKind, document: unknown): boolean {
  return (document as { readonly format: unknown }).format === format && isQuantity(sample(document as never))
}

function notOfKind({ code, name, maker, madeFrom }: DocumentKind, found: unknown, cause?: unknown): ReportError {
  return new ReportError(
    {
      code,
      message: `${showFound(found)} is not ${name}.`,
      found: showFound(found),
      expected: `${name}, as ${maker} gives it`,
      hint: `A document that was stored as JSON is made again by ${maker}, from ${madeFrom}.`,
    },
    cause,
  )
}
