import { beforeEach, expect, test } from 'vitest'
import type { Facts } from './fold/facts.ts'
import { applyEntries, NO_FACTS } from './fold/fold.ts'
import type { BodyOf, Kind } from './kinds/index.ts'
import { propose } from './propose.ts'
import { kg } from './refusal.ts'
import { testKitchen } from './testing/invented.ts'

const kitchen = testKitchen()
const author = kitchen.author()
const newId = kitchen.newId
let facts: Facts
beforeEach(() => {
  facts = NO_FACTS
})

function tell<K extends Kind>(kind: K, body: BodyOf<K>) {
  const entry = author.write(kind, body)
  facts = applyEntries(facts, [entry])
  return entry
}

function refused<K extends Kind>(kind: K, body: BodyOf<K>, moment = {}) {
  const proposal = propose(facts, kind, body, moment)
  return proposal.ok ? [] : proposal.refusals.map(({ code, params }) => ({ code, ...params }))
}

function lot(treatedSeed = false) {
  const lotId = newId()
  const body = { cornType: 'flint', form: 'shelled', asTyped: '4 kg', massKg: 4, treatedSeed } as const
  tell('corn-lot-brought-in', { lotId, name: 'Lantern flint', ...body })
  return lotId
}

const cannerBody = (name: string) =>
  ({
    cannerId: newId(),
    name,
    gauges: ['weight'],
    capacityPints: 9,
    capacityQuarts: 7,
    rim: 'metal',
    electric: false,
  }) as const

const planBody = (lotId: string, massKg: number) =>
  ({
    batchId: newId(),
    title: 'x',
    inputs: {},
    edition: 'e',
    codeVersion: '0',
    shown: {},
    corn: [{ lotId, massKg }],
  }) as const

test('[J51] asks before a second canner of one name; the same canner may be recorded again', () => {
  const first = cannerBody('A')
  expect(refused('canner-recorded', first)).toEqual([])
  tell('canner-recorded', first)
  expect(refused('canner-recorded', cannerBody(' a'))).toEqual([{ code: 'two-canners-one-name', name: 'a' }])
  expect(refused('canner-recorded', { ...first, electric: true })).toEqual([])
})

test('[J51] asks before more corn is taken than a lot holds, naming both amounts', () => {
  const lotId = lot()
  tell('lot-used', { lotId, massKg: 3, how: 'eaten' })
  const more = { code: 'used-more-than-held', name: 'Lantern flint', value: kg(1.5), max: kg(1) }
  expect(refused('lot-used', { lotId, massKg: 1.5, how: 'eaten' })).toEqual([more])
  expect(refused('corn-sorted', { entityId: lotId, entity: 'lot', when: 'dry', removedKg: 1.5 })).toEqual([more])
  expect(refused('batch-planned', planBody(lotId, 1.5))).toEqual([more])
  expect(refused('lot-used', { lotId, massKg: 1, how: 'eaten' })).toEqual([])
})

test('[J51] asks before seed over the whole lot', () => {
  const seed = {
    seedId: newId(),
    lotId: lot(),
    seasonYear: 2026,
    how: 'by-weight',
    plantingsCount: 2,
    places: [],
  } as const
  expect(refused('seed-put-by', { ...seed, massKg: 5 })).toEqual([{ code: 'seed-over-lot', value: kg(5), max: kg(4) }])
  expect(refused('seed-put-by', { ...seed, massKg: 0.26 })).toEqual([])
})

test('[J51] asks before a jar is eaten twice', () => {
  const lotId = newId()
  tell('food-put-up', { lotId, loadCode: 'A1', form: 'jar', jarSize: 'quart', count: 1 })
  expect(refused('lot-used', { lotId, count: 1, how: 'eaten' })).toEqual([])
  tell('lot-used', { lotId, count: 1, how: 'eaten' })
  expect(refused('lot-used', { lotId, count: 1, how: 'eaten' })).toEqual([
    { code: 'used-more-than-remaining', name: 'A1', value: 1, max: 0 },
  ])
})

test('[J52] dressed seed corn is never food: not eaten, not planned, not put up; as seed it may be given', () => {
  const lotId = lot(true)
  const never = { code: 'treated-seed-never-food', name: 'Lantern flint' }
  expect(refused('lot-used', { lotId, massKg: 1, how: 'eaten' })).toEqual([never])
  expect(refused('batch-planned', planBody(lotId, 1))).toEqual([never])
  const plan = planBody(lotId, 1)
  tell('batch-planned', plan)
  const food = { lotId: newId(), batchId: plan.batchId, loadCode: 'x', form: 'freezer', count: 2 } as const
  expect(refused('food-put-up', food)).toEqual([never])
  expect(refused('lot-used', { lotId, massKg: 1, how: 'given' })).toEqual([])
})

test('[J52] an ash that is never for food is kept in the book and never put into a pot', () => {
  const ash = (name: string, more: object) => {
    const alkaliLotId = newId()
    tell('alkali-lot-recorded', { alkaliLotId, name, alkali: 'ash', ...more })
    return alkaliLotId
  }
  const batchId = newId()
  tell('batch-planned', { batchId, title: 'a pot', inputs: {}, edition: 'x', codeVersion: 'x', shown: {} })
  const put = (alkaliLotId: string) =>
    refused('cook-noted', { batchId, potLoad: 1, seen: { type: 'alkali-added', alkaliLotId, cups: 1 } })
  expect(put(ash('M-3', { onlyCleanWood: false }))).toEqual([{ code: 'alkali-never-into-food', name: 'M-3' }])
  expect(put(ash('M-4', { onlyCleanWood: true }))).toEqual([])
  expect(put(ash('M-5', {}))).toEqual([])
})

test('[J51] asks about things the book does not have', () => {
  const id = newId()
  expect(refused('lot-used', { lotId: id, count: 1, how: 'eaten' })).toEqual([{ code: 'no-such-lot', id }])
  expect(refused('run-event', { runId: id, event: { type: 'zero' } })).toEqual([{ code: 'no-such-run', id }])
  expect(refused('stage-noted', { batchId: id, potLoad: 1, stageId: 'x', what: 'done' })).toEqual([
    { code: 'no-such-batch', id },
  ])
  expect(refused('entry-withdrawn', { withdrawsId: id, reason: 'x' })).toEqual([{ code: 'no-such-entry', id }])
  expect(refused('alkali-lot-judged', { alkaliLotId: 'x', judged: 'weak' })).toMatchObject([{ code: 'wrong-value' }])
})

test('[J51] a correction is checked like the entry it corrects', () => {
  const lotId = lot()
  const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
  const correctsId = used.envelope.id
  const reason = 'x'
  const body = { lotId, massKg: -2, how: 'eaten' }
  expect(refused('entry-corrected', { correctsId, body, reason })).toMatchObject([{ code: 'out-of-limits', value: -2 }])
  const moved = { lotId: newId(), massKg: 2, how: 'eaten' }
  expect(refused('entry-corrected', { correctsId, body: moved, reason })).toEqual([
    { code: 'correction-moves-entry', kind: 'lot-used' },
  ])
  expect(refused('entry-corrected', { correctsId, body: { ...moved, lotId }, reason })).toEqual([])
})

test('[J51] asks before heat off is told a second time, and before a load on a gauge the canner does not have', () => {
  const canner = cannerBody('A')
  tell('canner-recorded', canner)
  const runId = newId()
  const run = {
    runId,
    cannerId: canner.cannerId,
    cannerName: 'A',
    loadCode: 'A1',
    jarSize: 'pint',
    jarCount: 9,
    gauge: 'weight',
    requiredReadingPsi: 15,
    ventMin: 10,
    processMin: 60,
    edition: 'e',
    cardShown: {},
  } as const
  expect(refused('run-begun', { ...run, gauge: 'dial' })).toEqual([
    { code: 'gauge-not-on-canner', name: 'A', value: 'dial' },
  ])
  tell('run-begun', run)
  expect(refused('run-event', { runId, event: { type: 'heat-off' } })).toEqual([])
  const off = tell('run-event', { runId, event: { type: 'heat-off' } })
  const value = off.envelope.happenedAt.instant
  expect(refused('run-event', { runId, event: { type: 'heat-off' } })).toEqual([
    { code: 'heat-off-already-told', value },
  ])
})

test('[J51] asks about a moment that is still to come', () => {
  const moment = { happenedAt: '2026-11-02T15:00:00.000Z', now: '2026-11-02T13:00:00.000Z' }
  const pot = { potId: newId(), name: 'x', volumeL: 5, material: 'enamel' } as const
  expect(refused('pot-recorded', pot, moment)).toEqual([
    { code: 'happened-after-written', value: '2026-11-02T15:00:00.000Z', max: '2026-11-02T13:00:00.000Z' },
  ])
  expect(refused('pot-recorded', pot, { ...moment, happenedAt: moment.now })).toEqual([])
})

test('[J53] what was asked about can still be told: the author writes it and the fold keeps the question', () => {
  const lotId = lot()
  const body = { lotId, massKg: 9, how: 'eaten' } as const
  expect(propose(facts, 'lot-used', body).ok).toBe(false)
  tell('lot-used', body)
  expect(facts.cornLots[lotId]!.uses).toHaveLength(1)
  expect(facts.questions.map(({ code }) => code)).toEqual(['question-corn-used-beyond'])
})
