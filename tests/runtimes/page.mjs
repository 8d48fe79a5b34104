import * as front from 'saltwright'
import * as equation from 'saltwright/equation'
import * as formula from 'saltwright/formula'
import * as preparation from 'saltwright/preparation'
import * as quantity from 'saltwright/quantity'
import * as report from 'saltwright/report'
import * as review from 'saltwright/review'
import { suite } from './suite.mjs'

globalThis.checked = suite([front, quantity, formula, equation, preparation, review, report])
