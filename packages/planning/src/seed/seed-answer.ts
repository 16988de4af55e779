/**
 * The seed line that heads every batch: put by for two plantings? how much, where? Answered before any corn is food.
 * Leaves out: how many kernels that takes (seed-reserve.ts).
 */
import { convert, type Reckoned, type Sentence } from '@crib/science'
import { nearest, reckon } from '../shared/reckon.ts'
import { say } from '../shared/say.ts'

/** Next year and the year after. Project rule of every plan here. */
export const PLANTINGS_COUNT = 2

export interface SeedAnswer {
  /** `by-eye` is a full answer: the best ears are hung up and that is that. */
  readonly how: 'by-eye' | 'by-weight' | 'not-this-year'
  readonly plantingsCount: number
  readonly places: readonly string[]
  /** Only `by-weight`. [kg] */
  readonly massKg?: number
  /** True when the corn named in the plan no longer holds the seed; by eye it never does. */
  readonly isAlreadyTakenOut?: boolean
  /** Why fewer than two plantings are put by. */
  readonly reason?: string
}

export interface SeedLine {
  readonly how: SeedAnswer['how']
  readonly plantingsCount: number
  readonly places: readonly string[]
  /** Put by, as told. [lb] Absent by eye and when none is put by. */
  readonly seedPutByLb?: Reckoned
  /** What is taken off the corn named in the plan before anything is food. [lb] */
  readonly takenOffLb: number
  /** The line as it heads the sheet. */
  readonly sentences: readonly Sentence[]
  readonly warnings: readonly Sentence[]
}

export type SeedOutcome =
  | { readonly kind: 'put-by'; readonly line: SeedLine }
  | { readonly kind: 'refused'; readonly refused: string; readonly why: readonly Sentence[] }

/** The seed line, or what still has to be answered. Fewer than two plantings need a recorded reason. */
export function seedLine(answer: SeedAnswer): SeedOutcome {
  const { how, places, massKg, reason } = answer
  const plantingsCount = how === 'not-this-year' ? 0 : answer.plantingsCount
  if (!(plantingsCount >= 0 && Number.isInteger(plantingsCount))) {
    return refused('seed-plantings-not-a-count', say('seed:plantings-not-a-count', { given: String(plantingsCount) }))
  }
  if (plantingsCount < PLANTINGS_COUNT && !reason?.trim()) {
    return refused('seed-reason-missing', say('seed:reason-missing', { plantings: plantingsCount }))
  }
  if (how === 'by-weight' && !(massKg !== undefined && massKg > 0 && Number.isFinite(massKg))) {
    return refused('seed-weight-missing', say('seed:weight-missing', { given: String(massKg ?? '') }))
  }

  const seedLb = how === 'by-weight' ? convert(massKg!, 'Kg', 'Lb') : 0
  const putBy =
    how === 'by-weight'
      ? reckon({ id: 'seedPutByLb', value: seedLb, unit: 'Lb', rounding: nearest(0.01), basis: 'as-typed' })
      : undefined
  const line =
    how === 'not-this-year'
      ? say('seed:line-not-this-year', { reason: reason! })
      : how === 'by-eye'
        ? say('seed:line-by-eye', { plantings: plantingsCount })
        : say('seed:line-by-weight', {
            plantings: plantingsCount,
            seed: { value: Number(seedLb.toFixed(2)), unit: 'Lb' },
          })
  const isFewer = how !== 'not-this-year' && plantingsCount < PLANTINGS_COUNT
  return {
    kind: 'put-by',
    line: {
      how,
      plantingsCount,
      places,
      ...(putBy && { seedPutByLb: putBy }),
      takenOffLb: answer.isAlreadyTakenOut ? 0 : seedLb,
      sentences: [
        say('seed:first'),
        line,
        ...(places.length > 0 ? [say('seed:kept-where', { places: places.join(', ') })] : []),
        ...(isFewer ? [say('seed:fewer-plantings', { plantings: plantingsCount, reason: reason! })] : []),
      ],
      warnings: how !== 'not-this-year' && new Set(places).size < 2 ? [say('seed:two-places')] : [],
    },
  }
}

function refused(code: string, why: Sentence): SeedOutcome {
  return { kind: 'refused', refused: code, why: [say('seed:first'), why] }
}
