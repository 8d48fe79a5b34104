/** A kind of balance. */
export interface Balance {
  /** What it is called. */
  readonly name: string
  /** The step in which it is read. It is no uncertainty: repeatability and linearity are of its size or larger. */
  readonly step: `${number} g`
  /** The largest mass it usually takes. */
  readonly usualCapacity: string
  /** Where that stands, and what of it is from memory. */
  readonly source: string
}

const catalogue = 'readability read on pages of catalogues; capacity from memory'

/** Balances of a teaching laboratory with the step in which each is read; `readTo` takes one. */
export const balances: readonly Balance[] = [
  { name: 'top-loading balance, 0.1 g', step: '0.1 g', usualCapacity: '500 g to 6000 g', source: catalogue },
  { name: 'top-loading balance, 0.01 g', step: '0.01 g', usualCapacity: '500 g to 6000 g', source: catalogue },
  {
    name: 'top-loading balance with draught shield',
    step: '0.001 g',
    usualCapacity: '200 g to 600 g',
    source: catalogue,
  },
  {
    name: 'analytical balance',
    step: '0.0001 g',
    usualCapacity: '52 g to 520 g',
    source: 'read on pages of catalogues',
  },
  { name: 'semi-micro balance', step: '0.00001 g', usualCapacity: 'about 60 g to 220 g', source: catalogue },
]
