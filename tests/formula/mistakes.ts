// Never run, only compiled: each line below a mark must not compile.
import {
  formatFormula,
  formulaFromName,
  molarMass,
  parseFormula,
  systematicName,
  tryParseFormula,
} from '../../src/formula/index.js'
import { quantity } from '../../src/quantity/index.js'

const salt = parseFormula('ZnSO4·7H2O')

// @ts-expect-error a formula is text, not a number
parseFormula(65)
// @ts-expect-error a formula that was read is not read again: functions take it as it is
parseFormula(salt)
// @ts-expect-error no such style
formatFormula(salt, 'markdown')
// @ts-expect-error a style has to be said
formatFormula(salt)
// @ts-expect-error a formula does not change
salt.charge = 2
// @ts-expect-error nor do its parts
salt.parts.push(salt.parts[0])
// @ts-expect-error nor do its atoms
salt.composition.set('Zn', salt.composition.get('S'))
// @ts-expect-error a molar mass and a mass do not add
molarMass(salt).plus(quantity('1.00 g'))
// @ts-expect-error no such set of atomic weights
molarMass(salt, { weights: 'rounded' })
// @ts-expect-error a name is text
formulaFromName(salt)
// @ts-expect-error a list of formulas has no name
systematicName(['ZnSO4'])
// @ts-expect-error the value is there only when the reading went well
tryParseFormula('ZnSO4').value
