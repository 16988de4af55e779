/**
 * Seed to hold back so that enough plants grow, and what a sprouting test really says. Seeds fail independently of each
 * other. Leaves out: ageing in storage, and how many plants a line needs.
 */
import { requireInRange } from '../errors.ts'
import { atLeastFraction, requireWhole } from '../statistics/binomial.ts'
import { clopperPearson1934 } from '../statistics/intervals.ts'

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
  return clopperPearson1934({ foundCount: sproutedCount, ofCount: testedCount }, confidenceFraction)
}
