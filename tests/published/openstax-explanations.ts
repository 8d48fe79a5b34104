import { exact, quantity, roundTo } from '../../src/quantity/index.js'
import { amountInVolume } from '../../src/solution/index.js'
import { massFromAmount } from '../../src/stoichiometry/index.js'
import { answerTo, type NumericRow } from './openstax-calculations.js'
import { unroundedTo } from './written-as.js'

/** How the book came to its value where ours is another: the slip put into the calculation. By place and printed value. */
const slips: Readonly<Record<string, () => string>> = {
  'text before Example 3.10: 82.27 %': () => quantity('14.01 g').dividedBy(quantity('17.03 g')).to('%').toString(),
  'Example 3.16 CYL: 0.674 mol/L': () =>
    quantity('6.52 g').dividedBy(quantity('128.9 g/mol')).dividedBy(quantity('0.0750 L')).toString(),
  'Exercise 3.3-8 (d): 5.9e-7 mol': () =>
    unroundedTo('5.9e-7 mol', roundTo(amountInVolume('325 mL', '1.8e-6 mol/L'), { figures: 2, rule: 'half-up' })),
  'Exercise 4.3-2 (b): 0.005780 mol': () => exact(2).times(quantity('2.890e-3 mol')).toString(),
  'Exercise 4.3-4 (e): 2762 g': () => unroundedTo('2762 g', massFromAmount(quantity('16.31 mol'), 'BaO2')),
  'Exercise 4.3-4 (f): 5.81 g': () => massFromAmount(quantity('0.207 mol'), 'C2H4').toString(),
  'Exercise 4.4-14: 86.56 %': () =>
    quantity('1.073 g')
      .dividedBy(massFromAmount(quantity('3.008e-3 mol'), 'UO2(C2O4)·3H2O'))
      .to('%')
      .toString(),
  'Example 4.14 CYL: 0.2648 mol/L': () =>
    exact('2.5').times(quantity('2.118e-3 mol')).dividedBy(quantity('0.02000 L')).toString(),
  'Example 4.15 CYL: 23.76 %': () => quantity('0.2691 g').dividedBy(quantity('1.1324 g')).to('%').toString(),
}

/** The printed value again, once the reason for the difference is put in; undefined where the reason is not known well enough. */
export function explanationOf(row: NumericRow): (() => string) | undefined {
  const { weights, printed } = row
  if (weights !== undefined) return () => unroundedTo(printed, answerTo(row, weights))
  if (row.differs?.includes('more figures')) return () => unroundedTo(printed, answerTo(row))
  return slips[`${row.at}: ${printed}`]
}
