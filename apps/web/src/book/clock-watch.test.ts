import { expect, test } from 'vitest'
import { clockSinceLastTime, createClockWatch } from './clock-watch.ts'

const TEN = Date.parse('2026-11-14T10:00:00.000Z')

function clocksAt(wallMs: number) {
  const clocks = { wallMs, monoMs: 5000 }
  return { clocks, watch: createClockWatch({ wall: () => clocks.wallMs, mono: () => clocks.monoMs }) }
}

test('two clocks that go together ask nothing, however long they go', () => {
  const { clocks, watch } = clocksAt(TEN)
  clocks.wallMs += 3_600_000
  clocks.monoMs += 3_600_000
  expect(watch.look()).toBeNull()
})

test('a nudge of two seconds asks nothing; more does', () => {
  const { clocks, watch } = clocksAt(TEN)
  clocks.wallMs += 62_000
  clocks.monoMs += 60_000
  expect(watch.look()).toBeNull()
  clocks.wallMs += 62_001
  clocks.monoMs += 60_000
  expect(watch.look()?.jumpMs).toBe(2001)
})

test('an hour put back is asked once, with both times', () => {
  const { clocks, watch } = clocksAt(TEN)
  clocks.wallMs += 60_000 - 3_600_000
  clocks.monoMs += 60_000
  expect(watch.look()).toEqual({
    jumpMs: -3_600_000,
    keptInstant: '2026-11-14T10:01:00.000Z',
    seenInstant: '2026-11-14T09:01:00.000Z',
  })
  clocks.wallMs += 1000
  clocks.monoMs += 1000
  expect(watch.look()).toBeNull()
})

test('across a reload only a clock that went backwards is asked about', () => {
  expect(clockSinceLastTime(TEN + 86_400_000, TEN)).toBeNull()
  expect(clockSinceLastTime(TEN - 500, TEN)).toBeNull()
  expect(clockSinceLastTime(TEN, undefined)).toBeNull()
  expect(clockSinceLastTime(TEN - 600_000, TEN)?.jumpMs).toBe(-600_000)
})
