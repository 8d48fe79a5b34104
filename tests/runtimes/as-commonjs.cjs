const { createRequire } = require('node:module')

const load = createRequire(__filename)

import('./suite.mjs').then(({ doors, suite }) => {
  console.log(`${suite(doors.map((door) => load(door)))} checks`)
})
