/** What a unit is called beside a number, as the one place that words values calls it. */
import type { Unit } from '@crib/science'
import { formatQuantity } from '@crib/wording'

/** `psi`, `kg`, `liquid qt`; empty for a count. */
export function unitName(unit: Unit): string {
  return formatQuantity({ value: 0, unit }, 'alone').replace(/^0\s*/, '')
}
