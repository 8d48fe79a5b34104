import ts from 'typescript'
import { describe, expect, it } from 'vitest'
import { filesUnder, read } from './files.js'

/** From top to bottom: a folder may import those below it, never those above, and never one of its own rank. */
const layers = [
  'index',
  'report',
  'review',
  'preparation',
  'cautions',
  'product',
  'crystallisation',
  'solution',
  'stoichiometry',
  'equation',
  'formula',
  'element',
  'quantity',
  'display',
  'fraction',
  'decimal',
  'errors',
]

/** The topics that read other people's JSON; the ones below stay free of the schema library. */
const readsJson = ['report', 'review', 'preparation']

const allowedPackages = new Map([
  ['decimal.js', (file: string) => file === 'src/decimal.ts'],
  ['zod/mini', (file: string) => readsJson.includes(layerOf(file))],
])

interface Import {
  readonly from: string
  readonly to: string
}

const imports: readonly Import[] = filesUnder('src/')
  .filter((file) => file.endsWith('.ts'))
  .flatMap((from) => ts.preProcessFile(read(from)).importedFiles.map(({ fileName: to }) => ({ from, to })))

/** The folder under src, or the name of a file that stands beside the folders. */
function layerOf(file: string): string {
  return (file.split('/')[1] ?? '').replace(/\.ts$/, '')
}

/** The file that a relative import names, as a path from the root. */
function target({ from, to }: Import): string {
  return new URL(to, `file:///${from}`).pathname.slice(1).replace(/\.js$/, '.ts')
}

function pointsDown(line: Import): boolean {
  const [from, to] = [layerOf(line.from), layerOf(target(line))]
  return from === to || layers.indexOf(from) < layers.indexOf(to)
}

describe('the layers of src', () => {
  it('every folder and file of src has its place in the list', () => {
    const found = new Set(
      filesUnder('src/')
        .filter((file) => file.endsWith('.ts'))
        .map(layerOf),
    )
    expect([...found].filter((layer) => !layers.includes(layer))).toEqual([])
  })

  it('imports point down only', () => {
    const local = imports.filter(({ to }) => to.startsWith('.'))
    expect(local.length).toBeGreaterThan(0)
    expect(local.filter((line) => !pointsDown(line))).toEqual([])
  })

  it('packages are imported only where they belong', () => {
    const packages = imports.filter(({ to }) => !to.startsWith('.'))
    expect(packages.filter(({ from, to }) => !allowedPackages.get(to)?.(from))).toEqual([])
  })

  it('a face only exports, and by name', () => {
    const faces = filesUnder('src/').filter((file) => file.endsWith('/index.ts'))
    const statements = faces.flatMap((file) =>
      ts.createSourceFile(file, read(file), ts.ScriptTarget.ES2022).statements.map((node) => ({ file, node })),
    )
    const others = statements.filter(({ node }) => !(ts.isExportDeclaration(node) && node.exportClause))
    expect(others.map(({ file }) => file)).toEqual([])
  })
})
