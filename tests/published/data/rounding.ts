import type { TieRule, WholeNumberZeros } from '../../../src/quantity/index.js'

interface Printed {
  /** As the source prints it. */
  readonly printed: string
  /** Why ours is another, where it is. */
  readonly differs?: string
}

/** A case of counting, rounding or calculating with figures that a source prints. */
export type RoundingRow =
  | (Printed & { readonly kind: 'count'; readonly text: string; readonly zeros: WholeNumberZeros })
  | { readonly kind: 'open count'; readonly text: string; readonly figures: readonly string[] }
  | (Printed & { readonly kind: 'exponent form'; readonly text: string })
  | (Printed & { readonly kind: 'round'; readonly value: string; readonly figures: number; readonly ties: TieRule })
  | (Printed & { readonly kind: 'round'; readonly value: string; readonly step: string; readonly ties: TieRule })
  | (Printed & {
      readonly kind: 'limit'
      readonly value: string
      readonly step: string
      readonly limit: string
      readonly comparison: '<=' | '>='
    })
  | (Printed & { readonly kind: 'sum'; readonly terms: readonly string[] })
  | (Printed & {
      readonly kind: 'product'
      readonly numerator: readonly string[]
      readonly denominator: readonly string[]
      readonly exact?: readonly string[]
      readonly ties?: TieRule
    })
  | (Printed & {
      readonly kind: 'logarithm'
      readonly function: 'log' | '-log' | '10^' | '10^-'
      readonly value: string
    })
  | (Printed & { readonly kind: 'mixed'; readonly expression: string })
  | (Printed & {
      readonly kind: 'mean'
      readonly values: readonly string[]
      readonly ties: TieRule
      readonly figures: number
    })
  | (Printed & { readonly kind: 'root'; readonly value: string })

/**
 * By source. All were read in a stored copy, the source's own or of a page that quotes it, but for those that say "from memory".
 * Terms whose trailing zeros need a reading stand in exponent form. Commas between groups of three are as printed.
 */
export const roundingSources: readonly { readonly source: string; readonly rows: readonly RoundingRow[] }[] = [
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), end-of-chapter exercise on counting',
    rows: [
      { kind: 'count', text: '53', zeros: 'placeholders', printed: '2' },
      { kind: 'count', text: '86,002', zeros: 'placeholders', printed: '5' },
      { kind: 'count', text: '10.0613', zeros: 'placeholders', printed: '6' },
      { kind: 'count', text: '0.88400', zeros: 'placeholders', printed: '5' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), text on 1,300 g',
    rows: [
      { kind: 'count', text: '1.30e3', zeros: 'placeholders', printed: '3' },
      { kind: 'count', text: '1300', zeros: 'placeholders', printed: '2' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), text on leading zeros',
    rows: [{ kind: 'count', text: '8.32407e-3', zeros: 'placeholders', printed: '6' }],
  },
  {
    source: 'OpenStax, University Physics vol. 1, section 1.6 exercises (module m58274)',
    rows: [{ kind: 'count', text: '100.', zeros: 'placeholders', printed: '3' }],
  },
  {
    source: 'OpenStax, College Physics, section 1.3 (module m42120), check your understanding and problems',
    rows: [
      { kind: 'count', text: '15450.0', zeros: 'placeholders', printed: '6' },
      { kind: 'count', text: '87.990', zeros: 'placeholders', printed: '5' },
      { kind: 'count', text: '0.053', zeros: 'placeholders', printed: '2' },
      { kind: 'product', numerator: ['55', '0.0255'], denominator: [], printed: '1.4' },
    ],
  },
  {
    source: 'General chemistry 1 exercises, chemistry.coach, Chemistry and the Scientific Method, exercise 2',
    rows: [
      { kind: 'count', text: '501', zeros: 'placeholders', printed: '3' },
      { kind: 'count', text: '9.00', zeros: 'placeholders', printed: '3' },
      { kind: 'count', text: '0.00700020', zeros: 'placeholders', printed: '6' },
      { kind: 'count', text: '020.0', zeros: 'placeholders', printed: '3' },
      { kind: 'open count', text: '100', figures: ['1', '2', '3'] },
    ],
  },
  {
    source: 'Chemistry practice sheet on significant figures with answers, studylib.net',
    rows: [
      { kind: 'count', text: '0.023', zeros: 'placeholders', printed: '2' },
      { kind: 'count', text: '91010', zeros: 'placeholders', printed: '4' },
      { kind: 'count', text: '1090.0010', zeros: 'placeholders', printed: '8' },
      { kind: 'count', text: '3.4e4', zeros: 'placeholders', printed: '2' },
      { kind: 'count', text: '9.010e-2', zeros: 'placeholders', printed: '4' },
      { kind: 'count', text: '1020010', zeros: 'placeholders', printed: '6' },
      { kind: 'count', text: '1000', zeros: 'placeholders', printed: '1' },
      { kind: 'count', text: '0.0001', zeros: 'placeholders', printed: '1' },
    ],
  },
  {
    source: 'KFUPM general chemistry slides (counts the zeros of a whole number)',
    rows: [
      {
        kind: 'count',
        text: '100',
        zeros: 'placeholders',
        printed: '3',
        differs:
          '3 under the convention that trailing zeros of a whole number are significant; 1 under the convention stated here (placeholders)',
      },
    ],
  },
  {
    source: 'Chemistry worksheet on significant figures with answers, yumpu.com',
    rows: [
      {
        kind: 'count',
        text: '1,020',
        zeros: 'placeholders',
        printed: '4',
        differs: '3 by the rule the worksheet itself states (placeholder zeros not significant; it counts 4,200 as 2)',
      },
      { kind: 'count', text: '4,200.', zeros: 'placeholders', printed: '4' },
      { kind: 'count', text: '5,000', zeros: 'placeholders', printed: '1' },
      { kind: 'count', text: '5,000.0', zeros: 'placeholders', printed: '5' },
      { kind: 'sum', terms: ['55.45', '-28.9'], printed: '26.6' },
      { kind: 'sum', terms: ['505', '-450.25'], printed: '55' },
      { kind: 'product', numerator: ['1.35', '2.467'], denominator: [], printed: '3.33' },
      { kind: 'product', numerator: ['0.021', '3.2', '100.1'], denominator: [], printed: '6.7' },
      {
        kind: 'product',
        numerator: ['1.5e2'],
        denominator: ['4'],
        printed: '37.5',
        differs: '4e1 by the least-figures rule (4 has one figure); 37.5 if the 4 is taken as an exact count',
      },
    ],
  },
  {
    source:
      'European Pharmacopoeia, General Notices as explained by the EDQM (limits: 0.15 has two, 140 has three significant figures)',
    rows: [{ kind: 'count', text: '140', zeros: 'significant', printed: '3' }],
  },
  {
    source: 'ASTM E29-02, section on significant digits (decimal point shown)',
    rows: [{ kind: 'count', text: '1270.', zeros: 'placeholders', printed: '4' }],
  },
  {
    source: 'ASTM E29-02 (exponent form resolves the two to six digits of 140 000 Pa)',
    rows: [{ kind: 'count', text: '1.40e5', zeros: 'placeholders', printed: '3' }],
  },
  {
    source: 'Older JIS rounding guidance, okudaira pipe data page',
    rows: [{ kind: 'count', text: '0.0543', zeros: 'placeholders', printed: '3' }],
  },
  {
    source: 'Number handling techniques handout, studylib.net 7557388',
    rows: [
      { kind: 'count', text: '0.0370', zeros: 'placeholders', printed: '3' },
      { kind: 'count', text: '400,900', zeros: 'placeholders', printed: '4' },
      { kind: 'round', value: '3.75', step: '0.1', ties: 'half-even', printed: '3.8' },
    ],
  },
  {
    source: 'Significant figures rules handout, studylib.net 6633838',
    rows: [
      { kind: 'count', text: '0.00503', zeros: 'placeholders', printed: '3' },
      { kind: 'count', text: '1040', zeros: 'placeholders', printed: '3' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), end-of-chapter exercise on exponential notation',
    rows: [
      { kind: 'exponent form', text: '704', printed: '7.04e2' },
      { kind: 'exponent form', text: '547.9', printed: '5.479e2' },
      { kind: 'exponent form', text: '1000.00', printed: '1.00000e3' },
      { kind: 'exponent form', text: '0.007157', printed: '7.157e-3' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), illustration of the rule',
    rows: [
      { kind: 'round', value: '0.028675', figures: 3, ties: 'half-even', printed: '0.0287' },
      { kind: 'round', value: '6.8752', figures: 3, ties: 'half-even', printed: '6.88' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), example Rounding Numbers',
    rows: [
      { kind: 'round', value: '31.57', figures: 2, ties: 'half-even', printed: '32' },
      { kind: 'round', value: '0.051065', figures: 4, ties: 'half-even', printed: '0.05106' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), check your learning after Rounding Numbers',
    rows: [
      { kind: 'round', value: '0.424', figures: 2, ties: 'half-even', printed: '0.42' },
      { kind: 'round', value: '421.25', figures: 4, ties: 'half-even', printed: '421.2' },
    ],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), end-of-chapter exercise on rounding',
    rows: [
      { kind: 'round', value: '0.436', figures: 2, ties: 'half-even', printed: '0.44' },
      { kind: 'round', value: '27.2', figures: 2, ties: 'half-even', printed: '27' },
      { kind: 'round', value: '1.497e-3', figures: 2, ties: 'half-even', printed: '1.5e-3' },
    ],
  },
  {
    source: 'NIST Special Publication 811, 2008 ed., Appendix B.7.1 (examples as quoted in public test files)',
    rows: [
      { kind: 'round', value: '6.9749515', figures: 2, ties: 'half-even', printed: '7.0' },
      { kind: 'round', value: '6.9749515', figures: 5, ties: 'half-even', printed: '6.9750' },
      { kind: 'round', value: '6.9749505', figures: 7, ties: 'half-even', printed: '6.974950' },
    ],
  },
  {
    source: 'ISO 80000-1:2009, Annex B (examples as quoted in a public reference file), B.2',
    rows: [
      { kind: 'round', value: '12.251', step: '0.1', ties: 'half-even', printed: '12.3' },
      { kind: 'round', value: '1223.3', step: '10', ties: 'half-even', printed: '1220' },
      { kind: 'round', value: '1227.5', step: '10', ties: 'half-even', printed: '1230' },
    ],
  },
  {
    source: 'ISO 80000-1:2009, Annex B (examples as quoted in a public reference file), B.3 Rule A',
    rows: [{ kind: 'round', value: '1235.0', step: '10', ties: 'half-even', printed: '1240' }],
  },
  {
    source: 'JIS Z 8401:1999, identical to ISO 31-0:1992 Annex B (Japanese page), Rule A',
    rows: [{ kind: 'round', value: '12.25', step: '0.1', ties: 'half-even', printed: '12.2' }],
  },
  {
    source: 'JIS Z 8401:1999, identical to ISO 31-0:1992 Annex B (Japanese page), Rule B',
    rows: [{ kind: 'round', value: '12.25', step: '0.1', ties: 'half-up', printed: '12.3' }],
  },
  {
    source: 'JIS Z 8401:1999, identical to ISO 31-0:1992 Annex B (Japanese page), Rule B; from memory',
    rows: [{ kind: 'round', value: '1225.0', step: '10', ties: 'half-up', printed: '1230' }],
  },
  {
    source:
      'ISO 80000-1, Annex B, B.3, negative tie as worked in a public formal-proof file restating the annex (Rule A)',
    rows: [{ kind: 'round', value: '-12.25', step: '0.1', ties: 'half-even', printed: '-12.2' }],
  },
  {
    source: 'JIS Z 8401 commentary page (negative numbers)',
    rows: [
      { kind: 'round', value: '-0.5', step: '1', ties: 'half-even', printed: '0' },
      { kind: 'round', value: '-3.5', step: '1', ties: 'half-up', printed: '-4' },
    ],
  },
  {
    source: 'ISO/JIS rounding explanation (Japanese blog)',
    rows: [
      { kind: 'round', value: '14.545', step: '0.1', ties: 'half-even', printed: '14.5' },
      { kind: 'round', value: '14.45', step: '0.1', ties: 'half-even', printed: '14.4' },
      { kind: 'round', value: '1000.5', step: '1', ties: 'half-even', printed: '1000' },
      { kind: 'round', value: '1001.5', step: '1', ties: 'half-even', printed: '1002' },
    ],
  },
  {
    source: 'CICC Asian standards databook, 2.05 Number rounding, type 1',
    rows: [{ kind: 'round', value: '123.454', step: '0.01', ties: 'half-up', printed: '123.45' }],
  },
  {
    source: 'CICC Asian standards databook, 2.05 Number rounding, type 3',
    rows: [
      { kind: 'round', value: '123.452', step: '0.005', ties: 'half-up', printed: '123.450' },
      { kind: 'round', value: '123.458', step: '0.005', ties: 'half-up', printed: '123.460' },
    ],
  },
  {
    source: 'CICC Asian standards databook, 2.05 Number rounding, type 3 (…25 goes down, …26 goes up)',
    rows: [{ kind: 'round', value: '123.326', step: '0.05', ties: 'half-even', printed: '123.35' }],
  },
  {
    source: 'IS 2:1960, rules for rounding off numerical values (concretebasics.org)',
    rows: [
      { kind: 'round', value: '4.36', step: '1', ties: 'half-even', printed: '4' },
      { kind: 'round', value: '15.205', step: '0.1', ties: 'half-even', printed: '15.2' },
      { kind: 'round', value: '2.651', step: '0.1', ties: 'half-even', printed: '2.7' },
      { kind: 'round', value: '12.545001', step: '0.01', ties: 'half-even', printed: '12.55' },
    ],
  },
  {
    source: 'ASTM E29 rounding method, as tabulated in a state highway field manual',
    rows: [
      { kind: 'round', value: '45.74', step: '0.1', ties: 'half-even', printed: '45.7' },
      { kind: 'round', value: '45.79', step: '0.1', ties: 'half-even', printed: '45.8' },
      { kind: 'round', value: '45.4500', step: '0.1', ties: 'half-even', printed: '45.4' },
      { kind: 'round', value: '45.45105', step: '0.1', ties: 'half-even', printed: '45.5' },
    ],
  },
  {
    source: 'Iowa DOT Instructional Memorandum 202 (ASTM E29 with the tie rule changed to rounding up)',
    rows: [{ kind: 'round', value: '1.861', step: '0.01', ties: 'half-up', printed: '1.86' }],
  },
  {
    source: 'Ontario Ministry of Transportation, Laboratory Testing Manual LS-100 (rounding in one step, ties up)',
    rows: [{ kind: 'round', value: '1.347', step: '0.01', ties: 'half-up', printed: '1.35' }],
  },
  {
    source:
      'NIST Voluntary Product Standard PS 20-20, Table 3 and App. B (as quoted in a public reference file); inch times 25.4, dressed size 2.5 in',
    rows: [{ kind: 'round', value: '63.50', step: '1', ties: 'half-even', printed: '64' }],
  },
  {
    source:
      'NIST Voluntary Product Standard PS 20-20, Table 3 and App. B (as quoted in a public reference file); inch times 25.4, dressed size 11.25 in',
    rows: [{ kind: 'round', value: '285.750', step: '1', ties: 'half-even', printed: '286' }],
  },
  {
    source: 'ASME A112.18.1-2018/CSA B125.1-18, Annex A (unit conversion and rounding)',
    rows: [{ kind: 'round', value: '1.655000', figures: 3, ties: 'half-even', printed: '1.66' }],
  },
  {
    source: 'Brooklyn College CUNY, rounding-off rules page',
    rows: [
      { kind: 'round', value: '6.422', step: '0.1', ties: 'half-even', printed: '6.4' },
      { kind: 'round', value: '6.997', step: '0.01', ties: 'half-even', printed: '7.00' },
      { kind: 'round', value: '7.485', step: '0.01', ties: 'half-even', printed: '7.48' },
      { kind: 'round', value: '8.995', step: '0.01', ties: 'half-even', printed: '9.00' },
      { kind: 'round', value: '7.4852007', step: '0.01', ties: 'half-even', printed: '7.49' },
    ],
  },
  {
    source: 'Florida State University general chemistry laboratory, rounding page',
    rows: [
      { kind: 'round', value: '3.677', figures: 2, ties: 'half-even', printed: '3.7' },
      { kind: 'round', value: '6.632', figures: 2, ties: 'half-even', printed: '6.6' },
      { kind: 'round', value: '6.35', figures: 2, ties: 'half-even', printed: '6.4' },
      {
        kind: 'round',
        value: '3.4665',
        figures: 4,
        ties: 'half-even',
        printed: '6.466',
        differs: '3.466; the leading digit is a misprint in the source',
      },
    ],
  },
  {
    source: 'Hartnell College, rounding rules page (Chem 22)',
    rows: [
      { kind: 'round', value: '56.748', step: '0.1', ties: 'half-even', printed: '56.7' },
      { kind: 'round', value: '21.4501', step: '0.1', ties: 'half-even', printed: '21.5' },
      { kind: 'round', value: '21.45', step: '0.1', ties: 'half-even', printed: '21.4' },
    ],
  },
  {
    source: 'Harris, Quantitative Chemical Analysis, ch. 3 (course notes)',
    rows: [
      { kind: 'round', value: '121.7948', figures: 5, ties: 'half-even', printed: '121.79' },
      { kind: 'round', value: '1.425e-9', figures: 3, ties: 'half-even', printed: '1.42e-9' },
      { kind: 'logarithm', function: 'log', value: '3.39e2', printed: '2.530' },
    ],
  },
  {
    source: 'sciform (Python package, general purpose) options page, jagerber48/sciform at f6c7bf9',
    rows: [
      { kind: 'round', value: '2.35', figures: 2, ties: 'half-even', printed: '2.4' },
      { kind: 'round', value: '12345.678', step: '100', ties: 'half-even', printed: '12300' },
    ],
  },
  {
    source: 'Rounding to significant figures, encyclopaedia table as used in a public data set',
    rows: [
      { kind: 'round', value: '71.25150', figures: 3, ties: 'half-even', printed: '71.3' },
      { kind: 'round', value: '71.25150', figures: 1, ties: 'half-even', printed: '70' },
    ],
  },
  {
    source: 'United States Pharmacopeia, General Notices 7.20 (rounding rules), table of illustrations',
    rows: [
      { kind: 'limit', value: '97.96', step: '0.1', limit: '98.0', comparison: '>=', printed: '98.0, yes' },
      { kind: 'limit', value: '97.95', step: '0.1', limit: '98.0', comparison: '>=', printed: '98.0, yes' },
      { kind: 'limit', value: '101.46', step: '0.1', limit: '101.5', comparison: '<=', printed: '101.5, yes' },
      { kind: 'limit', value: '0.025', step: '0.01', limit: '0.02', comparison: '<=', printed: '0.03, no' },
      { kind: 'limit', value: '0.027', step: '0.01', limit: '0.02', comparison: '<=', printed: '0.03, no' },
      { kind: 'limit', value: '0.00025', step: '0.0001', limit: '0.0003', comparison: '<=', printed: '0.0003, yes' },
    ],
  },
  {
    source: 'European Pharmacopoeia rounding rule as explained by the EDQM',
    rows: [{ kind: 'round', value: '0.284', step: '0.01', ties: 'half-up', printed: '0.28' }],
  },
  {
    source: 'Chromatography forum thread on assay results (USP reading: decimal places of the limit)',
    rows: [{ kind: 'round', value: '98.28568', step: '0.1', ties: 'half-up', printed: '98.3' }],
  },
  {
    source: 'ST SEV 543-77 (rules for recording and rounding numbers)',
    rows: [{ kind: 'round', value: '12.23', figures: 3, ties: 'half-up', printed: '12.2' }],
  },
  {
    source: 'GOST R IEC 60840-2011, Annex B (rounding of numbers)',
    rows: [
      { kind: 'round', value: '2.449', step: '0.01', ties: 'half-up', printed: '2.45' },
      { kind: 'round', value: '2.453', step: '0.01', ties: 'half-up', printed: '2.45' },
      { kind: 'round', value: '25.0478', step: '0.001', ties: 'half-up', printed: '25.048' },
    ],
  },
  {
    source: 'Science campus physics pages, 7.05 Rounding values',
    rows: [{ kind: 'round', value: '1.37572', figures: 4, ties: 'half-up', printed: '1.376' }],
  },
  {
    source: "Vogel's Textbook of Quantitative Chemical Analysis, 5th ed. 1989, p. 161",
    rows: [{ kind: 'mean', values: ['0.2628', '0.2623', '0.2626'], ties: 'half-up', figures: 4, printed: '0.2626' }],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), example Addition and Subtraction',
    rows: [{ kind: 'sum', terms: ['1.0023', '4.383'], printed: '5.385' }],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), check your learning',
    rows: [
      { kind: 'sum', terms: ['2.334', '0.31'], printed: '2.64' },
      { kind: 'product', numerator: ['2.334', '0.320'], denominator: [], printed: '0.747' },
    ],
  },
  {
    source: 'OpenStax, Chemistry 2e, Appendix B (module m68860), significant figures',
    rows: [{ kind: 'sum', terms: ['4.383', '0.0023'], printed: '4.385' }],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), end-of-chapter exercise',
    rows: [
      { kind: 'sum', terms: ['42.7', '0.259'], printed: '43.0' },
      { kind: 'product', numerator: ['628', '342'], denominator: [], printed: '2.15e5' },
      { kind: 'product', numerator: ['28.0'], denominator: ['13.483'], printed: '2.08' },
    ],
  },
  {
    source: 'OpenStax, Chemistry 2e, Appendix B (module m68860), subtracting exponentials',
    rows: [{ kind: 'sum', terms: ['5.0e-6', '-4.0e-7'], printed: '4.6e-6' }],
  },
  {
    source: 'OpenStax, University Physics vol. 1, section 1.6 (module m58274)',
    rows: [{ kind: 'sum', terms: ['375', '-308'], printed: '67' }],
  },
  {
    source: 'Oklahoma City Community College, significant-figures page',
    rows: [{ kind: 'sum', terms: ['125.1', '1.300', '0.27'], printed: '126.7' }],
  },
  {
    source: 'General chemistry significant-figure practice sheet with answers, coursehero.com',
    rows: [
      { kind: 'sum', terms: ['102.1', '1.32', '0.215'], printed: '103.6' },
      { kind: 'sum', terms: ['20.987', '43.1'], printed: '64.1' },
      { kind: 'sum', terms: ['23.9865', '1.8', '2.56'], printed: '28.3' },
      { kind: 'sum', terms: ['1.874', '0.01272', '12.8458'], printed: '14.733' },
      { kind: 'sum', terms: ['6.023', '23.45', '36.5421'], printed: '66.02' },
      { kind: 'product', numerator: ['22.4', '18.1'], denominator: [], printed: '405' },
      { kind: 'product', numerator: ['10.923', '0.0023'], denominator: [], printed: '0.025' },
      { kind: 'product', numerator: ['43.86', '15.753'], denominator: [], printed: '690.9' },
      { kind: 'product', numerator: ['3.000e3', '0.012345'], denominator: [], printed: '37.04' },
      { kind: 'product', numerator: ['18.7623'], denominator: ['1.0081'], printed: '18.612' },
    ],
  },
  {
    source: 'Significant-figures practice slides with answers, slidegur.com',
    rows: [
      { kind: 'sum', terms: ['0.742', '0.0259'], printed: '0.768' },
      { kind: 'sum', terms: ['22.1', '33.2', '224.08'], printed: '279.4' },
      { kind: 'product', numerator: ['39.0', '385', '55'], denominator: [], printed: '8.3e5' },
    ],
  },
  {
    source: "Schaum's Outline of Beginning Chemistry, pp. 20-21",
    rows: [{ kind: 'sum', terms: ['3.2', '5.71'], printed: '8.9' }],
  },
  {
    source: 'Significant-figures lecture slides, slideplayer.com',
    rows: [
      { kind: 'sum', terms: ['5.78', '4.9', '0.3890'], printed: '11.1' },
      { kind: 'product', numerator: ['9.560'], denominator: ['66.0'], printed: '0.145' },
    ],
  },
  {
    source: 'OpenStax, Chemistry 2e, section 14.2 (module m68804), pH of 0.0125 M KOH from pOH 1.903',
    rows: [{ kind: 'sum', terms: ['14.00', '-1.903'], printed: '12.10' }],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), example Multiplication and Division',
    rows: [{ kind: 'product', numerator: ['0.6238', '6.6'], denominator: [], printed: '4.1' }],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), example Calculation with Significant Figures (bathtub)',
    rows: [{ kind: 'product', numerator: ['13.44', '5.920', '2.54'], denominator: [], printed: '202' }],
  },
  {
    source: 'OpenStax, Chemistry 2e, Appendix B (module m68860), multiplying exponentials',
    rows: [{ kind: 'product', numerator: ['4.2e-8', '2.0e3'], denominator: [], printed: '8.4e-5' }],
  },
  {
    source: 'OpenStax, Chemistry 2e, Appendix B (module m68860), squaring exponentials',
    rows: [{ kind: 'product', numerator: ['4.0e-6', '4.0e-6'], denominator: [], printed: '1.6e-11' }],
  },
  {
    source: 'Centre College, significant-figures page',
    rows: [{ kind: 'product', numerator: ['2.761'], denominator: ['5.5'], printed: '0.50' }],
  },
  {
    source: 'Significant-figures lecture slides, half-up rule, slideserve.com',
    rows: [{ kind: 'product', numerator: ['134', '25'], denominator: [], ties: 'half-up', printed: '3.4e3' }],
  },
  {
    source:
      'OpenStax, Chemistry 2e, section 1.5 (module m68690 of openstax/osbooks-chemistry-bundle at 3be4b60), example Experimental Determination of Density (22.4 - 13.5 = 8.9, two figures)',
    rows: [{ kind: 'mixed', expression: '69.658/(22.4-13.5)', printed: '7.8' }],
  },
  {
    source: 'Textbook passage on carrying extra digits as copied at qammunity.org; rounding each step gives 71',
    rows: [{ kind: 'mixed', expression: '(13.2+12.252)*(1.35*2.1)', printed: '72' }],
  },
  {
    source: 'OpenStax, College Physics, section 1.3 (module m42120); the 2 is an exact count',
    rows: [{ kind: 'mixed', expression: '2*13.5+10.2', printed: '37.2' }],
  },
  {
    source: 'OpenStax, Chemistry 2e, section 1.6, unit conversion 125 g to ounces with 28.349 g/oz',
    rows: [{ kind: 'mixed', expression: '125/28.349', printed: '4.41' }],
  },
  {
    source: 'OpenStax, University Physics vol. 1, section 1.6 (module m58274): area of a circle of diameter 3.102 cm',
    rows: [{ kind: 'mixed', expression: 'pi*(3.102/2)^2', printed: '7.557' }],
  },
  {
    source: 'OpenStax, Chemistry 2e, Appendix B (module m68860), square roots of exponentials',
    rows: [{ kind: 'root', value: '1.6e-7', printed: '4.0e-4' }],
  },
  {
    source: 'OpenStax, Chemistry 2e, section 14.2 (module m68804), pH, pOH examples and exercises',
    rows: [
      { kind: 'logarithm', function: '-log', value: '1.0e-7', printed: '7.00' },
      { kind: 'logarithm', function: '-log', value: '1.2e-3', printed: '2.92' },
      { kind: 'logarithm', function: '-log', value: '0.0125', printed: '1.903' },
      { kind: 'logarithm', function: '-log', value: '0.000259', printed: '3.587' },
      { kind: 'logarithm', function: '-log', value: '2.5', printed: '-0.40' },
    ],
  },
  {
    source: 'OpenStax, Chemistry 2e, section 14.2 (module m68804), blood, pH 7.3',
    rows: [{ kind: 'logarithm', function: '10^-', value: '7.3', printed: '5e-8' }],
  },
  {
    source: 'OpenStax, Chemistry 2e, section 14.2 (module m68804), exercise, pH 6.52',
    rows: [{ kind: 'logarithm', function: '10^-', value: '6.52', printed: '3.0e-7' }],
  },
  {
    source: 'BCIT chemistry 0010, significant figures in logarithms',
    rows: [{ kind: 'logarithm', function: '-log', value: '0.01023', printed: '1.9901' }],
  },
  {
    source: 'Tutoring answer on pH and significant figures, wyzant.com',
    rows: [{ kind: 'logarithm', function: '-log', value: '2.51e-7', printed: '6.600' }],
  },
  {
    source: 'University of Guelph, physics tutorial on logarithms',
    rows: [
      { kind: 'logarithm', function: '10^', value: '-0.689', printed: '0.205' },
      { kind: 'logarithm', function: '10^', value: '1.724', printed: '53.0' },
    ],
  },
  {
    source: 'Practice sheet on logarithms and significant figures, studylib.net',
    rows: [
      { kind: 'logarithm', function: 'log', value: '3.000e4', printed: '4.4771' },
      { kind: 'logarithm', function: '10^', value: '0.301', printed: '2.00' },
    ],
  },
  {
    source: 'Chemistry 101 laboratory manual, significant figures appendix (document-sharing site)',
    rows: [
      { kind: 'logarithm', function: 'log', value: '2.33e6', printed: '6.367' },
      { kind: 'logarithm', function: '10^', value: '3.777', printed: '5.98e3' },
      {
        kind: 'product',
        numerator: ['4.126'],
        denominator: ['1.62'],
        printed: '2.60',
        differs: '4.126/1.62 = 2.547, i.e. 2.55',
      },
    ],
  },
  {
    source: 'Nuclear structure data evaluation, rounding convention (public guidance file)',
    rows: [
      {
        kind: 'round',
        value: '0.345',
        step: '0.1',
        ties: 'half-up',
        printed: '0.4',
        differs: 'the convention rounds in stages, 0.345 to 0.35 to 0.4; ISO 80000-1 B.4 and ASTM E29 round once',
      },
    ],
  },
  {
    source: 'NIST Special Publication 811, 2008 ed., Appendix B.7.2',
    rows: [
      {
        kind: 'product',
        numerator: ['36', '0.3048'],
        denominator: [],
        exact: ['0.3048'],
        printed: '11.0',
        differs:
          'feet to metres: the source keeps a third figure so that the relative rounding error stays of the same order',
      },
    ],
  },
  {
    source: 'NIST Letter Circular LC 1137, Metric Style Guide',
    rows: [{ kind: 'product', numerator: ['36', '2.54'], denominator: [], exact: ['2.54'], printed: '91' }],
  },
]
