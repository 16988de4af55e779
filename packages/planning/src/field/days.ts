/** Calendar days as whole numbers and back, without a clock: `2026-05-14` and days since 1970-01-01. */
const DAY_MS = 86_400_000
const ISO_DAY = /^(\d{4})-(\d{2})-(\d{2})$/

/** Number of a day, or null when the text names none: 2026-02-30 is no day. [days] */
export function dayNumber(isoDay: string): number | null {
  const match = ISO_DAY.exec(isoDay.trim())
  if (!match) return null
  const ms = Date.UTC(Number(match[1]), Number(match[2]) - 1, Number(match[3]))
  return isoDayOf(ms / DAY_MS) === isoDay.trim() ? ms / DAY_MS : null
}

export function isoDayOf(day: number): string {
  return new Date(day * DAY_MS).toISOString().slice(0, 10)
}

const IN_WORDS = new Intl.DateTimeFormat('en-GB', { day: 'numeric', month: 'short', year: 'numeric', timeZone: 'UTC' })

/** `14 May 2026`: read alike on both sides of an ocean. */
export function dayText(day: number): string {
  return IN_WORDS.format(day * DAY_MS)
}
