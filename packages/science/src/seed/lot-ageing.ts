/**
 * How one lot ages: the viability equation with two things unknown, where the lot began and how fast it goes. Each test of
 * the lot weighs every pair of them by how well it foretold the count (Bayes' rule on a grid). Leaves out: where the
 * store's record comes from.
 */
import { requireInRange } from '../errors.ts'
import { requireWhole } from '../statistics/binomial.ts'
import { normalCdfFraction, normalQuantile } from '../statistics/normal.ts'
import { beliefQuantileFraction, type GerminationBelief, thinBelief } from './germination-belief.ts'
import { LOT_AGEING_FACTOR } from './maize-longevity.ts'
import type { SproutTest } from './reserve.ts'

/** One sprouting test, after so much of the store. */
export interface AgedTest extends SproutTest {
  /** Probits the equation says were lost before the test. [probits] Valid: 0 to 1000. */
  readonly lostProbits: number
}

export interface LotStart {
  /** Germination when the lot was put by; used only while there is no test. [fraction] Valid: 0.5 to 0.999. */
  readonly startFraction?: number
  readonly tests: readonly AgedTest[]
}

interface AgeingPoint {
  readonly startProbits: number
  /** This lot's ageing over the equation's. */
  readonly rate: number
  readonly weight: number
}

export type LotAgeing = readonly AgeingPoint[]

/** Sound fresh maize, until a test speaks. Project rule: 97 %, nineteen times in twenty between 90 and 99.3 %. */
export const FRESH_FRACTION = 0.97
const FRESH_SD_PROBITS = 0.3
const RATE_SD = Math.log(LOT_AGEING_FACTOR) / normalQuantile(0.95)
const RATES = Array.from({ length: 41 }, (_, i) => {
  const deviate = -3 + (6 * i) / 40
  return { rate: Math.exp(RATE_SD * deviate), logWeight: (-deviate * deviate) / 2 }
})

/**
 * What is known of a lot's start and of its rate of ageing, from its tests. [probits, ratio to the equation's rate]
 *
 * Before any test the lot is taken as sound and its rate as the equation's, within 2.5 times either way for nine lots in
 * ten. With tests, nothing is assumed of the start (Jeffreys' prior).
 *
 * @throws {ValidRangeError} outside the ranges of AgedTest and LotStart.
 * @source ellis-roberts-1980 for the equation, jeffreys-1946 for the start; the width of the rate is a project rule that
 *   rests on tang-2000 and guzzon-2021
 */
export function lotAgeing({ startFraction, tests }: LotStart): LotAgeing {
  const start = startFraction ?? FRESH_FRACTION
  requireInRange('startFraction', start, { min: 0.5, max: 0.999, unit: 'fraction', source: 'project-rule' })
  for (const test of tests) {
    requireWhole('testedCount', test.testedCount, 1, 10_000)
    requireWhole('sproutedCount', test.sproutedCount, 0, test.testedCount)
    requireInRange('lostProbits', test.lostProbits, { min: 0, max: 1000, unit: 'probits', source: 'project-rule' })
  }
  const fresh = normalQuantile(start)
  const logPrior = (z: number): number =>
    tests.length === 0 ? -(((z - fresh) / FRESH_SD_PROBITS) ** 2) / 2 : logJeffreys(z)
  // A start this high is needed where a test long after the start still found many alive.
  const widest = 5 + Math.max(0, ...tests.map(({ lostProbits }) => lostProbits * RATES.at(-1)!.rate))
  const lowest = -5
  const highest = Math.min(widest, 60)
  const fewRates = RATES.filter((_, i) => i % 4 === 0)
  const coarse = grid({ from: lowest, to: highest, pointsCount: 121, rates: fewRates }, logPrior, tests)
  const heaviest = Math.max(...coarse.map(({ weight }) => weight))
  const held = coarse.filter(({ weight }) => weight > heaviest * 1e-8).map(({ startProbits }) => startProbits)
  const step = (highest - lowest) / 120
  const span = { from: Math.min(...held) - step, to: Math.max(...held) + step }
  return grid({ ...span, pointsCount: 161, rates: RATES }, logPrior, tests)
}

/** Jeffreys' prior of a share, as a density of its probit, up to a constant. */
function logJeffreys(z: number): number {
  const p = normalCdfFraction(z)
  const q = normalCdfFraction(-z)
  return -(z * z) / 2 - 0.5 * Math.log(Math.max(p, 1e-300) * Math.max(q, 1e-300))
}

interface Span {
  readonly from: number
  readonly to: number
  readonly pointsCount: number
  readonly rates: typeof RATES
}

function grid(
  { from, to, pointsCount, rates }: Span,
  logPrior: (z: number) => number,
  tests: readonly AgedTest[],
): LotAgeing {
  // A test before any ageing says the same at every rate.
  const fresh = tests.filter(({ lostProbits }) => lostProbits === 0)
  const aged = tests.filter(({ lostProbits }) => lostProbits > 0)
  const logs: { startProbits: number; rate: number; log: number }[] = []
  let top = Number.NEGATIVE_INFINITY
  for (let i = 0; i < pointsCount; i++) {
    const startProbits = from + ((to - from) * i) / (pointsCount - 1)
    const atStart = fresh.reduce((sum, test) => sum + logLikelihood(startProbits, test), logPrior(startProbits))
    for (const { rate, logWeight } of rates) {
      let log = atStart + logWeight
      for (const test of aged) log += logLikelihood(startProbits - test.lostProbits * rate, test)
      logs.push({ startProbits, rate, log })
      if (log > top) top = log
    }
  }
  const heavy = logs.filter(({ log }) => log > top - 28) // lighter ones make less than 1e-8 together
  const weights = heavy.map(({ log }) => Math.exp(log - top))
  const whole = weights.reduce((sum, weight) => sum + weight, 0)
  return heavy.map(({ startProbits, rate }, i) => ({ startProbits, rate, weight: weights[i]! / whole }))
}

/** ln of the chance of the count at one germination, less what is the same for all. One tail is reckoned, the nearer one. */
function logLikelihood(probits: number, { sproutedCount, testedCount }: SproutTest): number {
  const z = Math.max(-37, Math.min(37, probits))
  const tail = normalCdfFraction(-Math.abs(z))
  const nearer = Math.log(tail)
  const farther = Math.log1p(-tail)
  const missedCount = testedCount - sproutedCount
  return z < 0 ? sproutedCount * nearer + missedCount * farther : sproutedCount * farther + missedCount * nearer
}

/**
 * Germination of the lot once the equation has taken so many probits since its start. [fraction]
 *
 * @param lostProbits [probits] Valid: 0 to 1000.
 * @throws {ValidRangeError} outside that range.
 * @source ellis-roberts-1980, over the whole of what is known of the lot
 */
export function germinationAfter(ageing: LotAgeing, lostProbits: number): GerminationBelief {
  requireInRange('lostProbits', lostProbits, { min: 0, max: 1000, unit: 'probits', source: 'project-rule' })
  return thinBelief(
    ageing.map(({ startProbits, rate, weight }) => ({
      fraction: normalCdfFraction(startProbits - lostProbits * rate),
      weight,
    })),
  )
}

/**
 * Probits the equation may take, counted from the lot's start, until germination has fallen to `endFraction`: the low end,
 * middle or high end of what is known. [probits]  0 where it is already below; times the days of a probit it is a time.
 *
 * @param shareFractions which ends: 0.05 is early, 0.5 the middle, 0.95 late. [fraction]
 * @throws {ValidRangeError} unless 0.01 <= endFraction <= 0.999.
 * @source ellis-roberts-1980, over the whole of what is known of the lot
 */
export function probitsUntil(
  ageing: LotAgeing,
  endFraction: number,
  shareFractions: readonly number[],
): readonly number[] {
  requireInRange('endFraction', endFraction, { min: 0.01, max: 0.999, unit: 'fraction', source: 'project-rule' })
  const end = normalQuantile(endFraction)
  const times = thinBelief(
    ageing.map(({ startProbits, rate, weight }) => ({
      fraction: Math.max(0, (startProbits - end) / rate),
      weight,
    })),
  )
  return shareFractions.map((share) => beliefQuantileFraction(times, share))
}

/** How this lot ages beside the equation, the middle of what is known. [ratio]  @source none: a weighted median */
export function ageingRateMiddle(ageing: LotAgeing): number {
  return beliefQuantileFraction(thinBelief(ageing.map(({ rate, weight }) => ({ fraction: rate, weight }))), 0.5)
}
