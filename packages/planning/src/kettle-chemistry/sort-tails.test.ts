import { foldFacts } from '@crib/journal'
import { expect, test } from 'vitest'
import { batchPlan } from '../batch/batch-plan.ts'
import { planRecord } from '../batch/plan-record.ts'
import { sortTails } from './sort-tails.ts'

const plan = batchPlan({
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: [] },
  cornType: 'flint',
  alkali: 'ash',
  pots: [{ name: 'big', volumeLiquidQt: 20, material: 'stainless' }],
  endings: [{ ending: 'freezer', shareFraction: 1 }],
  canners: [],
  isStandingRead: false,
})
if (plan.kind !== 'planned') throw new Error(plan.refused)
const record = planRecord(plan)
const batch = (batchId: string, dryKg: readonly number[]) => ({
  batchId,
  plan: { title: batchId, ...record },
  stages: [],
  cook: [],
  sorts: [...dryKg.map((removedKg) => ({ when: 'dry', removedKg })), { when: 'wet', removedKg: 9 }],
})
const facts = (...batches: readonly ReturnType<typeof batch>[]) =>
  ({
    ...foldFacts([]),
    batches: Object.fromEntries(batches.map((each) => [each.batchId, each])),
  }) as unknown as Parameters<typeof sortTails>[0]

test('nine pounds in the pots and one sorted out are a tenth, beside the least and most of other batches', () => {
  const book = facts(batch('now', []), batch('spring', [0.2]), batch('autumn', [1]))
  const tails = sortTails(book, book.batches.now!, 0.45359237)!
  // 1 lb of 9 + 1 lb.
  expect(tails.removedFraction.value).toBeCloseTo(0.1, 6)
  // 0.2 and 1 kg of 4.082 kg and as much more.
  expect(tails.ownFraction?.low).toBeCloseTo(0.0467, 4)
  expect(tails.ownFraction?.high).toBeCloseTo(0.1968, 4)
})

test('the first batch has nothing to stand beside, and one without a readable plan has no share', () => {
  const book = facts(batch('now', []))
  expect(sortTails(book, book.batches.now!, 1)?.ownFraction).toBeUndefined()
  const unread = { ...batch('now', []), plan: { title: 'now', inputs: null } } as unknown as ReturnType<typeof batch>
  const other = facts(unread)
  expect(sortTails(other, other.batches.now!, 1)).toBeNull()
})
