import assert from 'node:assert/strict'
import { createRequire } from 'node:module'
import { isQuantity, isSaltwrightError, quantity } from 'saltwright'
import { quantity as sameQuantity } from 'saltwright/quantity'

const require = createRequire(import.meta.url)
const required = require('saltwright')
const doors = Object.keys(require('saltwright/package.json').exports).filter((door) => !door.endsWith('.json'))

for (const door of doors) {
  const specifier = door.replace('.', 'saltwright')
  const names = Object.keys(await import(specifier))
  assert.ok(names.length > 0, `${specifier} exports nothing`)
  assert.deepEqual(names, Object.keys(require(specifier)).sort(), `${specifier} differs between import and require`)
}

// One copy behind all doors, and another copy for CommonJS, whose values are recognised all the same.
assert.equal(quantity, sameQuantity)
assert.notEqual(quantity, required.quantity)
assert.ok(isQuantity(required.quantity('3.98 g')))
assert.ok(isSaltwrightError(required.tryQuantity('3,98 g').error))
assert.equal(quantity('18.632 g').minus(quantity('11.204 g')).toString(), '7.428 g')
