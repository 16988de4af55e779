/**
 * Seed to hold back so that enough plants grow, and what a sprouting test really says. Seeds fail independently of each
 * other. Leaves out: ageing in storage, and how many plants a line needs.
 */
import { requireInRange, ValidRangeError } from '../errors.ts'

export interface SeedNeed {
  /** Plants that must grow. [count] Valid: whole, 1 to 20 000. */
  readonly plantsNeededCount: number
  /** Chance that one seed becomes a plant: germination times survival. [fraction] Valid: above 0 to 1. */
  readonly viabilityFraction: number
  /** Chance wanted of reaching the number. [fraction] Valid: 0.5 to 0.9999. */
  readonly confidenceFraction: number
}

const SOURCE = 'clopper-pearson-1934'

/**
 * Chance that at least `k` of `n` seeds grow, each with chance `p`: the exact binomial tail. [fraction]
 *
 * Of 26 seeds at 0.85, at least 20 grow with 0.917; of 27, with 0.960.
 *
 * @throws {ValidRangeError} unless n and k are whole numbers from 0 to 100 000 and 0 <= p <= 1.
 * @source clopper-pearson-1934 (the binomial sum)
 */
export function atLeastFraction(k: number, n: number, p: number): number {
  requireWhole('n', n, 0, 100_000)
  requireWhole('k', k, 0, 100_000)
  requireInRange('p', p, { min: 0, max: 1, unit: 'fraction', source: SOURCE })
  if (k <= 0) return 1
  if (k > n) return 0
  if (p === 0) return 0
  if (p === 1) return 1
  // Sum the tail that holds no peak: its terms only shrink, so nothing overflows and nothing cancels.
  return k > n * p ? tailFrom(k, n, p, +1) : 1 - tailFrom(k - 1, n, p, -1)
}

/** Sum of binomial terms from `k` outward, up (+1) or down (-1). */
function tailFrom(k: number, n: number, p: number, step: 1 | -1): number {
  const first = Math.exp(logTerm(k, n, p))
  let term = first
  let sum = first
  for (let at = k; step > 0 ? at < n : at > 0; at += step) {
    term *= step > 0 ? ((n - at) / (at + 1)) * (p / (1 - p)) : (at / (n - at + 1)) * ((1 - p) / p)
    sum += term
    if (term < sum * 1e-17) break
  }
  return sum
}

function logTerm(k: number, n: number, p: number): number {
  let log = k * Math.log(p) + (n - k) * Math.log1p(-p)
  const few = Math.min(k, n - k)
  for (let i = 1; i <= few; i++) log += Math.log((n - few + i) / i)
  return log
}

/**
 * Fewest seeds to hold back so that `plantsNeededCount` grow, with the stated confidence. [count]
 *
 * 20 plants, viability 0.85, confidence 0.95: 27 seeds; 26 would give only 0.917.
 *
 * @throws {ValidRangeError} outside the ranges named at SeedNeed, or when more than 100 000 seeds would be needed.
 * @source clopper-pearson-1934 (the binomial sum)
 */
export function seedReserveCount({ plantsNeededCount, viabilityFraction, confidenceFraction }: SeedNeed): number {
  requireWhole('plantsNeededCount', plantsNeededCount, 1, 20_000)
  requireInRange('viabilityFraction', viabilityFraction, { min: 1e-6, max: 1, unit: 'fraction', source: SOURCE })
  requireInRange('confidenceFraction', confidenceFraction, { min: 0.5, max: 0.9999, unit: 'fraction', source: SOURCE })
  const isEnough = (n: number) => atLeastFraction(plantsNeededCount, n, viabilityFraction) >= confidenceFraction
  let enough = Math.min(100_000, Math.max(plantsNeededCount, Math.ceil(plantsNeededCount / viabilityFraction)))
  while (!isEnough(enough)) {
    if (enough === 100_000) {
      requireInRange('seedsNeededCount', Number.POSITIVE_INFINITY, {
        min: 1,
        max: 100_000,
        unit: 'seeds',
        source: 'project-rule',
      })
    }
    enough = Math.min(100_000, enough * 2)
  }
  // The chance rises with every seed, so halving finds the first that is enough.
  let tooFew = plantsNeededCount - 1
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2)
    if (isEnough(middle)) enough = middle
    else tooFew = middle
  }
  return enough
}

export interface SproutTest {
  readonly sproutedCount: number
  readonly testedCount: number
}

/**
 * Range of true germination that a sprouting test leaves open, exact two-sided binomial limits. [fraction]
 *
 * 46 of 50, 95 %: 0.808 to 0.978.
 *
 * @param confidenceFraction [fraction] Valid: 0.5 to 0.9999.
 * @throws {ValidRangeError} unless 0 <= sprouted <= tested, whole, and 1 <= tested <= 10 000.
 * @source clopper-pearson-1934
 */
export function germinationRangeFraction(
  { sproutedCount, testedCount }: SproutTest,
  confidenceFraction = 0.95,
): { readonly low: number; readonly high: number } {
  requireWhole('testedCount', testedCount, 1, 10_000)
  requireWhole('sproutedCount', sproutedCount, 0, testedCount)
  requireInRange('confidenceFraction', confidenceFraction, { min: 0.5, max: 0.9999, unit: 'fraction', source: SOURCE })
  const outside = (1 - confidenceFraction) / 2
  return {
    low: sproutedCount === 0 ? 0 : crossing((p) => atLeastFraction(sproutedCount, testedCount, p) - outside),
    high:
      sproutedCount === testedCount
        ? 1
        : crossing((p) => atLeastFraction(sproutedCount + 1, testedCount, p) - (1 - outside)),
  }
}

/** Where a rising function of a fraction crosses zero, to 2^-50. */
function crossing(rising: (p: number) => number): number {
  let low = 0
  let high = 1
  for (let i = 0; i < 50; i++) {
    const middle = (low + high) / 2
    if (rising(middle) < 0) low = middle
    else high = middle
  }
  return (low + high) / 2
}

function requireWhole(argument: string, value: number, min: number, max: number): void {
  requireInRange(argument, value, { min, max, unit: 'count', source: SOURCE })
  if (!Number.isInteger(value))
    throw new ValidRangeError(argument, value, { min, max, unit: 'whole count', source: SOURCE })
}
