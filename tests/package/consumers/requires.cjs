const assert = require('node:assert/strict')
const { isSaltwrightError } = require('saltwright')

assert.equal(isSaltwrightError(new Error('something else')), false)
