import type { FoodLotFact, RunFact } from '@crib/journal'
import { expect, test } from 'vitest'
import { dayAfter, pantryShelf } from './shelf.ts'

const lot = (lotId: string, form: FoodLotFact['form'], instant: string, remainingCount = 6): FoodLotFact =>
  ({
    lotId,
    form,
    loadCode: lotId,
    count: 6,
    uses: [],
    usedCount: 6 - remainingCount,
    remainingCount,
    at: { instant, zone: 'America/Toronto' },
  }) as unknown as FoodLotFact

const shelf = (...lots: readonly FoodLotFact[]) =>
  pantryShelf({ foodLots: Object.fromEntries(lots.map((each) => [each.lotId, each])), runs: {} })

test('fridge before freezer before jars; flour, for which no time is printed, last', () => {
  const put = '2026-11-03T15:00:00Z'
  const lots = shelf(
    lot('flour', 'flour', put),
    lot('jars', 'jar', put),
    lot('ice', 'freezer', put),
    lot('cold', 'fridge', put),
  )
  expect(lots.map((each) => each.lot.lotId)).toEqual(['cold', 'ice', 'jars', 'flour'])
  // 3 to 4 days in the fridge (illinois-leftovers), 8 to 12 months in the freezer (usda-garden-produce), a year in jars.
  expect(lots.map(({ useFirstBy, bestUntil }) => [useFirstBy, bestUntil])).toEqual([
    ['2026-11-06', '2026-11-07'],
    ['2027-07-03', '2027-11-03'],
    ['2027-11-03', '2027-11-03'],
    [null, null],
  ])
})

test('what is used up is off the shelf, and the day is the day where it was done', () => {
  const late = '2026-11-04T03:30:00Z' // half past ten in the evening of the 3rd, in Toronto
  const lots = shelf(lot('gone', 'jar', late, 0), lot('here', 'jar', late, 1))
  expect(lots.map((each) => [each.lot.lotId, each.putUpOn])).toEqual([['here', '2026-11-03']])
})

test('the days of a jar are counted from its canning; of what went into the fridge instead, from its putting up', () => {
  const at = { instant: '2026-10-04T01:30:00Z', zone: 'America/Toronto' } // the evening of the 3rd
  const runs = { r: { runId: 'r', begun: { at } } as unknown as RunFact }
  const ofRun = (form: FoodLotFact['form']) => ({ ...lot(form, form, '2026-10-05T13:00:00Z'), runId: 'r' })
  const lots = pantryShelf({ foodLots: { jar: ofRun('jar'), fridge: ofRun('fridge') }, runs })
  expect(lots.map(({ putUpOn, useFirstBy }) => [putUpOn, useFirstBy])).toEqual([
    ['2026-10-05', '2026-10-08'],
    ['2026-10-03', '2027-10-03'],
  ])
})

test('a month without that day ends on its last', () => {
  expect(dayAfter('2026-08-31', 6, 'Months')).toBe('2027-02-28')
  expect(dayAfter('2026-11-03', 12, 'Months')).toBe('2027-11-03')
  expect(dayAfter('2026-12-30', 3, 'Days')).toBe('2027-01-02')
  expect(() => dayAfter('soon', 1, 'Days')).toThrow(RangeError)
})
