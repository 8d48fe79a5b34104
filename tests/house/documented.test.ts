import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { type Exported, exportedNames } from './doors.js'
import { filesUnder, read } from './files.js'

/** Every exported name once, under the door of its topic. */
const names = [...new Map(exportedNames().map((name) => [name.declarations[0], name])).values()]
const functions = names.filter(({ kind }) => kind === 'function')
const source = filesUnder('src/').map(read).join('\n')

/** A member that only tells one alternative from another. */
const saysItself = /^readonly \w+: ('[^']*'|true|false)[;,]?$/

/** They make, name or narrow a quantity without working anything out. */
const applyNoRule = ['asDimension', 'constant', 'exact']

/** The doc comments of a declaration, as they stand in the source. */
function comment(...declarations: readonly ts.Node[]): string {
  return declarations
    .flatMap((node) => ts.getJSDocCommentsAndTags(node).filter(ts.isJSDoc))
    .map((doc) => doc.getText())
    .join('\n')
}

/** Addresses of the names whose comment lacks something. */
function lacking(among: readonly Exported[], has: (comment: string, name: Exported) => boolean): string[] {
  return among.filter((name) => !has(comment(...name.declarations), name)).map(({ door, name }) => `${door} ${name}`)
}

function parameters({ declarations }: Exported): string[] {
  return declarations
    .flatMap((node) => (ts.isFunctionLike(node) ? node.parameters : []))
    .map(({ name }) => name.getText())
    .filter((name) => /^\w+$/.test(name))
}

/** The members that users see: of an interface, a class, an object type. */
function members({ declarations }: Exported): readonly (ts.TypeElement | ts.ClassElement)[] {
  return declarations
    .flatMap((node): readonly (ts.TypeElement | ts.ClassElement)[] => {
      if (ts.isInterfaceDeclaration(node) || ts.isClassDeclaration(node)) return node.members
      return ts.isTypeAliasDeclaration(node) ? objectTypes(node.type).flatMap((type) => type.members) : []
    })
    .filter((member) => !/^(private |#)/.test(member.getText()) && !comment(member).includes('@internal'))
    .filter((member) => !saysItself.test(member.getText()))
}

/** The object types that an alias is made of, not those inside its members. */
function objectTypes(type: ts.TypeNode): readonly ts.TypeLiteralNode[] {
  if (ts.isTypeLiteralNode(type)) return [type]
  return ts.isUnionTypeNode(type) || ts.isIntersectionTypeNode(type) ? type.types.flatMap(objectTypes) : []
}

describe('what the doc comment of an export tells', () => {
  it('what it is', () => expect(lacking(names, (text) => /\w{2}/.test(text))).toEqual([]))

  it('what each member is', () => {
    const bare = names.flatMap((name) =>
      members(name)
        .filter((member) => comment(member) === '')
        .map((member) => `${name.name}: ${member.getText().split('\n')[0]}`),
    )
    expect(bare).toEqual([])
  })

  it('what may go into a function', () => {
    const undescribed = functions.flatMap((name) =>
      parameters(name)
        .filter((parameter) => !comment(...name.declarations).includes(`@param ${parameter} - `))
        .map((parameter) => `${name.name}: ${parameter}`),
    )
    expect(undescribed).toEqual([])
  })

  it('what comes out of a function', () => {
    expect(lacking(functions, (text) => text.includes('@returns '))).toEqual([])
  })

  it('what stops a function, or that nothing does: `@throws Never.`', () => {
    const neverThrows = /^(is|try)[A-Z]/ // a guard, and a reader that gives its error back
    const others = functions.filter(({ name }) => !neverThrows.test(name))
    expect(
      lacking(others, (text) => /@throws (Never\.|\{@link \w+\}.*(`[a-z]+\/[a-z-]+`|\{@link \w+\}))/.test(text)),
    ).toEqual([])
  })

  it('only error codes that exist', () => {
    const codes = names.flatMap(({ declarations }) => comment(...declarations).match(/`[a-z]+\/[a-z-]+`/g) ?? [])
    expect(codes.filter((code) => !source.includes(code.replaceAll('`', "'")))).toEqual([])
  })

  it('who says so, where a quantity is worked out', () => {
    const calculating = functions.filter(({ name, returned }) => {
      return !applyNoRule.includes(name) && returned.some((type) => type.startsWith('Quantity<'))
    })
    expect(lacking(calculating, (text) => text.includes('@source '))).toEqual([])
  })

  it('what a call looks like', () => {
    const used = names.filter(({ kind }) => kind === 'function' || kind === 'class')
    expect(lacking(used, (text) => /@example\s[\s\S]*```ts\n/.test(text))).toEqual([])
  })
})
