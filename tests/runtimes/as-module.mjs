import { doors, suite } from './suite.mjs'

console.log(`${suite(await Promise.all(doors.map((door) => import(door))))} checks`)
