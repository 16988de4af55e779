/**
 * Finds the marks of a run in a trace of the canner: vent, come-up, hold, dips, cool-down. Every mark is a proposal to be
 * confirmed, and becomes a line of the run only when the keeper says so. Temperatures and departures, never a lethality.
 */
import type { RunEvent } from '@crib/journal'
import { boilingTemperatureC, requireInRange, type Sentence, steamPressureKPaGauge } from '@crib/science'
import { say } from '../shared/say.ts'
import type { TraceReading } from './thin-trace.ts'

export interface MarksWish {
  /** Pressure by time. [psi]  Rising times, two or more. */
  readonly pressure: readonly TraceReading[]
  /** A dip is below this. [psi] */
  readonly requiredPsi: number
  /** Temperature inside the canner by time, where a probe was there: shows when steam stood. [°C] */
  readonly cannerC?: readonly TraceReading[]
  readonly elevationM: number
}

export interface ProposedMark {
  readonly atMin: number
  readonly event: RunEvent
  /** Why it is thought so, for the keeper to confirm. */
  readonly why: Sentence
}

export interface TraceDip {
  readonly fromMin: number
  /** Null where pressure was never regained before the end. */
  readonly toMin: number | null
  readonly lowestPsi: number
}

export interface RunMarksFound {
  readonly marks: readonly ProposedMark[]
  readonly dips: readonly TraceDip[]
  /** What the trace cannot tell. */
  readonly unseen: readonly Sentence[]
}

/** A needle or sensor at rest reads up to this. [psi] Project rule. */
const REST_PSI = 0.7
/** Steam stands when the canner is this near boiling. [°C] Project rule. */
const NEAR_BOILING_C = 0.5

/** @throws {ValidRangeError} on fewer than two readings or a pressure to hold outside 1 to 30 psi. */
export function findRunMarks({ pressure, requiredPsi, cannerC, elevationM }: MarksWish): RunMarksFound {
  requireInRange('pressure', pressure.length, { min: 2, max: 10_000_000, unit: 'readings', source: 'project-rule' })
  requireInRange('requiredPsi', requiredPsi, { min: 1, max: 30, unit: 'psi', source: 'project-rule' })
  const marks: ProposedMark[] = []
  const unseen: Sentence[] = []
  const spans = spansAtOrAbove(pressure, requiredPsi)
  const first = spans[0]
  const riseBy = first ? first.fromMin : pressure.at(-1)!.atMin
  const closedMin = lastAtRest(pressure, riseBy)

  const steamMin = cannerC && firstAtOrAbove(cannerC, boilingTemperatureC(elevationM) - NEAR_BOILING_C)
  if (steamMin !== undefined && steamMin !== null && (closedMin === null || steamMin < closedMin)) {
    marks.push({ atMin: steamMin, event: { type: 'steam-steady' }, why: say('heat:mark-steam') })
  } else unseen.push(say('heat:unseen-steam'))
  if (closedMin !== null && first) {
    marks.push({ atMin: closedMin, event: { type: 'vent-closed' }, why: say('heat:mark-vent-closed') })
  } else unseen.push(say('heat:unseen-vent'))
  if (!first)
    return { marks, dips: [], unseen: [...unseen, say('heat:unseen-pressure', { required: psi(requiredPsi) })] }

  marks.push({
    atMin: first.fromMin,
    event: { type: 'at-pressure' },
    why: say('heat:mark-at-pressure', { required: psi(requiredPsi) }),
  })
  const dips: TraceDip[] = spans.slice(1).map((span, i) => {
    const fromMin = spans[i]!.toMin
    return { fromMin, toMin: span.fromMin, lowestPsi: lowest(pressure, fromMin, span.fromMin) }
  })
  for (const { fromMin, toMin, lowestPsi } of dips) {
    const why = say('heat:mark-dip', { lowest: psi(lowestPsi), required: psi(requiredPsi) })
    marks.push({ atMin: fromMin, event: { type: 'dipped', psi: Math.round(lowestPsi * 10) / 10 }, why })
    marks.push({
      atMin: toMin!,
      event: { type: 'regained' },
      why: say('heat:mark-regained', { required: psi(requiredPsi) }),
    })
  }
  const endMin = spans.at(-1)!.toMin
  const zeroMin = firstAtRest(pressure, endMin)
  if (endMin < pressure.at(-1)!.atMin) {
    // Heat may have gone off a little before the needle fell under the line: the last moment it stood there is later, never earlier.
    marks.push({
      atMin: endMin,
      event: { type: 'heat-off' },
      why: say('heat:mark-heat-off', { required: psi(requiredPsi) }),
    })
  } else unseen.push(say('heat:unseen-end'))
  if (zeroMin !== null) marks.push({ atMin: zeroMin, event: { type: 'zero' }, why: say('heat:mark-zero') })
  else if (endMin < pressure.at(-1)!.atMin) unseen.push(say('heat:unseen-zero'))
  return { marks, dips, unseen }
}

/** Pressure that airless steam of these temperatures would have: air left in reads as too much. [psi] */
export function pressureFromTemperature(cannerC: readonly TraceReading[], elevationM: number): TraceReading[] {
  return cannerC.map(({ atMin, value }) => ({
    atMin,
    value: value <= 0 ? 0 : Math.max(0, steamPressureKPaGauge(value, elevationM) / 6.894757293168),
  }))
}

interface Span {
  readonly fromMin: number
  readonly toMin: number
}

/** Where the straight lines between readings stand at a level or above. */
function spansAtOrAbove(trace: readonly TraceReading[], level: number): Span[] {
  const spans: Span[] = []
  let fromMin: number | null = null
  trace.forEach((reading, i) => {
    const before = trace[i - 1]
    if (reading.value >= level && fromMin === null) fromMin = before ? crossing(before, reading, level) : reading.atMin
    if (reading.value < level && fromMin !== null) {
      spans.push({ fromMin, toMin: crossing(before!, reading, level) })
      fromMin = null
    }
  })
  if (fromMin !== null) spans.push({ fromMin, toMin: trace.at(-1)!.atMin })
  return spans
}

function crossing(from: TraceReading, to: TraceReading, level: number): number {
  return from.value === to.value
    ? to.atMin
    : from.atMin + ((level - from.value) * (to.atMin - from.atMin)) / (to.value - from.value)
}

function firstAtOrAbove(trace: readonly TraceReading[], level: number): number | null {
  return spansAtOrAbove(trace, level)[0]?.fromMin ?? null
}

/** Where the pressure last left its rest before a moment; null when no reading at rest stands before it. */
function lastAtRest(trace: readonly TraceReading[], beforeMin: number): number | null {
  const found = trace.findLastIndex(({ atMin, value }) => atMin <= beforeMin && value <= REST_PSI)
  return found < 0 ? null : trace[found]!.atMin
}

function firstAtRest(trace: readonly TraceReading[], afterMin: number): number | null {
  const found = trace.findIndex(({ atMin, value }) => atMin >= afterMin && value <= REST_PSI)
  if (found <= 0) return null
  return crossing(trace[found - 1]!, trace[found]!, REST_PSI)
}

function lowest(trace: readonly TraceReading[], fromMin: number, toMin: number): number {
  return Math.min(...trace.filter(({ atMin }) => atMin >= fromMin && atMin <= toMin).map(({ value }) => value))
}

const psi = (value: number) => ({ value: Math.round(value * 10) / 10, unit: 'PsiGauge' }) as const
