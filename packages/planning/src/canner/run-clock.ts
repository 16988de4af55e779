/** Instants as local clock times, for sentences and shown values. Leaves out: any clock of its own. */
import { ceilCount, floorCount, type Quantity } from '@crib/science'

const MS_PER_MIN = 60_000
const MIN_PER_DAY = 1440

export function addMin(atMs: number, minutes: number): number {
  return atMs + minutes * MS_PER_MIN
}

export function minutesBetween(fromMs: number, toMs: number): number {
  return (toMs - fromMs) / MS_PER_MIN
}

export interface RunClock {
  /** Minutes after the local midnight that begins the run's first day, seconds as a fraction. [ClockMin] */
  clockMin(atMs: number): number
  /** When something happened: its whole minute. */
  clock(atMs: number): Quantity
  /** When something is due: the next whole minute, never an earlier one. */
  dueClock(atMs: number): Quantity
}

/**
 * Words instants of one run in one zone. Days are counted from the local day of `firstMs`, so half past midnight after
 * an evening run is `00:30 next day`.
 *
 * @throws {RangeError} for a zone the platform does not know.
 */
export function createRunClock(zone: string, firstMs: number): RunClock {
  const parts = new Intl.DateTimeFormat('en-US', {
    timeZone: zone,
    hourCycle: 'h23',
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
  })
  const local = (atMs: number) => {
    const found = Object.fromEntries(parts.formatToParts(atMs).map(({ type, value }) => [type, Number(value)]))
    const dayNumber = Date.UTC(found.year!, found.month! - 1, found.day!) / (MIN_PER_DAY * MS_PER_MIN)
    const secondsMs = ((atMs % MS_PER_MIN) + MS_PER_MIN) % MS_PER_MIN
    return { dayNumber, minuteOfDay: found.hour! * 60 + found.minute! + secondsMs / MS_PER_MIN }
  }
  const firstDay = local(firstMs).dayNumber
  const clockMin = (atMs: number) => {
    const { dayNumber, minuteOfDay } = local(atMs)
    return (dayNumber - firstDay) * MIN_PER_DAY + minuteOfDay
  }
  return {
    clockMin,
    clock: (atMs) => ({ value: floorCount(clockMin(atMs)), unit: 'ClockMin' }),
    dueClock: (atMs) => ({ value: ceilCount(clockMin(atMs)), unit: 'ClockMin' }),
  }
}
