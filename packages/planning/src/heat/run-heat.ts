/**
 * What a paper of a keeper's own run is drawn from: temperatures measured, as the log or a logger has them, temperatures a
 * jar would have had, and departures. Never a lethality.
 */
import type { Facts, RunEvent, RunFact } from '@crib/journal'
import { historyFromPressure, type Quantity, type Sentence, standardPressureKPaAbs } from '@crib/science'
import { runSetupOf } from '../canner/begin-run.ts'
import { processLog } from '../canner/process-log.ts'
import { createRunClock } from '../canner/run-clock.ts'
import { runRecords } from '../canner/run-event.ts'
import { pressureTrace } from '../canner/trace.ts'
import { dayOf } from '../shared/day-of.ts'
import type { LoggerTrace } from './logger-traces.ts'
import { madeUpLikeRun } from './made-up-run.ts'
import { type Replay, replayRun } from './replay.ts'
import { type TraceReading, traceAt } from './thin-trace.ts'

export interface MeasuredTrace {
  /** Name in the file; null for the canner as the gauge of the log has it. */
  readonly column: string | null
  readonly role: 'canner' | 'jar'
  /** [°C] */
  readonly points: readonly TraceReading[]
}

export interface RunHeatMark {
  /** [epoch min] */
  readonly atMin: number
  readonly clock: Quantity
  readonly type: RunEvent['type']
  readonly psi?: number
  /** Of each measured trace, null outside it. [°C] */
  readonly measuredC: readonly (number | null)[]
}

export interface RunHeat {
  readonly run: RunFact
  readonly zone: string
  /** The day it began where it was. YYYY-MM-DD */
  readonly onDay: string
  readonly measured: readonly MeasuredTrace[]
  /** Middle of a kernel, and of a solid pack. [°C]  Empty where pressure was never told. */
  readonly modelled: Extract<Replay, { ok: true }>['modelled']
  readonly beside: Extract<Replay, { ok: true }>['beside']
  /** Moments written down, in order. */
  readonly marks: readonly RunHeatMark[]
  /** Half hours along the run, for an axis. */
  readonly halfHours: readonly { readonly atMin: number; readonly clock: Quantity }[]
  readonly assumed: readonly Sentence[]
  readonly departures: readonly Sentence[]
}

/** A file's traces with their moments as instants. */
export interface LoggedRun {
  /** Times in epoch minutes. */
  readonly traces: readonly LoggerTrace[]
}

const MARKED: ReadonlySet<string> = new Set([
  ...['steam-steady', 'vent-closed', 'at-pressure', 'dipped', 'regained', 'heat-off', 'forced-cooling', 'zero'],
])
const MS_PER_MIN = 60_000
const KPA_PER_PSI = 6.894757293168

/** @throws {ValidRangeError} for a pressure or height out of range. */
export function runHeat(facts: Facts, run: RunFact, logged?: LoggedRun): RunHeat {
  const like = madeUpLikeRun(facts, run)
  const setup = runSetupOf(run)
  const records = runRecords(run)
  const byLog = gaugeOfLog(run)
  const traces =
    logged?.traces ?? (byLog.length < 2 ? [] : [{ column: '', role: 'gauge' as const, points: byLog, within: 0 }])
  const { requiredReadingPsi: requiredPsi, loadCode, cannerName } = run.begun
  const replay = replayRun({ traces, requiredPsi, elevationM: like.elevationM, jar: like.jar, foodC: like.fillC })
  const clock = createRunClock(run.begun.at.zone, Date.parse(run.begun.at.instant))
  const measured = measuredOf(traces, like.elevationM, like.fillC)
  const modelled = replay.ok ? replay.modelled : []
  const told = processLog({ setup, records, nowMs: 0, loadCode, cannerName })
  return {
    run,
    zone: run.begun.at.zone,
    onDay: dayOf(run.begun.at),
    measured,
    modelled,
    beside: replay.ok ? replay.beside : null,
    marks: records
      .filter(({ event }) => MARKED.has(event.type))
      .map(({ happenedAtMs, event }) => ({
        atMin: happenedAtMs / MS_PER_MIN,
        clock: clock.clock(happenedAtMs),
        type: event.type,
        measuredC: measured.map(({ points }) => traceAt(points, happenedAtMs / MS_PER_MIN)),
        ...('psi' in event && event.psi !== undefined && { psi: event.psi }),
      }))
      .toSorted((a, b) => a.atMin - b.atMin),
    halfHours: halfHoursOf(measured, (atMin) => clock.clock(atMin * MS_PER_MIN)),
    assumed: replay.ok ? replay.assumed : [replay.why],
    departures: told.departures,
  }
}

function halfHoursOf(measured: readonly MeasuredTrace[], clock: (atMin: number) => Quantity): RunHeat['halfHours'] {
  const times = measured.flatMap(({ points }) => points.map(({ atMin }) => atMin))
  if (times.length === 0) return []
  const from = Math.ceil(Math.min(...times) / 30)
  const to = Math.floor(Math.max(...times) / 30)
  return Array.from({ length: Math.max(0, to - from + 1) }, (_, i) => {
    const atMin = (from + i) * 30
    return { atMin, clock: clock(atMin) }
  })
}

/** The gauge from steam to zero: what was read, and what a step itself says. [psi] */
function gaugeOfLog(run: RunFact): TraceReading[] {
  const records = runRecords(run)
  const { points, requiredPsi } = pressureTrace(runSetupOf(run), records, 0)
  // A heat turned off at pressure says what the gauge stood at, as a step of the run does.
  const offs = records
    .filter(({ event }) => event.type === 'heat-off')
    .map(({ happenedAtMs: atMs }) => ({ atMs, psi: requiredPsi }))
  const told = [...points, ...offs].flatMap(({ atMs, psi }) =>
    psi === null ? [] : [{ atMin: atMs / MS_PER_MIN, value: psi }],
  )
  const rising = told.toSorted((a, b) => a.atMin - b.atMin)
  return rising.filter(({ atMin }, i) => i === 0 || atMin > rising[i - 1]!.atMin)
}

function measuredOf(traces: readonly LoggerTrace[], elevationM: number, floorC: number): MeasuredTrace[] {
  const probes = traces.flatMap(({ column, role, points }) => (role === 'gauge' ? [] : [{ column, role, points }]))
  const gauge = traces.find(({ role }) => role === 'gauge')?.points
  if (!gauge || gauge.length < 2 || probes.some(({ role }) => role === 'canner')) return probes
  const startMin = gauge[0]!.atMin
  const steam = historyFromPressure(
    gauge.map(({ atMin, value }) => ({
      timeMin: atMin - startMin,
      pressureKPaGauge: Math.max(0, value) * KPA_PER_PSI,
    })),
    { atmosphereKPaAbs: standardPressureKPaAbs(elevationM), airLeftFraction: 0, floorC },
  )
  const points = steam.map(({ timeMin, temperatureC }) => ({ atMin: startMin + timeMin, value: temperatureC }))
  return [{ column: null, role: 'canner', points }, ...probes]
}
