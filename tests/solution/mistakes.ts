// Lines that must not compile. Never run, only compiled.
import { quantity } from 'saltwright/quantity'
import { amountConcentration, dilution, makeUp, readTo, toleranceOf, volumeToDeliver } from 'saltwright/solution'

// @ts-expect-error a concentration says of what
amountConcentration({ massFraction: '96 %', density: '1.84 g/mL' })
// @ts-expect-error a density is never guessed
amountConcentration({ massFraction: '96 %', substance: 'H2SO4' })
// @ts-expect-error a normality says nothing without its equivalents
amountConcentration({ normality: '6 N', substance: 'H2SO4' })
// @ts-expect-error a mass is no amount
volumeToDeliver('0.25 g', '6 mol/L')
// @ts-expect-error a normality is no amount concentration
volumeToDeliver('0.25 mol', '6 N')
// @ts-expect-error a volume, not a mass
dilution({ from: '6 mol/L', to: '3 mol/L', volume: '50 g' })
// @ts-expect-error a mass is not read in millilitres
readTo(quantity('1.00 g'), '0.1 mL')
// @ts-expect-error class A alone fixes no tolerance
toleranceOf('burette', '50 mL', 'A')
// @ts-expect-error the volume is missing
makeUp({ substance: 'KOH', concentration: '2 mol/L' })

// What must compile.
volumeToDeliver('0.25 mol', '6 M').to('mL').plus(quantity('1 mL'))
readTo(quantity('1.00 g'), '0.01 g').plus(quantity('1 g'))
