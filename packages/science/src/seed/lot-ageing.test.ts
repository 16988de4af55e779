import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { atLeastFraction } from '../statistics/binomial.ts'
import { beliefMeanFraction, beliefOfTest, beliefRangeFraction } from './germination-belief.ts'
import { ageingRateMiddle, germinationAfter, lotAgeing, probitsUntil } from './lot-ageing.ts'
import { plantsReachedFraction, seedReserveByBeliefCount } from './reserve-by-belief.ts'

const table = <const C extends string>(name: string, columns: readonly C[]) =>
  readReferenceTable(new URL(`./${name}`, import.meta.url), columns).rows

describe('what a lot’s own tests say of its ageing', () => {
  const columns = [
    ...(['lost1', 'sprouted1', 'tested1', 'lost2', 'sprouted2', 'tested2'] as const),
    ...(['aheadProbits', 'meanFraction', 'lowFraction', 'highFraction'] as const),
  ]
  test.each(table('lot-ageing.posterior.csv', columns))(
    '$sprouted1 of $tested1, then $sprouted2 of $tested2',
    (row) => {
      const tests = [
        { lostProbits: row.lost1, sproutedCount: row.sprouted1, testedCount: row.tested1 },
        { lostProbits: row.lost2, sproutedCount: row.sprouted2, testedCount: row.tested2 },
      ].filter(({ testedCount }) => testedCount > 0)
      const belief = germinationAfter(lotAgeing({ tests }), row.aheadProbits)
      const { low, high } = beliefRangeFraction(belief, 0.9)
      expect(Math.abs(beliefMeanFraction(belief) - row.meanFraction)).toBeLessThan(0.002)
      expect(Math.abs(low - row.lowFraction)).toBeLessThan(0.004)
      expect(Math.abs(high - row.highFraction)).toBeLessThan(0.004)
    },
  )

  test('a first test that is all there is says what the same test says without ageing', () => {
    const alone = beliefOfTest({ sproutedCount: 46, testedCount: 50 })
    const start = germinationAfter(lotAgeing({ tests: [{ lostProbits: 0, sproutedCount: 46, testedCount: 50 }] }), 0)
    expect(beliefMeanFraction(start)).toBeCloseTo(beliefMeanFraction(alone), 3)
    expect(beliefMeanFraction(alone)).toBeCloseTo(46.5 / 51, 3)
  })

  test('a second test below what was foretold makes the lot a faster ager, one above a slower', () => {
    const second = (sproutedCount: number) =>
      lotAgeing({
        tests: [
          { lostProbits: 0, sproutedCount: 98, testedCount: 100 },
          { lostProbits: 0.5, sproutedCount, testedCount: 100 },
        ],
      })
    expect(ageingRateMiddle(second(75))).toBeGreaterThan(1.2)
    expect(ageingRateMiddle(second(99))).toBeLessThan(0.8)
  })

  test('time goes one way: more loss, less life; a lower end is reached later', () => {
    const ageing = lotAgeing({ startFraction: 0.98, tests: [] })
    fc.assert(
      fc.property(
        fc.double({ min: 0, max: 5, noNaN: true }),
        fc.double({ min: 0.01, max: 5, noNaN: true }),
        (lost, more) => {
          const before = beliefMeanFraction(germinationAfter(ageing, lost))
          expect(beliefMeanFraction(germinationAfter(ageing, lost + more))).toBeLessThanOrEqual(before + 1e-12)
        },
      ),
      { numRuns: 40 },
    )
    const times = probitsUntil(ageing, 0.85, [0.05, 0.5, 0.95])
    expect(times.toSorted((a, b) => a - b)).toEqual(times)
    expect(probitsUntil(ageing, 0.7, [0.5])[0]).toBeGreaterThan(times[1]!)
    // By an independent grid: a start of 2.0537 +- 0.3 probits, less 1.0364, over a rate within 2.5 times either way.
    for (const [i, expected] of [0.3265, 0.9818, 2.726].entries()) {
      expect(Math.abs(times[i]! / expected - 1)).toBeLessThan(0.02)
    }
  })

  test.each([
    [{ sproutedCount: 0, testedCount: 0, lostProbits: 0 }],
    [{ sproutedCount: 51, testedCount: 50, lostProbits: 0 }],
    [{ sproutedCount: 5, testedCount: 50, lostProbits: -1 }],
    [{ sproutedCount: 5, testedCount: 50, lostProbits: Number.NaN }],
  ])('refuses %j', (one) => {
    expect(() => lotAgeing({ tests: [one] })).toThrow(ValidRangeError)
  })
})

describe('a reserve over everything a test leaves open', () => {
  const columns = [
    ...(['plantsNeededCount', 'sproutedCount', 'testedCount', 'survivalFraction'] as const),
    ...(['confidenceFraction', 'kernelsCount'] as const),
  ]
  test.each(table('reserve-by-belief.reference.csv', columns))(
    '$plantsNeededCount plants after $sproutedCount of $testedCount',
    ({ survivalFraction, kernelsCount, ...row }) => {
      const chances = beliefOfTest(row).map((one) => ({ ...one, fraction: one.fraction * survivalFraction }))
      const kernels = seedReserveByBeliefCount({ ...row, chances })
      expect(Math.abs(kernels - kernelsCount)).toBeLessThanOrEqual(Math.max(1, 0.003 * kernelsCount))
    },
  )

  test('is never less than the same germination known for certain', () => {
    const chances = beliefOfTest({ sproutedCount: 46, testedCount: 50 })
    const certain = [{ fraction: beliefMeanFraction(chances), weight: 1 }]
    const need = { plantsNeededCount: 240, confidenceFraction: 0.95 }
    expect(seedReserveByBeliefCount({ ...need, chances })).toBeGreaterThan(
      seedReserveByBeliefCount({ ...need, chances: certain }),
    )
    expect(plantsReachedFraction(240, 300, certain)).toBeCloseTo(atLeastFraction(240, 300, certain[0]!.fraction), 12)
  })
})
