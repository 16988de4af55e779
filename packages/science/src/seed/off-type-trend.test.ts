import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { type OffTypeCount, offTypeTrend } from './off-type-trend.ts'

const rows = (counts: readonly (readonly [number, number, number])[]): readonly OffTypeCount[] =>
  counts.map(([year, offTypesCount, ofCount]) => ({ year, offTypesCount, ofCount }))

/** As in testing/make-seed-tables.py. */
const SERIES: { readonly [name: number]: readonly OffTypeCount[] } = {
  1: rows([
    [2020, 3, 200],
    [2021, 4, 200],
    [2022, 9, 240],
    [2023, 11, 220],
    [2024, 15, 200],
  ]),
  2: rows([
    [2022, 0, 100],
    [2023, 0, 120],
    [2024, 0, 100],
  ]),
  3: rows([
    [2022, 0, 100],
    [2023, 2, 120],
    [2024, 5, 100],
  ]),
  4: rows([
    [2018, 12, 300],
    [2021, 6, 300],
    [2024, 2, 280],
  ]),
  5: rows([
    [2023, 4, 100],
    [2024, 4, 100],
  ]),
}

const reference = readReferenceTable(new URL('./off-type-trend.reference.csv', import.meta.url), [
  'series',
  'oddsRatioPerYear',
  'low',
  'high',
]).rows

describe('the trend of off-types', () => {
  test.each(reference)('of series $series is $oddsRatioPerYear a year', ({ series, ...expected }) => {
    const trend = offTypeTrend(SERIES[series]!)
    for (const name of ['oddsRatioPerYear', 'low', 'high'] as const) {
      expect(Math.abs(trend[name] / expected[name] - 1)).toBeLessThan(1e-5)
    }
  })

  test('does not depend on the order of the counts, nor on the year the calendar began', () => {
    const trend = offTypeTrend(SERIES[1]!)
    expect(offTypeTrend(SERIES[1]!.toReversed()).oddsRatioPerYear).toBeCloseTo(trend.oddsRatioPerYear, 10)
    const earlier = SERIES[1]!.map((one) => ({ ...one, year: one.year - 100 }))
    expect(offTypeTrend(earlier).oddsRatioPerYear).toBeCloseTo(trend.oddsRatioPerYear, 10)
    expect(trend.lastYearFraction).toBeGreaterThan(trend.firstYearFraction)
  })

  test.each([
    [rows([[2024, 1, 10]])],
    [
      rows([
        [2024, 1, 10],
        [2024, 2, 10],
      ]),
    ],
    [
      rows([
        [2024, 11, 10],
        [2025, 1, 10],
      ]),
    ],
    [
      rows([
        [2024, 0, 0],
        [2025, 1, 10],
      ]),
    ],
  ])('refuses %j', (counts) => {
    expect(() => offTypeTrend(counts)).toThrow(ValidRangeError)
  })
})
