const assert = require('node:assert/strict')
const { quantity, SaltwrightError } = require('saltwright')
const { QuantityError, quantity: sameQuantity } = require('saltwright/quantity')

assert.equal(quantity, sameQuantity)
assert.ok(QuantityError.prototype instanceof SaltwrightError)
assert.equal(quantity('18.632 g').minus(quantity('11.204 g')).toString(), '7.428 g')
assert.throws(() => quantity('3,98 g'), { name: 'QuantityError' })
