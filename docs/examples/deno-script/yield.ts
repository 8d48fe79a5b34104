// A yield with its uncertainty: deno run yield.ts
import { percentYield, quantity, theoreticalYield, writeWithUncertainty } from 'saltwright'

const step = { readability: '0.001 g' }
const oxide = quantity('3.272 g', { uncertainty: [step, step], label: 'zinc oxide' })
const crop = quantity('18.616 g', { uncertainty: step }).minus(quantity('11.204 g', { uncertainty: step }))

const possible = theoreticalYield('ZnO + H2SO4 + 6 H2O -> ZnSO4·7H2O', 'ZnSO4·7H2O', { ZnO: oxide })
console.log(`yield: ${writeWithUncertainty(percentYield(crop, possible.mass))}`)
