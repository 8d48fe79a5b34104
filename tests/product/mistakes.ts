// Never run, only compiled: what an editor marks.
import { constantMass, gasVolume, netMass } from '../../src/product/index.js'

// @ts-expect-error a volume is no weighing
netMass({ gross: '20 mL', tare: '10 g' })

// @ts-expect-error no such criterion
constantMass({ weighings: ['1 g', '1 g'], criterion: 'dry' })

// @ts-expect-error which standard?
gasVolume({ gas: 'H2', amount: '1 mol', at: 'STP' })
