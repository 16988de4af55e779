/**
 * What the dips of a run cost beside the same run without them: a share, for a loose and for a solid pack, and never a total.
 * It mends nothing: a dip below the line means the full time again from the start.
 */
import {
  curveLethalityMin,
  historyFromPressure,
  LETHALITY_250F,
  requireInRange,
  type SurfaceHistory,
  standardPressureKPaAbs,
} from '@crib/science'
import { looseJarC, type ModelledJar, solidJarC } from './jar-models.ts'
import type { TraceReading } from './thin-trace.ts'

/** `foodC`: food when the vent was closed. */
export interface DippedRun extends ModelledJar {
  /** From closing the vent to zero. [psi]  Two readings or more, times rising. */
  readonly pressure: readonly TraceReading[]
  readonly requiredPsi: number
  /** First and last moment that should have stood at `requiredPsi`. [min] */
  readonly fromMin: number
  readonly toMin: number
  readonly elevationM: number
}

export interface BesideDirected {
  /** Of what the same run held at the line would have given. [fraction] */
  readonly freeBrineFraction: number
  readonly packedSolidFraction: number
}

const KPA_PER_PSI = 6.894757293168
const STEP_S = 10

/** @throws {ValidRangeError} for a trace, pressure, jar temperature or span out of range. */
export function dipsBesideDirected(run: DippedRun): BesideDirected {
  requireInRange('requiredPsi', run.requiredPsi, { min: 1, max: 28, unit: 'psi', source: 'project-rule' })
  requireInRange('toMin', run.toMin, { min: run.fromMin, max: 1e9, unit: 'min', source: 'project-rule' })
  const seen = surfaceOf(run, run.pressure)
  const directed = surfaceOf(run, filled(run))
  const worth = (jarC: typeof looseJarC, surface: SurfaceHistory) =>
    curveLethalityMin({ temperaturesC: jarC(run, surface, STEP_S), stepS: STEP_S }, LETHALITY_250F)
  return {
    freeBrineFraction: worth(looseJarC, seen) / worth(looseJarC, directed),
    packedSolidFraction: worth(solidJarC, seen) / worth(solidJarC, directed),
  }
}

/** The trace with nothing below the line where the line should have been kept. */
function filled({ pressure, requiredPsi, fromMin, toMin }: DippedRun): TraceReading[] {
  return withCrossings(pressure, requiredPsi, [fromMin, toMin]).map((reading) =>
    reading.atMin >= fromMin && reading.atMin <= toMin && reading.value < requiredPsi
      ? { ...reading, value: requiredPsi }
      : reading,
  )
}

/** Adds a point wherever the trace crosses the line, and at the given moments, so that filling bends nothing else. */
function withCrossings(trace: readonly TraceReading[], level: number, moments: readonly number[]): TraceReading[] {
  return trace.flatMap((to, i) => {
    const from = trace[i - 1]
    if (!from) return [to]
    const perMin = (to.value - from.value) / (to.atMin - from.atMin)
    const crossing = (from.value - level) * (to.value - level) < 0 ? [from.atMin + (level - from.value) / perMin] : []
    const between = [...crossing, ...moments].filter((atMin) => atMin > from.atMin && atMin < to.atMin)
    const points = [...new Set(between)].toSorted((a, b) => a - b)
    return [...points.map((atMin) => ({ atMin, value: from.value + perMin * (atMin - from.atMin) })), to]
  })
}

function surfaceOf({ elevationM, foodC }: DippedRun, trace: readonly TraceReading[]): SurfaceHistory {
  const log = trace.map(({ atMin, value }) => ({ timeMin: atMin, pressureKPaGauge: Math.max(0, value) * KPA_PER_PSI }))
  const atmosphereKPaAbs = standardPressureKPaAbs(elevationM)
  return historyFromPressure(log, { atmosphereKPaAbs, airLeftFraction: 0, floorC: Math.min(foodC, 95) })
}
