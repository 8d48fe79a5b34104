import { fileURLToPath } from 'node:url'
import ts from 'typescript'
import { read, root } from './files.js'

/** What a user can import by name from one door. */
export interface Exported {
  /** As in `import ... from 'saltwright/formula'`. */
  readonly door: string
  readonly name: string
  readonly kind: 'function' | 'class' | 'constant' | 'type'
  readonly declarations: readonly ts.Declaration[]
  /** The types that its calls return, written out; empty unless it is a function. */
  readonly returned: readonly string[]
}

const { exports } = JSON.parse(read('package.json')) as { exports: Record<string, unknown> }

/** The doors of the package, as users write them. */
export const doors: readonly string[] = Object.keys(exports)
  .filter((key) => !key.endsWith('.json'))
  .map((key) => key.replace('.', 'saltwright'))

/** The source file behind a door, from the root. */
export function faceOf(door: string): string {
  return door === 'saltwright' ? 'src/index.ts' : `src/${door.slice('saltwright/'.length)}/index.ts`
}

/** Everything that every door exports, door by door, each sorted by name. */
export function exportedNames(): readonly Exported[] {
  const files = doors.map((door) => fileURLToPath(new URL(faceOf(door), root)))
  const program = ts.createProgram(files, compilerOptions())
  const checker = program.getTypeChecker()
  return doors.flatMap((door, index) => {
    const source = program.getSourceFile(files[index] as string) as ts.SourceFile
    const face = checker.getSymbolAtLocation(source)
    const symbols = face === undefined ? [] : checker.getExportsOfModule(face)
    return symbols.map((symbol) => exported(door, symbol, checker)).sort((a, b) => (a.name < b.name ? -1 : 1))
  })
}

function compilerOptions(): ts.CompilerOptions {
  const path = fileURLToPath(new URL('src/tsconfig.json', root))
  const { config } = ts.readConfigFile(path, ts.sys.readFile)
  return ts.parseJsonConfigFileContent(config, ts.sys, fileURLToPath(new URL('src', root))).options
}

function exported(door: string, alias: ts.Symbol, checker: ts.TypeChecker): Exported {
  const symbol = alias.flags & ts.SymbolFlags.Alias ? checker.getAliasedSymbol(alias) : alias
  const calls = symbol.flags & ts.SymbolFlags.Value ? checker.getTypeOfSymbol(symbol).getCallSignatures() : []
  const returned = calls.map((call) => checker.typeToString(call.getReturnType()))
  return { door, name: alias.name, kind: kindOf(symbol, calls), declarations: symbol.declarations ?? [], returned }
}

function kindOf(symbol: ts.Symbol, calls: readonly ts.Signature[]): Exported['kind'] {
  if (symbol.flags & ts.SymbolFlags.Class) return 'class'
  if (calls.length > 0) return 'function'
  return symbol.flags & ts.SymbolFlags.Value ? 'constant' : 'type'
}
