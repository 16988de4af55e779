import { expect, test } from 'vitest'
import { dialOf, dialReading, testDueOn } from './dial.ts'

const readings = [5, 10, 15].map((psi) => ({ truePsi: psi, readsPsi: psi }))
const at = { entryId: 'e', instant: '2027-06-01T12:00:00.000Z', zone: 'UTC', personId: 'p', deviceId: 'd' }

// 2028 has a 29 February: 365 days, as the rule counts, end a day before the calendar does.
test.each([
  ['2026-04-02', '2027-04-02', '2027-04-03'],
  ['2027-06-01', '2028-05-31', '2028-06-01'],
  ['2028-02-29', '2029-02-28', '2029-03-01'],
])('a dial tested on %s may be used on the day its paper names, %s, and not on the next', (testedOn, due, dayAfter) => {
  const canner = { gaugeTests: [{ testedOn, tester: 'bench', readings, marksEveryPsi: 1, restsAtPsi: 0, at }] }
  const usableOn = (today: string) => dialReading(dialOf(canner as never, today), 11).usable
  expect(testDueOn(testedOn)).toBe(due)
  expect(usableOn(due)).toBe(true)
  expect(usableOn(dayAfter)).toBe(false)
})

test('a test without a date has no day it is due', () => {
  expect(() => testDueOn('last spring')).toThrow(RangeError)
})
