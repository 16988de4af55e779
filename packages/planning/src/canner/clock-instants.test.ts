import { expect, test } from 'vitest'
import { dayOfInstant, instantOnDay, lastInstantOfClock, logInstants } from './clock-instants.ts'

const ZONE = 'America/Toronto'
const clock = (hours: number, minutes = 0) => hours * 60 + minutes

test('a clock time on a day is an instant of its zone, in summer time and out of it', () => {
  expect(instantOnDay('2026-10-03', clock(9, 40), ZONE)).toBe(Date.parse('2026-10-03T13:40:00Z'))
  expect(instantOnDay('2026-12-03', clock(9, 40), ZONE)).toBe(Date.parse('2026-12-03T14:40:00Z'))
  expect(instantOnDay('2026-10-03', clock(24, 49), 'UTC')).toBe(Date.parse('2026-10-04T00:49:00Z'))
})

test('the evening of the day clocks go back counts in the new time', () => {
  // 1 November 2026: clocks go back at 02:00 there.
  expect(instantOnDay('2026-11-01', clock(0, 30), ZONE)).toBe(Date.parse('2026-11-01T04:30:00Z'))
  expect(instantOnDay('2026-11-01', clock(20), ZONE)).toBe(Date.parse('2026-11-02T01:00:00Z'))
})

test('"earlier" is the last time the clock showed it: the evening before when it is just past midnight', () => {
  const now = Date.parse('2026-10-04T04:10:00Z') // 00:10 there
  expect(lastInstantOfClock(clock(23, 50), now, ZONE)).toBe(Date.parse('2026-10-04T03:50:00Z'))
  expect(lastInstantOfClock(clock(0, 5), now, ZONE)).toBe(Date.parse('2026-10-04T04:05:00Z'))
  expect(lastInstantOfClock(clock(0, 10), now, ZONE)).toBe(now)
})

test('a log that runs past midnight goes on with the next day, whatever the order of its lines', () => {
  const instants = logInstants([clock(22), clock(23, 30), clock(0, 15), clock(22, 5)], '2026-10-03', 'UTC')
  expect(instants.map((atMs) => new Date(atMs).toISOString().slice(5, 16))).toEqual([
    '10-03T22:00',
    '10-03T23:30',
    '10-04T00:15',
    '10-03T22:05',
  ])
})

test('a day is the day where the kitchen is', () => {
  expect(dayOfInstant(Date.parse('2026-10-04T03:50:00Z'), ZONE)).toBe('2026-10-03')
})

test.each(['3 Oct', '2026-13-01', ''])('"%s" is no day', (day) => {
  expect(() => instantOnDay(day, 0, 'UTC')).toThrow(RangeError)
})
test('a clock that is no number is refused', () => {
  expect(() => instantOnDay('2026-10-03', Number.NaN, 'UTC')).toThrow(RangeError)
})
