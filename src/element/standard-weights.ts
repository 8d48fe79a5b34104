import type { AtomicWeightSet } from './atomic-weight-set.js'

/**
 * The standard atomic weights in full. Where nature varies it is an interval, else a value with a bound; both cover every normal
 * material. 34 elements have none: no isotope of theirs is stable or typical of the Earth.
 *
 * @source Prohaska T. et al., Standard atomic weights of the elements 2021 (IUPAC Technical Report), Pure Appl. Chem. 2022,
 * 94(5), 573-600, doi:10.1515/pac-2019-0603, Table 1, with the 2024 changes of the Commission on Isotopic Abundances and Atomic
 * Weights (CIAAW) to zirconium, gadolinium and lutetium. Rows that deviate say so.
 */
export const standardWeights: AtomicWeightSet = {
  name: 'standard',
  edition: 'IUPAC 2021, with the 2024 changes of Zr, Gd and Lu',
  source: 'Pure Appl. Chem. 2022, 94(5), 573-600, doi:10.1515/pac-2019-0603, Table 1; CIAAW 2024',
  values: {
    H: '[1.00784, 1.00811]',
    He: '4.002602 ± 0.000002',
    Li: '[6.938, 6.997]',
    Be: '9.0121831 ± 0.0000005',
    B: '[10.806, 10.821]',
    C: '[12.0096, 12.0116]',
    N: '[14.00643, 14.00728]',
    O: '[15.99903, 15.99977]',
    F: '18.998403162 ± 0.000000005',
    Ne: '20.1797 ± 0.0006',
    Na: '22.98976928 ± 0.00000002',
    Mg: '[24.304, 24.307]',
    Al: '26.9815384 ± 0.0000003',
    Si: '[28.084, 28.086]',
    P: '30.973761998 ± 0.000000005',
    S: '[32.059, 32.076]',
    Cl: '[35.446, 35.457]',
    Ar: '[39.792, 39.963]', // an interval since 2017 (year from memory)
    K: '39.0983 ± 0.0001',
    Ca: '40.078 ± 0.004',
    Sc: '44.955907 ± 0.000004',
    Ti: '47.867 ± 0.001',
    V: '50.9415 ± 0.0001',
    Cr: '51.9961 ± 0.0006',
    Mn: '54.938043 ± 0.000002',
    Fe: '55.845 ± 0.002',
    Co: '58.933194 ± 0.000003',
    Ni: '58.6934 ± 0.0004',
    Cu: '63.546 ± 0.003',
    Zn: '65.38 ± 0.02',
    Ga: '69.723 ± 0.001',
    Ge: '72.630 ± 0.008',
    As: '74.921595 ± 0.000006',
    Se: '78.971 ± 0.008',
    Br: '[79.901, 79.907]',
    Kr: '83.798 ± 0.002',
    Rb: '85.4678 ± 0.0003',
    Sr: '87.62 ± 0.01',
    Y: '88.905838 ± 0.000002',
    Zr: '91.222 ± 0.003', // 2024 revision; 2021: 91.224 ± 0.002
    Nb: '92.90637 ± 0.00001',
    Mo: '95.95 ± 0.01',
    Ru: '101.07 ± 0.02',
    Rh: '102.90549 ± 0.00002',
    Pd: '106.42 ± 0.01',
    Ag: '107.8682 ± 0.0002',
    Cd: '112.414 ± 0.004',
    In: '114.818 ± 0.001',
    Sn: '118.710 ± 0.007',
    Sb: '121.760 ± 0.001',
    Te: '127.60 ± 0.03',
    I: '126.90447 ± 0.00003',
    Xe: '131.293 ± 0.006',
    Cs: '132.90545196 ± 0.00000006',
    Ba: '137.327 ± 0.007',
    La: '138.90547 ± 0.00007',
    Ce: '140.116 ± 0.001',
    Pr: '140.90766 ± 0.00001',
    Nd: '144.242 ± 0.003',
    Sm: '150.36 ± 0.02',
    Eu: '151.964 ± 0.001',
    Gd: '157.249 ± 0.002', // 2024 revision; 2021: 157.25 ± 0.03
    Tb: '158.925354 ± 0.000007',
    Dy: '162.500 ± 0.001',
    Ho: '164.930329 ± 0.000005',
    Er: '167.259 ± 0.003',
    Tm: '168.934219 ± 0.000005',
    Yb: '173.045 ± 0.010',
    Lu: '174.96669 ± 0.00005', // 2024 revision; 2021: 174.9668 ± 0.0001
    Hf: '178.486 ± 0.006',
    Ta: '180.94788 ± 0.00002',
    W: '183.84 ± 0.01',
    Re: '186.207 ± 0.001',
    Os: '190.23 ± 0.03',
    Ir: '192.217 ± 0.002',
    Pt: '195.084 ± 0.009',
    Au: '196.966570 ± 0.000004',
    Hg: '200.592 ± 0.003',
    Tl: '[204.382, 204.385]',
    Pb: '[206.14, 207.94]', // an interval since 2020 (year from memory)
    Bi: '208.98040 ± 0.00001', // radioactive, with a characteristic terrestrial composition
    Th: '232.0377 ± 0.0004', // radioactive, with a characteristic terrestrial composition
    Pa: '231.03588 ± 0.00001', // radioactive, with a characteristic terrestrial composition
    U: '238.02891 ± 0.00003', // radioactive, with a characteristic terrestrial composition
    // The nuclides deuterium and tritium: atomic masses of AME2020, Wang M. et al., Chinese Phys. C 2021, 45, 030003 (read in
    // public copies), with their standard uncertainties.
    D: '2.014101777844 ± 0.000000000015',
    T: '3.01604928132 ± 0.00000000008',
  },
}
