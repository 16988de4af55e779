/**
 * Keeps a long trace as few points joined by straight lines, none of the readings left out lying farther from its line than
 * a tolerance. Works as readings come, in bounded memory: past the most points, the tolerance doubles and the kept
 * points are thinned again.
 */

export interface TraceReading {
  readonly atMin: number
  readonly value: number
}

export interface ThinTrace {
  readonly points: readonly TraceReading[]
  /** Farthest a reading left out may lie from the line, in the reading's own unit. */
  readonly within: number
}

export interface TraceThinner {
  push(reading: TraceReading): void
  finish(): ThinTrace
}

/** @param options.within first tolerance. @param options.mostPoints kept at any moment, 8 or more. */
export function createTraceThinner({ within, mostPoints }: { within: number; mostPoints: number }): TraceThinner {
  let tolerance = within
  let spent = 0
  let kept: TraceReading[] = []
  let door = createDoor(tolerance)
  let lastPushed: TraceReading | null = null

  const push = (reading: TraceReading) => {
    const point = door(reading)
    if (point) kept.push(point)
    if (kept.length <= mostPoints) return
    // What was left out already may add to what is left out now.
    spent += tolerance
    tolerance *= 2
    const again = createDoor(tolerance)
    const fewer = kept.flatMap((one) => again(one) ?? [])
    const last = kept.at(-1)!
    kept = fewer.at(-1) === last ? fewer : [...fewer, last]
    door = createDoor(tolerance)
    door(last)
    door(reading)
  }
  return {
    push: (reading) => {
      push(reading)
      lastPushed = reading
    },
    finish: () => {
      const points = lastPushed && kept.at(-1) !== lastPushed ? [...kept, lastPushed] : kept
      return { points, within: spent + tolerance }
    },
  }
}

/** The swinging door: lets a point out when no one line from the last point reaches every reading since. */
function createDoor(tolerance: number): (reading: TraceReading) => TraceReading | null {
  let anchor: TraceReading | null = null
  let held: TraceReading | null = null
  let lowSlope = Number.NEGATIVE_INFINITY
  let highSlope = Number.POSITIVE_INFINITY
  const open = (from: TraceReading, to: TraceReading) => {
    const dt = to.atMin - from.atMin
    lowSlope = Math.max(lowSlope, (to.value - tolerance - from.value) / dt)
    highSlope = Math.min(highSlope, (to.value + tolerance - from.value) / dt)
  }
  return (reading) => {
    if (anchor === null) {
      anchor = reading
      return reading
    }
    const slope = (reading.value - anchor.value) / (reading.atMin - anchor.atMin)
    if (held === null || (slope >= lowSlope && slope <= highSlope)) {
      open(anchor, reading)
      held = reading
      return null
    }
    anchor = held
    lowSlope = Number.NEGATIVE_INFINITY
    highSlope = Number.POSITIVE_INFINITY
    open(anchor, reading)
    const out = held
    held = reading
    return out
  }
}

/** Value of a trace at a moment, on the straight line between its readings; null outside them. Unit of the trace. */
export function traceAt(points: readonly TraceReading[], atMin: number): number | null {
  const next = points.findIndex((point) => point.atMin >= atMin)
  if (next < 0) return null
  const to = points[next]!
  const from = points[next - 1]
  if (!from) return to.atMin === atMin ? to.value : null
  return from.value + ((to.value - from.value) * (atMin - from.atMin)) / (to.atMin - from.atMin)
}
