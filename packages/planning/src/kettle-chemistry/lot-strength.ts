/**
 * Strength of a lot of ash from a titration of what was steeped from it, and the way from there to a dose.
 * Leaves out minutes and any promise: strength says what is in the lot, the rub says when it is done.
 */
import {
  type LiquorStrength,
  liquorStrength,
  lotStrengthEqPerKg,
  type Spread,
  type VinegarTitration,
} from '@crib/science'
import { wider } from './fields.ts'

export interface LotTest extends VinegarTitration {
  /** Ash that was steeped. [g] */
  readonly steepedG: number
  /** Water it was steeped in. [L] */
  readonly steepWaterL: number
}

export interface LotStrength {
  readonly liquor: LiquorStrength
  /** Alkali that came out. [eq/kg] */
  readonly eqPerKg: Spread
  /** Of it, as hydroxide. [fraction] */
  readonly hydroxideFraction: number
}

/**
 * Alkali of a lot, and how much of it is hydroxide. [eq/kg, fraction]
 *
 * @throws {ValidRangeError} outside the ranges of `liquorStrength` and `lotStrengthEqPerKg`.
 */
export function lotStrength(test: LotTest): LotStrength {
  const liquor = liquorStrength(test)
  const { value } = liquor.alkalinityEqPerL
  return {
    liquor,
    eqPerKg: wider(liquor.alkalinityEqPerL, lotStrengthEqPerKg(1, test.steepWaterL, test.steepedG)),
    hydroxideFraction: value > 0 ? Math.min(1, liquor.hydroxideMolPerL.value / value) : 0,
  }
}
