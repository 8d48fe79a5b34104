import { checkPublished, type PublishedRow } from './check.js'
import { type BookRow, bookRows, type Sample, source } from './data/openstax-chemistry-2e.js'
import { ourAnswer, printedAnswer } from './openstax-calculations.js'
import { explanationOf } from './openstax-explanations.js'

function sampleText({ of, mass, amount, volume, concentration }: Sample): string {
  const much = mass ?? amount ?? `${volume} of ${concentration}`
  return `${much} ${of}`
}

/** What a row is about, in words. */
function subjectOf(row: BookRow): string {
  switch (row.kind) {
    case 'molar mass':
      return `the molar mass of ${row.formula}`
    case 'amount':
      return `the amount of ${row.of} in ${row.mass}`
    case 'mass':
      return `the mass of ${row.amount} of ${row.times ?? ''}${row.of}`
    case 'element':
      return `the mass fraction of ${row.element} in ${row.formula}`
    case 'group':
      return `the mass fraction of ${row.group} in ${row.formula}`
    case 'mass fraction':
      return `the share of ${row.part} in ${row.whole}`
    case 'concentration':
      return `the concentration of ${sampleText(row.sample)} in ${row.volume}`
    case 'amount in solution':
      return `the amount in ${row.volume} of ${row.concentration}`
    case 'mass in solution':
      return `the mass of ${row.of} in ${row.volume} of ${row.concentration}`
    case 'volume of solution':
      return `the volume of ${row.concentration} with ${sampleText(row.sample)}`
    case 'diluted':
      return `the concentration of ${row.volume} of ${row.concentration} diluted to ${row.to}`
    case 'stock':
      return `the volume of ${row.from} with as much as ${row.volume} of ${row.concentration}`
    case 'density':
      return `what ${row.volume ?? row.mass ?? 'a solution'} of ${row.massFraction} ${row.of} with ${row.density} comes to`
    case 'balance':
      return `${row.equation}, balanced,`
    case 'reaction':
      return `the ${row.wanted} that goes with ${sampleText(row.given)}`
    case 'limiting':
      return `what limits ${row.equation}`
    case 'yield':
      return `the percent yield of ${row.actual} of ${row.product}`
    case 'titration':
      return `the concentration of ${row.analyte} by titration with ${sampleText(row.titrant)}`
    case 'analysis':
      return `the mass fraction of ${row.analyte} from ${sampleText(row.weighed)}`
  }
}

function agreementOf(row: BookRow): PublishedRow['agrees'] {
  const { ours, differs } = row
  if (ours === undefined || differs === undefined) return true
  const explained = row.kind === 'balance' || row.kind === 'limiting' ? undefined : explanationOf(row)
  return { ours, differs, ...(explained && { explained }) }
}

checkPublished(
  source,
  bookRows.map((row) => ({
    at: row.at,
    what: subjectOf(row),
    published: printedAnswer(row),
    ours: () => ourAnswer(row),
    agrees: agreementOf(row),
  })),
)
