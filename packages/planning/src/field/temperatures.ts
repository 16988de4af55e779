/** Daily temperatures as a person has them: typed in a table or pasted from anywhere, a line a day. */
import { convert, type Sentence } from '@crib/science'
import { say } from '../shared/say.ts'
import { dayNumber, dayText } from './days.ts'

export interface DayReading {
  /** Day number. */
  readonly day: number
  readonly highC: number
  readonly lowC: number
}

export type Readings =
  | { readonly ok: true; readonly days: readonly DayReading[]; readonly missingDays: number }
  | { readonly ok: false; readonly why: readonly Sentence[] }

export type Scale = 'F' | 'C'

/** A weather station's coldest and hottest records lie within. [°C] */
const LIMITS_C = { min: -60, max: 60 }

/** A row as typed, before it is known to be a day. */
export interface TypedDay {
  readonly date: string
  readonly high: number
  readonly low: number
}

/** Lines such as `2026-05-14, 72, 48`: date, high, low, parted by comma, semicolon, tab or spaces. Titles are passed over. */
export function readPasted(text: string, scale: Scale): Readings {
  const rows: TypedDay[] = []
  const places: number[] = []
  const faults: Sentence[] = []
  for (const [index, line] of text.split(/\r?\n/).entries()) {
    const parts = line
      .trim()
      .replaceAll('"', '')
      .split(/\s*[,;\t]\s*|\s+/)
    const [date = '', high = '', low = ''] = parts
    if (date === '' || line.trim().startsWith('#')) continue
    const isTitle = rows.length === 0 && !/\d/.test(date)
    if (isTitle) continue
    const isNumber = (part: string) => /^[-−]?\d+(\.\d+)?$/.test(part)
    if (parts.length < 3 || !isNumber(high) || !isNumber(low)) {
      faults.push(say('field:not-a-reading', { line: index + 1, given: line.trim().slice(0, 60) }))
      continue
    }
    const number = (part: string) => Number(part.replace('−', '-'))
    rows.push({ date, high: number(high), low: number(low) })
    places.push(index + 1)
  }
  if (faults.length > 0) return { ok: false, why: faults.slice(0, 5) }
  return readRows(rows, scale, places)
}

/** @param places the line each row stands on, where they were pasted. */
export function readRows(rows: readonly TypedDay[], scale: Scale, places?: readonly number[]): Readings {
  if (rows.length === 0) return { ok: false, why: [say('field:no-readings')] }
  const days: DayReading[] = []
  const faults: Sentence[] = []
  for (const [index, { date, high, low }] of rows.entries()) {
    const line = places?.[index] ?? index + 1
    const day = dayNumber(date)
    const highC = convert(high, scale, 'C')
    const lowC = convert(low, scale, 'C')
    const before = days.at(-1)
    if (day === null) faults.push(say('field:no-such-day-in-line', { line, given: date }))
    else if (before && day <= before.day)
      faults.push(say('field:days-out-of-order', { line, given: date, before: dayText(before.day) }))
    else if (!(lowC <= highC)) faults.push(say('field:low-above-high', { line, given: date }))
    else if (!(highC <= LIMITS_C.max && lowC >= LIMITS_C.min))
      faults.push(say('field:not-weather', { line, given: date, scale: `°${scale}` }))
    else days.push({ day, highC, lowC })
  }
  if (faults.length > 0) return { ok: false, why: faults.slice(0, 5) }
  const span = days.at(-1)!.day - days[0]!.day + 1
  return { ok: true, days, missingDays: span - days.length }
}
