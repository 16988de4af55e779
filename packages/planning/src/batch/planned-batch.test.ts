import { applyEntries, createAuthor, createId, NO_FACTS } from '@crib/journal'
import { expect, test } from 'vitest'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput } from './input.ts'
import { planValue } from './plan.ts'
import { batchPlannedBody, type PlannedInputs, plannedInputs, planOfBatch } from './planned-batch.ts'

/** S2, in part (scenarios: invented). */
const INPUT: BatchPlanInput = {
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: [] },
  cornType: 'flint',
  alkali: 'ash',
  alkaliLot: { name: 'M-1', cupsPerLiquidQt: 1, slipMin: 55 },
  pots: [{ name: 'big pot', volumeLiquidQt: 20, material: 'stainless' }],
  endings: [{ ending: 'freezer', shareFraction: 1 }],
  canners: [],
  isStandingRead: false,
}

let seed = 0
const random = { bytes: (count: number) => Uint8Array.from({ length: count }, () => (seed = (seed * 31 + 7) % 256)) }
const clock = { now: () => Date.parse('2026-11-03T07:00:00Z') }

function throughTheBook(inputs: PlannedInputs) {
  const plan = batchPlan(inputs.plan)
  if (plan.kind !== 'planned') throw new Error('the plan was refused')
  const kitchenId = createId(clock, random)
  const batchId = createId(clock, random)
  const author = createAuthor({
    kitchenId,
    deviceId: createId(clock, random),
    personId: createId(clock, random),
    head: null,
    clock,
    random,
    zone: 'UTC',
  })
  const entry = author.write('batch-planned', batchPlannedBody({ batchId, title: 'Lantern flint, 9 lb', inputs, plan }))
  const batch = applyEntries(NO_FACTS, [entry]).batches[batchId]
  if (!batch) throw new Error('the book does not have the batch')
  return batch
}

test('a batch read back from the book gives the plan it was made from', () => {
  const inputs: PlannedInputs = {
    plan: INPUT,
    day: { date: '2026-11-03', clock: { from: 'start', clockMin: 430 }, peopleCount: 1, dayCount: 1 },
    cannerIds: [],
  }
  const batch = throughTheBook(inputs)
  expect(plannedInputs(batch)).toEqual(inputs)
  const plan = planOfBatch(batch)
  expect(plan?.kind).toBe('planned')
  if (plan?.kind !== 'planned') return
  expect(planValue(plan, 'dryCornLiquidQt')?.value).toBe(6) // S2: 9 lb / 1.5
  expect((batch.plan.shown as Record<string, unknown>).potLoads).toEqual({ value: 3, unit: 'Count' }) // S2
})

test('inputs of another shape give no plan instead of a wrong one', () => {
  const batch = throughTheBook({
    plan: INPUT,
    day: { date: '2026-11-03', clock: { from: 'start', clockMin: 430 }, peopleCount: 1, dayCount: 1 },
    cannerIds: [],
  })
  for (const inputs of [null, {}, { plan: {} }, { plan: { endings: [], pots: [], canners: [] } }]) {
    expect(planOfBatch({ plan: { ...batch.plan, inputs } })).toBeNull()
  }
})
