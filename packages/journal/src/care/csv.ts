/** Entries as rows of a spreadsheet: one file for each kind, one column for each field, RFC 4180. @source rfc-4180 */
import type { StoredEntry } from '../envelope.ts'
import type { Json } from '../json.ts'

const OWN_COLUMNS = [
  'entry_id',
  'happened_at',
  'happened_zone',
  'written_at',
  'person_id',
  'device_id',
  'device_seq',
  'visibility',
  'erased',
] as const

/** Fields of the body by their column: `timingsMin.heat` as `timings_min_heat`; lists stay JSON. */
export function bodyColumns(value: Json): ReadonlyMap<string, Json> {
  const columns = new Map<string, Json>()
  const walk = (path: string, each: Json | undefined): void => {
    if (each === undefined) return
    if (each !== null && typeof each === 'object' && !Array.isArray(each)) {
      for (const [name, inner] of Object.entries(each))
        walk(path === '' ? snake(name) : `${path}_${snake(name)}`, inner)
    } else columns.set(path === '' ? 'value' : path, each)
  }
  walk('', value)
  return columns
}

function snake(name: string): string {
  return name.replace(/[A-Z]/g, (letter) => `_${letter.toLowerCase()}`)
}

export function csvHeader(columns: readonly string[]): string {
  return csvLine([...OWN_COLUMNS, ...columns.map((column) => `body_${column}`)])
}

export function csvRow({ envelope: e, body }: StoredEntry, columns: readonly string[]): string {
  const fields = body ? bodyColumns(body.value) : new Map<string, Json>()
  const own = [
    e.id,
    e.happenedAt.instant,
    e.happenedAt.zone,
    e.writtenAt,
    e.personId,
    e.deviceId,
    e.deviceSeq,
    e.visibility,
  ]
  return csvLine([...own, body ? 'no' : 'yes', ...columns.map((column) => cellOf(fields.get(column)))])
}

function cellOf(value: Json | undefined): string | number {
  if (value === undefined || value === null) return ''
  if (typeof value === 'number') return value
  if (typeof value === 'boolean') return value ? 'yes' : 'no'
  return typeof value === 'string' ? value : JSON.stringify(value)
}

/** Spreadsheets run a text that begins like a formula; an apostrophe before it keeps it a text. */
const LIKE_A_FORMULA = /^[=+\-@\t\r]/

function csvLine(cells: readonly (string | number)[]): string {
  const texts = cells.map((cell) => {
    if (typeof cell === 'number') return String(cell)
    const text = LIKE_A_FORMULA.test(cell) ? `'${cell}` : cell
    return /[",\r\n]/.test(text) ? `"${text.replaceAll('"', '""')}"` : text
  })
  return `${texts.join(',')}\r\n`
}
