import { readFileSync } from 'node:fs'
import { describe, expect, it } from 'vitest'

interface Locked {
  readonly version?: string
  readonly license?: string
  readonly dev?: boolean
  readonly optional?: boolean
  readonly hasInstallScript?: boolean
}

const readJson = (path: string): unknown => JSON.parse(readFileSync(new URL(`../../${path}`, import.meta.url), 'utf8'))
const { dependencies, devDependencies, scripts, files } = readJson('package.json') as {
  readonly dependencies: Readonly<Record<string, string>>
  readonly devDependencies: Readonly<Record<string, string>>
  readonly scripts: Readonly<Record<string, string>>
  readonly files: readonly string[]
}
const { packages } = readJson('package-lock.json') as { readonly packages: Readonly<Record<string, Locked>> }
const locked = Object.entries(packages).filter(([path]) => path !== '')

/** Licences that ask for no more than that they are passed on; the last three come with tools only. */
const permissive = ['MIT', 'ISC', 'Apache-2.0', 'BSD-2-Clause', 'BSD-3-Clause', '0BSD', 'BlueOak-1.0.0', 'Unlicense']
const ofTools = [...permissive, 'MIT OR Apache-2.0', 'Python-2.0', 'CC-BY-4.0', 'MPL-2.0']

describe('what the package brings along', () => {
  it('is two packages, which bring nothing themselves, under the MIT licence', () => {
    const runtime = locked.filter(([, { dev }]) => dev !== true)
    expect(runtime.map(([path, { version, license }]) => [path, version, license])).toEqual([
      ['node_modules/decimal.js', dependencies['decimal.js'], 'MIT'],
      ['node_modules/zod', dependencies.zod, 'MIT'],
    ])
  })

  it('runs nothing when it is installed', () => {
    for (const hook of ['preinstall', 'install', 'postinstall', 'prepare', 'prepublish'])
      expect(scripts).not.toHaveProperty(hook)
    expect(locked.filter(([, { dev, hasInstallScript }]) => dev !== true && hasInstallScript)).toEqual([])
  })

  it('is what was built, and nothing else', () => {
    expect(files).toEqual(['dist'])
  })
})

describe('what the project is built with', () => {
  it('is pinned to exact versions', () => {
    const versions = Object.values({ ...dependencies, ...devDependencies })
    expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([])
  })

  it('has licences that are known', () => {
    const unknown = locked.filter(([, { license }]) => !ofTools.includes(license ?? 'none'))
    expect(unknown.map(([path, { license }]) => `${path}: ${license}`)).toEqual([])
  })
})
