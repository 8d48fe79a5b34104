import type { Dimension, Quantity, Unit } from '../quantity/index.js'
import { unitsOf } from '../quantity/unit.js'
import { agreementOf, type Exactness } from './agreement.js'
import type { Statement } from './statement.js'

/** That the unit of an answer is missing or another one. */
export interface UnitRemark {
  /** Whether it is missing or wrong. */
  readonly kind: 'missing' | 'wrong'
  /** The unit that was stated; `1` where none was. */
  readonly stated: Unit
  /** The unit in which the number is right; the unit of the right answer where the number is not right either. */
  readonly right: Unit
}

/** What is to be said of the unit of an answer whose number is right in another one; undefined where it is in none. */
export function unitRemark(right: Quantity, statement: Statement, step?: Quantity): UnitRemark | undefined {
  const exactness = { figures: 'any', step } as const
  const unit = likelyUnits(right).find(
    (each) => each !== statement.unit && isRightIn(right, statement, each, exactness),
  )
  return unit && remarkOn(statement, unit)
}

/** The remark that an answer has no unit, or one of another kind. */
export function remarkOn(statement: Statement, right: Unit): UnitRemark {
  return { kind: statement.unit === '1' ? 'missing' : 'wrong', stated: statement.unit, right }
}

/** The units that the right answer may be given in, its own first. */
function likelyUnits({ unit, dimension }: Quantity): readonly Unit[] {
  return [unit, ...unitsOf(dimension as Dimension)]
}

function isRightIn(right: Quantity, statement: Statement, unit: Unit, exactness: Exactness): boolean {
  const agreement = agreementOf(right.to(unit as never), statement, exactness)
  return agreement !== undefined && agreement.remark === undefined
}
