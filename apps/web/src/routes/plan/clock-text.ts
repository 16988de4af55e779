/** A clock time of the day in words, with the day where it is a later one: `00:37 next day`. */
import { formatQuantity } from '@crib/wording'

export function clock(clockMin: number): string {
  return formatQuantity({ value: Math.round(clockMin), unit: 'ClockMin' })
}
