/** The walk of scenario S2 (invented): three pot-loads of 2 liquid qt, four cold rinses, five re-boils. */
import { applyEntries, type BodyOf, createAuthor, createId, type Kind, NO_FACTS } from '@crib/journal'
import { shownValue } from '@crib/science'
import { expect, test } from 'vitest'
import { OSTREY_DAY } from '../../testing/ostrey-day.ts'
import { batchPlan } from './batch-plan.ts'
import type { BatchPlanInput } from './input.ts'
import { doseInEntry, lotWorked, potCornLiquidQt, potDose, potWalk } from './kettle-walk.ts'
import { batchPlannedBody } from './planned-batch.ts'
import { asksForAshAdvice, firstLook, rubAgainAtMs, rubWord, stoodOpenMonths } from './rub.ts'

/** The day of S2, all of it for the freezer. */
const S2: BatchPlanInput = { ...OSTREY_DAY, endings: [{ ending: 'freezer', shareFraction: 1 }], canners: [] }

let drawn = 0
const random = {
  bytes: (count: number) =>
    Uint8Array.from({ length: count }, () => {
      drawn += 7919
      return drawn >> 8
    }),
}
const EIGHT = Date.parse('2026-11-03T08:00:00Z')
const clock = { now: () => EIGHT }
const at = (hhmm: string) => Date.parse(`2026-11-03T${hhmm}:00Z`)

const plan = (() => {
  const outcome = batchPlan(S2)
  if (outcome.kind !== 'planned') throw new Error('refused')
  return outcome
})()

type Note = readonly [hhmm: string, ...{ [K in Kind]: [K, Omit<BodyOf<K>, 'batchId' | 'potLoad'>] }[Kind]]

function walkAfter(notes: readonly Note[], potLoad = 1, of: typeof plan | null = plan) {
  const newId = () => createId(clock, random)
  const batchId = newId()
  const author = createAuthor({
    kitchenId: newId(),
    deviceId: newId(),
    personId: newId(),
    head: null,
    clock,
    random,
    zone: 'UTC',
  })
  const planned = author.write('batch-planned', batchPlannedBody({ batchId, title: 'S2', plan, beside: {} }))
  const entries = notes.map(([hhmm, kind, body]) =>
    author.write(kind, { batchId, potLoad: 1, ...body } as never, { happenedAt: { instant: at(hhmm) } }),
  )
  const batch = applyEntries(NO_FACTS, [planned, ...entries]).batches[batchId]!
  return potWalk(batch, of, potLoad)
}

const LOT = '01900000-0000-7000-8000-000000000001'

test('the steps are the plan’s stages as often as the own water record has them', () => {
  const { steps, openStepId } = walkAfter([])
  expect(steps.map(({ stepId }) => stepId)).toEqual([
    'sort-dry',
    'alkali-boil',
    'stand',
    'cold-rinse-1',
    'cold-rinse-2',
    'cold-rinse-3',
    'cold-rinse-4',
    'rub',
    're-boil-1',
    're-boil-2',
    're-boil-3',
    're-boil-4',
    're-boil-5',
    'sort-wet',
    'final-cook',
  ])
  expect(openStepId).toBe('sort-dry')
  expect(steps.find(({ stepId }) => stepId === 're-boil-1')?.plannedWater).toEqual({ value: 1.5, unit: 'LiquidGal' })
})

test('a pot-load takes its share of the ash: S2, 6 cups over three pot-loads of 2 liquid qt', () => {
  const dose = potDose(plan, 1)
  expect(dose && shownValue(dose)).toBe(2)
  expect(potCornLiquidQt(plan, 3)).toBe(2)
  expect(doseInEntry({ value: 2, unit: 'Cup' })).toEqual({ cups: 2 })
  expect(doseInEntry({ value: 6.8, unit: 'G' }).massKg).toBeCloseTo(0.0068, 9)
  expect(potDose(null, 1)).toBeNull()
})

test('what is written down moves the walk on, and the water is told up', () => {
  const walk = walkAfter([
    ['08:00', 'stage-noted', { stageId: 'sort-dry', what: 'begun' }],
    ['08:20', 'stage-noted', { stageId: 'sort-dry', what: 'done' }],
    ['08:30', 'stage-noted', { stageId: 'alkali-boil', what: 'begun', waterL: 7.57 }],
    ['08:31', 'cook-noted', { seen: { type: 'alkali-added', alkaliLotId: LOT, cups: 2 } }],
    ['09:12', 'cook-noted', { seen: { type: 'boil' } }],
    ['09:40', 'cook-noted', { seen: { type: 'topped-up', waterL: 1 } }],
    ['09:50', 'cook-noted', { seen: { type: 'darkening' } }],
    ['10:07', 'cook-noted', { seen: { type: 'rubbed', slippedCount: 4, ofCount: 20 } }],
    ['10:10', 'cook-noted', { seen: { type: 'alkali-added', alkaliLotId: LOT, cups: 0.5 } }],
  ])
  expect(walk.openStepId).toBe('alkali-boil')
  expect(walk.steps[0]).toMatchObject({ begunAtMs: at('08:00'), doneAtMs: at('08:20') })
  expect(walk.seen).toMatchObject({ boilAtMs: at('09:12'), darkeningAtMs: at('09:50'), alkaliCups: 2.5 })
  expect(walk.waterL).toBeCloseTo(8.57, 6)
  expect(walkAfter([['08:00', 'stage-noted', { stageId: 'sort-dry', what: 'done' }]], 2).openStepId).toBe('sort-dry')
})

test('one more rinse than planned is a step of its own', () => {
  const { steps } = walkAfter([['11:00', 'stage-noted', { stageId: 'cold-rinse-5', what: 'begun' }]])
  const rinses = steps.filter(({ stage }) => stage.kind === 'cold-rinse')
  expect(rinses.map(({ stepId, ofCount }) => `${stepId} of ${ofCount}`).at(-1)).toBe('cold-rinse-5 of 5')
})

test('a batch whose plan cannot be read walks the common-practice list', () => {
  const kinds = walkAfter([], 1, null).steps.map(({ stage }) => stage.kind)
  expect(kinds[1]).toBe('alkali-boil')
  expect(kinds.at(-1)).toBe('final-cook')
})

test('with an own record of 55 min one looks a quarter of an hour before it, and rubs again every quarter', () => {
  const boil = at('09:12')
  expect(firstLook(boil, 90, 55)).toEqual({ fromMs: at('09:52'), ownSlipAtMs: at('10:07') })
  expect(firstLook(boil, 90)).toEqual({ fromMs: at('10:42') })
  expect(rubAgainAtMs(at('10:07'))).toBe(at('10:22'))
})

test.each([
  [0, 'none'],
  [1, 'few'],
  [7, 'few'],
  [8, 'half'],
  [12, 'half'],
  [13, 'most'],
  [17, 'most'],
  [18, 'nearly-all'],
  [20, 'nearly-all'],
])('%i of 20 slipped is "%s"', (slippedCount, word) => {
  expect(rubWord({ slippedCount, ofCount: 20 })).toBe(word)
})

test('weak-ash advice is asked for past the own minute with fewer than half slipped, never before', () => {
  const rub = (hhmm: string, slippedCount: number) => ({
    boilAtMs: at('09:12'),
    rubs: [{ atMs: at(hhmm), slippedCount, ofCount: 20 }],
  })
  expect(asksForAshAdvice(rub('10:06', 0), 90, 55)).toBe(false)
  expect(asksForAshAdvice(rub('10:07', 9), 90, 55)).toBe(true)
  expect(asksForAshAdvice(rub('10:07', 10), 90, 55)).toBe(false)
  expect(asksForAshAdvice(rub('10:41', 0), 90)).toBe(false)
  expect(asksForAshAdvice(rub('11:12', 0), 90)).toBe(true) // S2: no slip at 120 min
  expect(asksForAshAdvice({ boilAtMs: at('09:12'), rubs: [] }, 90)).toBe(false)
})

test('a pot-load off the heat is a record of its ash: S2, 1 cup a quart, slipped at 55 min', () => {
  const { seen } = walkAfter([
    ['08:31', 'cook-noted', { seen: { type: 'alkali-added', alkaliLotId: LOT, cups: 2 } }],
    ['09:12', 'cook-noted', { seen: { type: 'boil' } }],
    // biome-ignore lint/suspicious/noThenProperty: a word of the entry
    ['10:07', 'cook-noted', { seen: { type: 'off-heat', then: 'hot' } }],
    // biome-ignore lint/suspicious/noThenProperty: a word of the entry
    ['13:00', 'cook-noted', { seen: { type: 'off-heat', then: 'chilled' } }],
  ])
  expect(lotWorked(seen, 2)).toEqual({ cupsPerLiquidQt: 1, slipMin: 55 })
  expect(seen.waitsAs).toBe('chilled')
  expect(lotWorked({ ...seen, alkaliCups: 0 }, 2)).toBeNull()
})

test('an open pail gathered fourteen months ago has stood open fourteen months; a lidded tin has not', () => {
  expect(stoodOpenMonths({ lidded: false, gatheredOn: '2025-09-03' }, '2026-11-03')).toBe(14)
  expect(stoodOpenMonths({ lidded: true, gatheredOn: '2025-09-03' }, '2026-11-03')).toBeUndefined()
})
