/** A usual precaution, apart from any one plan. */
export interface GeneralCaution {
  /** The precaution, as a sentence or two. */
  readonly text: string
  /** Who gives it. */
  readonly source: string
}

/** The code of a general caution. */
export type GeneralCautionCode =
  | 'acid-into-water'
  | 'hydrogen'
  | 'metal-in-alkali'
  | 'nitrogen-dioxide'
  | 'gas-evolved'
  | 'toxic-gas'
  | 'boiling-acid'
  | 'not-to-dryness'
  | 'bumping'
  | 'flammable-liquid'
  | 'flammable-near-heat'
  | 'suction'
  | 'neutralisation-warms'
  | 'hydrogen-peroxide'
  | 'fumes'
  | 'oxidiser'
  | 'heavy-metals'
  | 'hydrates-not-warm'
  | 'light-sensitive'

/** The usual precautions of this laboratory, by their stable codes. They are attached to a plan, not worked out. */
export const generalCautions: Readonly<Record<GeneralCautionCode, GeneralCaution>> = {
  'acid-into-water': {
    text: 'Pour the acid into the water, slowly and with stirring, never the water into the acid: the heat can make concentrated acid splash.',
    source: 'Web page on stock solutions; common in laboratory manuals',
  },
  hydrogen: {
    text: 'Hydrogen is evolved and burns or explodes with air: work in a fume cupboard, no flame or spark nearby, add the metal in small portions, never close the vessel.',
    source: 'Course notes on alum from aluminium; preparation sheets that work in the hood',
  },
  'metal-in-alkali': {
    text: 'Metal in warm alkali runs away if it is added all at once, and throws an alkaline spray: small portions, a large vessel, eyes covered.',
    source: 'Web page on growing crystals of potassium trioxalatoaluminate',
  },
  'nitrogen-dioxide': {
    text: 'Brown nitrogen dioxide is evolved: only in a working fume cupboard. Its effect on the lungs can come hours later.',
    source: 'Video manual of a copper cycle (hood only); the delay: common knowledge of first aid, from memory',
  },
  'gas-evolved': {
    text: 'A gas is evolved: never in a closed vessel, and with ventilation for the volume that is stated.',
    source: 'Common practice, no source',
  },
  'toxic-gas': {
    text: 'A toxic gas is evolved: only in a working fume cupboard, and never in a closed vessel.',
    source: 'Common practice, no source',
  },
  'boiling-acid': {
    text: 'Heat the acid to below boiling, take the burner away, then add the solid.',
    source: 'School practical on copper(II) sulfate from its oxide',
  },
  'not-to-dryness': {
    text: 'Never evaporate to dryness: sulfates with sulfuric acid give off sulfur trioxide.',
    source: 'Notes on ammonium iron(II) sulfate',
  },
  bumping: {
    text: 'Hot liquids bump: put a boiling chip in before heating, never into the hot liquid.',
    source: 'University manual of organic techniques; Biltz, laboratory manual of inorganic preparations, p. 4',
  },
  'flammable-liquid': {
    text: 'The vapour of the flammable liquid catches fire at flames, hot plates and electrical apparatus, balances included: keep it away from them.',
    source: 'Chemical hygiene page of a college',
  },
  'flammable-near-heat': {
    text: 'This plan heats and uses a flammable liquid. Let flames out and hot plates cool, and take them away, before the bottle is opened.',
    source: 'Chemical hygiene page of a college',
  },
  suction: {
    text: 'Suction only with a heavy-walled filter flask: look for star cracks, clamp it, put a trap before the pump, let the air in at the pump before it is turned off. Ordinary flasks implode.',
    source: 'Laboratory safety pages of two universities; report of a conical flask that imploded',
  },
  'neutralisation-warms': {
    text: 'Neutralising warms the liquid, a strong one to boiling: cool it first, add slowly with stirring.',
    source: 'Preparation sheet of alum',
  },
  'hydrogen-peroxide': {
    text: 'Add hydrogen peroxide drop by drop, at 40 °C at most: it effervesces.',
    source: 'Preparation sheets of potassium trioxalatoferrate(III)',
  },
  fumes: {
    text: 'Concentrated ammonia, hydrochloric and nitric acid give off irritating vapour: open and pour them in a fume cupboard only.',
    source: 'Inorganic preparation sheets (ammonia, hydrochloric acid); nitric acid: common practice, no source',
  },
  oxidiser: {
    text: 'An oxidiser: keep it away from paper, ethanol and other organic matter, in use and in the waste.',
    source: 'Common practice, no source',
  },
  'heavy-metals': {
    text: 'Liquors and washings go into a labelled container for this metal, not into the sink.',
    source: 'Waste pages of two universities',
  },
  'hydrates-not-warm': {
    text: 'Do not dry a hydrate warm. One that effloresces is pressed dry, wrapped, and left for a day at most.',
    source: 'Blanchard, Phelan and Davis, Synthetic Inorganic Chemistry, 5th ed. (1936), p. 15',
  },
  'light-sensitive': {
    text: 'The product decomposes in light: crystallise, dry and keep it in the dark.',
    source: 'School science resource and coursework on potassium trioxalatoferrate(III)',
  },
}

/** What stands at the end of every list of cautions. */
export const deferral: GeneralCaution = {
  text: 'For orientation when planning; not a risk assessment. Local rules, the supplier’s current safety data sheet and label, and qualified supervision take precedence over every line here.',
  source: 'The rule of this library',
}
