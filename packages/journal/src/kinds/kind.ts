/** What every kind of entry is made of, and the building blocks of its body. */
import * as v from 'valibot'
import type { Json } from '../json.ts'
import type { Refusal, RefusalCode } from '../refusal.ts'

export interface KindDefinition<S extends v.GenericSchema = v.GenericSchema> {
  readonly kind: string
  readonly version: number
  /** Body of the present version. */
  readonly schema: S
  /** `migrate[0]` takes a body of version 1 to version 2, and so on: pure, gap-free, used when reading. */
  readonly migrate: readonly ((body: Json) => Json)[]
  /** Which story the entry belongs to, for example `run:0190...`; its facts are folded from that story alone. */
  readonly entity: (body: v.InferOutput<S>) => string
}

export function defineKind<S extends v.GenericSchema>(definition: KindDefinition<S>): KindDefinition<S> {
  return definition
}

/** `T` with everything in it readonly. */
export type Frozen<T> = Json extends T
  ? T
  : T extends string | number | boolean | null | undefined
    ? T
    : T extends readonly (infer Item)[]
      ? readonly Frozen<Item>[]
      : { readonly [K in keyof T]: Frozen<T[K]> }

interface Limit {
  readonly min: number
  readonly max: number
  readonly unit: string
  /** A key of sources.bib, or `project rule`. */
  readonly source?: string
}

/** A requirement that carries the refusal it leads to. */
type Requirement<T> = ((input: T) => boolean) & { readonly refusal?: (input: T) => Refusal }

/** A check with a refusal of its own; `field` is added where the issue is found. */
export function refuse<T>(holds: (input: T) => boolean, refusal: (input: T) => Refusal) {
  return v.check<T, string>(
    Object.assign((input: T) => holds(input), { refusal }),
    'refused',
  )
}

export function quantity({ min, max, unit, source = 'project rule' }: Limit) {
  return v.pipe(
    v.number(),
    refuse<number>(
      (value) => value >= min && value <= max,
      (value) => ({ code: 'out-of-limits', params: { value: finite(value), min, max, unit, source } }),
    ),
  )
}

export function count(min: number, max: number, unit = '') {
  return v.pipe(
    quantity({ min, max, unit }),
    v.check((value) => Number.isInteger(value), 'whole number'),
  )
}

/** -Infinity and Infinity have no place in JSON. */
function finite(value: number): number | string {
  return Number.isFinite(value) ? value : String(value)
}

// A household or village book; wider than any kitchen, narrow enough to catch grams typed as kilograms.
export const massKg = () => quantity({ min: 0, max: 5000, unit: 'kg' })
export const volumeL = () => quantity({ min: 0, max: 5000, unit: 'L' })
export const minutes = () => quantity({ min: 0, max: 1440, unit: 'min' })
/** Above any household gauge's face, below any typing slip of a decimal point. */
export const psi = () => quantity({ min: 0, max: 30, unit: 'psi' })
export const elevationM = () => quantity({ min: -500, max: 6000, unit: 'm' })
export const seasonYear = () => count(1900, 2200, 'CE')

export const id = () =>
  v.pipe(v.string(), v.regex(/^[0-9a-f]{8}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{4}-[0-9a-f]{12}$/, 'id'))
export const name = () => v.pipe(v.string(), v.trim(), v.minLength(1), v.maxLength(200))
export const note = () => v.pipe(v.string(), v.maxLength(10_000))
export const day = () => v.pipe(v.string(), v.isoDate())
export const json = () => v.custom<Json>((value) => value !== undefined, 'plain data')

/** A field that may be left out. */
export const maybe = v.exactOptional

/** Every reason a body is refused; empty when it is taken. */
export function issuesToRefusals(issues: readonly v.BaseIssue<unknown>[]): readonly Refusal[] {
  return issues.map(toRefusal)
}

function toRefusal(issue: v.BaseIssue<unknown>): Refusal {
  const field = v.getDotPath(issue) ?? ''
  const requirement = issue.requirement as Requirement<unknown> | undefined
  if (typeof requirement === 'function' && requirement.refusal) {
    const { code, params } = requirement.refusal(issue.input)
    return { code, params: { field, ...params } }
  }
  const received = issue.received
  const code: RefusalCode =
    issue.expected === 'never'
      ? 'unknown-field'
      : received === 'undefined'
        ? 'missing-value'
        : issue.expected === 'number'
          ? 'not-a-number'
          : 'wrong-value'
  return { code, params: { field, received, expected: issue.expected ?? issue.message } }
}
