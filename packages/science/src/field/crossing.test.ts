import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { BALTAZAR_2015_MEANS, crossingAtDistance, crossingTogetherFraction } from './crossing.ts'

const means = readReferenceTable(new URL('./crossing.baltazar-2015.csv', import.meta.url), ['distanceM', 'percent'])
const studies = readReferenceTable(new URL('./crossing.studies.csv', import.meta.url), [
  'distanceM',
  'lowPercent',
  'highPercent',
])

describe('crossing by distance', () => {
  test('rests on the line through the logarithms of the eight published means', () => {
    expect(BALTAZAR_2015_MEANS).toEqual(means.rows)
    const points = means.rows.map(({ distanceM, percent }) => [Math.log(distanceM), Math.log(percent)] as const)
    const mean = (at: 0 | 1) => points.reduce((sum, point) => sum + point[at], 0) / points.length
    const x = mean(0)
    const y = mean(1)
    const over = points.reduce((sum, point) => sum + (point[0] - x) * (point[1] - y), 0)
    const slope = over / points.reduce((sum, point) => sum + (point[0] - x) ** 2, 0)
    expect(slope).toBeCloseTo(-0.973, 3)
    expect(Math.exp(y - slope * x)).toBeCloseTo(10.92, 2)
    for (const d of [1, 3, 25]) expect(crossingAtDistance(d).value).toBeCloseTo(0.1092 * d ** -0.973, 12)
  })

  test.each(means.rows)('holds the mean measured at $distanceM m in its band', ({ distanceM, percent }) => {
    const { low, high, isOnMeans } = crossingAtDistance(distanceM)
    expect(isOnMeans).toBe(true)
    expect(percent).toBeGreaterThanOrEqual(100 * low)
    expect(percent).toBeLessThanOrEqual(100 * high)
  })

  test.each(studies.rows)(
    'holds what other studies found at $distanceM m',
    ({ distanceM, lowPercent, highPercent }) => {
      const { low, high } = crossingAtDistance(distanceM)
      expect(lowPercent).toBeGreaterThanOrEqual(100 * low - 1e-9)
      expect(highPercent).toBeLessThanOrEqual(100 * high + 1e-9)
    },
  )

  test('gives 1.4 to 1.5 % at 8 m, where 1.4 % was measured', () => {
    expect(100 * crossingAtDistance(8).value).toBeGreaterThan(1.4)
    expect(100 * crossingAtDistance(8).value).toBeLessThan(1.5)
  })

  test('falls with distance, stays inside its band, and never promises that nothing crosses', () => {
    fc.assert(
      fc.property(fc.double({ min: 1, max: 3199, noNaN: true }), (distanceM) => {
        const { value, low, high } = crossingAtDistance(distanceM)
        const farther = crossingAtDistance(distanceM + 1)
        expect(low).toBeGreaterThanOrEqual(0)
        expect(low).toBeLessThanOrEqual(value)
        expect(value).toBeLessThan(high)
        expect(high).toBeGreaterThan(0)
        expect(farther.value).toBeLessThan(value)
        expect(farther.low).toBeLessThanOrEqual(low + 1e-12)
        expect(farther.high).toBeLessThanOrEqual(high + 1e-12)
      }),
    )
  })

  test.each([0, 0.5, -3, 3201, Number.NaN])('refuses %s m, where nothing was measured', (distanceM) => {
    expect(() => crossingAtDistance(distanceM)).toThrow(ValidRangeError)
  })
})

test('two neighbours together cross what either would', () => {
  expect(crossingTogetherFraction([])).toBe(0)
  expect(crossingTogetherFraction([0.01, 0.02])).toBeCloseTo(0.0298, 12)
  expect(() => crossingTogetherFraction([1.2])).toThrow(ValidRangeError)
})
