/** The instants a run makes due, from what was written down. Leaves out: whether they have come. */
import { addMin, minutesBetween } from './run-clock.ts'
import type { RunSetup } from './run-setup.ts'
import type { Walk } from './walk.ts'

export interface SealWindow {
  readonly fromMs: number
  readonly toMs: number
  /** True when nobody wrote down that the jars came out: counted from the earliest moment they could have. */
  readonly assumed: boolean
}

export interface DueTimes {
  readonly ventDueAtMs?: number
  readonly ventedMin?: number
  readonly firstDueAtMs?: number
  readonly countFromMs?: number
  readonly dueAtMs?: number
  readonly lidOffFromMs?: number
  readonly sealWindow?: SealWindow
}

export function dueTimes({ processMin, rules }: RunSetup, walk: Walk): DueTimes {
  const { steamAtMs, ventClosedAtMs, firstAtPressureAtMs, count, openDip, zeroAtMs, weightOffAtMs } = walk
  const lidOffFromMs =
    zeroAtMs === undefined ? undefined : addMin(Math.max(zeroAtMs, weightOffAtMs ?? zeroAtMs), rules.lidWaitMin)
  const jarsFromMs = walk.jarsOutAtMs ?? walk.lidOffAtMs ?? lidOffFromMs
  return {
    ...(steamAtMs !== undefined && { ventDueAtMs: addMin(steamAtMs, rules.ventMin) }),
    ...(steamAtMs !== undefined &&
      ventClosedAtMs !== undefined && { ventedMin: minutesBetween(steamAtMs, ventClosedAtMs) }),
    ...(firstAtPressureAtMs !== undefined && { firstDueAtMs: addMin(firstAtPressureAtMs, processMin) }),
    ...(count && !openDip && { countFromMs: count.fromMs, dueAtMs: count.dueMs }),
    ...(lidOffFromMs !== undefined && { lidOffFromMs }),
    ...(jarsFromMs !== undefined && {
      sealWindow: {
        fromMs: addMin(jarsFromMs, rules.sealFromMin),
        toMs: addMin(jarsFromMs, rules.sealToMin),
        assumed: walk.jarsOutAtMs === undefined,
      },
    }),
  }
}
