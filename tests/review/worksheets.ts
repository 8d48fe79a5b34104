import { assessPreparation, planPreparation } from 'saltwright/preparation'
import type { FilledWorksheet } from 'saltwright/review'
import { alum, zincSulfate } from '../preparation/recipes.js'

/** Zinc oxide in dilute acid, 0.0400 mol. */
export const zincPlan = planPreparation(zincSulfate)
export const alumPlan = planPreparation(alum)

/** What a bench weighed; invented. */
export const zincAssessment = assessPreparation(zincPlan, {
  format: 'saltwright/records@1',
  supplies: [{ substance: 'ZnO', gross: '5.355 g', tare: '2.100 g' }],
  product: { tare: ['11.000 g', '0.204 g'], series: ['20.800 g', '20.317 g'] },
})

/** Right answers to all questions on the zinc sulfate. */
export const allRight: Readonly<Record<string, string>> = {
  'amount-of-ZnO': '0.0400 mol',
  'mass-of-ZnO': '3.255 g',
  'amount-of-H2SO4': '0.0440 mol',
  'volume-of-H2SO4': '14.7 mL',
  'limiting-reagent': 'zinc oxide',
  'molar-mass-of-product': '287.54 g/mol',
  'theoretical-amount': '0.0400 mol',
  'theoretical-yield': '11.50 g',
}

export function filledIn(answers: Readonly<Record<string, string>>, bench?: string): FilledWorksheet {
  return { format: 'saltwright/worksheet@1', ...(bench !== undefined && { bench }), answers }
}
