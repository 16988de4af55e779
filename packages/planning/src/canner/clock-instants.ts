/** From a clock time somebody typed to an instant, in the zone of the kitchen. Leaves out: which of two days was meant, where the caller cannot say. */

const MS_PER_MIN = 60_000
const MIN_PER_DAY = 1440

/** What the wall clock in a zone is ahead of UTC at an instant. [min] */
function offsetMin(zone: string, atMs: number): number {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  }).formatToParts(atMs)
  const of = Object.fromEntries(parts.map(({ type, value }) => [type, Number(value)]))
  const localMs = Date.UTC(of.year!, of.month! - 1, of.day!, of.hour!, of.minute!, of.second!)
  return Math.round((localMs - Math.floor(atMs / 1000) * 1000) / MS_PER_MIN)
}

/** The instant at which the wall clock of a zone shows `localMs` (local time written as if it were UTC). */
function instantOfLocal(localMs: number, zone: string): number {
  const guessMs = localMs - offsetMin(zone, localMs) * MS_PER_MIN
  // Once more: the offset at the instant found may differ where clocks are put forward or back.
  return localMs - offsetMin(zone, guessMs) * MS_PER_MIN
}

/**
 * The instant of a clock time on a calendar day. [epoch ms]
 *
 * @param day YYYY-MM-DD in the zone.
 * @param clockMin minutes after that day's midnight; from 1440 on it is a later day. [min]
 * @throws {RangeError} for a day that is none, a clock that is no number, or a zone the platform does not know.
 */
export function instantOnDay(day: string, clockMin: number, zone: string): number {
  const midnightMs = /^\d{4}-\d{2}-\d{2}$/.test(day) ? Date.parse(`${day}T00:00:00Z`) : Number.NaN
  if (Number.isNaN(midnightMs)) throw new RangeError(`day is "${day}"; a date as YYYY-MM-DD is needed`)
  if (!Number.isFinite(clockMin)) throw new RangeError(`clockMin is ${clockMin}; minutes after midnight are needed`)
  return instantOfLocal(midnightMs + clockMin * MS_PER_MIN, zone)
}

/** The calendar day of an instant in a zone, YYYY-MM-DD. */
export function dayOfInstant(atMs: number, zone: string): string {
  return new Date(atMs + offsetMin(zone, atMs) * MS_PER_MIN).toISOString().slice(0, 10)
}

/** The last instant, not after `untilMs`, at which the clock showed `clockMin`: "I did this earlier". [epoch ms] */
export function lastInstantOfClock(clockMin: number, untilMs: number, zone: string): number {
  const sameDayMs = instantOnDay(dayOfInstant(untilMs, zone), clockMin, zone)
  if (sameDayMs <= untilMs) return sameDayMs
  return instantOnDay(dayOfInstant(untilMs, zone), clockMin - MIN_PER_DAY, zone)
}

/**
 * Instants of the clock times of one log, typed line by line: a clock time before the first line's is past midnight. [epoch ms]
 * Lines may be typed in any order after the first.
 */
export function logInstants(clockMins: readonly number[], day: string, zone: string): number[] {
  const firstMin = clockMins[0] ?? 0
  return clockMins.map((clockMin) => instantOnDay(day, clockMin < firstMin ? clockMin + MIN_PER_DAY : clockMin, zone))
}
