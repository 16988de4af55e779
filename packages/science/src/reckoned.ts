/**
 * The result every calculation returns, carried unchanged to screen, terminal, HTTP and paper.
 * Leaves out: how a value is worded (package wording) and what a calculation is called (calc.ts).
 */
import type { Unit } from './units/unit.ts'

/** Plain data: what survives JSON, SQL and a label. */
export type Json = null | boolean | number | string | readonly Json[] | { readonly [key: string]: Json | undefined }

/** How a value is rounded, once, when it is shown. `step` is in the value's own unit. */
export interface Rounding {
  readonly mode: 'up' | 'down' | 'nearest'
  readonly step: number
}

/**
 * What stands behind a value.
 * `published`: read from a cited table. `computed`: worked out from a cited equation. `own-record`: the keeper's own
 * entries. `common-practice`: trade habit with no source. `project-rule`: our own arithmetic rule. `as-typed`: the keeper said so.
 */
export type Basis = 'published' | 'computed' | 'own-record' | 'common-practice' | 'project-rule' | 'as-typed'

export interface Reckoned {
  /** Which output this is, unique within one result, for example `dryCornLiquidQt`. */
  readonly id: string
  /** Unrounded, in `unit`. */
  readonly value: number
  readonly unit: Unit
  readonly rounding: Rounding
  readonly low?: number
  readonly high?: number
  readonly basis: Basis
  /** Keys of packages/science/sources.bib; empty only where `basis` has no source to name. */
  readonly sourceKeys: readonly string[]
  readonly inputs: { readonly [name: string]: Json }
  /** Edition of the guidance in force, for example `guidance-2026-11`. */
  readonly edition: string
  readonly codeVersion: string
}

export const CODE_VERSION = '0.1.0'

/** Absorbs binary dust, so that 6.000000000001 loads are six and not seven. */
const COUNT_DUST = 1e-9

/** Smallest whole number not below `x`, forgiving binary dust. [count]  Project rule: buy, shell and seed round up. */
export function ceilCount(x: number): number {
  return Math.ceil(x - COUNT_DUST)
}

/** Largest whole number not above `x`, forgiving binary dust. [count]  Project rule: food rounds down. */
export function floorCount(x: number): number {
  return Math.floor(x + COUNT_DUST)
}

/** The value as it is shown: rounded once, by the value's own rule. Same unit as `reckoned`. */
export function shownValue({ value, rounding }: Pick<Reckoned, 'value' | 'rounding'>): number {
  return roundTo(value, rounding)
}

/** `value` rounded to a multiple of `step`. Same unit as `value`. */
export function roundTo(value: number, { mode, step }: Rounding): number {
  const steps = value / step
  const whole = mode === 'up' ? ceilCount(steps) : mode === 'down' ? floorCount(steps) : Math.round(steps)
  // toPrecision removes the dust that 309.2 * 0.1 brings back.
  return Number((whole * step).toPrecision(12))
}

export const UP_TO_WHOLE: Rounding = { mode: 'up', step: 1 }
export const DOWN_TO_WHOLE: Rounding = { mode: 'down', step: 1 }
export const TO_WHOLE: Rounding = { mode: 'nearest', step: 1 }
