/** May the vent be closed now, and why not yet. Leaves out: any promise about how much air is left. */
import type { Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { addMin, minutesBetween, type RunClock } from './run-clock.ts'
import type { RunRules } from './run-setup.ts'
import { fullMinutes } from './run-view.ts'

export interface VentQuestion {
  readonly steamAtMs: number
  readonly wantsToCloseAtMs: number
  readonly rules: RunRules
  readonly clock: RunClock
}

export interface VentAdvice {
  readonly mayClose: boolean
  readonly closeFromMs: number
  readonly sentences: readonly Sentence[]
}

/**
 * Answers a helper who wants to close the vent at an instant.
 *
 * @source usda-aib-539-1994 (ten minutes of steady steam)
 */
export function ventAdvice({ steamAtMs, wantsToCloseAtMs, rules, clock }: VentQuestion): VentAdvice {
  const closeFromMs = addMin(steamAtMs, rules.ventMin)
  const published = { value: rules.ventMin, unit: 'Min' } as const
  if (wantsToCloseAtMs >= closeFromMs) {
    return { mayClose: true, closeFromMs, sentences: [say('canner:vent-may-close', { published })] }
  }
  return {
    mayClose: false,
    closeFromMs,
    sentences: [
      say('canner:vent-not-yet', {
        clock: clock.clock(wantsToCloseAtMs),
        done: fullMinutes(Math.max(0, minutesBetween(steamAtMs, wantsToCloseAtMs))),
        published,
        until: clock.dueClock(closeFromMs),
      }),
      say('canner:vent-why'),
    ],
  }
}
