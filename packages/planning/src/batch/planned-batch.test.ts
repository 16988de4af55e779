import { applyEntries, createAuthor, createId, NO_FACTS } from '@crib/journal'
import { expect, test } from 'vitest'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput } from './input.ts'
import { planValue } from './plan.ts'
import { batchPlannedBody, cornTakenKg, type PlannedDay, plannedInputs, planOfBatch } from './planned-batch.ts'

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

const DAY: PlannedDay = {
  date: '2026-11-03',
  clock: { from: 'start', clockMin: 430 },
  peopleCount: 1,
  dayCount: 1,
}

function throughTheBook() {
  const plan = batchPlan(INPUT)
  if (plan.kind !== 'planned') throw new Error('the plan was refused')
  const newId = () => createId(clock, random)
  const batchId = newId()
  const ids = { kitchenId: newId(), deviceId: newId(), personId: newId() }
  const author = createAuthor({ ...ids, head: null, clock, random, zone: 'UTC' })
  const body = batchPlannedBody({ batchId, title: 'Lantern flint, 9 lb', plan, beside: { day: DAY } })
  const batch = applyEntries(NO_FACTS, [author.write('batch-planned', body)]).batches[batchId]
  if (!batch) throw new Error('the book does not have the batch')
  return batch
}

test('a batch read back from the book gives the plan it was made from', () => {
  const batch = throughTheBook()
  expect(plannedInputs(batch)).toEqual({ ...INPUT, day: DAY })
  const plan = planOfBatch(batch)
  if (plan?.kind !== 'planned') throw new Error('no plan')
  expect(planValue(plan, 'dryCornLiquidQt')?.value).toBe(6) // S2: 9 lb / 1.5
  expect((batch.plan.shown as Record<string, unknown>).potLoads).toBe(3) // S2
})

test('inputs of another shape give no plan instead of a wrong one', () => {
  const { plan } = throughTheBook()
  for (const inputs of [null, {}, { endings: [], pots: [] }, { endings: [], pots: [], canners: [] }]) {
    expect(planOfBatch({ plan: { ...plan, inputs } })).toBeNull()
  }
})

test('a batch takes from its lot what was named, or what the jars wanted ask for', () => {
  const taken = (input: BatchPlanInput) => {
    const plan = batchPlan(input)
    if (plan.kind !== 'planned') throw new Error('the plan was refused')
    return cornTakenKg(plan)
  }
  expect(taken(INPUT)).toBeCloseTo(4.0823, 4) // 9 lb
  const from = { kind: 'corn', form: 'shelled', amount: { value: 6, unit: 'LiquidQt' } } as const
  expect(taken({ ...INPUT, from })).toBeCloseTo(4.0823, 4) // 6 liquid qt at 1.5 lb
  const jars: BatchPlanInput = {
    ...INPUT,
    from: { kind: 'jars', jarCount: 96 },
    jarSize: 'pint',
    endings: [{ ending: 'jars', shareFraction: 1 }],
    sortedOutDryFraction: 0.1,
  }
  expect(taken(jars)).toBeCloseTo(12.096, 3) // S6: 24.0 lb / 0.9 = 26.667 lb
})
