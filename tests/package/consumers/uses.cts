import saltwright = require('saltwright')

export const answer: boolean = saltwright.isSaltwrightError(new Error('something else'))
