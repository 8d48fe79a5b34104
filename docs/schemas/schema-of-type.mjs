import ts from 'typescript'

/**
 * JSON Schemas of what `JSON.stringify` makes of the types of the library. A type with a `toJSON` method is what that returns; a member
 * that may be undefined may be absent; numbers that are not finite become null.
 *
 * @param {string} file - Path of a TypeScript file that exports the types.
 * @param {object} options - Compiler options.
 * @returns {(name: string) => object} Gives the schema of an exported type.
 */
export function schemasOf(file, options) {
  const program = ts.createProgram([file], options)
  const checker = program.getTypeChecker()
  const face = checker.getSymbolAtLocation(program.getSourceFile(file))
  const exported = new Map(checker.getExportsOfModule(face).map((symbol) => [symbol.name, symbol]))
  return (name) => {
    const symbol = exported.get(name)
    if (symbol === undefined) throw new Error(`${file} exports no ${name}`)
    const type = checker.getDeclaredTypeOfSymbol(resolved(symbol, checker))
    const shared = new Map()
    const schema = new Writer(checker, shared).schema(type)
    return { ...schema, ...(shared.size > 0 ? { $defs: Object.fromEntries(shared) } : {}) }
  }
}

function resolved(symbol, checker) {
  return symbol.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(symbol) : symbol
}

class Writer {
  constructor(checker, shared) {
    this.checker = checker
    this.shared = shared
  }

  /** The schema of a type; named object types are written once and referred to. */
  schema(type) {
    const json = this.asJson(type)
    if (json.isUnion()) return isRecursive(json) ? this.named(json) : this.union(json)
    if (json.isStringLiteral() || json.isNumberLiteral()) return { const: json.value }
    if (json.flags & ts.TypeFlags.BooleanLiteral) return { const: this.checker.typeToString(json) === 'true' }
    if (json.flags & ts.TypeFlags.String || json.flags & ts.TypeFlags.TemplateLiteral) return { type: 'string' }
    if (json.flags & ts.TypeFlags.Number) return { type: ['number', 'null'] }
    if (json.flags & ts.TypeFlags.Boolean) return { type: 'boolean' }
    if (json.flags & ts.TypeFlags.Null) return { type: 'null' }
    if (json.flags & (ts.TypeFlags.Any | ts.TypeFlags.Unknown)) return {}
    if (this.checker.isTupleType(json)) return this.tuple(json)
    if (this.checker.isArrayType(json))
      return { type: 'array', items: this.schema(this.checker.getTypeArguments(json)[0]) }
    if (json.flags & ts.TypeFlags.Object || json.isIntersection()) return this.named(json)
    throw new Error(`there is no JSON of ${this.checker.typeToString(json)}`)
  }

  /** What `JSON.stringify` sees of a type. */
  asJson(type) {
    const method = type.getProperty('toJSON')
    if (method === undefined) return type
    const [signature] = this.checker.getTypeOfSymbol(method).getCallSignatures()
    return signature.getReturnType()
  }

  union(type) {
    const parts = type.types.filter((part) => !(part.flags & ts.TypeFlags.Undefined))
    if (parts.length === 1) return this.schema(parts[0])
    if (parts.every((part) => part.isStringLiteral())) return { enum: parts.map(({ value }) => value) }
    if (parts.every((part) => part.flags & ts.TypeFlags.BooleanLiteral)) return { type: 'boolean' }
    const schemas = new Map(parts.map((part) => this.schema(part)).map((schema) => [JSON.stringify(schema), schema]))
    return schemas.size === 1 ? [...schemas.values()][0] : { anyOf: [...schemas.values()] }
  }

  tuple(type) {
    const items = this.checker.getTypeArguments(type).map((item) => this.schema(item))
    return { type: 'array', prefixItems: items, minItems: items.length, maxItems: items.length }
  }

  named(type) {
    const name = type.aliasSymbol?.name ?? type.symbol?.name
    if (name === undefined || name.startsWith('__') || isGeneric(type)) return this.object(type)
    if (!this.shared.has(name)) {
      this.shared.set(name, {}) // before its members, which may refer to it
      this.shared.set(name, type.isUnion() ? this.union(type) : this.object(type))
    }
    return { $ref: `#/$defs/${name}` }
  }

  object(type) {
    const properties = this.checker.getPropertiesOfType(type).filter((member) => this.isData(member))
    const index = this.checker.getIndexInfosOfType(type)[0]
    const description = isGeneric(type) ? '' : describedBy(type.aliasSymbol ?? type.symbol, this.checker)
    return {
      type: 'object',
      ...(description ? { description } : {}),
      properties: Object.fromEntries(properties.map((member) => [member.name, this.member(member)])),
      required: properties.filter((member) => !this.mayBeAbsent(member)).map(({ name }) => name),
      additionalProperties: index === undefined ? false : this.schema(index.type),
    }
  }

  member(member) {
    const schema = this.schema(this.checker.getTypeOfSymbol(member))
    const description = describedBy(member, this.checker)
    return description ? { description, ...schema } : schema
  }

  isData(member) {
    const type = this.checker.getTypeOfSymbol(member)
    return !member.name.startsWith('__@') && type.getCallSignatures().length === 0
  }

  mayBeAbsent(member) {
    if (member.flags & ts.SymbolFlags.Optional) return true
    const type = this.checker.getTypeOfSymbol(member)
    return type.isUnion() && type.types.some((part) => part.flags & ts.TypeFlags.Undefined)
  }
}

/** An alternative of object types that has a name may have itself inside. */
function isRecursive(type) {
  return type.aliasSymbol !== undefined && type.types.some((part) => part.flags & ts.TypeFlags.Object)
}

/** `Record`, `Pick` and their like have no name of their own. */
function isGeneric({ aliasTypeArguments }) {
  return aliasTypeArguments !== undefined && aliasTypeArguments.length > 0
}

function describedBy(symbol, checker) {
  if (symbol === undefined || symbol.name.startsWith('__')) return ''
  return ts.displayPartsToString(symbol.getDocumentationComment(checker)).replace(/\s+/g, ' ').trim()
}
