import type { CoolingFact } from '@crib/journal'
import { fToC } from '@crib/science'
import { createWords, formatReckoned } from '@crib/wording'
import { expect, test } from 'vitest'
import { coolingPan } from './cooling-pan.ts'

const words = createWords()
// 10:00 in Toronto, in the winter.
const START = Date.parse('2026-11-26T15:00:00Z')
const at = (min: number) => ({ instant: new Date(START + min * 60_000).toISOString(), zone: 'America/Toronto' })
const pan = (...readings: readonly (readonly [min: number, readsF: number, aroundF?: number])[]): CoolingFact =>
  ({
    coolingId: 'c',
    what: 'the big pot',
    at: at(0),
    ended: null,
    readings: readings.map(([min, readsF, aroundF]) => ({
      temperatureC: fToC(readsF),
      ...(aroundF !== undefined && { aroundC: fToC(aroundF) }),
      at: at(min),
    })),
  }) as never
const stands = (fact: CoolingFact, min: number) => coolingPan(fact, START + min * 60_000)

// 3-501.14: 135 to 70 °F within 2 h, to 41 °F within 6 h in all.
test('off the heat at 10:00 it must be at 70 °F by 12:00 and at 41 °F by 16:00, by the clock of the place', () => {
  const { values, warmByMs, coldByMs, standing } = stands(pan(), 5)
  expect(values.map((value) => formatReckoned(value))).toEqual(['12:00', '16:00'])
  expect([warmByMs - START, coldByMs - START]).toEqual([120 * 60_000, 360 * 60_000])
  expect(standing).toBe('cooling')
})

test.each([
  ['not read by 12:00', pan(), 121, 'read-now'],
  ['at 70 °F by 12:00', pan([119, 70]), 180, 'cooling'],
  ['at 71 °F after 12:00', pan([121, 71]), 122, 'too-late'],
  ['at 41 °F by 16:00', pan([110, 65], [360, 41]), 400, 'cold'],
  ['at 42 °F after 16:00', pan([110, 65], [361, 42]), 362, 'too-late'],
  ['never read cold, and the time is over', pan([110, 65]), 361, 'too-late'],
  ['too warm once and cold later', pan([130, 90], [200, 40]), 201, 'too-late'],
] as const)('%s: %#', (_, fact, min, standing) => {
  expect(stands(fact, min).standing).toBe(standing)
})

test('a reading of a clock that ran behind the start is passed over, never a broken sheet', () => {
  expect(stands(pan([-5, 40]), 10).standing).toBe('cooling')
})

test('says what to read next, and owns up to a time that ran out unread', () => {
  expect(words.sentence(stands(pan(), 121).next)).toContain('70 °F (21 °C)')
  expect(words.sentence(stands(pan([110, 65]), 150).next)).toContain('41 °F (5 °C)')
  expect(words.sentence(stands(pan(), 400).next)).toContain('throw it out')
  expect(words.sentence(stands(pan([30, 90], [40, 92]), 41).next)).toContain('no colder')
})

// T = 40 + (140 - 40) / 2^(t / 30 min): halved towards 40 °F each half hour; 70 °F is reached after 52.1 min, 12.1 min from the second reading.
test('two readings and what it stands in give an estimate', () => {
  const { values } = stands(pan([10, 119.37, 40], [40, 79.685]), 41)
  expect(values.map(({ id }) => id)).toEqual([
    'warmByClockMin',
    'coldByClockMin',
    'warmAboutClockMin',
    'coldAboutClockMin',
  ])
  expect(formatReckoned(values[2]!)).toBe('10:55')
})
