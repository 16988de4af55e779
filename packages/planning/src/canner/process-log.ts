/**
 * A finished run in plain lines, for the process log, the label and the pantry: what was done, never a verdict.
 * Leaves out: layout (package paper) and anything nobody wrote down.
 */
import type { Quantity, Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { type RunState, runClock, runState } from './run.ts'
import { minutesBetween } from './run-clock.ts'
import type { DepartureId } from './run-departures.ts'
import type { RunRecord } from './run-event.ts'
import type { RunSetup } from './run-setup.ts'
import { fullMinutes, heldPressure } from './run-view.ts'

export interface ProcessLogInput {
  readonly setup: RunSetup
  readonly records: readonly RunRecord[]
  readonly nowMs: number
  readonly loadCode: string
  readonly cannerName: string
  readonly elevationFt?: number
}

export interface ProcessLog {
  /** One line for every jar: "Vented 10 min, held 12 psi (83 kPa) for 60 min." */
  readonly summary: Sentence
  readonly lines: readonly Sentence[]
  /** Travel with every jar of the load. */
  readonly departures: readonly Sentence[]
  readonly departureIds: readonly DepartureId[]
  readonly questions: readonly Sentence[]
}

/** @throws {ValidRangeError} as runState. */
export function processLog({ setup, records, nowMs, loadCode, cannerName, elevationFt }: ProcessLogInput): ProcessLog {
  const state = runState(setup, records, nowMs)
  const clock = runClock(setup, records)
  const { marks, countFromMs, dueAtMs, lowestPsi, restarts } = state
  const lines: Sentence[] = [say('canner:log-load', { code: loadCode, canner: cannerName })]
  if (elevationFt !== undefined) {
    lines.push(say('canner:log-elevation', { elevation: { value: Math.round(elevationFt), unit: 'Ft' } }))
  }
  const waterIn = state.waterIn
  if (waterIn !== undefined) lines.push(say('canner:log-water', { water: { value: waterIn, unit: 'In' } }))
  if (marks.steamAtMs !== undefined && marks.ventClosedAtMs !== undefined) {
    const times = { steam: clock.clock(marks.steamAtMs), closed: clock.clock(marks.ventClosedAtMs) }
    lines.push(say('canner:log-steam', times))
  }
  if (state.outcome === 'time-ran' && countFromMs !== undefined && dueAtMs !== undefined) {
    lines.push(say('canner:log-count', { from: clock.clock(countFromMs), to: clock.dueClock(dueAtMs) }))
  }
  lines.push(
    restarts.length === 0 ? say('canner:log-no-restarts') : say('canner:log-restarts', { count: restarts.length }),
  )
  if (lowestPsi !== undefined) {
    lines.push(say('canner:log-lowest', { lowest: { value: lowestPsi, unit: 'PsiGauge' } }))
  }
  if (marks.heatOffAtMs !== undefined && marks.zeroAtMs !== undefined && !isForced(state)) {
    const minutes = fullMinutes(minutesBetween(marks.heatOffAtMs, marks.zeroAtMs))
    lines.push(say('canner:log-zero', { minutes }))
  }
  if (marks.lidOffAtMs !== undefined) lines.push(say('canner:log-lid', { clock: clock.clock(marks.lidOffAtMs) }))
  if (state.seals) {
    const { sealedCount, unsealedCount } = state.seals
    lines.push(say('canner:log-seals', { sealed: sealedCount, unsealed: unsealedCount }))
  }
  return {
    summary: summaryOf(setup, state),
    lines: [...lines, ...state.notes],
    departures: state.departures.map(({ sentence }) => sentence),
    departureIds: state.departures.map(({ id }) => id),
    questions: state.questions,
  }
}

function isForced({ departures }: RunState): boolean {
  return departures.some(({ id }) => id === 'forced-cooling' || id === 'vent-opened-under-pressure')
}

function summaryOf(setup: RunSetup, state: RunState): Sentence {
  const pressure = heldPressure(setup)
  if (state.outcome === 'under-way') return say('canner:log-not-done-yet')
  if (state.outcome !== 'time-ran') {
    return say('canner:log-not-held', { pressure, process: { value: setup.processMin, unit: 'Min' } })
  }
  const minutes = heldMinutes(setup, state)
  const { ventedMin } = state
  if (ventedMin === undefined) return say('canner:log-held-only', { pressure, minutes })
  return say('canner:log-vented-held', { vented: fullMinutes(ventedMin), pressure, minutes })
}

/** Until the heat went off where that was written down, else the published time that surely ran. */
function heldMinutes({ processMin }: RunSetup, { marks, dueAtMs }: RunState): Quantity {
  // From the due time, not from the start: after a clock jump only the due time was moved along.
  const longerMin =
    marks.heatOffAtMs === undefined || dueAtMs === undefined ? 0 : minutesBetween(dueAtMs, marks.heatOffAtMs)
  return fullMinutes(processMin + Math.max(0, longerMin))
}
