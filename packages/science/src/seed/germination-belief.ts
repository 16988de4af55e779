/**
 * What is known of a germination: not one number but shares that may be true, each with its weight. Leaves out ageing
 * (lot-ageing.ts) and what a sowing needs (reserve-by-belief.ts).
 */
import { requireInRange } from '../errors.ts'
import { betaQuantile } from '../statistics/beta.ts'
import { requireWhole } from '../statistics/binomial.ts'
import type { FractionRange } from '../statistics/intervals.ts'
import type { SproutTest } from './reserve.ts'

export interface WeightedFraction {
  /** Share that may be true. [fraction] */
  readonly fraction: number
  /** The weights of one belief make 1. */
  readonly weight: number
}

/** In rising order of `fraction`. */
export type GerminationBelief = readonly WeightedFraction[]

/** Points a belief is thinned to: twice as many move no reserve of a household by a kernel. */
const POINTS = 200

/**
 * What one test leaves open, with nothing assumed before it (Jeffreys' prior): 200 shares of equal weight. [fraction]
 *
 * 46 of 50: nine in ten between 0.839 and 0.966.
 *
 * @throws {ValidRangeError} unless 0 <= sprouted <= tested, whole, and 1 <= tested <= 10 000.
 * @source jeffreys-1946
 */
export function beliefOfTest({ sproutedCount, testedCount }: SproutTest): GerminationBelief {
  requireWhole('testedCount', testedCount, 1, 10_000)
  requireWhole('sproutedCount', sproutedCount, 0, testedCount)
  const shape = { a: sproutedCount + 0.5, b: testedCount - sproutedCount + 0.5 }
  return Array.from({ length: POINTS }, (_, i) => ({
    fraction: betaQuantile((i + 0.5) / POINTS, shape),
    weight: 1 / POINTS,
  }))
}

/** Mean of a belief: the chance that the next kernel sprouts. [fraction]  @source none: the mean of a distribution */
export function beliefMeanFraction(belief: GerminationBelief): number {
  return belief.reduce((sum, { fraction, weight }) => sum + fraction * weight, 0)
}

/**
 * Span that holds the middle of a belief. [fraction]
 *
 * @param shareFraction how much of it. [fraction] Valid: 0.5 to 0.99.
 * @throws {ValidRangeError} outside that range.
 * @source none: quantiles of a distribution
 */
export function beliefRangeFraction(belief: GerminationBelief, shareFraction = 0.9): FractionRange {
  requireInRange('shareFraction', shareFraction, { min: 0.5, max: 0.99, unit: 'fraction', source: 'project-rule' })
  const outside = (1 - shareFraction) / 2
  return { low: beliefQuantileFraction(belief, outside), high: beliefQuantileFraction(belief, 1 - outside) }
}

/** Share below which so much of a belief lies. [fraction]  @source none: a quantile, drawn straight between points */
export function beliefQuantileFraction(belief: GerminationBelief, shareFraction: number): number {
  let below = 0
  let last: { at: number; fraction: number } | null = null
  for (const { fraction, weight } of belief) {
    const at = below + weight / 2
    if (at >= shareFraction) {
      if (!last) return fraction
      return last.fraction + ((fraction - last.fraction) * (shareFraction - last.at)) / (at - last.at)
    }
    last = { at, fraction }
    below += weight
  }
  return last?.fraction ?? Number.NaN
}

/** The same belief in at most 200 points: neighbours are merged to their mean, so that the mean stays as it was. */
export function thinBelief(points: readonly WeightedFraction[]): GerminationBelief {
  const whole = points.reduce((sum, { weight }) => sum + weight, 0)
  const thinned: { fraction: number; weight: number }[] = []
  let below = 0
  let bin = -1
  for (const { fraction, weight } of points.toSorted((a, b) => a.fraction - b.fraction)) {
    const share = weight / whole
    const wanted = Math.min(POINTS - 1, Math.floor((below + share / 2) * POINTS))
    const last = thinned.at(-1)
    if (last && wanted === bin) {
      last.fraction = (last.fraction * last.weight + fraction * share) / (last.weight + share || 1)
      last.weight += share
    } else thinned.push({ fraction, weight: share })
    bin = wanted
    below += share
  }
  return thinned
}
