/** A stated uncertainty of an input, as the source gives it. */
export type Component = { readonly meanOf?: number } & (
  | { readonly standard: string }
  | { readonly expanded: string; readonly coverageFactor: string }
  | { readonly distribution: 'rectangular' | 'triangular' | 'arcsine'; readonly halfWidth: string }
)

/** Inputs of a model by name; no uncertainty means exact, several components combine in quadrature. */
export type Inputs = Readonly<
  Record<
    string,
    { readonly value: string; readonly uncertainty?: readonly Component[]; readonly degreesOfFreedom?: number }
  >
>

/** The parts of a result that a source prints. */
export interface PrintedResult {
  readonly value?: string
  readonly standard?: string
  readonly relative?: string
  readonly expanded?: string
  readonly effectiveDegrees?: string
  readonly contributions?: Readonly<Record<string, string>>
}

interface Row {
  /** The unit of the source, where it has one. */
  readonly unit?: string
  /** Why ours is another, where it is. */
  readonly differs?: string
}

/** A published case of stating, combining, propagating, writing or reading an uncertainty. */
export type UncertaintyRow = Row &
  (
    | { readonly kind: 'combine'; readonly components: readonly Component[]; readonly printed: string }
    | { readonly kind: 'propagate'; readonly model: string; readonly inputs: Inputs; readonly printed: PrintedResult }
    | {
        readonly kind: 'correlated'
        readonly model: string
        readonly inputs: Inputs
        readonly correlations: 'all' | Readonly<Record<string, string>>
        readonly printed: PrintedResult
      }
    | {
        readonly kind: 'readings'
        readonly readings: readonly string[]
        readonly printed: {
          readonly mean: string
          readonly deviation: string
          readonly standard: string
          readonly degreesOfFreedom: string
        }
      }
    | {
        readonly kind: 'results of sets'
        readonly model: string
        readonly readings: Readonly<Record<string, readonly string[]>>
        readonly printed: { readonly mean: string; readonly standard: string }
      }
    | {
        readonly kind: 'correlated readings'
        readonly model: string
        readonly readings: Readonly<Record<string, readonly string[]>>
        readonly printed: PrintedResult
      }
    | {
        readonly kind: 'correlation of readings'
        readonly readings: Readonly<Record<string, readonly string[]>>
        readonly printed: Readonly<Record<string, string>>
      }
    | {
        readonly kind: 'correlation of results'
        readonly models: Readonly<Record<string, string>>
        readonly inputs?: Inputs
        readonly readings?: Readonly<Record<string, readonly string[]>>
        readonly printed: Readonly<Record<string, string>>
      }
    | { readonly kind: 'pooled'; readonly deviation: string; readonly meanOf: number; readonly printed: string }
    | {
        readonly kind: 'effective degrees'
        readonly standard: readonly string[]
        readonly degreesOfFreedom: readonly string[]
        readonly combined: string
        readonly combinedSquared?: string
        readonly level: string
        readonly printed: {
          readonly effectiveDegrees: string
          readonly coverageFactor: string
          readonly expanded: string
        }
      }
    | { readonly kind: 'reliability'; readonly percent: string; readonly printed: string }
    | {
        readonly kind: 'coverage factor'
        readonly level: string
        readonly degreesOfFreedom: number
        readonly printed: string
      }
    | {
        readonly kind: 'write'
        readonly value: string
        readonly standard: string
        readonly digits?: Digits
        readonly printed: string
        readonly shown?: { readonly value: string; readonly standard?: string }
      }
    | {
        readonly kind: 'round uncertainty'
        readonly standard: string
        readonly digits: Digits
        readonly upwards?: true
        readonly printed: string
      }
    | {
        readonly kind: 'read'
        readonly text: string
        readonly implied?: true
        readonly printed: { readonly value: string; readonly standard: string }
      }
  )

/** How many digits an uncertainty keeps: so many, or by the convention of the Particle Data Group. */
type Digits = 1 | 2 | 3 | 'three-digit'

/**
 * By source. Values were read in a stored copy of the source or of a page that quotes it; the others say "from memory". A model is
 * written in infix form, with ^ for powers.
 */
export const uncertaintySources: readonly { readonly source: string; readonly rows: readonly UncertaintyRow[] }[] = [
  {
    source:
      'Eurachem/CITAC, Quantifying Uncertainty in Analytical Measurement (QUAM), 3rd ed. 2012, Appendix A, Example A1 (preparation of a calibration standard); figures checked on the on-line edition of the 2nd ed. 2000, page app_a_example1, purity of the cadmium',
    rows: [
      { kind: 'combine', components: [{ distribution: 'rectangular', halfWidth: '0.0001' }], printed: '0.000058' },
    ],
  },
  {
    source:
      'Eurachem/CITAC, Quantifying Uncertainty in Analytical Measurement (QUAM), 3rd ed. 2012, Appendix A, Example A1 (preparation of a calibration standard); figures checked on the on-line edition of the 2nd ed. 2000, page app_a_example1, flask temperature',
    rows: [
      {
        kind: 'combine',
        components: [{ distribution: 'rectangular', halfWidth: '0.084' }],
        unit: 'mL',
        printed: '0.05',
      },
    ],
  },
  {
    source:
      'Eurachem/CITAC, Quantifying Uncertainty in Analytical Measurement (QUAM), 3rd ed. 2012, Appendix A, Example A1 (preparation of a calibration standard); figures checked on the on-line edition of the 2nd ed. 2000, page app_a_example1, volume of the flask',
    rows: [
      {
        kind: 'combine',
        components: [{ standard: '0.04' }, { standard: '0.02' }, { standard: '0.05' }],
        unit: 'mL',
        printed: '0.07',
      },
    ],
  },
  {
    source:
      'Eurachem/CITAC, Quantifying Uncertainty in Analytical Measurement (QUAM), 3rd ed. 2012, Appendix A, Example A1 (preparation of a calibration standard); figures checked on the on-line edition of the 2nd ed. 2000, page app_a_example1, result',
    rows: [
      {
        kind: 'propagate',
        model: '1000*m*P/V',
        inputs: {
          m: { value: '100.28', uncertainty: [{ standard: '0.05' }] },
          P: { value: '0.9999', uncertainty: [{ standard: '0.000058' }] },
          V: { value: '100.0', uncertainty: [{ standard: '0.07' }] },
        },
        unit: 'mg/L',
        printed: { value: '1002.7', standard: '0.9', relative: '0.0009' },
      },
    ],
  },
  {
    source:
      'Eurachem/CITAC, QUAM, 3rd ed. 2012 (same figures in the 2nd ed. 2000), Appendix A, Example A2 (standardising a sodium hydroxide solution against KHP), mass of KHP by difference',
    rows: [
      {
        kind: 'combine',
        components: [
          { distribution: 'rectangular', halfWidth: '0.15' },
          { distribution: 'rectangular', halfWidth: '0.15' },
        ],
        unit: 'mg',
        printed: '0.13',
        differs:
          'unrounded 0.1225 mg rounds to 0.12 mg; 0.13 mg follows only if each weighing is first rounded from 0.0866 to 0.09 mg (rounding of an intermediate)',
      },
    ],
  },
  {
    source:
      'Eurachem/CITAC, QUAM, 3rd ed. 2012 (same figures in the 2nd ed. 2000), Appendix A, Example A2 (standardising a sodium hydroxide solution against KHP), molar mass of C8H5O4K from the IUPAC 1990s atomic weights; the same atom counted n times is fully correlated (n*u, not sqrt(n)*u)',
    rows: [
      {
        kind: 'propagate',
        model: '8*C+5*H+4*O+K',
        inputs: {
          C: { value: '12.0107', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.0008' }] },
          H: { value: '1.00794', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.00007' }] },
          O: { value: '15.9994', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.0003' }] },
          K: { value: '39.0983', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.0001' }] },
        },
        unit: 'g/mol',
        printed: { value: '204.2212', standard: '0.0038' },
      },
    ],
  },
  {
    source:
      'Eurachem/CITAC, QUAM, 3rd ed. 2012 (same figures in the 2nd ed. 2000), Appendix A, Example A2 (standardising a sodium hydroxide solution against KHP), titration volume (with the rounded components as printed)',
    rows: [
      { kind: 'combine', components: [{ standard: '0.012' }, { standard: '0.006' }], unit: 'mL', printed: '0.013' },
    ],
  },
  {
    source:
      'Eurachem/CITAC, QUAM, 3rd ed. 2012 (same figures in the 2nd ed. 2000), Appendix A, Example A2 (standardising a sodium hydroxide solution against KHP), result',
    rows: [
      {
        kind: 'propagate',
        model: 'R*1000*m*P/(M*V)',
        inputs: {
          R: { value: '1.0', uncertainty: [{ standard: '0.0005' }] },
          m: { value: '0.3888', uncertainty: [{ standard: '0.00013' }] },
          P: { value: '1.0', uncertainty: [{ standard: '0.00029' }] },
          M: { value: '204.2212', uncertainty: [{ standard: '0.0038' }] },
          V: { value: '18.64', uncertainty: [{ standard: '0.013' }] },
        },
        unit: 'mol/L',
        printed: { value: '0.10214', standard: '0.00010', relative: '0.00097' },
      },
    ],
  },
  {
    source:
      'Eurachem/CITAC, QUAM, 2nd ed. 2000 on-line edition, Appendix A, Example A3 (an acid/base titration), Table A3.1',
    rows: [
      {
        kind: 'propagate',
        model: 'R*1000*m*P*VT2/(VT1*M*VH)',
        inputs: {
          R: { value: '1', uncertainty: [{ standard: '0.001' }] },
          m: { value: '0.3888', uncertainty: [{ standard: '0.00013' }] },
          P: { value: '1.0', uncertainty: [{ standard: '0.00029' }] },
          VT2: { value: '14.89', uncertainty: [{ standard: '0.015' }] },
          VT1: { value: '18.64', uncertainty: [{ standard: '0.016' }] },
          M: { value: '204.2212', uncertainty: [{ standard: '0.0038' }] },
          VH: { value: '15', uncertainty: [{ standard: '0.011' }] },
        },
        unit: 'mol/L',
        printed: { value: '0.10139', standard: '0.00016', relative: '0.0016' },
        differs:
          'value agrees; the listed inputs give u = 0.00019 mol/L (relative 0.0019), 0.00018 with unrounded components as in the 3rd-edition recalculation; the printed 0.00016 is not reproduced by the printed inputs',
      },
    ],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), 4.4.3, Table 1, as quoted in public test files',
    rows: [
      {
        kind: 'readings',
        readings: [
          '96.90',
          '98.18',
          '98.25',
          '98.61',
          '99.03',
          '99.49',
          '99.56',
          '99.74',
          '99.89',
          '100.07',
          '100.33',
          '100.42',
          '100.68',
          '100.95',
          '101.11',
          '101.20',
          '101.57',
          '101.84',
          '102.36',
          '102.72',
        ],
        unit: '°C',
        printed: { mean: '100.145', deviation: '1.489', standard: '0.333', degreesOfFreedom: '19' },
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), 4.3.7, Example 1 (expansion coefficient of copper), as quoted in public test files',
    rows: [
      {
        kind: 'combine',
        components: [{ distribution: 'rectangular', halfWidth: '0.40e-6' }],
        unit: '1/°C',
        printed: '0.23e-6',
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), 4.3.3 (mass standard, three standard deviations); from memory',
    rows: [{ kind: 'combine', components: [{ expanded: '240', coverageFactor: '3' }], unit: 'µg', printed: '80' }],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), 5.1.5 (voltmeter), as quoted in public test files',
    rows: [{ kind: 'combine', components: [{ standard: '12' }, { standard: '8.7' }], unit: 'µV', printed: '15' }],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), 5.2.2, Note 1 Example (ten resistors in series calibrated against one standard), as quoted in public test files',
    rows: [
      {
        kind: 'correlated',
        model: 'R1+R2+R3+R4+R5+R6+R7+R8+R9+R10',
        inputs: {
          R1: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R2: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R3: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R4: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R5: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R6: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R7: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R8: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R9: { value: '1000', uncertainty: [{ standard: '0.1' }] },
          R10: { value: '1000', uncertainty: [{ standard: '0.1' }] },
        },
        correlations: 'all',
        unit: 'Ω',
        printed: { standard: '1' },
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), G.4.1 Example, as quoted in public test files; the Guide uses the rounded uc, unrounded gives 18.999',
    rows: [
      {
        kind: 'effective degrees',
        standard: ['0.25', '0.57', '0.82'],
        degreesOfFreedom: ['9', '4', '14'],
        combined: '1.03',
        level: '0.95',
        unit: '%',
        printed: { effectiveDegrees: '19.0', coverageFactor: '2.09', expanded: '2.2' },
      },
    ],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), G.4.2, as quoted in public test files',
    rows: [{ kind: 'reliability', percent: '25', printed: '8' }],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), G.4.2 as used in H.1.3, as quoted in public test files',
    rows: [{ kind: 'reliability', percent: '50', printed: '2' }],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.1 (end-gauge calibration), H.1.3.2, as quoted in public test files',
    rows: [{ kind: 'pooled', deviation: '13', meanOf: 5, unit: 'nm', printed: '5.8' }],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.1 (end-gauge calibration), H.1.3.1, as quoted in public test files',
    rows: [{ kind: 'combine', components: [{ expanded: '0.075', coverageFactor: '3' }], unit: 'µm', printed: '0.025' }],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), H.1 (end-gauge calibration), u(theta)',
    rows: [
      {
        kind: 'combine',
        components: [{ standard: '0.2' }, { distribution: 'arcsine', halfWidth: '0.5' }],
        unit: '°C',
        printed: '0.41',
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.1 (end-gauge calibration), difference of expansion coefficients, as quoted in public test files',
    rows: [{ kind: 'combine', components: [{ distribution: 'rectangular', halfWidth: '1e-6' }], printed: '0.58e-6' }],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.1 (end-gauge calibration), H.1.4, as quoted in public test files',
    rows: [
      {
        kind: 'propagate',
        model: 'ls+d-ls*(da*th+as_*dt)',
        inputs: {
          ls: { value: '50000623', uncertainty: [{ standard: '25' }], degreesOfFreedom: 18 },
          d: { value: '215', uncertainty: [{ standard: '9.7' }], degreesOfFreedom: 25.6 },
          as_: { value: '11.5e-6', uncertainty: [{ standard: '1.2e-6' }] },
          th: { value: '-0.1', uncertainty: [{ standard: '0.41' }] },
          da: { value: '0', uncertainty: [{ standard: '0.58e-6' }], degreesOfFreedom: 50 },
          dt: { value: '0', uncertainty: [{ standard: '0.029' }], degreesOfFreedom: 2 },
        },
        unit: 'nm',
        printed: {
          value: '50000838',
          standard: '32',
          contributions: { ls: '25', d: '9.7', as_: '0', th: '0', da: '2.9', dt: '16.7' },
        },
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.1 (end-gauge calibration), H.1.6, as quoted in public test files; the contributions also stand in the example of the R package propagate, WelchSatter',
    rows: [
      {
        kind: 'effective degrees',
        standard: ['25', '9.7', '2.9', '16.6'],
        degreesOfFreedom: ['18', '25.6', '50', '2'],
        combined: '32',
        combinedSquared: '1002',
        level: '0.99',
        unit: 'nm',
        printed: { effectiveDegrees: '16.7', coverageFactor: '2.92', expanded: '93' },
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.2 (simultaneous resistance and reactance measurement), Table H.2',
    rows: [
      {
        kind: 'correlation of readings',
        readings: {
          V: ['5.007', '4.994', '5.005', '4.990', '4.999'],
          I: ['19.663', '19.639', '19.640', '19.685', '19.678'],
          phi: ['1.0456', '1.0438', '1.0468', '1.0428', '1.0433'],
        },
        printed: { 'V,I': '-0.36', 'V,phi': '0.86', 'I,phi': '-0.65' },
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.2 (simultaneous resistance and reactance measurement), Table H.3',
    rows: [
      {
        kind: 'correlated readings',
        model: 'V/I*cos(phi)',
        readings: {
          V: ['5.007', '4.994', '5.005', '4.990', '4.999'],
          I: ['0.019663', '0.019639', '0.019640', '0.019685', '0.019678'],
          phi: ['1.0456', '1.0438', '1.0468', '1.0428', '1.0433'],
        },
        unit: 'Ω',
        printed: { value: '127.732', standard: '0.071' },
      },
      {
        kind: 'correlated readings',
        model: 'V/I',
        readings: {
          V: ['5.007', '4.994', '5.005', '4.990', '4.999'],
          I: ['0.019663', '0.019639', '0.019640', '0.019685', '0.019678'],
          phi: ['1.0456', '1.0438', '1.0468', '1.0428', '1.0433'],
        },
        unit: 'Ω',
        printed: { value: '254.260', standard: '0.236' },
      },
      {
        kind: 'correlation of results',
        models: { R: 'V/I*cos(phi)', X: 'V/I*sin(phi)', Z: 'V/I' },
        readings: {
          V: ['5.007', '4.994', '5.005', '4.990', '4.999'],
          I: ['0.019663', '0.019639', '0.019640', '0.019685', '0.019678'],
          phi: ['1.0456', '1.0438', '1.0468', '1.0428', '1.0433'],
        },
        printed: { 'R,X': '-0.588', 'R,Z': '-0.485', 'X,Z': '0.993' },
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), H.2 (simultaneous resistance and reactance measurement), Table H.4 (second treatment); from memory',
    rows: [
      {
        kind: 'results of sets',
        model: 'V/I*cos(phi)',
        readings: {
          V: ['5.007', '4.994', '5.005', '4.990', '4.999'],
          I: ['0.019663', '0.019639', '0.019640', '0.019685', '0.019678'],
          phi: ['1.0456', '1.0438', '1.0468', '1.0428', '1.0433'],
        },
        unit: 'Ω',
        printed: { mean: '127.732', standard: '0.071' },
      },
      {
        kind: 'results of sets',
        model: 'V/I',
        readings: {
          V: ['5.007', '4.994', '5.005', '4.990', '4.999'],
          I: ['0.019663', '0.019639', '0.019640', '0.019685', '0.019678'],
          phi: ['1.0456', '1.0438', '1.0468', '1.0428', '1.0433'],
        },
        unit: 'Ω',
        printed: { mean: '254.260', standard: '0.236' },
      },
    ],
  },
  {
    source:
      'GUM Tree Calculator documentation, version 1.5.1 (MSLNZ/GTC at 1c165fc), page GUM_H2 (the summary values of Table H.2 rounded as printed, so u(R) is 0.070 where the Guide prints 0.071)',
    rows: [
      {
        kind: 'correlated',
        model: 'V/I*sin(phi)',
        inputs: {
          V: { value: '4.999', uncertainty: [{ standard: '0.0032' }] },
          I: { value: '0.019661', uncertainty: [{ standard: '0.0000095' }] },
          phi: { value: '1.04446', uncertainty: [{ standard: '0.00075' }] },
        },
        correlations: { 'V,I': '-0.36', 'V,phi': '0.86', 'I,phi': '-0.65' },
        unit: 'Ω',
        printed: { value: '219.85', standard: '0.30' },
      },
    ],
  },
  {
    source: 'JCGM 101:2008, 9.2 (additive model), as quoted in public test files',
    rows: [
      {
        kind: 'propagate',
        model: 'X1+X2+X3+X4',
        inputs: {
          X1: { value: '0', uncertainty: [{ standard: '1' }] },
          X2: { value: '0', uncertainty: [{ standard: '1' }] },
          X3: { value: '0', uncertainty: [{ standard: '1' }] },
          X4: { value: '0', uncertainty: [{ standard: '1' }] },
        },
        printed: { value: '0', standard: '2.0' },
      },
    ],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), Table G.2',
    rows: [{ kind: 'coverage factor', level: '0.99', degreesOfFreedom: 16, printed: '2.92' }],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), Table G.2; from memory',
    rows: [{ kind: 'coverage factor', level: '0.95', degreesOfFreedom: 8, printed: '2.31' }],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), Table G.2 (also NIST TN 1297, Table B.1), as quoted in public test files',
    rows: [
      {
        kind: 'coverage factor',
        level: '0.90',
        degreesOfFreedom: 35,
        printed: '1.70',
        differs: 'exact two-sided t is 1.6896, i.e. 1.69; a printing slip in both tables',
      },
    ],
  },
  {
    source:
      'JCGM 100:2008 (GUM 1995 with minor corrections), 7.2.2 (four equivalent statements; the ± form is discouraged for a standard uncertainty)',
    rows: [{ kind: 'write', value: '100.02147', standard: '0.00035', unit: 'g', printed: '100.02147(35) g' }],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), 7.2.6 (rounding up is allowed)',
    rows: [{ kind: 'round uncertainty', standard: '10.47', digits: 2, upwards: true, unit: 'mΩ', printed: '11' }],
  },
  {
    source: 'JCGM 100:2008 (GUM 1995 with minor corrections), 7.2.6 (estimate rounded to the place of its uncertainty)',
    rows: [
      {
        kind: 'write',
        value: '10.05762',
        standard: '0.027',
        unit: 'Ω',
        printed: '10.058 Ω',
        shown: { value: '10.058' },
      },
    ],
  },
  {
    source:
      'EA-4/02 M (expression of the uncertainty of measurement in calibration), Supplement S2 (calibration of a 10 kg weight), 2022 ed., from the raw limits (pooled s = 25 mg, three comparisons), as quoted in public test files',
    rows: [
      {
        kind: 'propagate',
        model: 'mS+dmD+dm+dmC+dB',
        inputs: {
          mS: { value: '10000.005', uncertainty: [{ expanded: '0.045', coverageFactor: '2' }] },
          dmD: { value: '0', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.015' }] },
          dm: { value: '0.020', uncertainty: [{ standard: '0.025', meanOf: 3 }] },
          dmC: { value: '0', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.010' }] },
          dB: { value: '0', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.010' }] },
        },
        unit: 'g',
        printed: { value: '10000.025', expanded: '0.058' },
        differs:
          'unrounded u = 29.26 mg, so U = 58.5 mg, 59 mg to the nearest milligram; the printed 58 mg comes from the rounded table entries',
      },
    ],
  },
  {
    source: 'University of Tartu, katsekoda GUM examples, 10 mL pipette',
    rows: [
      {
        kind: 'combine',
        components: [
          { distribution: 'rectangular', halfWidth: '0.03' },
          { standard: '0.04' },
          { distribution: 'rectangular', halfWidth: '0.0084' },
        ],
        unit: 'mL',
        printed: '0.0438579525285894',
      },
    ],
  },
  {
    source: 'Harvey D., Modern Analytical Chemistry, McGraw-Hill 2000, section 4C, Example 4.6',
    rows: [
      {
        kind: 'propagate',
        model: 'I*t',
        inputs: {
          I: { value: '0.15', uncertainty: [{ standard: '0.01' }] },
          t: { value: '120', uncertainty: [{ standard: '1' }] },
        },
        unit: 'C',
        printed: { value: '18', standard: '1.2', relative: '0.0672' },
      },
    ],
  },
  {
    source: 'Harvey D., Modern Analytical Chemistry, McGraw-Hill 2000, section 4C, Example 4.8',
    rows: [
      {
        kind: 'propagate',
        model: '10^(-pH)',
        inputs: { pH: { value: '3.72', uncertainty: [{ standard: '0.03' }] } },
        unit: 'mol/L',
        printed: { value: '1.91e-4', standard: '1.3e-5', relative: '0.069' },
      },
    ],
  },
  {
    source: 'OpenStax, College Physics, section 1.3 (module m42120), the same data read as standard uncertainties',
    rows: [
      {
        kind: 'propagate',
        model: 'L*W',
        inputs: {
          L: { value: '4.00', uncertainty: [{ standard: '0.08' }] },
          W: { value: '3.00', uncertainty: [{ standard: '0.03' }] },
        },
        unit: 'm^2',
        printed: { standard: '0.36' },
        differs:
          'quadrature (GUM 5.1.2) gives 0.27 m^2, 2.2 %; the source adds percentages linearly, which is an upper bound and not a combined standard uncertainty',
      },
    ],
  },
  {
    source: 'uncertainties (Python package, general purpose) user guide, lebigot/uncertainties at d10ba76, basic math',
    rows: [
      {
        kind: 'propagate',
        model: 'x^2',
        inputs: { x: { value: '0.20', uncertainty: [{ standard: '0.01' }] } },
        printed: { value: '0.040', standard: '0.004' },
      },
    ],
  },
  {
    source:
      'uncertainties (Python package, general purpose) user guide, lebigot/uncertainties at d10ba76, individual sources of uncertainty',
    rows: [
      {
        kind: 'propagate',
        model: 'u+2*v',
        inputs: {
          u: { value: '1', uncertainty: [{ standard: '0.1' }] },
          v: { value: '10', uncertainty: [{ standard: '0.1' }] },
        },
        printed: { value: '21.0', standard: '0.223606797749979', contributions: { u: '0.1', v: '0.2' } },
      },
    ],
  },
  {
    source:
      'uncertainties (Python package, general purpose) user guide, lebigot/uncertainties at d10ba76, automatic correlations',
    rows: [
      {
        kind: 'propagate',
        model: 'x^2-x*x',
        inputs: { x: { value: '0.20', uncertainty: [{ standard: '0.01' }] } },
        printed: { value: '0.0', standard: '0' },
      },
    ],
  },
  {
    source: 'uncertainties (Python package, general purpose) user guide, lebigot/uncertainties at d10ba76, arrays',
    rows: [
      {
        kind: 'propagate',
        model: 'a+b',
        inputs: {
          a: { value: '1', uncertainty: [{ standard: '0.01' }] },
          b: { value: '2', uncertainty: [{ standard: '0.1' }] },
        },
        printed: { value: '3.00', standard: '0.10' },
      },
    ],
  },
  {
    source:
      'uncertainties (Python package, general purpose) user guide, lebigot/uncertainties at d10ba76, covariance and correlation matrices',
    rows: [
      {
        kind: 'correlation of results',
        models: { u: 'u', v: 'v', s: 'u+2*v' },
        inputs: {
          u: { value: '1', uncertainty: [{ standard: '0.1' }] },
          v: { value: '10', uncertainty: [{ standard: '0.1' }] },
        },
        printed: { 'u,v': '0', 'u,s': '0.4472136', 'v,s': '0.89442719' },
      },
    ],
  },
  {
    source: 'Measurements.jl (Julia package, general purpose), JuliaPhysics/Measurements.jl at a70d82c, test suite',
    rows: [
      {
        kind: 'propagate',
        model: 'x-y',
        inputs: {
          x: { value: '3', uncertainty: [{ standard: '0.1' }] },
          y: { value: '4', uncertainty: [{ standard: '0.2' }] },
        },
        printed: { value: '-1', standard: '0.2236067977499790' },
      },
      {
        kind: 'propagate',
        model: 'x/y',
        inputs: {
          x: { value: '3', uncertainty: [{ standard: '0.1' }] },
          y: { value: '4', uncertainty: [{ standard: '0.2' }] },
        },
        printed: { value: '0.75', standard: '0.045069390943300' },
      },
      {
        kind: 'propagate',
        model: 'x^y',
        inputs: {
          x: { value: '3', uncertainty: [{ standard: '0.1' }] },
          y: { value: '4', uncertainty: [{ standard: '0.2' }] },
        },
        printed: { value: '81', standard: '20.8180615158005' },
      },
      {
        kind: 'propagate',
        model: 'sqrt(y)',
        inputs: { y: { value: '4', uncertainty: [{ standard: '0.2' }] } },
        printed: { value: '2', standard: '0.05' },
      },
    ],
  },
  {
    source:
      'Measurements.jl (Julia package, general purpose), JuliaPhysics/Measurements.jl at a70d82c, test suite (components 0.36, 0.2, 0.3)',
    rows: [
      {
        kind: 'propagate',
        model: 'w*x*y',
        inputs: {
          w: { value: '-0.5', uncertainty: [{ standard: '0.03' }] },
          x: { value: '3', uncertainty: [{ standard: '0.1' }] },
          y: { value: '4', uncertainty: [{ standard: '0.2' }] },
        },
        printed: { contributions: { w: '0.36', x: '0.2', y: '0.3' } },
      },
    ],
  },
  {
    source: 'Measurements.jl (Julia package, general purpose), JuliaPhysics/Measurements.jl at a70d82c, README',
    rows: [
      {
        kind: 'propagate',
        model: 'x-x',
        inputs: { x: { value: '8.4', uncertainty: [{ standard: '0.7' }] } },
        printed: { value: '0.0', standard: '0.0' },
      },
      {
        kind: 'propagate',
        model: 'x*x*x-x^3',
        inputs: { x: { value: '8.4', uncertainty: [{ standard: '0.7' }] } },
        printed: { value: '0.0', standard: '0.0' },
      },
    ],
  },
  {
    source: 'MetroloPy (Python package, general purpose) tutorial, nrc-cnrc/MetroloPy at 3ed1a4d, first example',
    rows: [
      {
        kind: 'propagate',
        model: 'd/t',
        inputs: {
          d: { value: '342.195', uncertainty: [{ standard: '0.023' }] },
          t: { value: '1.00235', uncertainty: [{ standard: '0.00044' }] },
        },
        printed: { value: '341.39', standard: '0.15' },
      },
    ],
  },
  {
    source: 'MetroloPy (Python package, general purpose) tutorial, nrc-cnrc/MetroloPy at 3ed1a4d, several outputs',
    rows: [
      {
        kind: 'propagate',
        model: 'x-y',
        inputs: {
          x: { value: '3.664', uncertainty: [{ standard: '0.012' }] },
          y: { value: '2.229', uncertainty: [{ standard: '0.022' }] },
        },
        printed: { value: '1.435', standard: '0.025' },
      },
      {
        kind: 'correlation of results',
        models: { s: 'x+y', d: 'x-y', p: 'x*y' },
        inputs: {
          x: { value: '3.664', uncertainty: [{ standard: '0.012' }] },
          y: { value: '2.229', uncertainty: [{ standard: '0.022' }] },
        },
        printed: { 's,d': '-0.54140127', 's,p': '0.98403087', 'd,p': '-0.68240985' },
      },
    ],
  },
  {
    source: 'MetroloPy (Python package, general purpose) tutorial, nrc-cnrc/MetroloPy at 3ed1a4d, functions',
    rows: [
      {
        kind: 'propagate',
        model: 'sin(a)',
        inputs: { a: { value: '1.233', uncertainty: [{ standard: '0.022' }] } },
        printed: { value: '0.9435', standard: '0.0073' },
      },
    ],
  },
  {
    source: 'MetroloPy (Python package, general purpose) tutorial, nrc-cnrc/MetroloPy at 3ed1a4d, pressure',
    rows: [
      {
        kind: 'propagate',
        model: 'F/(side1*side2/10)',
        inputs: {
          F: { value: '0.934566', uncertainty: [{ distribution: 'rectangular', halfWidth: '0.0096' }] },
          side1: { value: '1.23456', uncertainty: [{ standard: '0.00234' }] },
          side2: { value: '3.0589999999', uncertainty: [{ standard: '0.0204939015' }] },
        },
        unit: 'N/cm^2',
        printed: { value: '2.475', standard: '0.023' },
      },
    ],
  },
  {
    source: 'Particle Data Group, Review of Particle Physics 2010, introduction 5.3 (rounding of uncertainties)',
    rows: [
      {
        kind: 'write',
        value: '0.827',
        standard: '0.367',
        digits: 'three-digit',
        printed: '0.8 ± 0.4',
        shown: { value: '0.8', standard: '0.4' },
      },
    ],
  },
  {
    source: 'sciform (Python package, general purpose), jagerber48/sciform at f6c7bf9, options page, PDG rounding',
    rows: [
      { kind: 'round uncertainty', standard: '0.0123', digits: 'three-digit', printed: '0.012' },
      { kind: 'round uncertainty', standard: '0.0997', digits: 'three-digit', printed: '0.10' },
    ],
  },
  {
    source: 'uncertainties (Python package), lebigot/uncertainties at d10ba76, test table for the PDG limits',
    rows: [
      {
        kind: 'write',
        value: '1.2345678',
        standard: '0.3549',
        digits: 'three-digit',
        printed: '1.23+/-0.35',
        shown: { value: '1.23', standard: '0.35' },
      },
      {
        kind: 'write',
        value: '1.5678',
        standard: '0.355',
        digits: 'three-digit',
        printed: '1.6+/-0.4',
        shown: { value: '1.6', standard: '0.4' },
      },
      {
        kind: 'write',
        value: '1.2345678',
        standard: '0.095',
        digits: 'three-digit',
        printed: '1.23+/-0.10',
        shown: { value: '1.23', standard: '0.10' },
      },
    ],
  },
  {
    source: 'uncertainties (Python package), lebigot/uncertainties at d10ba76, user guide, precision control',
    rows: [
      {
        kind: 'write',
        value: '0.20',
        standard: '0.01',
        digits: 1,
        printed: '0.20+/-0.01',
        shown: { value: '0.20', standard: '0.01' },
      },
      {
        kind: 'write',
        value: '0.20',
        standard: '0.01',
        digits: 3,
        printed: '0.2000+/-0.0100',
        shown: { value: '0.2000', standard: '0.0100' },
      },
    ],
  },
  {
    source: 'uncertainties (Python package), lebigot/uncertainties at d10ba76, test table',
    rows: [
      {
        kind: 'write',
        value: '123.456789',
        standard: '0.00123',
        digits: 2,
        printed: '123.4568+/-0.0012',
        shown: { value: '123.4568', standard: '0.0012' },
      },
      {
        kind: 'write',
        value: '-123.456',
        standard: '0.123',
        digits: 'three-digit',
        printed: '-123.46(12)',
        shown: { value: '-123.46', standard: '0.12' },
      },
      {
        kind: 'write',
        value: '-123.456',
        standard: '0.123',
        digits: 3,
        printed: '-123.456(123)',
        shown: { value: '-123.456', standard: '0.123' },
      },
      {
        kind: 'write',
        value: '-123.456',
        standard: '0.567',
        digits: 2,
        printed: '-123.46(57)',
        shown: { value: '-123.46', standard: '0.57' },
      },
      {
        kind: 'write',
        value: '12.3',
        standard: '456.78',
        digits: 'three-digit',
        printed: '12+/-457',
        shown: { value: '12', standard: '457' },
        differs: 'the PDG rule gives one digit, 0 ± 500; the program never rounds above the unit place',
      },
      { kind: 'read', text: '-1.2(3.4)', printed: { value: '-1.2', standard: '3.4' } },
    ],
  },
  {
    source: 'errors (R package, general purpose), r-quantities/errors at 4805a3f, test file for printing',
    rows: [
      {
        kind: 'write',
        value: '0.827',
        standard: '0.962',
        digits: 'three-digit',
        printed: '1 ± 1',
        shown: { value: '1', standard: '1' },
        differs:
          'the PDG text says three highest digits 950 to 999 round to 1000 and keep two digits, so 0.8 ± 1.0; this implementation prints one digit',
      },
      {
        kind: 'write',
        value: '11111.22222',
        standard: '12.345678',
        digits: 1,
        printed: '11110(10)',
        shown: { value: '11110', standard: '10' },
      },
      {
        kind: 'write',
        value: '11111.22222',
        standard: '0.12345678',
        digits: 1,
        printed: '11111.2(1)',
        shown: { value: '11111.2', standard: '0.1' },
      },
      {
        kind: 'write',
        value: '11111.22222',
        standard: '1.2345678',
        digits: 'three-digit',
        printed: '11111.2(12)',
        shown: { value: '11111.2', standard: '1.2' },
      },
    ],
  },
  {
    source: 'uncertainties (Python package), lebigot/uncertainties at d10ba76, user guide, creating numbers',
    rows: [
      { kind: 'read', text: '0.20(1)', printed: { value: '0.20', standard: '0.01' } },
      { kind: 'read', text: '(2+/-0.1)e-01', printed: { value: '0.20', standard: '0.01' } },
      { kind: 'read', text: '0.20', printed: { value: '0.20', standard: '0.01' }, implied: true },
    ],
  },
]
