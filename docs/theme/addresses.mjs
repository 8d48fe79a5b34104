import { ReflectionKind, StructureRouter } from 'typedoc'

/** Kinds whose names begin with a capital letter and may differ from a function in that letter alone. */
const types = ReflectionKind.Class | ReflectionKind.Interface | ReflectionKind.TypeAlias

/** Where the pages of documents stand, by the path of their file below `docs`. */
const documentAddresses = new WeakMap()

/**
 * Says where the page of a document stands, whatever the document is called on the page.
 *
 * @param {import('typedoc').DocumentReflection} document - A guide.
 * @param {string} address - Its path without an ending: `guides/uncertainty`.
 */
export function placeDocument(document, address) {
  documentAddresses.set(document, address)
}

/**
 * Gives every page the address that is promised to stay: `formula/molarMass.html` for a function or a constant,
 * `formula/types/Formula.html` for a type or a class, `guides/uncertainty.html` for a guide. Types have a folder of their own
 * because `Dilution.html` and `dilution.html` are one file on many systems.
 */
export class StableAddresses extends StructureRouter {
  getIdealBaseName(reflection) {
    const address = documentAddresses.get(reflection)
    if (address !== undefined) return address
    const usual = super.getIdealBaseName(reflection)
    return reflection.kindOf(types) ? usual.replace(/[^/]+$/, 'types/$&') : usual
  }

  /** A second page of the same address would be told apart by a number that can change: refuse it. */
  getFileName(baseName) {
    const name = super.getFileName(baseName)
    if (name !== `${baseName}${this.extension}`) throw new Error(`Two pages want the address ${baseName}`)
    return name
  }
}
