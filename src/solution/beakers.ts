/** Usual sizes of beakers. Their scale is for orientation, right to 5 % or 10 % of the full scale, and measures nothing. */
export interface BeakerSizes {
  /** Usual capacities. */
  readonly capacities: readonly `${number} mL`[]
  /** What the scale is good for. */
  readonly scale: string
  /** Where that stands. */
  readonly source: string
}

/** Beakers, by their usual capacities: for choosing one that holds a reaction mixture, with `checkCapacity`. */
export const beakers: BeakerSizes = {
  capacities: ['50 mL', '100 mL', '150 mL', '250 mL', '400 mL', '600 mL', '800 mL', '1000 mL', '2000 mL'],
  scale: 'for orientation: right to about 5 % or 10 % of the full scale, by the maker',
  source: 'catalogues, from memory',
}
