/**
 * The shape of a public calculation. Each `*.calc.ts` beside its part defines one; package catalogue gathers them, and
 * terminal, HTTP, workbench page and docs are made from this shape alone.
 */
import type { Json, Reckoned } from './reckoned.ts'
import type { Quantity, Unit } from './units/unit.ts'

interface FieldBase {
  /** A short label in plain words; the unit is shown by the door. */
  readonly label: string
  readonly optional?: boolean
}

export type Field =
  | (FieldBase & {
      readonly kind: 'quantity'
      /** Canonical unit: what the calculation receives, whatever was typed. */
      readonly unit: Unit
      readonly min: number
      readonly max: number
      /** Who sets min and max: a key of sources.bib or `project-rule`. */
      readonly limitSource: string
    })
  | (FieldBase & { readonly kind: 'count'; readonly min: number; readonly max: number; readonly limitSource: string })
  | (FieldBase & { readonly kind: 'choice'; readonly options: readonly string[] })
  | (FieldBase & { readonly kind: 'flag' })
  | (FieldBase & { readonly kind: 'text'; readonly maxLength: number })
  /** A clock time `HH:MM`, received as minutes after midnight. */
  | (FieldBase & { readonly kind: 'clock' })
  /** Readings by time, received as `SeriesPoint`s in the field's units. */
  | (FieldBase & { readonly kind: 'series'; readonly unit: Unit; readonly timeUnit: 'Min' | 'S' })
  | (FieldBase & { readonly kind: 'table'; readonly columns: Fields; readonly maxRows: number })
  | (FieldBase & { readonly kind: 'record'; readonly fields: Fields })

export interface SeriesPoint {
  /** In the field's `timeUnit`. */
  readonly time: number
  /** In the field's `unit`. */
  readonly value: number
}

export interface Fields {
  readonly [name: string]: Field
}

/** A sentence to be worded by package wording: a message key with what goes in its gaps. */
export interface Sentence {
  readonly key: string
  readonly params?: { readonly [name: string]: string | number | Quantity }
}

export type CalcResult =
  | {
      readonly ok: true
      readonly values: readonly Reckoned[]
      readonly reasons: readonly Sentence[]
      readonly warnings: readonly Sentence[]
    }
  | {
      readonly ok: false
      readonly refused: string
      readonly why: readonly Sentence[]
      readonly askWhom: readonly Sentence[]
    }

export interface Calc<Input = never> {
  /** kebab-case, stable for ever: `canner-card`. */
  readonly id: string
  readonly title: string
  /** One sentence: the question it answers. */
  readonly question: string
  readonly inputs: Fields
  readonly outputs: { readonly [id: string]: { readonly label: string; readonly unit: Unit } }
  readonly sourceKeys: readonly string[]
  /** Inputs a newcomer can run unchanged; invented. */
  readonly example: { readonly [name: string]: Json }
  readonly run: (input: Input) => CalcResult
}
