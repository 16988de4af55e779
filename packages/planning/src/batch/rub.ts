/** When to look at the pot, and what a rub test says in one word. Never a promised minute, never "nearly done". */
import { daysBetween } from '../canner/dial.ts'
import { RUB_AGAIN_MIN } from './ash-advice.ts'

/** Kernels in a rub test.  common practice, no source */
export const RUB_TEST_KERNELS = 20

export type RubWord = 'none' | 'few' | 'half' | 'most' | 'nearly-all'

/** One word for the share of kernels that slipped.  project rule: few below 2 in 5, half to 3 in 5, nearly all from 9 in 10 */
export function rubWord({
  slippedCount,
  ofCount,
}: {
  readonly slippedCount: number
  readonly ofCount: number
}): RubWord {
  const share = slippedCount / ofCount
  if (slippedCount === 0) return 'none'
  if (share < 0.4) return 'few'
  if (share <= 0.6) return 'half'
  return share < 0.9 ? 'most' : 'nearly-all'
}

export interface FirstLook {
  readonly fromMs: number
  /** When the hulls slipped by the keeper's own record, counted from this boil. */
  readonly ownSlipAtMs?: number
}

/**
 * From when to look in, once it boils. [epoch ms]
 * With an own record: one rub interval before it. Without: where the range of common practice begins.
 *
 * @param rangeLowMin low end of the range in alkali. [min]
 */
export function firstLook(boilAtMs: number, rangeLowMin: number, ownSlipMin?: number): FirstLook {
  const at = (minutes: number) => boilAtMs + minutes * 60_000
  if (ownSlipMin === undefined) return { fromMs: at(rangeLowMin) }
  return { fromMs: at(Math.max(0, ownSlipMin - RUB_AGAIN_MIN)), ownSlipAtMs: at(ownSlipMin) }
}

/** Days in a month, on average. */
const MONTH_DAYS = 30.44

/** Whole months an ash lot has stood open, to the nearest; undefined for a lidded one, or one of no known day. */
export function stoodOpenMonths(
  { lidded, gatheredOn }: { readonly lidded?: boolean | undefined; readonly gatheredOn?: string | undefined },
  today: string,
): number | undefined {
  if (lidded !== false || gatheredOn === undefined) return undefined
  return Math.round(daysBetween(gatheredOn, today) / MONTH_DAYS)
}

/** When to rub again after a rub test. [epoch ms]  common practice, no source */
export function rubAgainAtMs(rubbedAtMs: number): number {
  return rubbedAtMs + RUB_AGAIN_MIN * 60_000
}

/**
 * Whether the pot asks for weak-ash advice: fewer than half slipped in the last rub, past the minute the own record or,
 * without one, the low end of the range names.  project rule
 */
export function asksForAshAdvice(
  {
    boilAtMs,
    rubs,
  }: {
    readonly boilAtMs?: number
    readonly rubs: readonly { readonly atMs: number; readonly slippedCount: number; readonly ofCount: number }[]
  },
  rangeLowMin: number,
  ownSlipMin?: number,
): boolean {
  const last = rubs.at(-1)
  if (boilAtMs === undefined || !last) return false
  const isLate = last.atMs - boilAtMs >= (ownSlipMin ?? rangeLowMin) * 60_000
  return isLate && last.slippedCount * 2 < last.ofCount
}
