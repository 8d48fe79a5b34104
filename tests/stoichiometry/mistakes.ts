// Lines that must not compile. Never run, only compiled.
import { quantity } from 'saltwright/quantity'
import { amountFromMass, amountNeeded, limitingReagent, massFromAmount, runStages } from 'saltwright/stoichiometry'

const equation = 'ZnO + H2SO4 -> ZnSO4 + H2O'

// @ts-expect-error an amount is not weighed
amountFromMass('0.050 mol', 'CuO')
// @ts-expect-error a mass is no amount
massFromAmount(quantity('3.98 g'), 'CuO')
// @ts-expect-error a decimal comma
amountFromMass('3,98 g', 'CuO')
// @ts-expect-error a volume is neither an amount nor a mass
limitingReagent(equation, { ZnO: '25 mL' })
// @ts-expect-error an amount needs its species
amountNeeded(equation, 'H2SO4', { for: '0.050 mol' })
// @ts-expect-error a stage has an equation
runStages([{ add: { ZnO: '1 mol' } }])

// What must compile.
amountFromMass('3.98 g', 'CuO').plus(quantity('0.050 mol'))
massFromAmount('50 mmol', 'CuO', { assay: '98.5%' }).plus(quantity('1 g'))
limitingReagent(equation, { ZnO: '4.07 g', H2SO4: quantity('0.060 mol') }).extent.to('mmol')
