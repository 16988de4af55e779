/**
 * Shelled corn between weight and volume. Whatever was typed becomes lb and US liquid qt here, once.
 * Leaves out: reading text (science) and moisture.
 */
import { convert, type Quantity, UNITS } from '@crib/science'

/** Weight of one US liquid quart of shelled corn. [lb]  Project rule, exactly; a lot's own weight replaces it.
 *  56 lb a bushel over 37.24 liquid quarts is 1.504. @source rankin-wisconsin-bushels */
export const LB_PER_LIQUID_QT = 1.5

/** An amount as the keeper gave it; `assumed` when a bare quart, cup or pint had to be taken as one or the other. */
export interface Amount extends Quantity {
  readonly assumed?: 'liquid' | 'dry'
}

/** Shelled corn weighed or measured, as pounds. [lb]  @throws {RangeError} for a unit that is neither mass nor volume. */
export function shelledLb({ value, unit }: Quantity, lbPerLiquidQt: number = LB_PER_LIQUID_QT): number {
  if (UNITS[unit].measure === 'mass') return convert(value, unit, 'Lb')
  return convert(value, unit, 'LiquidQt') * lbPerLiquidQt
}
