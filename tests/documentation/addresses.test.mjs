import { Application, DeclarationReflection, DocumentReflection, ProjectReflection, ReflectionKind } from 'typedoc'
import { beforeAll, describe, expect, it } from 'vitest'
import { placeDocument, StableAddresses } from '../../docs/theme/addresses.mjs'

/** Pages of a project with one module `formula` of the given members. */
let router
beforeAll(async () => {
  router = new StableAddresses(await Application.bootstrap({ logLevel: 'None' }))
})

function pagesOf(...members) {
  const project = new ProjectReflection('saltwright', { hasFile: () => false })
  const formula = new DeclarationReflection('formula', ReflectionKind.Module, project)
  project.addChild(formula)
  for (const [name, kind] of members) formula.addChild(new DeclarationReflection(name, kind, formula))
  const guide = new DocumentReflection('Uncertainty', project, [], {})
  placeDocument(guide, 'guides/uncertainty')
  project.addChild(guide)
  return router.buildPages(project).map(({ url }) => url)
}

describe('the address of a page', () => {
  it.each([
    ['a function', 'molarMass', ReflectionKind.Function, 'formula/molarMass.html'],
    ['a constant', 'elements', ReflectionKind.Variable, 'formula/elements.html'],
    ['an interface', 'Formula', ReflectionKind.Interface, 'formula/types/Formula.html'],
    ['a type', 'FormulaLike', ReflectionKind.TypeAlias, 'formula/types/FormulaLike.html'],
    ['a class', 'FormulaError', ReflectionKind.Class, 'formula/types/FormulaError.html'],
  ])('of %s stays', (_, name, kind, address) => {
    expect(pagesOf([name, kind])).toContain(address)
  })

  it('is the same whether a type and a function differ in their case only or not', () => {
    const pages = pagesOf(['Dilution', ReflectionKind.Interface], ['dilution', ReflectionKind.Function])
    expect(pages).toContain('formula/dilution.html')
    expect(pages).toContain('formula/types/Dilution.html')
  })

  it('is that of its file for a guide, whatever its title', () => {
    expect(pagesOf()).toContain('guides/uncertainty.html')
  })

  it('is never told apart by a number', () => {
    expect(() => pagesOf(['a', ReflectionKind.Function], ['A', ReflectionKind.Variable])).toThrow('formula/A')
  })
})
