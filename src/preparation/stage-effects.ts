import {
  type GasConditionsName,
  type GasVolume,
  gasVolume,
  type NeutralisationHeat,
  neutralisationHeat,
} from '../product/index.js'
import type { Quantity } from '../quantity/index.js'
import type { StageChemistry } from './chemistry.js'
import type { RecipeFacts } from './facts.js'
import { amountOf, type Form, scaleForm } from './form.js'
import { isTrace, type StageRun } from './run.js'

/** The gases that a stage gives off, with their volumes. */
export function gasesOf(
  { recipe, weights }: RecipeFacts,
  stage: StageChemistry,
  { extent }: StageRun,
): readonly GasVolume[] {
  const at: GasConditionsName = recipe.gasAt ?? '25 °C, 100 kPa'
  return [...stage.changes.values()]
    .filter(({ gas, moles }) => gas && moles.numerator > 0n && !isTrace(extent))
    .map(({ formula, moles }) =>
      gasVolume({ gas: formula, amount: namedAmount(scaleForm(extent, moles), formula), at, weights }),
    )
}

/** The heat of a strong acid and a strong base that meet in a stage; nothing where no value is known. */
export function heatOf({ neutralisation }: StageChemistry, { extent }: StageRun): NeutralisationHeat | undefined {
  if (neutralisation === undefined || isTrace(extent)) return undefined
  const { water, enthalpy } = neutralisation
  return neutralisationHeat({ water: namedAmount(scaleForm(extent, water), 'H2O'), enthalpy })
}

function namedAmount(form: Form, of: string): Quantity<'amount'> {
  return amountOf(form, of).named({ symbol: 'n', of, role: 'amount', label: `amount of ${of} formed` })
}
