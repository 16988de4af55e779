/** Times as typed in a terminal, in the kitchen's zone, to UTC instants and back. The clock itself is handed in. */
import { badInput } from './exit-codes.ts'

export interface WallClock {
  readonly now: number
  /** IANA zone of what is typed and shown. */
  readonly zone: string
}

const LOCAL = /^(?:(\d{4})-(\d\d)-(\d\d)[ T])?(\d{1,2}):(\d\d)(?::(\d\d))?$/
const WITH_OFFSET = /^\d{4}-\d\d-\d\d[ T]\d\d:\d\d(?::\d\d(?:\.\d+)?)?(?:Z|[+-]\d\d:?\d\d)$/

/**
 * The instant a person means. [ms since 1970, UTC]
 *
 * `2026-02-14 10:08` in the zone; `10:08` alone is today; a time with `Z` or an offset is taken as it stands.
 *
 * @throws {BadInput} on an impossible date, a clock time the zone skips or has twice that day, or a time still to come.
 */
export function readInstant(text: string, { now, zone }: WallClock): number {
  const typed = text.trim()
  const instant = WITH_OFFSET.test(typed) ? Date.parse(typed.replace(' ', 'T')) : readLocal(typed, { now, zone })
  if (Number.isNaN(instant)) throw badInput('terminal:not-a-time', { given: text })
  if (instant > now) throw badInput('terminal:time-to-come', { given: text, now: showInstant(now, zone) })
  return instant
}

function readLocal(typed: string, { now, zone }: WallClock): number {
  const match = LOCAL.exec(typed)
  if (!match) throw badInput('terminal:not-a-time', { given: typed })
  const today = wallParts(now, zone)
  const [year, month, day] = match[1]
    ? [match[1], match[2], match[3]].map(Number)
    : [today.year, today.month, today.day]
  const [hour, minute, second] = [match[4], match[5], match[6] ?? '0'].map(Number)
  const asUtc = Date.UTC(year!, month! - 1, day, hour, minute, second)
  // The zone's offset differs from UTC by at most 14 h and changes at most once within a day of the wanted moment.
  const offsets = new Set([asUtc - DAY_MS, asUtc, asUtc + DAY_MS].map((instant) => wallAsUtc(instant, zone) - instant))
  const found = [...offsets].map((offset) => asUtc - offset).filter((instant) => wallAsUtc(instant, zone) === asUtc)
  if (found.length === 0) throw badInput('terminal:not-a-time', { given: typed })
  if (found.length > 1) throw badInput('terminal:time-twice', { given: typed, zone })
  const parts = wallParts(found[0]!, zone)
  // Date.UTC rolls the 31st of February over; a person who typed it meant something else.
  if (parts.day !== day || parts.month !== month || parts.hour !== hour || parts.minute !== minute) {
    throw badInput('terminal:not-a-time', { given: typed })
  }
  return found[0]!
}

const DAY_MS = 86_400_000

interface WallParts {
  readonly year: number
  readonly month: number
  readonly day: number
  readonly hour: number
  readonly minute: number
  readonly second: number
}

function wallParts(instant: number, timeZone: string): WallParts {
  const parts = new Intl.DateTimeFormat('en-US-u-hc-h23', {
    timeZone,
    year: 'numeric',
    month: 'numeric',
    day: 'numeric',
    hour: 'numeric',
    minute: 'numeric',
    second: 'numeric',
  }).formatToParts(instant)
  const read = (type: string) => Number(parts.find((part) => part.type === type)?.value)
  return {
    year: read('year'),
    month: read('month'),
    day: read('day'),
    hour: read('hour'),
    minute: read('minute'),
    second: read('second'),
  }
}

function wallAsUtc(instant: number, zone: string): number {
  const { year, month, day, hour, minute, second } = wallParts(instant, zone)
  return Date.UTC(year, month - 1, day, hour, minute, second)
}

/** `2026-02-14 10:08` in the zone. */
export function showInstant(instant: number, zone: string): string {
  const { year, month, day, hour, minute } = wallParts(instant, zone)
  return `${year}-${two(month)}-${two(day)} ${two(hour)}:${two(minute)}`
}

/** `10:08` in the zone, with the day when it is not the day of `beside`. */
export function showClock(instant: number, zone: string, beside: number): string {
  const text = showInstant(instant, zone)
  return text.slice(0, 10) === showInstant(beside, zone).slice(0, 10) ? text.slice(11) : text
}

/** Minutes after the local midnight of `instant`'s day. [min] */
export function clockMinOf(instant: number, zone: string): number {
  const { hour, minute } = wallParts(instant, zone)
  return hour * 60 + minute
}

/** The date `2026-02-14` in the zone. */
export function dateOf(instant: number, zone: string): string {
  return showInstant(instant, zone).slice(0, 10)
}

/** The date after `day`, both YYYY-MM-DD. */
export function dayAfter(day: string): string {
  return new Date(Date.parse(day) + DAY_MS).toISOString().slice(0, 10)
}

function two(value: number): string {
  return String(value).padStart(2, '0')
}
