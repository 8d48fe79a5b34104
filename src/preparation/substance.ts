/** Names a substance whatever way it is written: what `speciesKey` gives. */
export type SubstanceKey = string
