import { expect, test } from 'vitest'
import { clockMinOf, readInstant, showClock, showInstant } from './clock-times.ts'

const ZONE = 'America/Toronto'
const NOW = Date.parse('2026-11-02T18:00:00Z') // 13:00 there

test.each([
  ['2026-02-14 10:08', '2026-02-14T15:08:00.000Z'], // winter time, five hours behind
  ['2026-07-14 10:08', '2026-07-14T14:08:00.000Z'], // summer time, four
  ['10:08', '2026-11-02T15:08:00.000Z'],
  ['9:05', '2026-11-02T14:05:00.000Z'],
  ['2026-02-14T10:08:30', '2026-02-14T15:08:30.000Z'],
  ['2026-02-14 10:08Z', '2026-02-14T10:08:00.000Z'],
  ['2026-11-01 01:30-05:00', '2026-11-01T06:30:00.000Z'],
  ['2026-03-08 03:30', '2026-03-08T07:30:00.000Z'], // first hour after the clocks went forward
])('%s typed in Toronto is %s', (text, instant) => {
  expect(new Date(readInstant(text, { now: NOW, zone: ZONE })).toISOString()).toBe(instant)
})

test.each([
  ['25:00', 'terminal:not-a-time'],
  ['10:75', 'terminal:not-a-time'],
  ['2026-02-31 10:00', 'terminal:not-a-time'],
  ['2026-03-08 02:30', 'terminal:not-a-time'], // the hour the clocks skip
  ['2026-11-01 01:30', 'terminal:time-twice'],
  ['ten past ten', 'terminal:not-a-time'],
  ['13:01', 'terminal:time-to-come'],
  ['2027-01-01 00:00Z', 'terminal:time-to-come'],
])('%s is refused as %s', (text, key) => {
  expect(() => readInstant(text, { now: NOW, zone: ZONE })).toThrow(key)
})

test('an instant is shown in the zone, with its day only when it is another day', () => {
  const instant = Date.parse('2026-11-02T04:49:00Z') // 23:49 the day before
  expect(showInstant(instant, ZONE)).toBe('2026-11-01 23:49')
  expect(showClock(instant, ZONE, NOW)).toBe('2026-11-01 23:49')
  expect(showClock(NOW, ZONE, NOW)).toBe('13:00')
  expect(clockMinOf(NOW, ZONE)).toBe(780)
})
