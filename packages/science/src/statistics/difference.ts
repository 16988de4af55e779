/** How far two shares may truly lie apart, by their counts. */
import { type CountOf, type FractionRange, wilson1927 } from './intervals.ts'

/**
 * First share less the second, with limits made of the two score limits. [fraction]
 *
 * 56 of 70 and 48 of 80: 0.20, from 0.0524 to 0.3339.
 *
 * @param confidenceFraction [fraction] Valid: 0.5 to 0.9999.
 * @throws {ValidRangeError} outside the ranges named at CountOf.
 * @source newcombe-1998-difference method 10, with the limits of wilson-1927
 */
export function differenceNewcombe1998(
  first: CountOf,
  second: CountOf,
  confidenceFraction = 0.95,
): FractionRange & { readonly value: number } {
  const one = wilson1927(first, confidenceFraction)
  const two = wilson1927(second, confidenceFraction)
  const p = first.foundCount / first.ofCount
  const q = second.foundCount / second.ofCount
  return {
    value: p - q,
    low: p - q - Math.hypot(p - one.low, two.high - q),
    high: p - q + Math.hypot(one.high - p, q - two.low),
  }
}
