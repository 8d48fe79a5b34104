import assert from 'node:assert/strict'
import { createRequire } from 'node:module'
import { isQuantity, isSaltwrightError, quantity } from 'saltwright'

const require = createRequire(import.meta.url)
const front = await import('saltwright')
const required = require('saltwright')
const doors = Object.keys(require('saltwright/package.json').exports).filter((door) => !door.endsWith('.json'))

for (const door of doors) {
  const specifier = door.replace('.', 'saltwright')
  const module = await import(specifier)
  const names = Object.keys(module)
  assert.ok(names.length > 0, `${specifier} exports nothing`)
  assert.deepEqual(names, Object.keys(require(specifier)).sort(), `${specifier} differs between import and require`)
  for (const one of names) {
    assert.equal(module[one], front[one], `${one} has a copy of its own behind ${specifier}`)
    assert.equal(require(specifier)[one], required[one], `${one} has a copy of its own behind ${specifier} for require`)
  }
}

// Another copy for CommonJS, whose values are recognised all the same.
assert.notEqual(quantity, required.quantity)
assert.ok(isQuantity(required.quantity('3.98 g')))
assert.ok(isSaltwrightError(required.tryQuantity('3,98 g').error))
assert.equal(quantity('18.632 g').minus(quantity('11.204 g')).toString(), '7.428 g')
