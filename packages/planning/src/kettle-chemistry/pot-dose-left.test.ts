import { foldFacts } from '@crib/journal'
import { expect, test } from 'vitest'
import { batchPlan } from '../batch/batch-plan.ts'
import { potDoseLeft } from './pot-dose-left.ts'

/** S2 (invented): 6 liquid qt in three pots, a cup of ash to the quart: 2 cups a pot. */
const plan = batchPlan({
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: [] },
  cornType: 'flint',
  alkali: 'ash',
  alkaliLot: { name: 'M-1', judged: 'works', cupsPerLiquidQt: 1 },
  pots: [{ name: 'big', volumeLiquidQt: 20, material: 'stainless' }],
  endings: [{ ending: 'freezer', shareFraction: 1 }],
  canners: [],
  isStandingRead: false,
})
if (plan.kind !== 'planned') throw new Error(plan.refused)

const VINEGAR = { way: 'vinegar', sampleMl: 50, coldMl: 4.8, boiledMl: 5.41, acidityGPer100Ml: 5 } as const
const tested = (boiledMl: number) => ({
  alkali: 'ash',
  tests: [{ found: { ...VINEGAR, boiledMl, steepedG: 100, steepWaterL: 1 }, gPerCup: 100, at: { instant: '' } }],
})
const left = (additions: readonly object[], nextLotId = 'M-1', lots: object = {}) => {
  const cook = additions.map((each) => ({ potLoad: 1, at: { instant: '' }, seen: { type: 'alkali-added', ...each } }))
  const batch = {
    batchId: 'b',
    stages: [],
    sorts: [],
    cook,
    additions: additions.map((each) => ({ potLoad: 1, ...each })),
  } as unknown as Parameters<typeof potDoseLeft>[1]
  const facts = { ...foldFacts([]), alkaliLots: lots } as unknown as Parameters<typeof potDoseLeft>[0]
  return potDoseLeft(facts, batch, plan, 1, nextLotId)
}

test('of two cups half goes in first, then a quarter at a time, and never more than is left', () => {
  expect(left([])).toMatchObject({ left: { value: 2, unit: 'Cup' }, step: { value: 1 } })
  expect(left([{ alkaliLotId: 'M-1', cups: 1 }])).toMatchObject({ left: { value: 1 }, step: { value: 0.5 } })
  const last = left([{ alkaliLotId: 'M-1', cups: 1.75 }])
  expect([last?.left.value, last?.step.value]).toEqual([0.25, 0.25])
})

test('once all is in nothing is left, and it says so', () => {
  const done = left([{ alkaliLotId: 'M-1', cups: 2.5 }])!
  expect(done.left.value).toBe(0)
  expect(done.sentences.map(({ key }) => key)).toContain('kettle:dose-all-in')
})

test('of another lot it is told by strength where both were titrated, and not at all where not', () => {
  const additions = [{ alkaliLotId: 'M-0', cups: 1 }]
  expect(left(additions)).toBeNull()
  // The old lot took half the vinegar: its cup is half a cup of the new one.
  const lots = { 'M-1': tested(5.41), 'M-0': tested(5.41 / 2) }
  const old = {
    ...lots,
    'M-0': {
      ...lots['M-0'],
      tests: [{ ...lots['M-0'].tests[0]!, found: { ...lots['M-0'].tests[0]!.found, coldMl: 2.4 } }],
    },
  }
  expect(left(additions, 'M-1', old)?.left.value).toBeCloseTo(1.5, 6)
})

test('cups and grams of one lot are not added up', () => {
  expect(left([{ alkaliLotId: 'M-1', massKg: 0.05 }])).toBeNull()
})
