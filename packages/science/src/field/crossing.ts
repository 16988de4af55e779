/**
 * Crossing by other corn's pollen against distance: one published set of means with a curve through it, and a band from
 * several studies, wide because they differ. Says nothing of a purity. Leaves out wind, hills, and how much pollen each
 * stand sheds: a small stand beside a large one lies at the high end of the band.
 */
import { requireInRange } from '../errors.ts'

/** Mean share of kernels crossed, eight sites, yellow onto white.  baltazar-2015 */
export const BALTAZAR_2015_MEANS = [
  { distanceM: 1, percent: 12.9 },
  { distanceM: 2, percent: 4.6 },
  { distanceM: 4, percent: 2.7 },
  { distanceM: 8, percent: 1.4 },
  { distanceM: 12, percent: 1 },
  { distanceM: 16, percent: 0.9 },
  { distanceM: 20, percent: 0.5 },
  { distanceM: 25, percent: 0.5 },
] as const

/** Straight line through the logarithms of those means; 10.92 % at one metre. crossing.test.ts fits it again. */
const FIT = { atOneMFraction: 0.1092, slope: -0.973 } as const

/**
 * Highest crossing that any study seen allows at a distance: beside it with own pollen (goggi-2007), 10 m
 * (philippines-crossing-2003), 100 m in one year (jemison-vayda-2001), worst case of a model for 1 % and 0.1 %
 * (china-isolation-model); beyond, held, since crossing was seen at nearly two miles (usda-bpi-184-1911).
 */
const HIGHEST = [
  { m: 1, fraction: 0.301 },
  { m: 10, fraction: 0.0348 },
  { m: 100, fraction: 0.014 },
  { m: 187, fraction: 0.01 },
  { m: 548, fraction: 0.001 },
  { m: 3200, fraction: 0.001 },
] as const

/** Lowest: goggi-2007 at 35 and 100 m, matsuo-2004 at 50 m, none found at 160 m (philippines-crossing-2003). */
const LOWEST = [
  { m: 25, fraction: 0.005 },
  { m: 35, fraction: 0.004 },
  { m: 50, fraction: 0.001 },
  { m: 100, fraction: 0.0003 },
] as const
const NONE_FOUND_M = 160

/** Means of different studies at one distance lie about this far apart, either way.  Project rule, from the table. */
const STUDIES_DIFFER_BY = 2

/** Nearest and farthest distance anything was measured at. [m] */
export const CROSSING_DISTANCE_M = { min: 1, max: 3200 } as const
/** Within these the curve rests on its own means. [m] */
export const CURVE_DISTANCE_M = { min: 1, max: 25 } as const

export interface CrossingBand {
  /** On the curve. [fraction of kernels] */
  readonly value: number
  readonly low: number
  readonly high: number
  /** False beyond 25 m, where the curve is only carried on and the band is what counts. */
  readonly isOnMeans: boolean
}

/**
 * Share of kernels crossed by other corn shedding at the same time, with the band the studies leave. [fraction]
 *
 * 0.1092 d^-0.973. At 8 m 0.0144, where 0.014 was measured; at 100 m 0.0012, between 0.0003 and 0.014.
 *
 * @param distanceM from the seed plants to the nearest of the other corn. [m] Valid: 1 to 3200.
 * @throws {ValidRangeError} outside that range: side by side is no distance, and farther nothing was measured.
 * @source baltazar-2015 for the means; the band from goggi-2007 and the others named above
 */
export function crossingAtDistance(distanceM: number): CrossingBand {
  requireInRange('distanceM', distanceM, { ...CROSSING_DISTANCE_M, unit: 'm', source: 'baltazar-2015' })
  const value = FIT.atOneMFraction * distanceM ** FIT.slope
  const high = Math.max(logLine(HIGHEST, distanceM), Math.min(1, value * STUDIES_DIFFER_BY))
  return { value, low: lowest(distanceM, value), high, isOnMeans: distanceM <= CURVE_DISTANCE_M.max }
}

function lowest(distanceM: number, value: number): number {
  const half = value / STUDIES_DIFFER_BY
  const last = LOWEST.at(-1)!
  if (distanceM <= LOWEST[0].m) return half
  if (distanceM <= last.m) return Math.min(half, logLine(LOWEST, distanceM))
  return last.fraction * Math.max(0, (NONE_FOUND_M - distanceM) / (NONE_FOUND_M - last.m))
}

/** Straight between points on logarithms of both. */
function logLine(points: readonly { readonly m: number; readonly fraction: number }[], m: number): number {
  const after = points.findIndex((point) => point.m >= m)
  const to = points[after]!
  if (to.m === m || after === 0) return to.fraction
  const from = points[after - 1]!
  const share = Math.log(m / from.m) / Math.log(to.m / from.m)
  return from.fraction * (to.fraction / from.fraction) ** share
}

/**
 * Crossing from several other corns together: 1 - product of what each leaves. [fraction]  0.01 and 0.02: 0.0298.
 *
 * @param shares each 0 to 1. [fraction]
 * @throws {ValidRangeError} when one is not.
 * @source none: shares of kernels that no other pollen reached multiply
 */
export function crossingTogetherFraction(shares: readonly number[]): number {
  return (
    1 -
    shares.reduce((left, share) => {
      requireInRange('share', share, { min: 0, max: 1, unit: 'fraction', source: 'project-rule' })
      return left * (1 - share)
    }, 1)
  )
}
