/**
 * A canner run as a pure function of what was written down and what time it is: what stands, what is due, what counted.
 * The same lines give the same state, live or typed in afterwards, in any order of arrival.
 * Leaves out: storing (package journal) and any valve. Reality is recorded, never refused.
 */
import type { Sentence } from '@crib/science'
import { createRunClock, minutesBetween, type RunClock } from './run-clock.ts'
import { type Departure, departuresOf } from './run-departures.ts'
import { dueTimes, type SealWindow } from './run-due.ts'
import type { RunEventType, RunRecord } from './run-event.ts'
import { allowedEvents, nextAction, whatNow } from './run-next.ts'
import { notesOf, questionSentences } from './run-notes.ts'
import { type OutcomeKind, outcomeOf, phaseOf, type RunPhase } from './run-phase.ts'
import { type RunSetup, requireRunSetup } from './run-setup.ts'
import type { RunView } from './run-view.ts'
import { isCounting, lockWhenRun, walkRun } from './run-walk.ts'
import type { Dip, OpenDip, Restart, Walk } from './walk.ts'
import { inOrder } from './walk-order.ts'

/** Instants that stand, of the heating that stands. [epoch ms] */
export interface RunMarks {
  readonly loadedAtMs?: number
  readonly lidSeatedAtMs?: number
  readonly steamAtMs?: number
  readonly ventClosedAtMs?: number
  readonly firstAtPressureAtMs?: number
  readonly heatOffAtMs?: number
  readonly zeroAtMs?: number
  readonly weightOffAtMs?: number
  readonly lidOffAtMs?: number
  readonly jarsOutAtMs?: number
  readonly sealsSeenAtMs?: number
}

export interface RunState {
  readonly phase: RunPhase
  /** `time-ran`: the full published minutes ran with pressure never let go, as far as it was written down. */
  readonly outcome: OutcomeKind
  /** Now, or the last line where that is later. [epoch ms] */
  readonly asOfMs: number
  readonly marks: RunMarks
  /** When the vent may be closed. */
  readonly ventDueAtMs?: number
  /** Steam that was vented in the heating that stands. [min] */
  readonly ventedMin?: number
  /** When it would have been done had pressure never been let go. */
  readonly firstDueAtMs?: number
  /** From when the minutes count. */
  readonly countFromMs?: number
  /** When the full time is up; absent while a dip is open. */
  readonly dueAtMs?: number
  /** Minutes that count so far, at most the process. [min] */
  readonly countedMin: number
  /** Minutes at pressure that do not count. [min] */
  readonly lostMin: number
  readonly restarts: readonly Restart[]
  readonly openDip?: OpenDip
  /** Every sign of lost pressure written down, in order. */
  readonly dips: readonly Dip[]
  readonly lowestPsi?: number
  /** Water put in. [in] */
  readonly waterIn?: number
  readonly departures: readonly Departure[]
  /** What does not fit together and asks for a look. */
  readonly questions: readonly Sentence[]
  /** True, and no departure: restarts, high spells, seals, what was taken for granted. */
  readonly notes: readonly Sentence[]
  readonly lidOffFromMs?: number
  readonly sealWindow?: SealWindow
  readonly seals?: { readonly sealedCount: number; readonly unsealedCount: number }
  /** The one obvious next thing. */
  readonly next: Sentence
  /** After a bad end: what to do, in order. Empty otherwise. */
  readonly whatNow: readonly Sentence[]
  readonly allowed: readonly RunEventType[]
}

/**
 * What stands in a run at an instant.
 *
 * @param records any order, duplicates allowed.
 * @param nowMs the time it is; if it lies before the last line, that line's instant is used and a question is asked. [epoch ms]
 * @throws {ValidRangeError} for a setup whose numbers are absent or absurd, or a `nowMs` that is no number.
 * @source usda-aib-539-1994 (venting, restart, cool-down, lid wait); pnw-421
 */
export function runState(setup: RunSetup, records: readonly RunRecord[], nowMs: number): RunState {
  requireRunSetup(setup)
  if (!Number.isFinite(nowMs)) throw new RangeError(`nowMs is ${nowMs}; an instant in epoch milliseconds is needed`)
  const walk = walkRun(setup, records)
  const instants = inOrder(records).flatMap(({ happenedAtMs }) => (Number.isFinite(happenedAtMs) ? [happenedAtMs] : []))
  const lastMs = instants.at(-1) ?? nowMs
  const asOfMs = Math.max(nowMs, lastMs)
  lockWhenRun(walk, asOfMs, false)

  const clock = createRunClock(setup.zone ?? 'UTC', instants[0] ?? nowMs)
  const due = dueTimes(setup, walk)
  const phase = phaseOf(walk, asOfMs, due)
  const outcome = outcomeOf(walk)
  const departures = departuresOf({ setup, walk, phase, outcome, due, clock })
  const view: RunView = { setup, walk, phase, outcome, due, clock, asOfMs, departures }
  return {
    phase,
    outcome,
    asOfMs,
    marks: marksOf(walk),
    ...due,
    countedMin: countedMin(setup, walk, asOfMs),
    lostMin: lostMin(walk),
    restarts: walk.restarts,
    ...(walk.openDip && { openDip: walk.openDip }),
    dips: walk.dips,
    ...(walk.lowestPsi !== undefined && { lowestPsi: walk.lowestPsi }),
    ...(walk.waterIn !== undefined && { waterIn: walk.waterIn }),
    departures,
    questions: questionSentences(walk, clock, nowMs < lastMs ? lastMs : null),
    notes: notesOf(view),
    ...(walk.seals && {
      seals: { sealedCount: walk.seals.sealedCount, unsealedCount: walk.seals.unsealedCount },
    }),
    next: nextAction(view),
    whatNow: whatNow(view),
    allowed: allowedEvents(phase),
  }
}

/** The clock a run's instants are worded with. */
export function runClock(setup: RunSetup, records: readonly RunRecord[]): RunClock {
  const instants = records.map(({ happenedAtMs }) => happenedAtMs).filter(Number.isFinite)
  return createRunClock(setup.zone ?? 'UTC', instants.length > 0 ? Math.min(...instants) : 0)
}

function countedMin({ processMin }: RunSetup, walk: Walk, asOfMs: number): number {
  if (walk.ran) return processMin
  if (!isCounting(walk)) return 0
  // After a clock jump the due time moved on; what is left counts, not what the clock shows.
  const leftMin = minutesBetween(asOfMs, walk.count!.dueMs)
  return Math.min(processMin, Math.max(0, processMin - leftMin))
}

function lostMin({ restarts, openDip }: Walk): number {
  return restarts.reduce((sum, restart) => sum + restart.lostMin, 0) + (openDip?.lostMin ?? 0)
}

function marksOf(walk: Walk): RunMarks {
  const marks = {
    loadedAtMs: walk.loadedAtMs,
    lidSeatedAtMs: walk.lidSeatedAtMs,
    steamAtMs: walk.steamAtMs,
    ventClosedAtMs: walk.ventClosedAtMs,
    firstAtPressureAtMs: walk.firstAtPressureAtMs,
    heatOffAtMs: walk.heatOffAtMs,
    zeroAtMs: walk.zeroAtMs,
    weightOffAtMs: walk.weightOffAtMs,
    lidOffAtMs: walk.lidOffAtMs,
    jarsOutAtMs: walk.jarsOutAtMs,
    sealsSeenAtMs: walk.seals?.atMs,
  }
  return Object.fromEntries(Object.entries(marks).filter(([, atMs]) => atMs !== undefined))
}
