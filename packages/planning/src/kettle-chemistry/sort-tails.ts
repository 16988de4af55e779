/**
 * What was sorted out of a batch before the pot, by weight, beside what this kitchen sorted out of its other batches.
 * Leaves out causes; the wet sort, whose kernels hold unknown water; and any share at which a lot would be good or bad:
 * mould goes out whatever its share.
 */
import type { BatchFact, Facts } from '@crib/journal'
import type { Reckoned } from '@crib/science'
import { planOfBatch } from '../batch/planned-batch.ts'
import { valuesOf } from './fields.ts'
import { potCornKg } from './own-strengths.ts'

export interface SortTails {
  /** Of the dry corn of the batch. [fraction] */
  readonly removedFraction: Reckoned
  /** The same over other batches of this book: least, middle and most; absent before there is another. */
  readonly ownFraction?: Reckoned
}

/** @param justSortedKg what is being written down now. [kg]  Null where the batch's corn is not told. */
export function sortTails(facts: Facts, batch: BatchFact, justSortedKg: number): SortTails | null {
  const share = shareOf(facts, batch, justSortedKg)
  if (share === null) return null
  const others = Object.values(facts.batches)
    .filter((other) => other.batchId !== batch.batchId && other.sorts.some(({ when }) => when === 'dry'))
    .flatMap((other) => shareOf(facts, other, 0) ?? [])
    .toSorted((a, b) => a - b)
  const value = valuesOf({ batchId: batch.batchId, batchesCount: others.length }, [])
  const own = { basis: 'own-record', sourceKeys: [] } as const
  const middle = others[Math.floor((others.length - 1) / 2)]
  return {
    removedFraction: value('removedFraction', share, 'Fraction', 0.01, own),
    ...(middle !== undefined && {
      ownFraction: value(
        'ownFraction',
        { value: middle, low: others[0]!, high: others.at(-1)! },
        'Fraction',
        0.01,
        own,
      ),
    }),
  }
}

function shareOf(facts: Facts, batch: BatchFact, moreKg: number): number | null {
  const outcome = planOfBatch(batch)
  if (outcome?.kind !== 'planned') return null
  const loads = outcome.kettle.potLoads
  const cornKg = loads.reduce((sum, { number }) => sum + (potCornKg(facts, outcome, number) ?? 0), 0)
  if (!(cornKg > 0)) return null
  const sortedKg = batch.sorts.filter(({ when }) => when === 'dry').map(({ removedKg }) => removedKg)
  const removedKg = sortedKg.reduce((sum, each) => sum + each, moreKg)
  // What is sorted out dry never reached the pots.
  return removedKg / (cornKg + removedKg)
}
