/** Loggers' files read since the page was opened, by run: so that a paper may have what was measured. Nothing here is a fact. */
import { instantOfReading, type LoggedRun, type LoggerTrace, type ReadingClock } from '@crib/planning'

const MS_PER_MIN = 60_000
const logged = new Map<string, LoggedRun>()

/** `clock`: when the file's minutes were. */
export function keepLogged(runId: string, traces: readonly LoggerTrace[], clock: ReadingClock): void {
  logged.set(runId, {
    traces: traces.map((trace) => ({
      ...trace,
      points: trace.points.map(({ atMin, value }) => ({ atMin: instantOfReading(atMin, clock) / MS_PER_MIN, value })),
    })),
  })
}

export function loggedOf(runId: string): LoggedRun | undefined {
  return logged.get(runId)
}
