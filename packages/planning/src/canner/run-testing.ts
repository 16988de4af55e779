/** Short ways to write a run down in tests. */
import type { RunEvent, RunRecord } from './run-event.ts'
import type { RunRules, RunSetup } from './run-setup.ts'

/** As published in packages/guidance/data: venting 10 min, lid wait 10 min, seals 12 to 24 h, redo within 24 h or 2 h. */
export const RULES: RunRules = {
  ventMin: 10,
  lidWaitMin: 10,
  sealFromMin: 720,
  sealToMin: 1440,
  redoWithinMin: 1440,
  redoWithinShortMin: 120,
  waterLowIn: 2,
}

/** Scenario S5: nine pints, dial, 2,150 ft. */
export const HARK_LAKE: RunSetup = {
  gauge: 'dial',
  requiredReadingPsi: 12,
  processMin: 60,
  rules: RULES,
  zone: 'UTC',
}

/** Midnight of the invented day, UTC. */
const DAY_MS = Date.UTC(2026, 9, 3)

/** Epoch ms of a clock time `HH:MM` or `HH:MM:SS` on the invented day; hours may pass 24. */
export function at(clock: string): number {
  const [hours = 0, minutes = 0, seconds = 0] = clock.split(':').map(Number)
  return DAY_MS + ((hours * 60 + minutes) * 60 + seconds) * 1000
}

/** A log as a keeper would type it: clock, event. */
export function log(lines: readonly (readonly [clock: string, event: RunEvent | RunEvent['type']])[]): RunRecord[] {
  return lines.map(([clock, event], index) => ({
    id: `line-${index}`,
    happenedAtMs: at(clock),
    tiebreak: String(index).padStart(6, '0'),
    event: typeof event === 'string' ? ({ type: event } as RunEvent) : event,
  }))
}

export const WIND_UNDER_THE_KETTLE = log([
  ['09:40', 'lid-seated'],
  ['09:58', 'steam-steady'],
  ['10:08', 'vent-closed'],
  ['10:17', 'at-pressure'],
  ['10:49', { type: 'dipped', psi: 10 }],
  ['10:56', 'regained'],
  ['11:20', { type: 'over-pressure', psi: 15 }],
  ['12:39', 'zero'],
])
