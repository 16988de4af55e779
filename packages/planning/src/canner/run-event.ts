/** One line of a run's log, and how the book's facts become such lines. Leaves out: what follows from them (run.ts). */
import type { RunEvent, RunFact } from '@crib/journal'

export type { RunEvent } from '@crib/journal'

export type RunEventType = RunEvent['type']

/** What a paper log may say, in the order of the work. Seals and clock questions belong to the book. */
export const LOG_EVENTS = [
  'canner-loaded',
  'lid-seated',
  'steam-steady',
  'vent-closed',
  'vent-opened',
  'at-pressure',
  'reading',
  'dipped',
  'regained',
  'over-pressure',
  'fuel-out',
  'relief-plug-blown',
  'boiled-dry',
  'abandoned',
  'heat-off',
  'forced-cooling',
  'zero',
  'weight-off',
  'lid-off',
  'jars-out',
] as const satisfies readonly RunEventType[]

export interface RunRecord {
  /** Unique; the same id twice is the same line twice and counts once. */
  readonly id: string
  /** When it happened. [epoch ms] */
  readonly happenedAtMs: number
  /** Decides between two lines of the same instant, for example device and its running number. */
  readonly tiebreak?: string
  readonly event: RunEvent
}

/** The lines of a run as the fold gives them; its order decides between lines of one instant. */
export function runRecords({ events }: Pick<RunFact, 'events'>): RunRecord[] {
  return events.map(({ entryId, instant, event }, index) => ({
    id: entryId,
    happenedAtMs: Date.parse(instant),
    tiebreak: String(index).padStart(6, '0'),
    event,
  }))
}
