/** What a rub test says, in words: a share of the kernels, never a minute. */
import type { Reckoned, Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'
import { RUB_AGAIN_MIN } from './ash-advice.ts'

/** From here on the wash may begin: the rest comes off in scrubbing and the second sort.  common practice, no source */
const READY_FRACTION = 0.9
/** Below this, after the whole range of minutes, the alkali is in question.  project rule */
const FEW_FRACTION = 0.5

export interface RubTest {
  readonly slippedCount: number
  readonly ofCount: number
  readonly boiledMin?: number
  /** End of this corn's range in alkali. [min] */
  readonly rangeHighMin?: number
}

export interface RubReading {
  readonly slippedFraction: Reckoned
  readonly says: 'begin-wash' | 'rub-again' | 'ask-the-ash'
  readonly sentences: readonly Sentence[]
}

/** Reads one rub test. @throws {RangeError} unless 0 <= slipped <= rubbed and something was rubbed. */
export function rubTest({ slippedCount, ofCount, boiledMin, rangeHighMin }: RubTest): RubReading {
  if (!(ofCount >= 1 && slippedCount >= 0 && slippedCount <= ofCount)) {
    throw new RangeError(`${slippedCount} of ${ofCount} kernels: needs 0 to the number rubbed, and at least 1 rubbed`)
  }
  const share = slippedCount / ofCount
  const isPastRange = boiledMin !== undefined && rangeHighMin !== undefined && boiledMin >= rangeHighMin
  const says =
    share >= READY_FRACTION ? 'begin-wash' : share < FEW_FRACTION && isPastRange ? 'ask-the-ash' : 'rub-again'
  return {
    says,
    slippedFraction: reckon({
      id: 'slippedFraction',
      value: share,
      unit: 'Fraction',
      rounding: nearest(0.01),
      basis: 'own-record',
      inputs: { slippedCount, ofCount },
    }),
    sentences: [
      say('kettle:rub-seen', { slipped: slippedCount, rubbed: ofCount }),
      say(`kettle:rub-${says}`, says === 'rub-again' ? { again: { value: RUB_AGAIN_MIN, unit: 'Min' } } : undefined),
    ],
  }
}
