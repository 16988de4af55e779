/** What one sprouting test says, in numbers and a sentence, and what to sow after it. Leaves out ageing (seed-life.ts). */
import {
  beliefOfTest,
  type CalcResult,
  ceilCount,
  clopperPearson1934,
  type Reckoned,
  replicateSpread,
  type Sentence,
  seedReserveByBeliefCount,
  seedReserveCount,
  testSizeForWidthCount,
  wilson1927,
} from '@crib/science'
import { nearest, reckon, up } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

export interface SproutCount {
  readonly sproutedCount: number
  readonly testedCount: number
}

/** Why a test cannot be read, or null. Worded for the keeper, with what to do instead. */
export function testFault({ sproutedCount, testedCount }: SproutCount): { code: string; why: Sentence } | null {
  if (testedCount === 0) return { code: 'nothing-tested', why: say('seed:nothing-tested') }
  if (sproutedCount > testedCount) {
    const why = say('seed:more-sprouted', { sprouted: sproutedCount, tested: testedCount })
    return { code: 'more-sprouted-than-tested', why }
  }
  return null
}

export function refusedFor({ code, why }: { code: string; why: Sentence }): CalcResult {
  return { ok: false, refused: code, why: [why], askWhom: [] }
}

/** Range of a test as a sentence: 81 to 98 %. */
export function rangeSentence({ sproutedCount, testedCount }: SproutCount): Sentence {
  const { low, high } = clopperPearson1934({ foundCount: sproutedCount, ofCount: testedCount })
  return say('seed:germination-range', {
    sprouted: sproutedCount,
    tested: testedCount,
    low: Math.round(low * 100),
    high: Math.round(high * 100),
  })
}

export interface GerminationInput extends SproutCount {
  /** Default 0.95. */
  readonly confidenceFraction?: number
  /** Plants wanted, for what to sow. */
  readonly plantsAimCount?: number
  /** Own record: sprouts that reach maturity. [fraction]  Default 1: none lost in the field. */
  readonly maturityFraction?: number
}

/**
 * Germination of a test with exact and Wilson limits, and what to sow after it. [fraction, kernels]
 *
 * 46 of 50: 0.92, exact 0.808 to 0.978.
 *
 * @source clopper-pearson-1934, wilson-1927, jeffreys-1946
 */
export function germinationInterval(input: GerminationInput): CalcResult {
  const fault = testFault(input)
  if (fault) return refusedFor(fault)
  const { sproutedCount, testedCount, confidenceFraction = 0.95, plantsAimCount, maturityFraction = 1 } = input
  const count = { foundCount: sproutedCount, ofCount: testedCount }
  const inputs = { ...input } as unknown as Reckoned['inputs']
  const fraction = (id: string, range: { low: number; high: number }, sourceKeys: string[]) =>
    reckon({
      id,
      value: sproutedCount / testedCount,
      ...range,
      unit: 'Fraction',
      rounding: nearest(0.001),
      basis: 'computed',
      sourceKeys,
      inputs,
    })
  const kernels = (id: string, value: number, basis: Reckoned['basis'], sourceKeys: string[]) =>
    reckon({ id, value, unit: 'Count', rounding: up(1), basis, sourceKeys, inputs })
  const chance = (sproutedCount / testedCount) * maturityFraction
  const sowing =
    plantsAimCount === undefined || sproutedCount === 0
      ? []
      : [
          kernels('sowOnAverageKernels', ceilCount(plantsAimCount / chance), 'project-rule', []),
          kernels(
            'sowKernels',
            seedReserveByBeliefCount({
              plantsNeededCount: plantsAimCount,
              chances: beliefOfTest(input).map((one) => ({ ...one, fraction: one.fraction * maturityFraction })),
              confidenceFraction,
            }),
            'computed',
            ['clopper-pearson-1934', 'jeffreys-1946'],
          ),
        ]
  return {
    ok: true,
    values: [
      fraction('germinationFraction', clopperPearson1934(count, confidenceFraction), ['clopper-pearson-1934']),
      fraction('wilsonFraction', wilson1927(count, confidenceFraction), ['wilson-1927']),
      ...sowing,
    ],
    reasons: [rangeSentence(input), say('seed:sprouted-is-not-strong')],
    warnings: [
      ...(testedCount < 25 ? [say('seed:few-tested', { tested: testedCount })] : []),
      ...(sproutedCount === 0 ? [say('seed:none-sprouted')] : []),
    ],
  }
}

export interface SampleSizeInput {
  readonly likelyFraction: number
  readonly widthFraction: number
  /** Default 0.95. */
  readonly confidenceFraction?: number
}

/** How many to test so that the range is no wider than wanted. [kernels]  @source clopper-pearson-1934 */
export function germinationSampleSize({
  likelyFraction,
  widthFraction,
  confidenceFraction = 0.95,
}: SampleSizeInput): CalcResult {
  const inputs = { likelyFraction, widthFraction, confidenceFraction }
  const tested = testSizeForWidthCount(inputs)
  const found = Math.round(likelyFraction * tested)
  const { low, high } = clopperPearson1934({ foundCount: found, ofCount: tested }, confidenceFraction)
  const common = { basis: 'computed', sourceKeys: ['clopper-pearson-1934'], inputs } as const
  return {
    ok: true,
    values: [
      reckon({ id: 'testedCount', value: tested, unit: 'Count', rounding: up(1), ...common }),
      reckon({
        id: 'rangeIfSo',
        value: found / tested,
        low,
        high,
        unit: 'Fraction',
        rounding: nearest(0.001),
        ...common,
      }),
    ],
    reasons: [
      say('seed:test-so-many', {
        tested,
        width: Math.round(widthFraction * 100),
        likely: { value: likelyFraction, unit: 'Fraction' },
      }),
      say('seed:tests-use-up-seed'),
    ],
    warnings: [],
  }
}

export interface ReplicatesInput {
  readonly replicates: readonly { readonly sproutedCount: number }[]
}

/** Whether the parts of 100 agree. [percentage points]  @source us-7-cfr-201-55 */
export function replicateTolerance({ replicates }: ReplicatesInput): CalcResult {
  if (replicates.length !== 2 && replicates.length !== 4) {
    return refusedFor({ code: 'parts-two-or-four', why: say('seed:parts-two-or-four', { parts: replicates.length }) })
  }
  const parts = replicates.map(({ sproutedCount }) => sproutedCount)
  const { meanPercent, rangePercent, limitPercent } = replicateSpread(parts)
  const common = { unit: 'Count', rounding: nearest(1), sourceKeys: ['us-7-cfr-201-55'], inputs: { parts } } as const
  const values = [
    reckon({ id: 'meanPer100', value: meanPercent, basis: 'computed', ...common }),
    reckon({ id: 'rangePer100', value: rangePercent, basis: 'computed', ...common }),
  ]
  if (limitPercent === null) {
    const why = say('seed:no-row-for-mean', { mean: meanPercent })
    return { ok: true, values, reasons: [], warnings: [why] }
  }
  const gaps = { range: rangePercent, limit: limitPercent, mean: meanPercent }
  return {
    ok: true,
    values: [...values, reckon({ id: 'allowedPer100', value: limitPercent, basis: 'published', ...common })],
    reasons: rangePercent <= limitPercent ? [say('seed:parts-agree', gaps)] : [],
    warnings: rangePercent > limitPercent ? [say('seed:parts-disagree', gaps)] : [],
  }
}

/** Rows of the table on a sprouting-test sheet. [count] */
const RANGE_ROWS = 12

/**
 * What each count of a test would say, from all sprouted down to about half: for the sheet by the towel. [fraction]
 *
 * Of 50: 46 is 0.92, 0.808 to 0.978.
 *
 * @source clopper-pearson-1934
 */
export function germinationRanges(
  testedCount: number,
): readonly { readonly sproutedCount: number; readonly germination: Reckoned }[] {
  const step = Math.max(1, Math.ceil(testedCount / 2 / RANGE_ROWS))
  const counts = Array.from({ length: RANGE_ROWS }, (_, i) => testedCount - i * step).filter((count) => count >= 0)
  return counts.map((sproutedCount) => ({
    sproutedCount,
    germination: germinationOfTest({ sproutedCount, testedCount }),
  }))
}

/**
 * What one test says, to the percent. [fraction]  Needs at least one kernel tested, and no more sprouted than tested.
 *
 * 46 of 50: 0.92, 0.81 to 0.98.
 *
 * @source clopper-pearson-1934
 */
export function germinationOfTest({ sproutedCount, testedCount }: SproutCount): Reckoned {
  return reckon({
    id: 'germinationFraction',
    value: sproutedCount / testedCount,
    ...clopperPearson1934({ foundCount: sproutedCount, ofCount: testedCount }),
    unit: 'Fraction',
    rounding: nearest(0.01),
    basis: 'computed',
    sourceKeys: ['clopper-pearson-1934'],
    inputs: { sproutedCount, testedCount },
  })
}

/** Kernels for a planting when germination is taken as known. [kernels] */
export function kernelsAsTested(
  plantsNeededCount: number,
  viabilityFraction: number,
  confidenceFraction: number,
): number {
  return seedReserveCount({ plantsNeededCount, viabilityFraction, confidenceFraction })
}
