import type { Quantity } from '../quantity/index.js'
import type { CropInput } from './crop-input.js'
import { CrystallisationError } from './crystallisation-error.js'
import { type ExpectedCrop, expectedCrop } from './expected-crop.js'
import { isNumber } from './given-solubility.js'
import { record } from './record.js'

/** What filtering at another temperature does to a crop. */
export interface WarmFiltration {
  /** The crop at that temperature. */
  readonly crop: ExpectedCrop
  /** How much less it is than planned; below zero where it is more. */
  readonly lessBy: Quantity<'mass'>
  /** The same, in per cent of the planned crop. */
  readonly lessByShare: Quantity<'ratio'>
}

/**
 * What it costs to filter at another temperature than planned, a few degrees too warm for example.
 *
 * @param input - The batch as planned, as for {@link expectedCrop}.
 * @param actual - The temperature at which it is filtered, and the solubility there where that of the plan was given as a number.
 * @returns The crop at that temperature and how much less it is.
 * @throws {@link CrystallisationError} `crystallisation/solubility-needed` where the solubility was given for one temperature only;
 *   `crystallisation/no-such-crop` where nothing crystallises as planned; the codes of {@link expectedCrop}.
 * @source The water balance of {@link expectedCrop}, twice.
 *
 * @example
 * ```ts
 * import { warmFiltration } from 'saltwright/crystallisation'
 *
 * const planned = { crystal: 'KNO3', dissolved: '20.0 g', water: '25.0 g', temperature: '5 degC' } as const
 * warmFiltration(planned, { temperature: '10 degC' }).lessBy.toString() // => '0.97 g'
 * ```
 */
export function warmFiltration(
  input: CropInput,
  actual: Pick<CropInput, 'temperature' | 'solubility'>,
): WarmFiltration {
  const { solubility } = record(actual, 'a temperature of filtration')
  if (isNumber(record(input, 'what is cooled').solubility) && solubility === undefined) throw solubilityNeeded()
  const planned = expectedCrop(input)
  if (planned.crop.value.isZero()) throw nothingPlanned(planned)
  const crop = expectedCrop({ ...input, ...actual })
  const lessBy = planned.crop
    .minus(crop.crop)
    .named({ label: 'less crop', symbol: 'm', of: crop.crystal, role: 'mass' })
  return { crop, lessBy, lessByShare: lessBy.dividedBy(planned.crop).to('%').named({ label: 'less crop, per cent' }) }
}

function solubilityNeeded(): CrystallisationError {
  return new CrystallisationError({
    code: 'crystallisation/solubility-needed',
    message: 'The solubility was given as a number, for one temperature; another temperature needs another.',
    path: ['solubility'],
    found: 'none for the second temperature',
    expected: 'a solubility at the second temperature, or a table',
  })
}

function nothingPlanned({ crystal }: ExpectedCrop): CrystallisationError {
  return new CrystallisationError({
    code: 'crystallisation/no-such-crop',
    message: `At the planned temperature no ${crystal} crystallises, so there is nothing to lose.`,
    found: 'an unsaturated liquor',
    expected: 'a liquor that crystallises as planned',
  })
}
