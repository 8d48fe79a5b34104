import { type Quantity, quantity } from 'saltwright'
import { QuantityError } from 'saltwright/quantity'

export const crop: Quantity<'mass'> = quantity('18.632 g').minus(quantity('11.204 g'))
export const wrong: string = new QuantityError({ code: 'quantity/empty', message: 'Nothing to read.' }).code

// @ts-expect-error a mass and an amount do not add
quantity('1.00 g').plus(quantity('1.00 mol'))
