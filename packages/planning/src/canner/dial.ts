/**
 * A dial gauge as it was found: face, needle at rest, last test; and what it must show for a true pressure.
 * Leaves out: the table's pressure (card.ts) and whether a rule allows the dial (package guidance).
 */
import { type GaugeOutcome, type GaugeVerdict, gaugeRule } from '@crib/guidance'
import type { CannerFact } from '@crib/journal'
import { type GaugePoint, gaugeErrorPsi, nextFaceMarkPsi, requiredReadingPsi, type Sentence } from '@crib/science'
import { say } from '../shared/say.ts'

export interface DialTest {
  readonly readings: readonly GaugePoint[]
  readonly testedDaysAgo: number
}

export interface Dial {
  /** Distance between two marks of the face. [psi] */
  readonly marksEveryPsi: number
  /** Where the needle rests when cold. [psi] */
  readonly restsAtPsi: number
  readonly test?: DialTest
}

/** A dial is tested again after this. [days]  @source iowa-state-gauge-2024 */
export const TEST_EVERY_DAYS = 365
const DAY_MS = 86_400_000

/**
 * The day by which a dial tested on `testedOn` is tested again, both YYYY-MM-DD.
 *
 * @throws {RangeError} when `testedOn` is no date.
 */
export function testDueOn(testedOn: string): string {
  const due = new Date(Date.parse(testedOn) + TEST_EVERY_DAYS * DAY_MS)
  if (Number.isNaN(due.getTime())) throw new RangeError(`"${testedOn}" is no date; write it as 2026-04-02`)
  return due.toISOString().slice(0, 10)
}

export interface DialReading {
  readonly verdict: GaugeVerdict
  readonly usable: boolean
  /** At the pressure set: above 0 reads high. [psi]  Absent where nothing is known. */
  readonly errorPsi?: number
  /** Least reading; a reading below it is a dip. [psi] */
  readonly requiredReadingPsi?: number
  /** The mark to hold: the first at or above. [psi] */
  readonly holdAtPsi?: number
  /** True pressure at that mark. [psi] */
  readonly trueAtHoldPsi?: number
  readonly why: readonly Sentence[]
  readonly sourceKeys: readonly string[]
}

/**
 * What a dial must show for a true pressure, if it may be used.
 *
 * The rule looks at the largest error of the whole test; the correction is the one at the pressure set.
 *
 * @param setPsi true pressure wanted. [psi]
 * @throws {ValidRangeError} for readings off the face; {RangeError} for marks or days that are no numbers.
 * @source iowa-state-gauge-2024
 */
export function dialReading(dial: Dial, setPsi: number): DialReading {
  const { test, marksEveryPsi } = dial
  const rule = gaugeRule({
    errorPsi: test ? worstErrorPsi(test.readings) : null,
    restsAtPsi: dial.restsAtPsi,
    lastTestedDaysAgo: test ? test.testedDaysAgo : null,
    marksEveryPsi,
  })
  const refused = { verdict: rule.verdict, usable: false, why: rule.why, sourceKeys: rule.sourceKeys } as const
  if (!test || !rule.mayHoldPressure) return refused
  if (!isTestedAt(test.readings, setPsi)) {
    const pressure = { value: setPsi, unit: 'PsiGauge' } as const
    return { ...refused, verdict: 'unknown', why: [say('canner:dial-not-tested-there', { pressure })] }
  }
  return corrected(rule, test.readings, setPsi, marksEveryPsi)
}

function corrected(
  { verdict, why, sourceKeys }: GaugeOutcome,
  readings: readonly GaugePoint[],
  setPsi: number,
  marksEveryPsi: number,
): DialReading {
  const errorPsi = tidy(gaugeErrorPsi(readings, setPsi))
  const requiredPsi = tidy(requiredReadingPsi(readings, setPsi))
  const holdAtPsi = nextFaceMarkPsi(requiredPsi, marksEveryPsi)
  return {
    verdict,
    usable: true,
    errorPsi,
    requiredReadingPsi: requiredPsi,
    holdAtPsi,
    trueAtHoldPsi: tidy(holdAtPsi - errorPsi),
    why,
    sourceKeys,
  }
}

/** The reading furthest off, with its sign; never -0. [psi] */
function worstErrorPsi(readings: readonly GaugePoint[]): number | null {
  const errors = readings.map(({ truePsi, readsPsi }) => readsPsi - truePsi)
  return errors.length === 0
    ? null
    : errors.reduce((worst, error) => (Math.abs(error) > Math.abs(worst) ? error : worst))
}

function isTestedAt(readings: readonly GaugePoint[], truePsi: number): boolean {
  const tested = readings.map((point) => point.truePsi)
  return Math.min(...tested) <= truePsi && truePsi <= Math.max(...tested)
}

/** Takes off binary dust; test readings have two decimals at most. */
function tidy(psi: number): number {
  return Number(psi.toFixed(6))
}

/** The dial as the book knows it. `today` as YYYY-MM-DD. A canner without a test is marked every 1 psi and rests at zero, untested. */
export function dialOf(canner: Pick<CannerFact, 'gaugeTests'>, today: string): Dial {
  const test = canner.gaugeTests.at(-1)
  if (!test) return { marksEveryPsi: 1, restsAtPsi: 0 }
  return {
    marksEveryPsi: test.marksEveryPsi,
    restsAtPsi: test.restsAtPsi,
    test: { readings: test.readings, testedDaysAgo: daysBetween(test.testedOn, today) },
  }
}

/** Whole days from one calendar date to another, both YYYY-MM-DD; 0 when the first lies ahead. @throws {RangeError} */
export function daysBetween(from: string, to: string): number {
  const days = (Date.parse(to) - Date.parse(from)) / DAY_MS
  if (!Number.isFinite(days)) throw new RangeError(`${from} to ${to}: two dates as YYYY-MM-DD are needed`)
  return Math.max(0, Math.floor(days))
}
