import { foldFacts } from '@crib/journal'
import { expect, test } from 'vitest'
import { batchPlan } from '../batch/batch-plan.ts'
import { ownHominyRatio } from '../batch/own-records.ts'
import { planRecord } from '../batch/plan-record.ts'
import { cookBalanceCalc } from './cook-balance.calc.ts'
import { lotYield, potBalance, type weighedYields, yieldByVolume } from './own-yields.ts'

const plan = batchPlan({
  from: { kind: 'corn', form: 'shelled', amount: { value: 9, unit: 'Lb' } },
  seed: { how: 'by-eye', plantingsCount: 2, places: [] },
  cornType: 'flint',
  alkali: 'ash',
  pots: [{ name: 'big', volumeLiquidQt: 60, material: 'stainless' }],
  endings: [{ ending: 'freezer', shareFraction: 1 }],
  canners: [],
  isStandingRead: false,
})
if (plan.kind !== 'planned') throw new Error(plan.refused)
const record = planRecord(plan)
/** 9 lb of dry corn. [kg] */
const CORN_KG = 9 * 0.45359237

const weighed = (batchId: string, lotId: string, massKg: number, wetFraction?: number) => ({
  batchId,
  plan: { title: batchId, ...record },
  stages: [],
  sorts: [],
  cornUsed: [{ lotId, massKg: CORN_KG }],
  cook: [{ potLoad: 1, seen: { type: 'hominy-weighed', massKg, ...(wetFraction && { wetFraction }) } }],
})
type Facts = Parameters<typeof weighedYields>[0]
const book = (...batches: readonly ReturnType<typeof weighed>[]) =>
  ({
    ...foldFacts([]),
    cornLots: { flint: { moistureTests: [{ wetFraction: 0.12 }, { saltClung: true }] } },
    batches: Object.fromEntries(batches.map((each) => [each.batchId, each])),
  }) as unknown as Facts

test('a lot yields the mean of its batches, least and most, and how far they stray', () => {
  const facts = book(
    weighed('spring', 'flint', 2.4 * CORN_KG),
    weighed('autumn', 'flint', 2.8 * CORN_KG),
    weighed('other', 'flour', 3.4 * CORN_KG),
  )
  const own = lotYield(facts, 'flint')!
  expect(own.hominyPerCorn.value).toBeCloseTo(2.6, 12)
  expect(own.hominyPerCorn.low).toBeCloseTo(2.4, 12)
  expect(own.hominyPerCorn.high).toBeCloseTo(2.8, 12)
  expect(own.spread?.value).toBeCloseTo(Math.sqrt(0.08), 12)
  expect(own.batchesCount).toBe(2)
  expect(lotYield(facts, 'flour')?.spread).toBeUndefined()
  expect(lotYield(facts, 'dent')).toBeNull()
})

test('a weight that cannot be is no yield', () => {
  expect(lotYield(book(weighed('odd', 'flint', 9 * CORN_KG, 0.7)), 'flint')).toBeNull()
})

test('what a lot yielded moves the ratio plans use toward it, more than what other lots yielded', () => {
  const rich = [1, 2, 3].map((n) => weighed(`rich ${n}`, 'flour', 3.6 * CORN_KG, 0.78))
  const poor = [1, 2, 3].map((n) => weighed(`poor ${n}`, 'flint', 2 * CORN_KG))
  const ratio = (lotId?: string) => ownHominyRatio(book(...rich, ...poor), 'loose-to-headspace', undefined, lotId)!
  // Printed 3 and three of 3.711 make 3.4266; with it as the book's word, three of 2.062 make 2.6078.
  expect(ratio('flint').value).toBeCloseTo(2.6078, 3)
  expect(ratio('flint').ofLotCount).toBe(3)
  expect(ratio('flour').value).toBeGreaterThan(ratio().value)
  expect(ratio().ofLotCount).toBe(0)
  expect(ratio().recordsCount).toBe(6)
})

test('by volume hominy is the lighter one: 165 g a cup against a pound and a half the quart', () => {
  expect(yieldByVolume(2)).toBeCloseTo(2.0618, 4)
})

test('a weighed pot is balanced with the moisture its lot was last found at', () => {
  const batch = weighed('autumn', 'flint', 11, 0.7)
  const facts = book(batch)
  const result = potBalance(facts, facts.batches.autumn!, 1)
  if (!result?.ok) throw new Error('refused')
  const of = (id: string) => result.values.find((value) => value.id === id)!
  expect(of('inKg').value).toBeCloseTo(CORN_KG * 0.88, 9)
  // 3.3 kg of 3.593 kg: 8.1 % lost.
  expect(of('lossFraction').value).toBeCloseTo(0.0814, 3)
  expect(result.reasons.map(({ key }) => key)).not.toContain('kettle:balance-how-to-measure')
  expect(potBalance(facts, facts.batches.autumn!, 2)).toBeNull()
})

test('more dry matter out than in is refused, with the water there would have to be', () => {
  const result = cookBalanceCalc.run({ cornKg: 1, cornWetFraction: 0.12, hominyKg: 4, hominyWetFraction: 0.7 })
  expect(result).toMatchObject({ ok: false, refused: 'more-out-than-in' })
  if (result.ok) return
  expect(result.why[0]?.params).toEqual({ out: { value: 1.2, unit: 'Kg' }, in: { value: 0.88, unit: 'Kg' } })
  // 1 - 0.88 / 4.
  expect(result.why[1]?.params).toEqual({ least: { value: 0.78, unit: 'Fraction' } })
})

test('a dried sample tells the moisture; one that gained weight is refused', () => {
  const pot = { cornKg: 1, cornWetFraction: 0.104, hominyKg: 2.69 }
  const result = cookBalanceCalc.run({ ...pot, sampleWetG: 100, sampleDryG: 30 })
  const loss = result.ok ? result.values.find(({ id }) => id === 'lossFraction')?.value : undefined
  expect(loss).toBeCloseTo(0.1, 2)
  expect(cookBalanceCalc.run({ ...pot, sampleWetG: 100, sampleDryG: 101 })).toMatchObject({ refused: 'sample-gained' })
})

test('unmeasured moistures leave the loss as wide as they are, and never below nothing', () => {
  const result = cookBalanceCalc.run({ cornKg: 1, hominyKg: 2.6 })
  if (!result.ok) throw new Error('refused')
  const loss = result.values.find(({ id }) => id === 'lossFraction')!
  expect(loss.low).toBe(0)
  expect(loss.high! - loss.low!).toBeGreaterThan(0.3)
  expect(result.reasons.map(({ key }) => key)).toContain('kettle:balance-may-be-none')
})
