/** A run's numbers as values to show: clock times of the kitchen, minutes, counts. Due times round up, what counted rounds down. */
import type { Reckoned, Rounding, Unit } from '@crib/science'
import { nearest, reckon, up } from '../shared/reckon.ts'
import type { RunState } from './run.ts'
import { minutesBetween, type RunClock } from './run-clock.ts'
import type { RunSetup } from './run-setup.ts'

const VENT_AND_SEALS = 'usda-aib-539-1994'
const RESTART_AND_LID = 'usda-aib-539-2015'

/** Told by the log alone; the rest adds published minutes to it. */
const OWN: ReadonlySet<string> = new Set(['restart', 'restarts', 'lostMin', 'countedMin', 'laterMin'])

/** What stands, in reading order; what is not known yet is absent. @source usda-aib-539-1994; usda-aib-539-2015 */
export function runNumbers(setup: RunSetup, state: RunState, clock: RunClock): Reckoned[] {
  const { gauge, requiredReadingPsi, processMin } = setup
  const inputs = {
    gauge,
    requiredReadingPsi,
    processMin,
    ventMin: setup.rules.ventMin,
    lidWaitMin: setup.rules.lidWaitMin,
  }
  const value = (id: string, unit: Unit, amount: number | undefined, rounding: Rounding, source: string): Reckoned[] =>
    amount === undefined
      ? []
      : [
          reckon({
            id,
            value: amount,
            unit,
            rounding,
            basis: OWN.has(id) ? 'own-record' : 'published',
            sourceKeys: [source],
            inputs,
          }),
        ]
  const due = (id: string, atMs: number | undefined, source = VENT_AND_SEALS) =>
    value(id, 'ClockMin', atMs === undefined ? undefined : clock.clockMin(atMs), up(1), source)
  const { dueAtMs, firstDueAtMs, restarts } = state
  const isMoved = dueAtMs !== undefined && firstDueAtMs !== undefined
  return [
    ...due('ventDue', state.ventDueAtMs),
    ...due('firstDue', firstDueAtMs, RESTART_AND_LID),
    ...due('restart', restarts.at(-1)?.regainedAtMs, RESTART_AND_LID),
    ...value('restarts', 'Count', restarts.length, nearest(1), RESTART_AND_LID),
    ...value('lostMin', 'Min', state.lostMin, nearest(1), RESTART_AND_LID),
    ...value('countedMin', 'Min', state.countedMin, { mode: 'down', step: 1 }, RESTART_AND_LID),
    ...due('finish', dueAtMs, RESTART_AND_LID),
    ...value('laterMin', 'Min', isMoved ? minutesBetween(firstDueAtMs, dueAtMs) : undefined, up(1), RESTART_AND_LID),
    ...due('lidOffFrom', state.lidOffFromMs, RESTART_AND_LID),
    ...due('sealsFrom', state.sealWindow?.fromMs),
    ...due('sealsTo', state.sealWindow?.toMs),
  ]
}
