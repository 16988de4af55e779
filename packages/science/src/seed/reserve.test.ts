import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { ValidRangeError } from '../errors.ts'
import { atLeastFraction } from '../statistics/binomial.ts'
import { germinationRangeFraction, seedReserveCount } from './reserve.ts'

describe('seed to hold back', () => {
  // The worked example of the house style, and scenario S1's chosen-confidence line (0.92 x 0.80 and 0.85 x 0.80).
  test.each([
    [20, 0.85, 27],
    [240, 0.736, 344],
    [240, 0.68, 375],
  ])('%s plants at %s need %s seeds at 95 %%', (plantsNeededCount, viabilityFraction, seeds) => {
    expect(seedReserveCount({ plantsNeededCount, viabilityFraction, confidenceFraction: 0.95 })).toBe(seeds)
  })

  test('26 seeds for 20 plants would give only 0.917', () => {
    expect(atLeastFraction(20, 26, 0.85)).toBeCloseTo(0.917, 3)
  })

  test('small tails agree with arithmetic by hand', () => {
    expect(atLeastFraction(2, 3, 0.5)).toBeCloseTo(0.5, 14) // (3 + 1) / 8
    expect(atLeastFraction(1, 2, 0.9)).toBeCloseTo(0.99, 14) // 1 - 0.1^2
    expect(atLeastFraction(3, 3, 0.2)).toBeCloseTo(0.008, 14)
  })

  test('one seed less is never enough', () => {
    const need = fc.record({
      plantsNeededCount: fc.integer({ min: 1, max: 400 }),
      viabilityFraction: fc.double({ min: 0.05, max: 0.999, noNaN: true }),
      confidenceFraction: fc.double({ min: 0.5, max: 0.999, noNaN: true }),
    })
    fc.assert(
      fc.property(need, (n) => {
        const seeds = seedReserveCount(n)
        expect(atLeastFraction(n.plantsNeededCount, seeds, n.viabilityFraction)).toBeGreaterThanOrEqual(
          n.confidenceFraction,
        )
        if (seeds > n.plantsNeededCount) {
          expect(atLeastFraction(n.plantsNeededCount, seeds - 1, n.viabilityFraction)).toBeLessThan(
            n.confidenceFraction,
          )
        }
      }),
    )
  })

  test('both ways of summing agree: what grows and what fails make one', () => {
    fc.assert(
      fc.property(
        fc.integer({ min: 1, max: 2000 }),
        fc.nat(2000),
        fc.double({ min: 0.01, max: 0.99, noNaN: true }),
        (n, k, p) => {
          const atLeast = atLeastFraction(Math.min(k, n), n, p)
          const failuresAtLeast = atLeastFraction(n - Math.min(k, n) + 1, n, 1 - p)
          expect(atLeast + failuresAtLeast).toBeCloseTo(1, 9)
        },
      ),
    )
  })

  test.each([0, 1.5, Number.NaN, 20_001])('refuses %s plants', (plantsNeededCount) => {
    expect(() => seedReserveCount({ plantsNeededCount, viabilityFraction: 0.9, confidenceFraction: 0.95 })).toThrow(
      ValidRangeError,
    )
  })

  test('refuses seed that would need more than 100 000', () => {
    expect(() =>
      seedReserveCount({ plantsNeededCount: 20_000, viabilityFraction: 0.01, confidenceFraction: 0.95 }),
    ).toThrow(ValidRangeError)
  })
})

describe('what a sprouting test says', () => {
  test('46 of 50 leaves about 81 to 98 % open', () => {
    // scenario S1, working 1: "about 81-98 %"
    const { low, high } = germinationRangeFraction({ sproutedCount: 46, testedCount: 50 })
    expect(Math.round(low * 100)).toBe(81)
    expect(Math.round(high * 100)).toBe(98)
  })

  test('none and all reach the ends, by the closed form of n seeds', () => {
    expect(germinationRangeFraction({ sproutedCount: 0, testedCount: 10 })).toEqual({
      low: 0,
      high: expect.closeTo(1 - 0.025 ** 0.1, 12),
    })
    expect(germinationRangeFraction({ sproutedCount: 10, testedCount: 10 })).toEqual({
      low: expect.closeTo(0.025 ** 0.1, 12),
      high: 1,
    })
  })

  test.each([
    [11, 10],
    [-1, 10],
    [1, 0],
  ])('refuses %s of %s', (sproutedCount, testedCount) => {
    expect(() => germinationRangeFraction({ sproutedCount, testedCount })).toThrow(ValidRangeError)
  })
})
