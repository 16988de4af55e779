import { describe, expect, test } from 'vitest'
import { readReferenceTable } from '../../testing/reference-table.ts'
import { ValidRangeError } from '../errors.ts'
import { betaCdfFraction, betaQuantile } from './beta.ts'
import { atLeastFraction, betaBinomialAtLeastFraction } from './binomial.ts'
import { differenceNewcombe1998 } from './difference.ts'
import { lnGamma } from './gamma.ts'
import { clopperPearson1934, testSizeForWidthCount, wilson1927 } from './intervals.ts'
import { normalCdfFraction, normalQuantile } from './normal.ts'

const table = <const C extends string>(name: string, columns: readonly C[]) =>
  readReferenceTable(new URL(`./${name}`, import.meta.url), columns).rows
const off = (value: number, reference: number) => Math.abs(value - reference)
const relativelyOff = (value: number, reference: number) => off(value, reference) / Math.abs(reference)

describe('the normal distribution', () => {
  // Reference to 40 digits; the limit is that of doubles carried through an exponential.
  test.each(table('normal.cdf.csv', ['z', 'belowFraction']))('below $z lies $belowFraction', ({ z, belowFraction }) => {
    expect(relativelyOff(normalCdfFraction(z), belowFraction)).toBeLessThan(1e-13)
  })

  test.each(table('normal.quantile.csv', ['belowFraction', 'z']))(
    '$belowFraction lies below $z',
    ({ belowFraction, z }) => {
      expect(off(normalQuantile(belowFraction), z)).toBeLessThan(1e-12)
    },
  )

  test.each([0, 1, -0.1, Number.NaN])('a share of %s has no deviate', (share) => {
    expect(() => normalQuantile(share)).toThrow(ValidRangeError)
  })
})

// Reference to 40 digits. Near 1 and 2 the logarithm passes 0, where only the absolute error means anything.
test.each(table('gamma.log.csv', ['x', 'lnGamma']))('the logarithm of gamma at $x', ({ x, lnGamma: reference }) => {
  expect(off(lnGamma(x), reference)).toBeLessThan(Math.max(2e-14, 1e-13 * Math.abs(reference)))
})

describe('the beta distribution', () => {
  test.each(table('beta.cdf.csv', ['a', 'b', 'x', 'belowFraction']))(
    'of $a and $b: below $x',
    ({ a, b, x, belowFraction }) => {
      expect(relativelyOff(betaCdfFraction(x, { a, b }), belowFraction)).toBeLessThan(1e-10)
    },
  )

  test.each(table('beta.quantile.csv', ['a', 'b', 'belowFraction', 'x']))(
    'of $a and $b: $belowFraction lies below',
    ({ a, b, belowFraction, x }) => {
      expect(relativelyOff(betaQuantile(belowFraction, { a, b }), x)).toBeLessThan(1e-10)
    },
  )

  test('has ends, and refuses a shape of nothing', () => {
    expect([betaCdfFraction(0, { a: 2, b: 3 }), betaCdfFraction(1, { a: 2, b: 3 })]).toEqual([0, 1])
    expect([betaQuantile(0, { a: 2, b: 3 }), betaQuantile(1, { a: 2, b: 3 })]).toEqual([0, 1])
    expect(() => betaCdfFraction(0.5, { a: 0, b: 3 })).toThrow(ValidRangeError)
    expect(() => betaCdfFraction(1.1, { a: 1, b: 3 })).toThrow(ValidRangeError)
  })
})

describe('chances of counts', () => {
  test.each(table('binomial.tail.csv', ['k', 'n', 'p', 'atLeastFraction']))(
    'at least $k of $n at $p',
    ({ k, n, p, atLeastFraction: reference }) => {
      expect(relativelyOff(atLeastFraction(k, n, p), reference)).toBeLessThan(1e-10)
    },
  )

  test.each(table('binomial.beta-tail.csv', ['k', 'n', 'a', 'b', 'atLeastFraction']))(
    'at least $k of $n when the chance is open as beta $a, $b',
    ({ k, n, a, b, atLeastFraction: reference }) => {
      expect(relativelyOff(betaBinomialAtLeastFraction(k, n, { a, b }), reference)).toBeLessThan(1e-9)
    },
  )
})

describe('limits of a share', () => {
  const grid = [
    'foundCount',
    'ofCount',
    'confidenceFraction',
    'exactLow',
    'exactHigh',
    'wilsonLow',
    'wilsonHigh',
  ] as const
  test.each(table('intervals.grid.csv', grid))('$foundCount of $ofCount at $confidenceFraction', (row) => {
    const exact = clopperPearson1934(row, row.confidenceFraction)
    const score = wilson1927(row, row.confidenceFraction)
    expect(off(exact.low, row.exactLow)).toBeLessThan(1e-9)
    expect(off(exact.high, row.exactHigh)).toBeLessThan(1e-9)
    expect(off(score.low, row.wilsonLow)).toBeLessThan(1e-9)
    expect(off(score.high, row.wilsonHigh)).toBeLessThan(1e-9)
  })

  test.each(table('intervals.printed.csv', ['foundCount', 'ofCount', 'exactLow', 'exactHigh']))(
    'gives the printed limits of $foundCount of $ofCount',
    (row) => {
      const { low, high } = clopperPearson1934(row)
      expect(off(low, row.exactLow)).toBeLessThan(0.0005)
      expect(off(high, row.exactHigh)).toBeLessThan(0.0005)
    },
  )

  const newcombe = ['foundCount', 'ofCount', 'exactLow', 'exactHigh', 'wilsonLow', 'wilsonHigh'] as const
  test.each(table('intervals.newcombe.csv', newcombe))(
    'gives the limits once printed for $foundCount of $ofCount',
    (row) => {
      const exact = clopperPearson1934(row)
      const score = wilson1927(row)
      expect(off(exact.low, row.exactLow)).toBeLessThan(0.00005)
      expect(off(exact.high, row.exactHigh)).toBeLessThan(0.00005)
      expect(off(score.low, row.wilsonLow)).toBeLessThan(0.00005)
      expect(off(score.high, row.wilsonHigh)).toBeLessThan(0.00005)
    },
  )

  test.each([
    [0, 0],
    [11, 10],
    [-1, 10],
    [1.5, 10],
  ])('refuses %s of %s', (foundCount, ofCount) => {
    expect(() => clopperPearson1934({ foundCount, ofCount })).toThrow(ValidRangeError)
    expect(() => wilson1927({ foundCount, ofCount })).toThrow(ValidRangeError)
  })
})

describe('limits of a difference', () => {
  const counts = ['firstFound', 'firstOf', 'secondFound', 'secondOf'] as const
  const between = (row: { readonly [C in (typeof counts)[number]]: number }, confidenceFraction?: number) =>
    differenceNewcombe1998(
      { foundCount: row.firstFound, ofCount: row.firstOf },
      { foundCount: row.secondFound, ofCount: row.secondOf },
      confidenceFraction,
    )

  test.each(table('difference.grid.csv', [...counts, 'confidenceFraction', 'low', 'high']))(
    '$firstFound of $firstOf less $secondFound of $secondOf at $confidenceFraction',
    (row) => {
      const { low, high } = between(row, row.confidenceFraction)
      expect(off(low, row.low)).toBeLessThan(1e-9)
      expect(off(high, row.high)).toBeLessThan(1e-9)
    },
  )

  test.each(table('difference.published.csv', [...counts, 'low', 'high']))(
    'as once printed for $firstFound of $firstOf and $secondFound of $secondOf',
    (row) => {
      const { value, low, high } = between(row)
      expect(value).toBeCloseTo(0.2, 12)
      expect(off(low, row.low)).toBeLessThan(0.00005)
      expect(off(high, row.high)).toBeLessThan(0.00005)
    },
  )

  test('refuses more found than there were', () => {
    const fine = { foundCount: 1, ofCount: 2 }
    expect(() => differenceNewcombe1998(fine, { foundCount: 3, ofCount: 2 })).toThrow(ValidRangeError)
  })
})

describe('how many to test', () => {
  const columns = ['likelyFraction', 'widthFraction', 'confidenceFraction', 'testCount'] as const
  test.each(table('intervals.test-size.csv', columns))(
    '$testCount for $widthFraction wide at $likelyFraction, $confidenceFraction',
    ({ testCount, ...wanted }) => {
      expect(testSizeForWidthCount(wanted)).toBe(testCount)
    },
  )

  test('refuses a range narrower than one point', () => {
    expect(() => testSizeForWidthCount({ likelyFraction: 0.9, widthFraction: 0.005 })).toThrow(ValidRangeError)
  })
})
