// Lines that must not compile. Never run, only compiled.
import { asDimension, constant, exact, power, quantity } from 'saltwright/quantity'

const text: string = '3.98 g'
const mass = quantity('3.98 g')
const amount = quantity('0.0500 mol')

// @ts-expect-error a mass and an amount do not add
mass.plus(amount)
// @ts-expect-error a mass and a volume do not compare
mass.compare(quantity('3.98 mL'))
// @ts-expect-error no such unit
quantity('3.98 gm')
// @ts-expect-error a decimal comma
quantity('3,98 g')
// @ts-expect-error a decimal comma in a ratio
quantity('3,98')
// @ts-expect-error a JavaScript number has lost its zeros
quantity(3.98)
// @ts-expect-error a mass times a mass is nothing here
mass.times(mass)
// @ts-expect-error an amount divided by a molar mass is nothing here
amount.dividedBy(quantity('18.015 g/mol'))
// @ts-expect-error millilitres are no unit of mass
mass.to('mL')
// @ts-expect-error values do not change
mass.unit = 'kg'

// @ts-expect-error no space, so the unit is not seen
quantity('3.98g')
// @ts-expect-error no number
quantity('')
// @ts-expect-error a decimal comma before an uncertainty
quantity('3,98(2) g')
// @ts-expect-error an uncertainty does not change the dimension
mass.plus(quantity('0.0500(2) mol'))
// @ts-expect-error a text whose dimension is not known is not known to be a mass
mass.plus(quantity(text))
// @ts-expect-error only ratios have powers
power(mass, 2)
// @ts-expect-error no such dimension
asDimension(mass, 'weight')
// @ts-expect-error no such distribution
quantity('25.00 mL', { uncertainty: { halfWidth: '0.03 mL', distribution: 'uniform' } })
// @ts-expect-error a tolerance is text with its unit
quantity('25.00 mL', { uncertainty: { tolerance: 0.03 } })
// @ts-expect-error no such reading of zeros
constant('250 mL', { wholeNumberZeros: 'some' })

// What must compile, with these dimensions.
mass.dividedBy(quantity('79.545 g/mol')).plus(amount)
amount.dividedBy(quantity('6 mol/L')).to('mL')
exact(2).times(mass).plus(mass)
quantity('18.4 mol L^-1').times(quantity('25.0 mL')).plus(amount)
quantity('96 %').times(mass).plus(mass)
quantity('3.98').plus(exact(1))
quantity(text).toString()
asDimension(quantity(text), 'mass').plus(mass)
mass.plus(quantity('3.9772(21) g'))
mass.plus(quantity('(3.9772 ± 0.0021) g'))
