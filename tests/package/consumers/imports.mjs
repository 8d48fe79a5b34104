import assert from 'node:assert/strict'
import { createRequire } from 'node:module'

const require = createRequire(import.meta.url)
const doors = Object.keys(require('saltwright/package.json').exports).filter((door) => !door.endsWith('.json'))

for (const door of doors) {
  const specifier = door.replace('.', 'saltwright')
  const names = Object.keys(await import(specifier))
  assert.ok(names.length > 0, `${specifier} exports nothing`)
  assert.deepEqual(names, Object.keys(require(specifier)).sort(), `${specifier} differs between import and require`)
}

const { isSaltwrightError, SaltwrightError } = await import('saltwright')
const { SaltwrightError: required } = require('saltwright')
assert.notEqual(SaltwrightError, required)
assert.ok(isSaltwrightError(new required({ code: 'test/any', message: 'Made by the other module format.' })))
