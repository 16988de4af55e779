/**
 * What the dips of a run cost beside the same run without them: a share, for a loose and for a solid pack, and never a total.
 * It mends nothing: a dip below the line means the full time again from the start.
 */
import {
  brineCurve,
  curveLethalityMin,
  cylinderCurve,
  historyFromPressure,
  JAR_SIZES,
  LETHALITY_250F,
  PACKED_HOMINY_DIFFUSIVITY_M2_PER_S,
  requireInRange,
  type SurfaceHistory,
  standardPressureKPaAbs,
} from '@crib/science'
import type { TraceReading } from './thin-trace.ts'

export interface DippedRun {
  /** From closing the vent to zero. [psi]  Two readings or more, times rising. */
  readonly pressure: readonly TraceReading[]
  readonly requiredPsi: number
  /** First and last moment that should have stood at `requiredPsi`. [min] */
  readonly fromMin: number
  readonly toMin: number
  readonly elevationM: number
  readonly jar: keyof typeof JAR_SIZES
  /** Food when the vent was closed. [°C] */
  readonly foodC: number
}

export interface BesideDirected {
  /** Of what the same run held at the line would have given. [fraction] */
  readonly freeBrineFraction: number
  readonly packedSolidFraction: number
}

const KPA_PER_PSI = 6.894757293168
/** Kernels of 5.5 mm in as much liquid, behind glass and films. Common practice, no source; only a share comes of it. */
const BRINE = { heatJPerM3K: 4e6, overallWPerM2K: 200, kernelRadiusM: 0.0055 }
const STEP_S = 10

/** @throws {ValidRangeError} for a trace, pressure, jar temperature or span out of range. */
export function dipsBesideDirected(run: DippedRun): BesideDirected {
  requireInRange('requiredPsi', run.requiredPsi, { min: 1, max: 28, unit: 'psi', source: 'project-rule' })
  requireInRange('toMin', run.toMin, { min: run.fromMin, max: 1e9, unit: 'min', source: 'project-rule' })
  const seen = surfaceOf(run, run.pressure)
  const directed = surfaceOf(run, filled(run))
  const share = (worth: (surface: SurfaceHistory) => number) => worth(seen) / worth(directed)
  return {
    freeBrineFraction: share((surface) => loose(run, surface)),
    packedSolidFraction: share((s) => solid(run, s)),
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

function solid({ jar, foodC }: DippedRun, surface: SurfaceHistory): number {
  const cylinder = { ...JAR_SIZES[jar], diffusivityM2PerS: PACKED_HOMINY_DIFFUSIVITY_M2_PER_S.mid }
  return curveLethalityMin(cylinderCurve(cylinder, surface, { initialC: foodC, stepS: STEP_S }), LETHALITY_250F)
}

function loose({ jar, foodC }: DippedRun, surface: SurfaceHistory): number {
  const { radiusM, halfHeightM } = JAR_SIZES[jar]
  const halfJPerK = Math.PI * radiusM ** 2 * halfHeightM * BRINE.heatJPerM3K
  const curve = brineCurve(
    {
      conductanceWPerK: BRINE.overallWPerM2K * 2 * Math.PI * radiusM * (radiusM + 2 * halfHeightM),
      liquidJPerK: halfJPerK,
      kernelsJPerK: halfJPerK,
      kernelRadiusM: BRINE.kernelRadiusM,
      kernelDiffusivityM2PerS: PACKED_HOMINY_DIFFUSIVITY_M2_PER_S.mid,
    },
    surface,
    { initialC: foodC, stepS: STEP_S },
  )
  return curveLethalityMin({ temperaturesC: curve.kernelCentreC, stepS: STEP_S }, LETHALITY_250F)
}
