/**
 * A run told from a logger's traces: its marks for the keeper to confirm, its dips and what they cost beside the same run
 * held at the line, and the temperatures a jar would have had. Temperatures and shares; a total is never made of it.
 */
import type { RunEventFact } from '@crib/journal'
import {
  historyFromPressure,
  type JAR_SIZES,
  requireInRange,
  type Sentence,
  type SurfaceHistory,
  standardPressureKPaAbs,
} from '@crib/science'
import { say } from '../shared/say.ts'
import { type BesideDirected, dipsBesideDirected } from './dips-beside-directed.ts'
import { looseJarC, solidJarC } from './jar-models.ts'
import type { LoggerTrace } from './logger-traces.ts'
import { findRunMarks, type ProposedMark, pressureFromTemperature, type RunMarksFound } from './run-marks.ts'
import type { TraceReading } from './thin-trace.ts'

export interface ReplayWish {
  readonly traces: readonly LoggerTrace[]
  /** What had to be held. [psi] */
  readonly requiredPsi: number
  readonly elevationM: number
  readonly jar: keyof typeof JAR_SIZES
  /** Food when the jars went in, where no probe was in a jar. [°C] */
  readonly foodC: number
}

export interface ModelledTrace {
  readonly id: 'loose' | 'solid'
  /** Middle of a kernel, or of the jar. [°C] */
  readonly points: readonly TraceReading[]
}

export type Replay =
  | { readonly ok: false; readonly why: Sentence }
  | ({
      readonly ok: true
      readonly modelled: readonly ModelledTrace[]
      /** What the dips cost; null where there was none, or the run did not come to its end. */
      readonly beside: BesideDirected | null
      /** What was taken for granted. */
      readonly assumed: readonly Sentence[]
    } & RunMarksFound)

const KPA_PER_PSI = 6.894757293168
const MODEL_STEP_S = 30
/** Drawn before the first mark and after the last. [min] */
const BEFORE_MIN = 45
const AFTER_MIN = 60
/** Longer than any day at the stove: a jar is not reckoned through it. [min] */
const LONGEST_MIN = 2880
/** A jar does not boil before it is in the canner. [°C] */
const HOTTEST_FOOD_C = 95

/** @throws {ValidRangeError} for a pressure or height out of range. */
export function replayRun(wish: ReplayWish): Replay {
  const { traces, requiredPsi, elevationM } = wish
  requireInRange('foodC', wish.foodC, { min: 0, max: 100, unit: '°C', source: 'project-rule' })
  const of = (role: LoggerTrace['role']) =>
    traces.find((trace) => trace.role === role && trace.points.length >= 2)?.points
  const cannerC = of('canner')
  const gauge = of('gauge')
  const pressure = gauge ?? (cannerC && pressureFromTemperature(cannerC, elevationM))
  if (!pressure) return { ok: false, why: say('heat:replay-no-pressure') }
  const found = findRunMarks({ pressure, requiredPsi, elevationM, ...(cannerC && { cannerC }) })
  const jarC = of('jar')
  const assumed = [
    ...(gauge ? [] : [say('heat:replay-pressure-from-steam')]),
    ...(cannerC ? [] : [say('heat:replay-steam-from-pressure')]),
    ...(jarC ? [] : [say('heat:replay-food', { temperature: { value: wish.foodC, unit: 'C' } })]),
  ]
  return {
    ok: true,
    ...found,
    modelled: modelled(wish, found, { cannerC, pressure, jarC }),
    beside: cost(wish, found, pressure),
    assumed,
  }
}

interface Measured {
  readonly cannerC: readonly TraceReading[] | undefined
  readonly pressure: readonly TraceReading[]
  readonly jarC: readonly TraceReading[] | undefined
}

function modelled(wish: ReplayWish, { marks }: RunMarksFound, { cannerC, pressure, jarC }: Measured): ModelledTrace[] {
  const along = cannerC ?? pressure
  const first = marks[0]?.atMin ?? along[0]!.atMin
  const last = marks.at(-1)?.atMin ?? along.at(-1)!.atMin
  const fromMin = first - BEFORE_MIN
  const toMin = last + AFTER_MIN
  const near = within(along, fromMin, toMin)
  if (near.length < 2 || near.at(-1)!.atMin - near[0]!.atMin > LONGEST_MIN) return []
  const startMin = near[0]!.atMin
  const foodC = Math.min(HOTTEST_FOOD_C, jarC ? valueAt(jarC, startMin) : wish.foodC)
  const surface: SurfaceHistory = cannerC
    ? near.map(({ atMin, value }) => ({ timeMin: atMin - startMin, temperatureC: value }))
    : historyFromPressure(
        near.map(({ atMin, value }) => ({
          timeMin: atMin - startMin,
          pressureKPaGauge: Math.max(0, value) * KPA_PER_PSI,
        })),
        { atmosphereKPaAbs: standardPressureKPaAbs(wish.elevationM), airLeftFraction: 0, floorC: foodC },
      )
  const jar = { jar: wish.jar, foodC }
  return (
    [
      ['loose', looseJarC],
      ['solid', solidJarC],
    ] as const
  ).map(([id, model]) => ({
    id,
    points: Array.from(model(jar, surface, MODEL_STEP_S), (value, i) => ({
      atMin: startMin + (i * MODEL_STEP_S) / 60,
      value,
    })),
  }))
}

function cost(
  wish: ReplayWish,
  { marks, dips }: RunMarksFound,
  pressure: readonly TraceReading[],
): BesideDirected | null {
  const at = (type: ProposedMark['event']['type']) => marks.find(({ event }) => event.type === type)?.atMin
  const closed = at('vent-closed')
  const held = at('at-pressure')
  const off = at('heat-off')
  if (dips.length === 0 || held === undefined || off === undefined) return null
  const { requiredPsi, elevationM, jar, foodC } = wish
  const span = within(pressure, closed ?? held, at('zero') ?? off)
  return span.length < 2
    ? null
    : dipsBesideDirected({ pressure: span, requiredPsi, fromMin: held, toMin: off, elevationM, jar, foodC })
}

function within(trace: readonly TraceReading[], fromMin: number, toMin: number): TraceReading[] {
  return trace.filter(({ atMin }) => atMin >= fromMin && atMin <= toMin)
}

function valueAt(trace: readonly TraceReading[], atMin: number): number {
  return (trace.findLast((reading) => reading.atMin <= atMin) ?? trace[0]!).value
}

/** Marks that may happen again in a run; the others are written once. */
const AGAIN: ReadonlySet<string> = new Set(['dipped', 'regained', 'reading'])
/** A dip this near to one written down is the same. [ms] */
const SAME_MS = 120_000

/** The line of the log that a mark would repeat, or null. A mark that happens once a run repeats any of its kind. */
export function alreadyWritten(
  { event }: Pick<ProposedMark, 'event'>,
  atMs: number,
  events: readonly RunEventFact[],
): RunEventFact | null {
  const same = events.filter((line) => line.event.type === event.type)
  if (!AGAIN.has(event.type)) return same[0] ?? null
  return same.find(({ instant }) => Math.abs(Date.parse(instant) - atMs) <= SAME_MS) ?? null
}
