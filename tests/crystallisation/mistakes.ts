// Never run, only compiled: what an editor marks.
import { expectedCrop, solubilityOf } from '../../src/crystallisation/index.js'
import { quantity } from '../../src/quantity/index.js'

// @ts-expect-error a mass is no temperature
solubilityOf('KNO3', '5 g')

// @ts-expect-error a volume is no mass of water
expectedCrop({ crystal: 'KNO3', dissolved: '20 g', water: quantity('25 mL'), temperature: '5 degC' })
