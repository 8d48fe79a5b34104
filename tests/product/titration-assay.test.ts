import { describe, expect, it } from 'vitest'
import { type TitrationAssay, titrationAssay } from '../../src/product/index.js'
import { refusal } from '../quantity/refusal.js'

const iron: TitrationAssay = {
  sample: '1.2040 g',
  sought: '(NH4)2Fe(SO4)2·6H2O',
  titrant: { concentration: '0.02010 mol/L', volume: '30.21 mL' },
  ratio: '5',
}
const magnesia: TitrationAssay = {
  sample: '0.5000 g',
  sought: 'MgO',
  titrant: { concentration: '1.000 mol/L', volume: '50.00 mL' },
  ratio: '1/2',
}

describe('a titration assay', () => {
  it.each([
    { what: 'directly', assay: iron, amount: '0.003036 mol', fraction: '98.88 %' },
    {
      what: 'with a blank',
      assay: { ...iron, titrant: { ...iron.titrant, blank: '0.05 mL' } },
      amount: '0.003031 mol',
      fraction: '98.72 %',
    },
    {
      what: 'by back titration',
      assay: { ...magnesia, back: { concentration: '1.000 mol/L', volume: '26.00 mL' } },
      amount: '0.01200 mol',
      fraction: '96.73 %',
    },
    {
      what: 'by back titration, two for one',
      assay: { ...magnesia, back: { concentration: '1.000 mol/L', volume: '13.00 mL' }, backRatio: '2' },
      amount: '0.01200 mol',
      fraction: '96.73 %',
    },
    {
      what: 'of an aliquot',
      assay: { ...iron, sample: '12.040 g', aliquot: { taken: '25.00 mL', of: '250.0 mL' } },
      amount: '0.03036 mol',
      fraction: '98.88 %',
    },
    {
      what: 'one for one unless said',
      assay: { ...iron, ratio: undefined },
      amount: '6.072e-4 mol',
      fraction: '19.78 %',
    },
    {
      what: 'with other atomic weights',
      assay: { ...iron, weights: 'standard' },
      amount: '0.003036 mol',
      fraction: '98.89 %',
    },
    {
      what: 'below zero, as found',
      assay: { ...magnesia, back: { concentration: '1.000 mol/L', volume: '51.00 mL' } },
      amount: '-5.0e-4 mol',
      fraction: '-4.03 %',
    },
  ] as const)('$what is $fraction', ({ assay, amount, fraction }) => {
    const found = titrationAssay(assay as TitrationAssay)
    expect(found.amount.to('mol').value.toPrecision(4)).toBe(Number.parseFloat(amount).toPrecision(4))
    expect(found.massFraction.toString()).toBe(fraction)
  })

  it('names its numbers for a working', () => {
    const { amount, mass } = titrationAssay(iron)
    expect(amount.naming).toMatchObject({ label: 'amount of (NH4)2Fe(SO4)2·6H2O', symbol: 'n', role: 'amount' })
    expect(mass.naming).toMatchObject({ symbol: 'm', of: '(NH4)2Fe(SO4)2·6H2O', role: 'mass' })
  })

  it.each([
    { what: 'no assay', assay: 7, code: 'product/not-an-object' },
    { what: 'no titrant', assay: { ...iron, titrant: undefined }, code: 'product/not-an-object' },
    { what: 'no back titrant', assay: { ...iron, back: '5 mL' }, code: 'product/not-an-object' },
    { what: 'no aliquot', assay: { ...iron, aliquot: '25 mL' }, code: 'product/not-an-object' },
    {
      what: 'an empty aliquot',
      assay: { ...iron, aliquot: { taken: '0 mL', of: '250 mL' } },
      code: 'product/not-positive',
    },
    {
      what: 'water for a titrant',
      assay: { ...iron, titrant: { concentration: '0 mol/L', volume: '30 mL' } },
      code: 'product/not-positive',
    },
    { what: 'no sample', assay: { ...iron, sample: '0 g' }, code: 'product/not-positive' },
    { what: 'a ratio that is none', assay: { ...iron, ratio: 'five' }, code: 'product/unreadable-ratio' },
    { what: 'a substance that is none', assay: { ...iron, sought: 'fe' }, code: 'formula/unknown-symbol' },
  ])('is refused with $what', ({ assay, code }) => {
    expect(refusal(() => titrationAssay(assay as TitrationAssay)).code).toBe(code)
  })
})
