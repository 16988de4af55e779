import type { FoodLotFact } from '@crib/journal'
import { shownValue } from '@crib/science'
import { expect, test } from 'vitest'
import { lidsAndJarsToBuy, useForecasts } from './use-forecast.ts'

const DAY = 86_400_000
const NOW = Date.parse('2027-02-01T12:00:00Z')
const use = (daysAgo: number, count: number) => ({
  count,
  at: { instant: new Date(NOW - daysAgo * DAY).toISOString() },
})

const lot = (uses: readonly object[], openings: readonly object[], remainingCount: number): FoodLotFact =>
  ({ lotId: 'l', form: 'jar', uses, openings, remainingCount }) as unknown as FoodLotFact

test('four jars in 28 days are one a week, and ten last 70 days', () => {
  const [jars] = useForecasts({ foodLots: { l: lot([use(28, 1), use(20, 1)], [use(10, 1), use(3, 1)], 10) } }, NOW)
  expect(jars!.values!.map(shownValue)).toEqual([1, 70])
})

test('fewer than three uses, or all of today, tell no pace; an empty shelf is not listed', () => {
  expect(useForecasts({ foodLots: { l: lot([use(9, 1), use(3, 1)], [], 4) } }, NOW)[0]!.values).toBeNull()
  expect(
    useForecasts({ foodLots: { l: lot([use(0.1, 1), use(0.2, 1), use(0.3, 1)], [], 4) } }, NOW)[0]!.values,
  ).toBeNull()
  expect(useForecasts({ foodLots: { l: lot([use(9, 1)], [], 0) } }, NOW)).toEqual([])
})

// Scenario S6: 96 pints with 5 % spare are 101 lids.
test('lids are bought with their spares, less those at hand', () => {
  const need = { jarsCount: 96, lidsAtHandCount: 0, jarsAtHandCount: 96, spareLidFraction: 0.05 }
  expect(lidsAndJarsToBuy(need).map(shownValue)).toEqual([101, 0])
  expect(lidsAndJarsToBuy({ ...need, lidsAtHandCount: 40, jarsAtHandCount: 90 }).map(shownValue)).toEqual([61, 6])
  expect(() => lidsAndJarsToBuy({ ...need, jarsCount: -1 })).toThrow(RangeError)
})
