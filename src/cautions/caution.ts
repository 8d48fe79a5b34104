import type { Quantity } from '../quantity/index.js'
import { type GeneralCautionCode, generalCautions } from './general-cautions.js'
import { type HazardCode, hazardStatements, type Pictogram } from './hazard-statements.js'

/** The stable name of a caution. */
export type CautionName =
  | GeneralCautionCode
  | 'substance-hazard'
  | 'substance-not-classified'
  | 'unknown-substance'
  | 'deferral'

/** A hazard statement with its text. */
export interface Statement {
  /** Its code: `H314`. */
  readonly code: HazardCode
  /** Its text. */
  readonly text: string
}

/** Something that can hurt somebody in a plan, or the usual precaution against it. */
export interface Caution {
  /** Stable name. */
  readonly code: CautionName
  /** One line for the bench sheet. */
  readonly message: string
  /** What it is about, as a formula; absent where it is about an operation. */
  readonly about: string | undefined
  /** What whoever keeps the data should know of its row; nothing for the bench. */
  readonly note: string | undefined
  /** Hazard statements, for a substance. */
  readonly statements: readonly Statement[]
  /** Pictograms, for a substance. */
  readonly pictograms: readonly Pictogram[]
  /** Signal word, for a substance: `none` has none; undefined where none is assigned. */
  readonly signalWord: 'Danger' | 'Warning' | 'none' | undefined
  /** The numbers behind it, by name: strength, amount, volume, heat. */
  readonly numbers: Readonly<Record<string, Quantity>>
  /** Who says so. */
  readonly source: string
  /** True where it is from memory: the current safety data sheet is to be looked at before anything else. */
  readonly fromMemory: boolean
}

const empty = {
  about: undefined,
  note: undefined,
  statements: [],
  pictograms: [],
  signalWord: undefined,
  numbers: {},
} as const

/** A caution that is no classification. */
export function plainCaution(
  code: CautionName,
  { text, source }: { readonly text: string; readonly source: string },
  more: Partial<Pick<Caution, 'about' | 'numbers' | 'message'>> = {},
): Caution {
  return { ...empty, code, message: text, source, fromMemory: source.includes('from memory'), ...more }
}

/** A general caution by its code. */
export function generalCaution(
  code: GeneralCautionCode,
  more: Partial<Pick<Caution, 'about' | 'numbers' | 'message'>> = {},
): Caution {
  return plainCaution(code, generalCautions[code], more)
}

/** Codes with their texts. */
export function statementsOf(codes: readonly HazardCode[]): readonly Statement[] {
  return codes.map((code) => ({ code, text: hazardStatements[code] }))
}
