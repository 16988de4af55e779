/** Whether the parts of one germination test agree: the table of the seed-testing rules, and when to grow a lot anew. */
import { requireInRange, ValidRangeError } from '../errors.ts'
import { roundTo } from '../reckoned.ts'
import { requireWhole } from '../statistics/binomial.ts'

/** By the mean, in whole percent from `from` down to `to`: largest range between parts of 100. @source us-7-cfr-201-55 */
const TOLERANCE: readonly {
  readonly from: number
  readonly to: number
  readonly four: number
  readonly two?: number
}[] = [
  { from: 99, to: 99, four: 5 },
  { from: 98, to: 98, four: 6 },
  { from: 97, to: 97, four: 7, two: 6 },
  { from: 96, to: 96, four: 8, two: 6 },
  { from: 95, to: 95, four: 9, two: 7 },
  { from: 94, to: 93, four: 10, two: 8 },
  { from: 92, to: 91, four: 11, two: 9 },
  { from: 90, to: 90, four: 12, two: 9 },
  { from: 89, to: 89, four: 12, two: 10 },
  { from: 88, to: 88, four: 13, two: 10 },
  { from: 87, to: 87, four: 13, two: 11 },
  { from: 86, to: 84, four: 14, two: 11 },
  { from: 83, to: 81, four: 15, two: 12 },
  { from: 80, to: 78, four: 16, two: 13 },
  { from: 77, to: 76, four: 17, two: 13 },
  { from: 75, to: 73, four: 17, two: 14 },
  { from: 72, to: 71, four: 18, two: 14 },
]

export interface ReplicateSpread {
  /** Mean of the parts, rounded to a whole percent as the table is read. */
  readonly meanPercent: number
  /** Largest part less the smallest. [percentage points] */
  readonly rangePercent: number
  /** Null where the table has no row for this mean and number of parts: no limit is then named. */
  readonly limitPercent: number | null
}

/**
 * Spread between the parts of a test and the most the rules allow. [percentage points]
 *
 * 94, 90, 88, 96: mean 92, range 8, allowed 11. 96, 84, 93, 91: mean 91, range 12, over 11: test again.
 *
 * @param sproutedPer100 normal seedlings in each part of 100. Valid: two or four parts, whole, 0 to 100.
 * @throws {ValidRangeError} for another number of parts or counts out of range.
 * @source us-7-cfr-201-55; a mean below 50 is read at its mirror row, as the table prints both
 */
export function replicateSpread(sproutedPer100: readonly number[]): ReplicateSpread {
  const parts = sproutedPer100.length
  if (parts !== 2 && parts !== 4) {
    throw new ValidRangeError('partsCount', parts, {
      min: 2,
      max: 4,
      unit: 'parts, two or four',
      source: 'us-7-cfr-201-55',
    })
  }
  for (const sprouted of sproutedPer100) requireWhole('sproutedCount', sprouted, 0, 100)
  const mean = sproutedPer100.reduce((sum, one) => sum + one, 0) / parts
  const meanPercent = roundTo(mean, { mode: 'nearest', step: 1 })
  const mirrored = meanPercent > 50 ? meanPercent : 101 - meanPercent
  const row = TOLERANCE.find(({ from, to }) => mirrored <= from && mirrored >= to)
  const rangePercent = Math.max(...sproutedPer100) - Math.min(...sproutedPer100)
  return { meanPercent, rangePercent, limitPercent: (parts === 4 ? row?.four : row?.two) ?? null }
}

/**
 * Germination below which a lot should be grown anew: 85 % of its first test, rounded half up. [fraction]  First 97: 82 %.
 *
 * @param firstFraction [fraction] Valid: 0.5 to 1.
 * @throws {ValidRangeError} outside that range.
 * @source rao-2006 table 8.2; every printed row is this rule
 */
export function regrowBelowFraction(firstFraction: number): number {
  requireInRange('firstFraction', firstFraction, { min: 0.5, max: 1, unit: 'fraction', source: 'rao-2006' })
  return Math.floor(85 * firstFraction + 0.5 + 1e-9) / 100
}
