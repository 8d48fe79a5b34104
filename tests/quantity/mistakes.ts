// Lines that must not compile. Never run, only compiled.
import { exact, quantity } from 'saltwright/quantity'

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

// What must compile, with these dimensions.
mass.dividedBy(quantity('79.545 g/mol')).plus(amount)
amount.dividedBy(quantity('6 mol/L')).to('mL')
exact(2).times(mass).plus(mass)
quantity('18.4 mol L^-1').times(quantity('25.0 mL')).plus(amount)
quantity('96 %').times(mass).plus(mass)
quantity('3.98').plus(exact(1))
quantity(text).toString()
