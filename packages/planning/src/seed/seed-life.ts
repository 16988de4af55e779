/**
 * Germination of a lot over the years to come, with its band: the viability equation, moved by the lot's own tests.
 * Leaves out: what the store should be (seed-what-if.ts).
 */
import {
  ageingRateMiddle,
  beliefMeanFraction,
  beliefRangeFraction,
  type CalcResult,
  FRESH_FRACTION,
  germinationAfter,
  type LotAgeing,
  lotAgeing,
  moistureFloorWetFraction,
  normalCdfFraction,
  normalQuantile,
  probitsUntil,
  type Reckoned,
  type Sentence,
} from '@crib/science'
import { down, nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { refusedFor, type SproutCount, testFault } from './germination.ts'
import {
  conditionsOf,
  daysForProbits,
  isStoreKnown,
  laterConstantsRatio,
  probitsInDays,
  type SeedStore,
  storeFault,
} from './seed-store.ts'

export const LIFE_KEYS = [
  'ellis-roberts-1980',
  'hong-1996',
  'dickie-1990',
  'ellis-hong-roberts-1989',
  'jeffreys-1946',
  'tang-2000',
  'guzzon-2021',
] as const
const DAYS_PER_YEAR = 365.25
/** Above it ice forms in the kernel.  @source ehuf-473 */
const FROZEN_SEED_WET_FRACTION = 0.14
/** Longest wait for a test, whatever the equation says. Project rule. [days] */
export const RETEST_AT_MOST_DAYS = 365

export interface StoredTest extends SproutCount {
  /** Days in store before the test. */
  readonly afterDays: number
}

export interface SeedLifeInput extends SeedStore {
  /** Days in store up to today. */
  readonly storedDays: number
  /** Germination when put by; stands only while there is no test. [fraction] */
  readonly startFraction?: number
  readonly tests?: readonly StoredTest[]
  readonly yearsAheadCount: number
  /** Germination to stay above. [fraction]  Default 0.85. */
  readonly keepAboveFraction?: number
}

export const KEEP_ABOVE_FRACTION = 0.85

/** What is known of the lot's ageing, from its tests in this store. */
export function ageingOf({
  startFraction,
  tests = [],
  ...store
}: Omit<SeedLifeInput, 'storedDays' | 'yearsAheadCount'>): LotAgeing {
  return lotAgeing({
    ...(startFraction !== undefined && { startFraction }),
    tests: tests.map(({ afterDays, sproutedCount, testedCount }) => ({
      sproutedCount,
      testedCount,
      lostProbits: probitsInDays(store, afterDays),
    })),
  })
}

function lifeFault(input: SeedLifeInput): { code: string; why: Sentence } | null {
  if (!isStoreKnown(input)) return { code: 'store-unknown', why: say('seed:store-unknown') }
  const fault = storeFault(input)
  if (fault) return fault
  for (const test of input.tests ?? []) {
    const wrong = testFault(test)
    if (wrong) return wrong
    if (test.afterDays > input.storedDays) {
      const why = say('seed:test-after-today', { after: test.afterDays, stored: input.storedDays })
      return { code: 'test-after-today', why }
    }
  }
  return null
}

/**
 * Germination now and year by year, with the band that holds nine lots in ten, beside the equation alone. [fraction, years]
 *
 * @source ellis-roberts-1980, jeffreys-1946
 */
export function seedLife(input: SeedLifeInput): CalcResult {
  const fault = lifeFault(input)
  if (fault) return refusedFor(fault)
  const { storedDays, yearsAheadCount, tests = [], keepAboveFraction = KEEP_ABOVE_FRACTION } = input
  const ageing = ageingOf(input)
  const inputs = { ...input } as unknown as Reckoned['inputs']
  const lostNow = probitsInDays(input, storedDays)
  const common = { basis: 'computed', sourceKeys: LIFE_KEYS, inputs } as const
  const fractionAt = (id: string, days: number): Reckoned => {
    const belief = germinationAfter(ageing, probitsInDays(input, days))
    const { low, high } = beliefRangeFraction(belief, 0.9)
    return reckon({
      id,
      value: beliefMeanFraction(belief),
      low,
      high,
      unit: 'Fraction',
      rounding: nearest(0.01),
      ...common,
    })
  }
  const years = Array.from({ length: yearsAheadCount }, (_, i) => i + 1)
  const startProbits = equationStart(input)
  const byEquation = (year: number): Reckoned =>
    reckon({
      id: `equationFraction:${year}`,
      value: normalCdfFraction(startProbits - probitsInDays(input, storedDays + year * DAYS_PER_YEAR)),
      unit: 'Fraction',
      rounding: nearest(0.01),
      ...common,
    })
  const [early, middle, late] = probitsUntil(ageing, keepAboveFraction, [0.05, 0.5, 0.95]).map((probits) =>
    probits <= lostNow ? 0 : (daysForProbits(input, probits) - storedDays) / DAYS_PER_YEAR,
  ) as [number, number, number]
  const retestDays = Math.min(RETEST_AT_MOST_DAYS, (early * DAYS_PER_YEAR) / 3)
  return {
    ok: true,
    values: [
      fractionAt('nowFraction', storedDays),
      ...years.map((year) => fractionAt(`yearFraction:${year}`, storedDays + year * DAYS_PER_YEAR)),
      ...years.map(byEquation),
      reckon({
        id: 'yearsAbove',
        value: middle,
        low: early,
        high: late,
        unit: 'Years',
        rounding: nearest(0.1),
        ...common,
      }),
      reckon({
        id: 'retestDays',
        value: retestDays,
        unit: 'Days',
        rounding: down(1),
        basis: 'project-rule',
        sourceKeys: ['fao-genebank-2014'],
        inputs,
      }),
    ],
    reasons: [...lifeReasons(ageing, tests.length), ...laterConstants(input)],
    warnings: storeWarnings(input),
  }
}

/** The equation alone starts where the first test found the lot, or at the germination told. [probits] */
function equationStart({ startFraction, tests = [], ...store }: SeedLifeInput): number {
  const first = tests.toSorted((a, b) => a.afterDays - b.afterDays)[0]
  if (!first) return normalQuantile(startFraction ?? FRESH_FRACTION)
  // 100 % has no probit: half a kernel more and one more tested, as a test of all sprouted is read.
  const seen = (first.sproutedCount + 0.5) / (first.testedCount + 1)
  return normalQuantile(seen) + probitsInDays(store, first.afterDays)
}

function lifeReasons(ageing: LotAgeing, testsCount: number): Sentence[] {
  if (testsCount === 0) return [say('seed:life-from-equation'), say('seed:life-is-a-band')]
  const rate = ageingRateMiddle(ageing)
  const own =
    testsCount === 1
      ? say('seed:life-one-test')
      : rate > 1.15
        ? say('seed:life-faster', { tests: testsCount, rate: rate.toFixed(1) })
        : rate < 0.87
          ? say('seed:life-slower', { tests: testsCount, rate: (1 / rate).toFixed(1) })
          : say('seed:life-as-equation', { tests: testsCount })
  return [own, say('seed:life-is-a-band'), say('seed:test-in-spring')]
}

/** The other published constants, said beside the ones that stand. */
function laterConstants(store: SeedStore): Sentence[] {
  const ratio = laterConstantsRatio(store)
  return ratio === null ? [] : [say('seed:life-later-constants', { times: ratio.toFixed(1) })]
}

/** What the store itself asks for: a freezer dry seed, and no drying below the floor. */
export function storeWarnings(store: SeedStore): Sentence[] {
  const conditions = conditionsOf(store)
  const wettestCold = Math.max(0, ...conditions.filter((one) => one.temperatureC < 0).map((one) => one.wetFraction))
  const below = conditions.find((one) => one.wetFraction < moistureFloorWetFraction(one.temperatureC))
  return [
    ...(wettestCold > FROZEN_SEED_WET_FRACTION ? [say('seed:too-wet-to-freeze')] : []),
    ...(conditions.some(({ temperatureC }) => temperatureC < 0) ? [say('seed:open-when-warm')] : []),
    ...(below
      ? [
          say('seed:below-floor', {
            given: { value: below.wetFraction, unit: 'Fraction' },
            floor: { value: Number(moistureFloorWetFraction(below.temperatureC).toFixed(3)), unit: 'Fraction' },
          }),
        ]
      : []),
  ]
}
