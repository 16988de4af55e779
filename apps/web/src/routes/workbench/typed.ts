/**
 * What stands in the form: the inputs as they were typed or linked, untouched until a field is changed.
 * Leaves out: reading and judging them, which the catalogue does for every door alike.
 */
import { type Field, type Fields, type Json, type LiquidOrDry, parseQuantity, UNITS } from '@crib/science'

export interface Typed {
  readonly [name: string]: Json | undefined
}

export type Path = readonly (string | number)[]

export function isTyped(value: unknown): value is Typed {
  return typeof value === 'object' && value !== null && !Array.isArray(value)
}

/** The path as the catalogue names it in a fault: `canners[1].capacityPints`. */
export function pathText(path: Path): string {
  return path.reduce<string>(
    (text, step) => (typeof step === 'number' ? `${text}[${step}]` : text === '' ? step : `${text}.${step}`),
    '',
  )
}

export function valueAt(value: Json | undefined, path: Path): Json | undefined {
  const [step, ...rest] = path
  if (step === undefined) return value
  if (typeof step === 'number') return Array.isArray(value) ? valueAt(value[step], rest) : undefined
  return isTyped(value) ? valueAt(value[step], rest) : undefined
}

/** The same inputs with one value changed; nothing is changed in place. */
export function withValueAt(value: Json | undefined, path: Path, changed: Json | undefined): Json | undefined {
  const [step, ...rest] = path
  if (step === undefined) return changed
  if (typeof step === 'number') {
    const list: Json[] = Array.isArray(value) ? [...value] : []
    list[step] = withValueAt(list[step], rest, changed) ?? null
    return list
  }
  return {
    ...(isTyped(value) ? value : {}),
    [step]: withValueAt(isTyped(value) ? value[step] : undefined, rest, changed),
  }
}

/** A point of a series, whether it was linked as a pair or as a named record. */
export function pointOf(point: Json | undefined): {
  readonly time: Json | undefined
  readonly value: Json | undefined
} {
  if (Array.isArray(point)) return { time: point[0], value: point[1] }
  return isTyped(point) ? { time: point.time, value: point.value } : { time: undefined, value: undefined }
}

/**
 * What is asked of the catalogue: empty fields left out, a point without a figure named as such, and a bare quart or
 * cup written out as this kitchen means it, so that a link means the same in another kitchen.
 */
export function settle(fields: Fields, typed: Typed, vague: LiquidOrDry): Typed {
  const settled: Record<string, Json> = {}
  for (const [name, value] of Object.entries(typed)) {
    const field = fields[name]
    const kept = field ? settleField(field, value, vague) : value
    if (kept !== undefined) settled[name] = kept
  }
  return settled
}

function settleField(field: Field, value: Json | undefined, vague: LiquidOrDry): Json | undefined {
  if (value === undefined || value === '') return undefined
  switch (field.kind) {
    case 'quantity': {
      if (typeof value !== 'string') return value
      const parsed = parseQuantity(value, UNITS[field.unit].measure, { vague, allowNegative: true })
      return parsed.ok && parsed.assumed ? { ...parsed.quantity } : value
    }
    case 'series':
      if (!Array.isArray(value)) return value
      return value.map((point) => {
        const { time, value: read } = pointOf(point)
        return { time: time === '' ? null : (time ?? null), value: read === '' ? null : (read ?? null) }
      })
    case 'table':
      if (!Array.isArray(value)) return value
      return value.map((row) => (isTyped(row) ? (settle(field.columns, row, vague) as Json) : row))
    case 'record': {
      if (!isTyped(value)) return value
      const settled = settle(field.fields, value, vague)
      return field.optional && Object.keys(settled).length === 0 ? undefined : (settled as Json)
    }
    case 'count':
    case 'choice':
    case 'flag':
    case 'text':
    case 'clock':
      return value
  }
}
