import type { Facts } from '@crib/journal'
import { expect, test } from 'vitest'
import { seasonYearOf, seedOfSeason } from './season-year.ts'

const ZONE = 'America/Toronto'
const lots = (...instants: string[]) => book(instants.map((instant) => ({ instant })))

function book(
  corn: { instant: string; treatedSeed?: boolean }[],
  words: { instant: string; seasonYear: number }[] = [],
) {
  const cornLots = corn.map(({ instant, treatedSeed = false }) => ({ treatedSeed, at: { instant, zone: ZONE } }))
  const seed = words.map(({ instant, seasonYear }) => ({ seasonYear, at: { instant, zone: ZONE } }))
  return { cornLots: { ...cornLots }, seed: { ...seed } } as unknown as Facts
}

test('a batch in February belongs to the harvest of the autumn before', () => {
  expect(seasonYearOf(lots('2025-10-03T12:00:00Z', '2026-10-05T12:00:00Z'), '2027-02-14')).toBe(2026)
})

test("the year turns where the corn is, not at midnight in Greenwich: New Year's Eve is the old year still", () => {
  expect(seasonYearOf(lots('2027-01-01T01:00:00Z'), '2027-01-01')).toBe(2026)
})

test('dressed seed corn bought in spring opens no season of food', () => {
  const bought = { instant: '2027-04-20T12:00:00Z', treatedSeed: true }
  expect(seasonYearOf(book([{ instant: '2026-10-05T12:00:00Z' }, bought]), '2027-04-21')).toBe(2026)
})

test('without corn the season is the year of the day, and a day must be one', () => {
  expect(seasonYearOf(lots(), '2026-11-03')).toBe(2026)
  expect(() => seasonYearOf(lots(), '3 Nov')).toThrow(RangeError)
})

test('a word on seed stands for its season, also when more of the harvest comes in, until the next harvest does', () => {
  const autumn = { instant: '2026-10-05T12:00:00Z' }
  const word = { instant: '2026-10-06T12:00:00Z', seasonYear: 2026 }
  expect(seedOfSeason(book([autumn], [word]), 2026)).toHaveLength(1)
  expect(seedOfSeason(book([autumn, { instant: '2026-12-20T12:00:00Z' }], [word]), 2026)).toHaveLength(1)
  // Corn of a neighbour in February, seed answered for; then the own harvest of the same year.
  const spring = { instant: '2027-02-10T12:00:00Z' }
  const springWord = { instant: '2027-02-10T13:00:00Z', seasonYear: 2027 }
  expect(seedOfSeason(book([spring], [springWord]), 2027)).toHaveLength(1)
  expect(seedOfSeason(book([spring, { instant: '2027-10-04T12:00:00Z' }], [springWord]), 2027)).toEqual([])
  // Said before any corn is in the book.
  expect(seedOfSeason(book([], [word]), 2026)).toHaveLength(1)
})
