import { type AtomicWeightSet, atomicWeightSet } from '../../../src/element/index.js'

/** Older sets of atomic weights, as far as the published molar masses need them. Each says how its values are known. */
export const iupac1997: AtomicWeightSet = atomicWeightSet({
  name: 'IUPAC 1997',
  source: 'Al, B, Ba, C, Ca, Cd, Cl, Co, Cr, Cu read in the reprint of the USP 28; the others from memory',
  values: {
    H: '1.00794',
    C: '12.0107',
    N: '14.00674',
    O: '15.9994',
    Na: '22.989770',
    Mg: '24.3050',
    Al: '26.981538',
    P: '30.973761',
    S: '32.066',
    Cl: '35.4527',
    K: '39.0983',
    Ca: '40.078',
    Cr: '51.9961',
    Mn: '54.938049',
    Fe: '55.845',
    Co: '58.933200',
    Cu: '63.546',
    Zn: '65.39',
    Cd: '112.411',
    Ba: '137.327',
    Pb: '207.2',
    B: '10.811',
  },
})

export const iupac2007: AtomicWeightSet = atomicWeightSet({
  name: 'IUPAC 2007',
  source:
    'H, C, N, O, S, Cl, B read as the replaced values in the abstract of the 2009 report, Zn in the abstract of the 2007 report; the others from memory',
  values: {
    H: '1.00794',
    C: '12.0107',
    N: '14.0067',
    O: '15.9994',
    Na: '22.98976928',
    Mg: '24.3050',
    Al: '26.9815386',
    P: '30.973762',
    S: '32.065',
    Cl: '35.453',
    K: '39.0983',
    Ca: '40.078',
    Cr: '51.9961',
    Mn: '54.938045',
    Fe: '55.845',
    Co: '58.933195',
    Cu: '63.546',
    Zn: '65.38',
    Cd: '112.411',
    Ba: '137.327',
    Pb: '207.2',
    B: '10.811',
  },
})

export const llnl: AtomicWeightSet = atomicWeightSet({
  name: 'LLNL thermodynamic data',
  source: 'read in the data set',
  values: {
    C: '12.0110',
    Ca: '40.0800',
    Cl: '35.4530',
    Cu: '63.5460',
    Fe: '55.8470',
    H: '1.0079',
    K: '39.0983',
    Mg: '24.3050',
    Mn: '54.9380',
    N: '14.0067',
    Na: '22.9898',
    O: '15.9994',
    P: '30.9738',
    S: '32.0600',
    U: '238.0290',
  },
})

export const llnlFiveDecimals: AtomicWeightSet = atomicWeightSet({
  name: 'LLNL thermodynamic data, five decimals',
  source: 'the former with sodium and phosphorus to five decimals, found by fitting the mole weights of the data set',
  extends: llnl,
  values: {
    Na: '22.98977',
    P: '30.97376',
  },
})
