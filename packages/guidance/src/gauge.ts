/**
 * Whether a dial gauge may be used, by its test and its face.
 * Leaves out: the number to hold (planning), and any test of a weight, which is only kept clean.
 */
import type { Sentence } from '@crib/science'
import { GUIDANCE_EDITION, type Standing } from '../schema/envelope.ts'
import { ruleFor } from './rules.ts'
import { sentence } from './sentence.ts'

export type GaugeVerdict =
  /** Tested true within the year. */
  | 'use'
  /** Off by less than the advice to replace: correct for it. */
  | 'use-corrected'
  /** Usable today, corrected and tagged; replace at the first chance. */
  | 'use-tagged-replace-soon'
  /** Off by more than may be corrected: not for pressure. */
  | 'refuse'
  /** Needle does not rest at zero: replace, no arithmetic. */
  | 'replace'
  /** Never tested, or not within the year: nothing is known of it. */
  | 'unknown'
  /** Face too coarse to hold the printed pressures. */
  | 'marks-too-coarse'

export interface GaugeFacts {
  /** Reading minus true pressure at the pressure wanted; high is positive. Null when never tested. [psi] */
  readonly errorPsi: number | null
  /** Where the needle rests when cold. [psi] */
  readonly restsAtPsi: number
  /** Days since the last test; null when never tested. */
  readonly lastTestedDaysAgo: number | null
  /** Distance between two marks of the face. [psi] */
  readonly marksEveryPsi: number
}

export interface GaugeOutcome {
  readonly verdict: GaugeVerdict
  readonly mayHoldPressure: boolean
  /** What to add to the set pressure; 0 unless the gauge may hold pressure. [psi] */
  readonly correctionPsi: number
  readonly why: readonly Sentence[]
  readonly standing: Standing
  readonly sourceKeys: readonly string[]
  readonly edition: string
}

/** A test that shows an error of this much or less in floating point is still "2 psi". */
const DUST_PSI = 1e-9

/**
 * What a dial gauge is good for. Correct any error up to 2 psi, advise replacing from 1, refuse above 2; a needle off
 * zero is replaced; an old or missing test makes it unknown; marks wider than 2 psi apart cannot hold a printed pressure.
 *
 * @throws {RangeError} on a number that is not finite, a negative age, or marks not above zero.
 * @source iowa-state-gauge-2024; stricter line: gauge-strict-reading; coarsest marks and needle at rest: project rule
 */
export function gaugeRule(facts: GaugeFacts): GaugeOutcome {
  checkFacts(facts)
  const table = ruleFor('gauge-rule', 'correct-up-to')
  const limit = (name: string): number => ruleFor('gauge-rule', name).figure.value
  const { verdict, why } = judge(facts, limit)
  const mayHoldPressure = verdict === 'use' || verdict === 'use-corrected' || verdict === 'use-tagged-replace-soon'
  return {
    verdict,
    mayHoldPressure,
    correctionPsi: mayHoldPressure ? facts.errorPsi! : 0,
    why,
    standing: table.standing,
    sourceKeys: table.sourceKeys,
    edition: GUIDANCE_EDITION,
  }
}

function judge(facts: GaugeFacts, limit: (name: string) => number): { verdict: GaugeVerdict; why: Sentence[] } {
  const { errorPsi, restsAtPsi, lastTestedDaysAgo, marksEveryPsi } = facts
  if (restsAtPsi !== limit('rests-at')) {
    return { verdict: 'replace', why: [sentence('guidance:gauge-rests-off-zero', { rests: psi(restsAtPsi) })] }
  }
  if (marksEveryPsi > limit('coarsest-marks')) {
    return {
      verdict: 'marks-too-coarse',
      why: [sentence('guidance:gauge-marks-too-coarse', { marks: psi(marksEveryPsi) })],
    }
  }
  if (errorPsi === null || lastTestedDaysAgo === null) {
    return { verdict: 'unknown', why: [sentence('guidance:gauge-never-tested')] }
  }
  if (lastTestedDaysAgo > limit('test-every')) {
    return { verdict: 'unknown', why: [sentence('guidance:gauge-test-too-old', { days: lastTestedDaysAgo })] }
  }
  const off = Math.abs(errorPsi)
  const highOrLow = { error: psi(off) }
  const direction = sentence(errorPsi > 0 ? 'guidance:gauge-reads-high' : 'guidance:gauge-reads-low', highOrLow)
  if (off > limit('correct-up-to') + DUST_PSI) {
    return {
      verdict: 'refuse',
      why: [direction, sentence('guidance:gauge-refused', { most: psi(limit('correct-up-to')) })],
    }
  }
  if (off >= limit('advise-replace-from') - DUST_PSI) {
    return { verdict: 'use-tagged-replace-soon', why: [direction, sentence('guidance:gauge-tag-and-replace')] }
  }
  if (off > DUST_PSI) return { verdict: 'use-corrected', why: [direction] }
  return { verdict: 'use', why: [sentence('guidance:gauge-true')] }
}

function checkFacts({ errorPsi, restsAtPsi, lastTestedDaysAgo, marksEveryPsi }: GaugeFacts): void {
  if (errorPsi !== null && !Number.isFinite(errorPsi))
    throw new RangeError(`errorPsi is ${errorPsi} psi; a number is needed`)
  if (!Number.isFinite(restsAtPsi)) throw new RangeError(`restsAtPsi is ${restsAtPsi} psi; a number is needed`)
  if (lastTestedDaysAgo !== null && !(lastTestedDaysAgo >= 0)) {
    throw new RangeError(`lastTestedDaysAgo is ${lastTestedDaysAgo} days; 0 or more is needed`)
  }
  if (!(marksEveryPsi > 0)) throw new RangeError(`marksEveryPsi is ${marksEveryPsi} psi; more than 0 is needed`)
}

function psi(value: number): { value: number; unit: 'PsiGauge' } {
  // Two decimals: an error is the difference of two readings and carries binary dust.
  return { value: Number(value.toFixed(2)), unit: 'PsiGauge' }
}
