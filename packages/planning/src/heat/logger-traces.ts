/** A logger's file read into a few thinned traces, one for each probe, in bounded memory whatever its length. */
import { instantOnDay } from '../canner/clock-instants.ts'
import { type LoggerOutcome, readLogger } from './logger.ts'
import type { LoggerMapping, LoggerTimeKind } from './logger-mapping.ts'
import { createTraceThinner, type TraceReading } from './thin-trace.ts'

/** What a probe was in: the keeper says. `gauge` is a pressure. */
export type TraceRole = 'canner' | 'jar' | 'gauge'

export interface LoggerTrace {
  readonly column: string
  readonly role: TraceRole
  /** °C, or psi for a gauge. Times rising. */
  readonly points: readonly TraceReading[]
  /** Farthest a reading left out lies from the line drawn. [°C or psi] */
  readonly within: number
}

export interface TracedLogger {
  readonly outcome: LoggerOutcome
  /** Empty where the file was refused. */
  readonly traces: readonly LoggerTrace[]
}

/** Least that is left out. [°C or psi] */
const WITHIN: Record<TraceRole, number> = { canner: 0.05, jar: 0.05, gauge: 0.02 }
const MOST_POINTS = 3000

/** @param roles one for each value column of the mapping, in its order. */
export async function traceLogger(
  pieces: AsyncIterable<string> | Iterable<string>,
  mapping: LoggerMapping,
  roles: readonly TraceRole[],
): Promise<TracedLogger> {
  const thinners = roles.map((role) => createTraceThinner({ within: WITHIN[role], mostPoints: MOST_POINTS }))
  const outcome = await readLogger(pieces, mapping, ({ atMin, values }) => {
    for (let i = 0; i < thinners.length; i += 1) {
      const value = values[i]
      if (value !== null && value !== undefined) thinners[i]!.push({ atMin, value })
    }
  })
  if (!outcome.ok) return { outcome, traces: [] }
  const traces = roles.map((role, i) => {
    const { points, within } = thinners[i]!.finish()
    return { column: mapping.values[i]!.column, role, points, within }
  })
  return { outcome, traces }
}

export interface ReadingClock {
  readonly kind: LoggerTimeKind
  /** YYYY-MM-DD on which the file begins; not needed for instants. */
  readonly day: string
  /** Clock at minute 0 of the file, for seconds and minutes. [min after midnight] */
  readonly startClockMin: number
  readonly zone: string
}

/** The instant of a reading. [epoch ms] */
export function instantOfReading(atMin: number, { kind, day, startClockMin, zone }: ReadingClock): number {
  switch (kind) {
    case 'instant':
      return Math.round(atMin * 60_000)
    case 'clock':
      return instantOnDay(day, atMin, zone)
    case 'seconds':
    case 'minutes':
      return instantOnDay(day, startClockMin + atMin, zone)
  }
}
