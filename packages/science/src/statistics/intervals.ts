/** Two-sided limits of a share by a count: exact, and Wilson's. Rival functions, named by author and year. */
import { requireInRange } from '../errors.ts'
import { betaQuantile } from './beta.ts'
import { requireWhole } from './binomial.ts'
import { normalQuantile } from './normal.ts'

const SOURCE = 'clopper-pearson-1934'

export interface CountOf {
  /** [count] Valid: whole, 0 to `ofCount`. */
  readonly foundCount: number
  /** [count] Valid: whole, 1 to 100 000. */
  readonly ofCount: number
}

export interface FractionRange {
  readonly low: number
  readonly high: number
}

function requireCount({ foundCount, ofCount }: CountOf, confidenceFraction: number): void {
  requireWhole('ofCount', ofCount, 1, 100_000)
  requireWhole('foundCount', foundCount, 0, ofCount)
  requireInRange('confidenceFraction', confidenceFraction, { min: 0.5, max: 0.9999, unit: 'fraction', source: SOURCE })
}

/**
 * Exact limits: no true share between them is contradicted by the count. [fraction]  8 of 10, 95 %: 0.4439 to 0.9748.
 *
 * @param confidenceFraction [fraction] Valid: 0.5 to 0.9999.
 * @throws {ValidRangeError} outside the ranges named at CountOf.
 * @source clopper-pearson-1934
 */
export function clopperPearson1934(count: CountOf, confidenceFraction = 0.95): FractionRange {
  requireCount(count, confidenceFraction)
  return exactLimits(count, confidenceFraction)
}

function exactLimits({ foundCount, ofCount }: CountOf, confidenceFraction: number): FractionRange {
  const outside = (1 - confidenceFraction) / 2
  return {
    low: foundCount === 0 ? 0 : betaQuantile(outside, { a: foundCount, b: ofCount - foundCount + 1 }),
    high: foundCount === ofCount ? 1 : betaQuantile(1 - outside, { a: foundCount + 1, b: ofCount - foundCount }),
  }
}

/**
 * Score limits: narrower than the exact ones, right on average rather than always. [fraction]  8 of 10: 0.4902 to 0.9433.
 *
 * @param confidenceFraction [fraction] Valid: 0.5 to 0.9999.
 * @throws {ValidRangeError} outside the ranges named at CountOf.
 * @source wilson-1927
 */
export function wilson1927(count: CountOf, confidenceFraction = 0.95): FractionRange {
  requireCount(count, confidenceFraction)
  const { foundCount, ofCount: n } = count
  const z = normalQuantile(1 - (1 - confidenceFraction) / 2)
  const p = foundCount / n
  const middle = p + z ** 2 / (2 * n)
  const half = z * Math.sqrt((p * (1 - p)) / n + z ** 2 / (4 * n ** 2))
  const whole = 1 + z ** 2 / n
  return {
    low: foundCount === 0 ? 0 : (middle - half) / whole,
    high: foundCount === n ? 1 : (middle + half) / whole,
  }
}

export interface WidthWanted {
  /** Share that is thought likely. [fraction] Valid: 0 to 1. */
  readonly likelyFraction: number
  /** Width of the range wanted, high less low. [fraction] Valid: 0.01 to 0.9. */
  readonly widthFraction: number
  /** [fraction] Valid: 0.5 to 0.9999.  Default 0.95. */
  readonly confidenceFraction?: number
}

/**
 * Fewest to test so that the exact limits lie no further apart than wanted, if the likely share comes out. [count]
 *
 * At 90 % likely and a range 12 points wide: 111 kernels at 95 %.
 *
 * @throws {ValidRangeError} outside the ranges named at WidthWanted, or where more than 100 000 would be needed.
 * @source clopper-pearson-1934; the count is worked with as a share of n, so that a longer test is never wider
 */
export function testSizeForWidthCount(wanted: WidthWanted): number {
  const { likelyFraction, widthFraction, confidenceFraction = 0.95 } = wanted
  requireInRange('likelyFraction', likelyFraction, { min: 0, max: 1, unit: 'fraction', source: SOURCE })
  requireInRange('widthFraction', widthFraction, { min: 0.01, max: 0.9, unit: 'fraction', source: 'project-rule' })
  requireInRange('confidenceFraction', confidenceFraction, { min: 0.5, max: 0.9999, unit: 'fraction', source: SOURCE })
  const widthOf = (n: number): number => {
    const { low, high } = exactLimits({ foundCount: n * likelyFraction, ofCount: n }, confidenceFraction)
    return high - low
  }
  let tooFew = 0
  let enough = 1
  while (widthOf(enough) > widthFraction) {
    tooFew = enough
    enough = enough * 2
    requireInRange('testSizeCount', enough, { min: 1, max: 200_000, unit: 'kernels', source: 'project-rule' })
  }
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2)
    if (widthOf(middle) > widthFraction) tooFew = middle
    else enough = middle
  }
  return enough
}
