import { type Field, type Json, UNITS, type Unit } from '@crib/science'
import { formatClock, unitName } from '@crib/wording'

/**
 * What a field shows of an input that nobody has typed yet: an amount linked with its unit, or a clock time linked as
 * minutes after midnight, as a person would have written it. `25:30` is `01:30+1`, the next day.
 */
export function writtenText(value: Json | undefined, kind: Field['kind'] = 'text'): string {
  if (value === undefined || value === null) return ''
  if (kind === 'clock' && typeof value === 'number' && Number.isInteger(value) && value >= 0) {
    const days = Math.floor(value / 1440)
    return days === 0 ? formatClock(value) : `${formatClock(value)}+${days}`
  }
  if (typeof value === 'object' && 'value' in value && 'unit' in value) {
    return `${value.value} ${String(value.unit) in UNITS ? unitName(value.unit as Unit) : value.unit}`
  }
  return typeof value === 'object' ? JSON.stringify(value) : String(value)
}
