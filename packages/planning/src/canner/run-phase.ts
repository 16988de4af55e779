/** Where a run stands, and whether its time ran. Leaves out: what to do about it (run-next.ts). */
import type { DueTimes } from './run-due.ts'
import type { Walk } from './walk.ts'

export type RunPhase =
  | 'before-load'
  | 'loaded'
  | 'heating'
  | 'venting'
  | 'come-up'
  | 'holding'
  | 'dipped'
  | 'time-up'
  | 'cooling'
  | 'at-zero'
  | 'lid-wait'
  | 'lid-free'
  | 'unloading'
  | 'resting'
  | 'seal-look'
  | 'seals-seen'

/** `short`: it ended before the full time ran. `dry`: water ran out at a minute nobody knows. */
export type OutcomeKind = 'under-way' | 'time-ran' | 'short' | 'dry'

export function outcomeOf(walk: Walk): OutcomeKind {
  if (walk.badEnd?.type === 'boiled-dry') return 'dry'
  if (walk.ran) return 'time-ran'
  const ended = walk.badEnd ?? walk.heatOffAtMs ?? walk.zeroAtMs ?? walk.lidOffAtMs ?? walk.jarsOutAtMs
  return ended === undefined && !walk.seals ? 'under-way' : 'short'
}

export function phaseOf(walk: Walk, asOfMs: number, { lidOffFromMs, sealWindow }: DueTimes): RunPhase {
  if (walk.seals) return 'seals-seen'
  if (walk.jarsOutAtMs !== undefined) return asOfMs < sealWindow!.fromMs ? 'resting' : 'seal-look'
  if (walk.lidOffAtMs !== undefined) return 'unloading'
  if (lidOffFromMs !== undefined) {
    if (asOfMs >= lidOffFromMs) return 'lid-free'
    return walk.weightOffAtMs === undefined ? 'at-zero' : 'lid-wait'
  }
  if (walk.heatOffAtMs !== undefined || walk.badEnd) return 'cooling'
  if (walk.ran) return 'time-up'
  if (walk.openDip) return 'dipped'
  if (walk.count) return 'holding'
  if (walk.ventClosedAtMs !== undefined) return 'come-up'
  if (walk.steamAtMs !== undefined) return 'venting'
  if (walk.lidSeatedAtMs !== undefined) return 'heating'
  return walk.loadedAtMs === undefined ? 'before-load' : 'loaded'
}
