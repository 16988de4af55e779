/**
 * Compares the wall clock with the monotonic one. A difference asks; it never guesses which clock was right.
 * Leaves out: who is asked (clock-slip.tsx) and what a run does with the answer.
 */
/** The wall clock moved against the monotonic one, or went backwards since the book was last open. */
export interface ClockQuestion {
  readonly jumpMs: number
  /** What the wall clock would have said had nothing moved it. */
  readonly keptInstant: string
  readonly seenInstant: string
}

/** Below this, network time keeping nudges the clock all day. */
export const DRIFT_ASKED_MS = 2000

export interface Clocks {
  /** Milliseconds since 1970 by the device's clock. */
  wall(): number
  /** Milliseconds that only ever go forward. */
  mono(): number
}

export interface ClockWatch {
  /** A question when the clocks parted since the last look. */
  look(): ClockQuestion | null
  /** Starts anew: after sleep or a hidden page the monotonic clock may have stood still. */
  begin(): void
}

export function createClockWatch({ wall, mono }: Clocks): ClockWatch {
  let wall0 = wall()
  let mono0 = mono()
  const begin = () => {
    wall0 = wall()
    mono0 = mono()
  }
  return {
    begin,
    look: () => {
      const seen = wall()
      const kept = wall0 + (mono() - mono0)
      begin()
      return questionOf(seen, kept)
    },
  }
}

/** After a reload only going backwards is sure to be wrong: time passes while a book is shut. */
export function clockSinceLastTime(wallMs: number, lastWallMs: number | undefined): ClockQuestion | null {
  if (lastWallMs === undefined || wallMs >= lastWallMs) return null
  return questionOf(wallMs, lastWallMs)
}

function questionOf(seenMs: number, keptMs: number): ClockQuestion | null {
  const jumpMs = Math.round(seenMs - keptMs)
  if (Math.abs(jumpMs) <= DRIFT_ASKED_MS) return null
  return { jumpMs, keptInstant: new Date(keptMs).toISOString(), seenInstant: new Date(seenMs).toISOString() }
}
