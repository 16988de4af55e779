/**
 * Reads what a person, a script or a form sent against a calculation's input schema: numbers in the canonical unit,
 * text with a unit ("9 lb"), or { value, unit }. Every fault is named; nothing is guessed and nothing is dropped silently.
 */
import {
  convert,
  type Field,
  type Fields,
  type Json,
  parseQuantity,
  type Quantity,
  type Sentence,
  UNITS,
  type Unit,
} from '@crib/science'
import { type MessageKey, unitName } from '@crib/wording'

export interface InputFault {
  /** Path of the field, for example `canners[1].capacityPints`. */
  readonly field: string
  readonly sentence: Sentence
}

export type ReadInputs =
  | { readonly ok: true; readonly input: { readonly [name: string]: unknown } }
  | { readonly ok: false; readonly faults: readonly InputFault[] }

export function readInputs(fields: Fields, raw: unknown): ReadInputs {
  const faults: InputFault[] = []
  const input = readRecord(fields, raw, '', faults)
  return faults.length === 0 ? { ok: true, input } : { ok: false, faults }
}

function fault(faults: InputFault[], field: string, key: MessageKey, params: Sentence['params'] = {}): undefined {
  faults.push({ field, sentence: { key, params: { field, ...params } } })
  return undefined
}

function readRecord(fields: Fields, raw: unknown, path: string, faults: InputFault[]): { [name: string]: unknown } {
  if (!isRecord(raw)) {
    fault(faults, path || 'input', 'workbench:not-a-record', { given: shown(raw) })
    return {}
  }
  for (const name of Object.keys(raw)) {
    if (!(name in fields)) {
      fault(faults, join(path, name), 'workbench:unknown-field', { known: Object.keys(fields).join(', ') })
    }
  }
  const input: { [name: string]: unknown } = {}
  for (const [name, field] of Object.entries(fields)) {
    const given = raw[name]
    if (given === undefined || given === null || given === '') {
      if (!field.optional) {
        const at = join(path, name)
        fault(faults, at, 'workbench:missing', { field: `${at} (${field.label})` })
      }
      continue
    }
    const value = readField(field, given, join(path, name), faults)
    if (value !== undefined) input[name] = value
  }
  return input
}

function readField(field: Field, given: unknown, path: string, faults: InputFault[]): unknown {
  switch (field.kind) {
    case 'quantity':
      return readQuantity(field, given, path, faults)
    case 'count':
      return readCount(field, given, path, faults)
    case 'choice':
      return typeof given === 'string' && field.options.includes(given)
        ? given
        : fault(faults, path, 'workbench:not-a-choice', { given: shown(given), options: field.options.join(', ') })
    case 'flag':
      if (given === true || given === 'true' || given === 'yes') return true
      if (given === false || given === 'false' || given === 'no') return false
      return fault(faults, path, 'workbench:not-a-flag', { given: shown(given) })
    case 'text':
      return typeof given === 'string' && given.length <= field.maxLength
        ? given
        : fault(faults, path, 'workbench:text-too-long', { limit: field.maxLength })
    case 'clock':
      return readClock(given, path, faults)
    case 'series':
      return readSeries(field, given, path, faults)
    case 'table':
      return readTable(field, given, path, faults)
    case 'record':
      return readRecord(field.fields, given, path, faults)
  }
}

type FieldOf<K extends Field['kind']> = Extract<Field, { kind: K }>

function readQuantity(field: FieldOf<'quantity'>, given: unknown, path: string, faults: InputFault[]) {
  const value = canonicalValue(field.unit, given, path, faults)
  if (value === undefined) return undefined
  if (!(value >= field.min && value <= field.max)) {
    return fault(faults, path, 'workbench:out-of-range', {
      value: { value, unit: field.unit },
      min: { value: field.min, unit: field.unit },
      max: { value: field.max, unit: field.unit },
      source: field.limitSource,
    })
  }
  return value
}

function canonicalValue(unit: Unit, given: unknown, path: string, faults: InputFault[]): number | undefined {
  if (typeof given === 'number') return given
  if (isRecord(given)) {
    const { value, unit: from } = given as Partial<Quantity>
    if (typeof value === 'number' && typeof from === 'string' && from in UNITS)
      return converted(value, from, unit, path, faults)
  }
  if (typeof given === 'string') {
    // A bare number in a terminal or a form is in the unit the field names.
    const bare = Number(given.trim())
    if (given.trim() !== '' && Number.isFinite(bare)) return bare
    // A site may lie below the sea and a crib below freezing; the field's own limits say how far.
    const parsed = parseQuantity(given, UNITS[unit].measure, { allowNegative: true })
    if (parsed.ok) return converted(parsed.quantity.value, parsed.quantity.unit, unit, path, faults)
  }
  return fault(faults, path, 'workbench:not-a-quantity', { given: shown(given), unit: unitName(unit) })
}

function converted(value: number, from: Unit, to: Unit, path: string, faults: InputFault[]): number | undefined {
  if (UNITS[from].measure !== UNITS[to].measure) {
    return fault(faults, path, 'workbench:wrong-measure', { given: { value, unit: from }, unit: unitName(to) })
  }
  return convert(value, from, to)
}

function readCount(field: FieldOf<'count'>, given: unknown, path: string, faults: InputFault[]) {
  const value = typeof given === 'string' && given.trim() !== '' ? Number(given) : given
  if (typeof value !== 'number' || !Number.isInteger(value) || value < field.min || value > field.max) {
    return fault(faults, path, 'workbench:count-out-of-range', {
      given: shown(given),
      min: field.min,
      max: field.max,
      source: field.limitSource,
    })
  }
  return value
}

function readClock(given: unknown, path: string, faults: InputFault[]) {
  if (typeof given === 'number' && given >= 0 && given < 2880) return given
  const match = typeof given === 'string' ? /^(\d{1,2}):(\d{2})(?:\+(\d))?$/.exec(given.trim()) : null
  const hours = Number(match?.[1])
  const minutes = Number(match?.[2])
  const days = Number(match?.[3] ?? 0)
  if (match && hours < 24 && minutes < 60) return days * 1440 + hours * 60 + minutes
  return fault(faults, path, 'workbench:not-a-clock', { given: shown(given) })
}

function readSeries(field: FieldOf<'series'>, given: unknown, path: string, faults: InputFault[]) {
  if (!Array.isArray(given)) return fault(faults, path, 'workbench:not-a-series', { given: shown(given) })
  return given.flatMap((point, index) => {
    const at = `${path}[${index}]`
    const pair = Array.isArray(point) ? point : isRecord(point) ? [point.time, point.value] : []
    // An empty cell is no reading; Number('') would make it zero.
    const [time, value] = pair.map((part) => (typeof part === 'string' && part.trim() !== '' ? Number(part) : part))
    if (typeof time === 'number' && typeof value === 'number' && Number.isFinite(time) && Number.isFinite(value)) {
      return [{ time, value }]
    }
    const units = { unit: unitName(field.unit), timeUnit: unitName(field.timeUnit) }
    fault(faults, at, 'workbench:not-a-point', { given: shown(point), ...units })
    return []
  })
}

function readTable(field: FieldOf<'table'>, given: unknown, path: string, faults: InputFault[]) {
  if (!Array.isArray(given)) return fault(faults, path, 'workbench:not-a-table', { given: shown(given) })
  if (given.length > field.maxRows) {
    return fault(faults, path, 'workbench:too-many-rows', { count: given.length, limit: field.maxRows })
  }
  return given.map((row, index) => readRecord(field.columns, row, `${path}[${index}]`, faults))
}

function isRecord(value: unknown): value is { readonly [name: string]: unknown } {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

function join(path: string, name: string): string {
  return path === '' ? name : `${path}.${name}`
}

function shown(value: unknown): string {
  const text = JSON.stringify(value as Json) ?? 'nothing'
  return text.length > 60 ? `${text.slice(0, 57)}...` : text
}
