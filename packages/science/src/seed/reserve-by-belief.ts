/**
 * Kernels to hold back when the germination itself is only known as a belief: the confidence then covers both the luck of
 * the season and what the test left open.
 */
import { requireInRange } from '../errors.ts'
import { atLeastFraction, requireWhole } from '../statistics/binomial.ts'
import type { WeightedFraction } from './germination-belief.ts'

/**
 * Chance that at least so many of the kernels sown become plants, over every chance that may be true. [fraction]
 *
 * @throws {ValidRangeError} unless the counts are whole, 0 to 100 000.
 * @source clopper-pearson-1934 (the binomial sum), weighted over the belief
 */
export function plantsReachedFraction(
  plantsNeededCount: number,
  kernelsCount: number,
  chances: readonly WeightedFraction[],
): number {
  return chances.reduce(
    (sum, { fraction, weight }) => sum + weight * atLeastFraction(plantsNeededCount, kernelsCount, fraction),
    0,
  )
}

export interface NeedByBelief {
  /** [count] Valid: whole, 1 to 20 000. */
  readonly plantsNeededCount: number
  /** Chance that one kernel becomes a plant, as far as it is known. */
  readonly chances: readonly WeightedFraction[]
  /** [fraction] Valid: 0.5 to 0.9999. */
  readonly confidenceFraction: number
}

/**
 * Fewest kernels so that the plants are reached with the stated confidence, over everything that may be true. [count]
 *
 * @throws {ValidRangeError} outside those ranges, or where more than 100 000 kernels would be needed.
 * @source clopper-pearson-1934 (the binomial sum), weighted over the belief
 */
export function seedReserveByBeliefCount({ plantsNeededCount, chances, confidenceFraction }: NeedByBelief): number {
  requireWhole('plantsNeededCount', plantsNeededCount, 1, 20_000)
  requireInRange('confidenceFraction', confidenceFraction, {
    min: 0.5,
    max: 0.9999,
    unit: 'fraction',
    source: 'project-rule',
  })
  const isEnough = (kernels: number) => plantsReachedFraction(plantsNeededCount, kernels, chances) >= confidenceFraction
  let tooFew = plantsNeededCount - 1
  let enough = plantsNeededCount
  while (!isEnough(enough)) {
    tooFew = enough
    requireInRange('kernelsNeededCount', enough * 2, { min: 1, max: 100_000, unit: 'kernels', source: 'project-rule' })
    enough *= 2
  }
  while (enough - tooFew > 1) {
    const middle = Math.floor((tooFew + enough) / 2)
    if (isEnough(middle)) enough = middle
    else tooFew = middle
  }
  return enough
}
