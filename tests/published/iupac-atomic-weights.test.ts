import { atomicWeight, elementInfo, elements } from '../../src/element/index.js'
import { isSaltwrightError } from '../../src/errors.js'
import { checkPublished, type PublishedRow } from './check.js'
import { type PrintedAtomicWeight, printedAtomicWeights } from './data/iupac-atomic-weights.js'

/** `63.546 ± 0.003`, `[1.00784, 1.00811]` or `none`, from the value and the standard uncertainty that the library uses. */
function readBack(symbol: string, weights: 'abridged' | 'standard', as: 'value' | 'interval'): string {
  try {
    const weight = atomicWeight(symbol, weights)
    const half = weight.input?.uncertainty?.standard.times(Math.sqrt(3)) ?? weight.value
    if (as === 'interval') return `[${trim(weight.value.minus(half))}, ${trim(weight.value.plus(half))}]`
    const places = Math.max(0, -(weight.place ?? 0))
    return `${weight.value.toFixed(places)} ± ${half.toFixed(places)}`
  } catch (error) {
    return isSaltwrightError(error) && error.code === 'element/no-standard-weight' ? 'none' : String(error)
  }
}

const trim = (end: { toSignificantDigits(figures: number): { toString(): string } }): string =>
  end.toSignificantDigits(12).toString()

function printedStandard({ standard }: PrintedAtomicWeight): string {
  if (standard === null) return 'none'
  return 'lower' in standard ? `[${standard.lower}, ${standard.upper}]` : `${standard.value} ± ${standard.bound}`
}

const rows = printedAtomicWeights.flatMap((printed): readonly PublishedRow[] => {
  const { number, symbol, name, standard, abridged, note } = printed
  const at = note === undefined ? `Table 1, element ${number}` : `Table 1, element ${number} (${note})`
  const as = standard !== null && 'lower' in standard ? 'interval' : 'value'
  return [
    {
      at,
      what: 'the name',
      published: `${number} ${symbol} ${name}`,
      ours: () => Object.values(elementInfo(elements[number - 1]?.symbol ?? '')).join(' '),
      agrees: true,
    },
    {
      at,
      what: `the standard atomic weight of ${name}`,
      published: printedStandard(printed),
      ours: () => readBack(symbol, 'standard', as),
      agrees: true,
    },
    {
      at,
      what: `the abridged atomic weight of ${name}`,
      published: abridged === null ? 'none' : `${abridged.value} ± ${abridged.bound}`,
      ours: () => readBack(symbol, 'abridged', 'value'),
      agrees: true,
    },
  ]
})

checkPublished(
  'Prohaska T. et al., Standard atomic weights of the elements 2021 (IUPAC Technical Report), Pure Appl. Chem. 2022, 94(5), 573-600, doi:10.1515/pac-2019-0603, with the 2024 changes of the CIAAW',
  rows,
)
