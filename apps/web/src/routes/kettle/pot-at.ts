/** One pot-load as its steps see it: the walk so far, the plan behind it, and the words its times are said in. */
import type { BatchFact } from '@crib/journal'
import type { BatchPlan, PotWalk } from '@crib/planning'
import { formatClock } from '@crib/wording'
import { clockAt } from '../../walk/clock-at.ts'
import type { Taps } from '../../walk/taps.tsx'

export interface PotAt {
  readonly batch: BatchFact
  readonly plan: BatchPlan | null
  readonly walk: PotWalk
  readonly taps: Taps
  readonly zone: string
  readonly nowMs: number
}

const MINUTE_MS = 60_000

/** When it happened. */
export function clockText(atMs: number, { zone }: Pick<PotAt, 'zone'>): string {
  return formatClock(clockAt(atMs, zone))
}

/** When it is due: never a minute early. */
export function dueText(atMs: number, at: Pick<PotAt, 'zone'>): string {
  return clockText(Math.ceil(atMs / MINUTE_MS) * MINUTE_MS, at)
}
