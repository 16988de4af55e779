/**
 * Whether two sprouting tests of one lot agree, and whether one test asks for another. The seed-testing rules print limits
 * for two tests of 400; for any other size the range of the difference stands in, named as what it is. Leaves out: parts of
 * one test (replicate-tolerance.ts), and what years in store took between two tests (lot-ageing.ts).
 */
import { ValidRangeError } from '../errors.ts'
import { roundTo } from '../reckoned.ts'
import { requireWhole } from '../statistics/binomial.ts'

/** Kernels of a test the rules' table is printed for. */
export const RULE_TEST_COUNT = 400

/** By the mean of both, in whole percent: largest difference between two tests of 400. @source la-admin-7-xiii-139 */
const LARGEST_DIFFERENCE: readonly { readonly from: number; readonly to: number; readonly limit: number }[] = [
  { from: 99, to: 99, limit: 2 },
  { from: 98, to: 97, limit: 3 },
  { from: 96, to: 94, limit: 4 },
  { from: 93, to: 91, limit: 5 },
  { from: 90, to: 87, limit: 6 },
  { from: 86, to: 82, limit: 7 },
  { from: 81, to: 76, limit: 8 },
  { from: 75, to: 70, limit: 9 },
  { from: 69, to: 60, limit: 10 },
  { from: 59, to: 51, limit: 11 },
]

export interface TwoTestsGap {
  /** Mean of both, rounded to a whole percent as the table is read. */
  readonly meanPercent: number
  /** [percentage points] */
  readonly gapPercent: number
  /** Null where the table has no row for this mean. */
  readonly limitPercent: number | null
}

/**
 * How far two tests of 400 lie apart, and the most the rules allow. [percentage points]
 *
 * 95 and 92 %: mean 93.5, read at 94, allowed 4: they agree.
 *
 * @param sproutedOf400 normal seedlings of each. Valid: whole, 0 to 400.
 * @throws {ValidRangeError} outside that range.
 * @source la-admin-7-xiii-139; a mean of 50 or below is read at its mirror row, as the table prints both
 */
export function twoTestsGap(sproutedOf400: readonly [number, number]): TwoTestsGap {
  for (const sprouted of sproutedOf400) requireWhole('sproutedCount', sprouted, 0, RULE_TEST_COUNT)
  const [first, second] = sproutedOf400
  const meanPercent = roundTo((first + second) / 8, { mode: 'nearest', step: 1 })
  const mirrored = meanPercent > 50 ? meanPercent : 101 - meanPercent
  const row = LARGEST_DIFFERENCE.find(({ from, to }) => mirrored <= from && mirrored >= to)
  return { meanPercent, gapPercent: Math.abs(first - second) / 4, limitPercent: row?.limit ?? null }
}

/** What the flowchart says after a group of 40, or two, for lots that are to stay above 85 %. @source rao-2006 flowchart 8.1 */
const FLOWCHART = {
  40: { growOutUpToCount: 29, keepFromCount: null },
  80: { growOutUpToCount: 64, keepFromCount: 76 },
} as const

export interface SequentialStep {
  readonly step: 'grow-out' | 'test-more' | 'keep'
  readonly growOutUpToCount: number
  /** Null after the first group: one group of 40 is never enough to keep by. */
  readonly keepFromCount: number | null
}

/**
 * Test a few, then more only where it is not yet clear: what genebanks do after 40 kernels, and after 80 in all.
 *
 * 31 of 40: test 40 more. 64 of 80: grow the lot anew. 76 of 80: keep it.
 *
 * @param testedCount Valid: 40 or 80; the rows beyond were not read.
 * @throws {ValidRangeError} for another number tested, or more sprouted than tested.
 * @source rao-2006 flowchart 8.1, standard of 85 %
 */
export function sequentialStep(sproutedCount: number, testedCount: number): SequentialStep {
  if (testedCount !== 40 && testedCount !== 80) {
    const range = { min: 40, max: 80, unit: 'kernels, 40 or 80', source: 'rao-2006' } as const
    throw new ValidRangeError('testedCount', testedCount, range)
  }
  requireWhole('sproutedCount', sproutedCount, 0, testedCount)
  const row = FLOWCHART[testedCount]
  const isKept = row.keepFromCount !== null && sproutedCount >= row.keepFromCount
  return { step: sproutedCount <= row.growOutUpToCount ? 'grow-out' : isKept ? 'keep' : 'test-more', ...row }
}
