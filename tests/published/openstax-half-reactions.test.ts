import { completeHalfReaction, lowestTerms, type Medium } from '../../src/equation/index.js'
import { checkPublished, type PublishedRow } from './check.js'
import { printedInAcid, printedInBase, source } from './data/openstax-half-reactions.js'

/** The half-reaction found again from what is reduced and what it becomes; fractions of the print are cleared. */
function rowOf(printed: string, medium: Medium): PublishedRow {
  return {
    at: printed,
    what: `the half-reaction, completed in ${medium === 'acid' ? 'an acid' : 'a base'},`,
    published: lowestTerms(printed).text,
    ours: () => completeHalfReaction(printed, { medium }).text,
    agrees: true,
  }
}

checkPublished(source, [
  ...printedInAcid.map((printed) => rowOf(printed, 'acid')),
  ...printedInBase.map((printed) => rowOf(printed, 'base')),
  {
    at: 'row of [Ag(S2O3)2]',
    what: 'the reduction of the thiosulfate complex of silver',
    published: '[Ag(S2O3)2]^3+ + e^- -> Ag + 2 S2O3^2-',
    ours: () => completeHalfReaction('[Ag(S2O3)2]^3- -> Ag + S2O3^2-', { medium: 'acid' }).text,
    agrees: {
      ours: '[Ag(S2O3)2]^3- + e^- -> Ag + 2 S2O3^2-',
      differs: 'printed with the charge 3+, with which the charges are +2 and -4',
    },
  },
])
