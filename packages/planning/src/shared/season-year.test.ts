import type { Facts } from '@crib/journal'
import { expect, test } from 'vitest'
import { seasonYearOf } from './season-year.ts'

const lots = (...instants: string[]) =>
  ({ cornLots: Object.fromEntries(instants.map((instant) => [instant, { at: { instant } }])) }) as unknown as Facts

test('a batch in February belongs to the harvest of the autumn before', () => {
  expect(seasonYearOf(lots('2025-10-03T12:00:00Z', '2026-10-05T12:00:00Z'), '2027-02-14')).toBe(2026)
})

test('without corn the season is the year of the day, and a day must be one', () => {
  expect(seasonYearOf(lots(), '2026-11-03')).toBe(2026)
  expect(() => seasonYearOf(lots(), '3 Nov')).toThrow(RangeError)
})
