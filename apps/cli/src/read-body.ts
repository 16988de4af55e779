/**
 * Turns what was typed for an entry ("9 lb", "yes", a lot's name) into the plain values its kind asks for. Reads the kind's
 * own schema, so a new kind needs nothing here. Leaves out: limits, which the kind itself checks.
 */
import { convert, type Json, parseQuantity, UNITS, type Unit } from '@crib/science'
import { badInput } from './exit-codes.ts'
import { unitName } from './unit-name.ts'

/** The part of a schema this file reads; schemas of the journal have it. */
export interface SchemaShape {
  readonly type: string
  readonly entries?: { readonly [name: string]: SchemaShape }
  readonly wrapped?: SchemaShape
  readonly item?: SchemaShape
  readonly options?: readonly (SchemaShape | string)[]
  readonly key?: string
  readonly literal?: unknown
}

/** Gives the id that a name stands for, null when nothing bears that name. `field` says which ids are meant. */
export type ResolveName = (field: string, name: string) => string | null

const UUID = /^[0-9a-f]{8}(-[0-9a-f]{4}){3}-[0-9a-f]{12}$/
const UNIT_BY_SUFFIX: readonly (readonly [string, Unit])[] = [
  ...(Object.keys(UNITS) as Unit[]).map((unit) => [unit, unit] as const),
  ['Psi', 'PsiGauge'] as const,
  ['psi', 'PsiGauge'] as const,
  ['waterIn', 'In'] as const,
].toSorted(([a], [b]) => b.length - a.length)

/** The unit a field's name ends in; none for a rate such as `cupsPerLiquidQt`, which no single unit measures. */
function unitOf(field: string): Unit | null {
  if (/Per[A-Z]/.test(field)) return null
  return UNIT_BY_SUFFIX.find(([suffix]) => field.endsWith(suffix))?.[1] ?? null
}

/**
 * The value a field's schema asks for, from what was typed.
 *
 * @throws {BadInput} on a quantity that cannot be read, or a name that nothing in the book bears.
 */
export function readBody(schema: SchemaShape, typed: Json, resolve: ResolveName, field = ''): Json {
  switch (schema.type) {
    case 'exact_optional':
    case 'optional':
      return readBody(schema.wrapped!, typed, resolve, field)
    case 'strict_object':
    case 'object':
      return readRecord(schema.entries!, typed, resolve)
    case 'variant':
      return readVariant(schema, typed, resolve, field)
    case 'array':
      return Array.isArray(typed)
        ? typed.map((item) => readBody(schema.item!, item, resolve, field))
        : readList(schema.item!, typed, resolve, field)
    case 'number':
      return typeof typed === 'string' ? readNumber(field, typed) : typed
    case 'boolean':
      return readFlag(typed)
    case 'string':
      return /Id$/.test(field) && typeof typed === 'string' ? readId(field, typed, resolve) : typed
    default:
      return typed
  }
}

function readRecord(entries: NonNullable<SchemaShape['entries']>, typed: Json, resolve: ResolveName): Json {
  if (!isRecord(typed)) return typed
  return Object.fromEntries(
    Object.entries(typed).map(([name, value]) => {
      const schema = entries[name]
      return [name, schema === undefined || value === undefined ? value : readBody(schema, value, resolve, name)]
    }),
  )
}

/** Typing the word alone is enough where the rest may be left out: `event=steam-steady`. */
function readVariant(
  { key = 'type', options = [] }: SchemaShape,
  typed: Json,
  resolve: ResolveName,
  field: string,
): Json {
  const record = typeof typed === 'string' ? { [key]: typed } : typed
  if (!isRecord(record)) return typed
  const chosen = options.find(
    (option): option is SchemaShape => typeof option !== 'string' && option.entries?.[key]?.literal === record[key],
  )
  return chosen ? readBody(chosen, record, resolve, field) : record
}

/** `dial, weight` where a list of words is asked for. */
function readList(item: SchemaShape, typed: Json, resolve: ResolveName, field: string): Json {
  if (typeof typed !== 'string' || (item.type !== 'string' && item.type !== 'picklist')) return typed
  return typed.split(',').map((word) => readBody(item, word.trim(), resolve, field))
}

function readNumber(field: string, typed: string): Json {
  const bare = Number(typed)
  if (typed !== '' && !Number.isNaN(bare)) return bare
  const unit = unitOf(field)
  if (unit === null) return typed
  const parsed = parseQuantity(typed, UNITS[unit].measure, { allowNegative: true })
  if (!parsed.ok) throw badInput('terminal:not-an-amount', { field, given: typed, unit: unitName(unit) })
  // Twelve digits: 9 lb is kept as 4.08233133 kg, without the dust of binary multiplication.
  return Number(convert(parsed.quantity.value, parsed.quantity.unit, unit).toPrecision(12))
}

function readFlag(typed: Json): Json {
  if (typed === 'true' || typed === 'yes') return true
  if (typed === 'false' || typed === 'no') return false
  return typed
}

function readId(field: string, typed: string, resolve: ResolveName): string {
  if (UUID.test(typed)) return typed
  const id = resolve(field, typed)
  if (id === null) throw badInput('terminal:no-such-name', { field, given: typed })
  return id
}

function isRecord(value: Json | undefined): value is { readonly [name: string]: Json | undefined } {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}
