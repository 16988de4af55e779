/** What went into a number, in words: the unit is read from the ending of its name. */
import { type Json, UNITS, type Unit } from '@crib/science'
import { formatQuantity } from '@crib/wording'

const UNIT_ENDINGS = (Object.keys(UNITS) as Unit[]).sort((a, b) => b.length - a.length)

/** `elevationFt: 820` as `elevation` and `820 ft (250 m)`. */
export function inputText(name: string, value: Json): { readonly words: string; readonly text: string } {
  const unit = UNIT_ENDINGS.find((ending) => name.endsWith(ending) && name.length > ending.length)
  if (unit && typeof value === 'number') {
    return { words: plainWords(name.slice(0, -unit.length)), text: formatQuantity({ value, unit }) }
  }
  const text = typeof value === 'string' ? value : typeof value === 'object' ? JSON.stringify(value) : String(value)
  return { words: plainWords(name), text }
}

function plainWords(name: string): string {
  return name.replace(/([a-z0-9])([A-Z])/g, (_, a: string, b: string) => `${a} ${b.toLowerCase()}`).replaceAll('-', ' ')
}
