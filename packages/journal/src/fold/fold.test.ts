import { beforeEach, describe, expect, test } from 'vitest'
import type { Author, WriteOptions } from '../author.ts'
import { bodyHash, envelopeHash, type StoredEntry } from '../envelope.ts'
import type { BodyOf, Kind } from '../kinds/index.ts'
import { type TestKitchen, testKitchen } from '../testing/invented.ts'
import { applyEntries, foldFacts, NO_FACTS } from './fold.ts'
import { history } from './history.ts'

let kitchen: TestKitchen
let author: Author
let entries: StoredEntry[]
beforeEach(() => {
  kitchen = testKitchen()
  author = kitchen.author()
  entries = []
})

function tell<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions, by = author): StoredEntry {
  kitchen.clock.wait(1)
  const entry = by.write(kind, body, options)
  entries.push(entry)
  return entry
}

const at = (clock: string): WriteOptions => ({ happenedAt: { instant: `2026-11-02T${clock}:00.000Z` } })
const facts = () => foldFacts(entries)
const questions = (): string[] => facts().questions.map(({ code }) => code)

function lot(massKg: number, more: Partial<BodyOf<'corn-lot-brought-in'>> = {}): string {
  const lotId = kitchen.newId()
  const body = { name: 'Lantern flint', cornType: 'flint', form: 'shelled', asTyped: '', treatedSeed: false } as const
  tell('corn-lot-brought-in', { lotId, massKg, ...body, ...more })
  return lotId
}

function plan(corn: readonly { lotId: string; massKg: number }[]): string {
  const batchId = kitchen.newId()
  tell('batch-planned', { batchId, title: 'day one', inputs: {}, edition: 'e', codeVersion: '0', shown: {}, corn })
  return batchId
}

function canner(name: string): string {
  const cannerId = kitchen.newId()
  const capacity = { capacityPints: 9, capacityQuarts: 7 }
  tell('canner-recorded', { cannerId, name, gauges: ['dial'], ...capacity, rim: 'gasket', electric: false })
  return cannerId
}

function run(): string {
  const runId = kitchen.newId()
  tell('run-begun', {
    runId,
    cannerId: kitchen.newId(),
    cannerName: 'A',
    loadCode: 'A1',
    jarSize: 'pint',
    jarCount: 9,
    gauge: 'dial',
    requiredReadingPsi: 12,
    ventMin: 10,
    processMin: 60,
    edition: 'e',
    cardShown: {},
  })
  return runId
}

describe('order', () => {
  test('[J20] a run typed in afterwards lies in the order it happened, not the order it was written', () => {
    const runId = run()
    tell('run-event', { runId, event: { type: 'vent-closed' } }, at('10:08'))
    tell('run-event', { runId, event: { type: 'dipped', psi: 10 } }, at('10:49'))
    tell('run-event', { runId, event: { type: 'steam-steady' } }, at('09:58'))
    tell('run-event', { runId, event: { type: 'at-pressure' } }, at('10:17'))
    const told = facts().runs[runId]!.events.map(({ event, instant }) => `${instant.slice(11, 16)} ${event.type}`)
    expect(told).toEqual(['09:58 steam-steady', '10:08 vent-closed', '10:17 at-pressure', '10:49 dipped'])
  })

  test('[J20] events of one moment on one device stay in the order they were written', () => {
    const runId = run()
    // No waiting between them: ids made within one millisecond are in no order, the device's own count is.
    const readings = [15, 3, 14, 2, 13, 4, 12, 1]
    for (const psi of readings) {
      entries.push(author.write('run-event', { runId, event: { type: 'reading', psi } }, at('12:39')))
    }
    entries.reverse()
    const told = facts().runs[runId]!.events.map(({ event }) => event.type === 'reading' && event.psi)
    expect(told).toEqual(readings)
  })

  test('[J21] an entry handed in twice counts once, and facts already folded are left as they were', () => {
    const lotId = lot(4)
    const before = facts()
    const frozen = structuredClone(before)
    tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    const after = applyEntries(before, [...entries, ...entries])
    expect(after.cornLots[lotId]!.balance).toMatchObject({ eatenKg: 1, leftKg: 3 })
    expect(after.entryCount).toBe(2)
    expect(before).toEqual(frozen)
  })

  test('[J22] a late entry leaves other stories untouched', () => {
    const one = run()
    const two = run()
    const before = facts()
    tell('run-event', { runId: one, event: { type: 'lid-seated' } }, at('09:00'))
    const after = applyEntries(before, entries.slice(-1))
    expect(after.runs[one]!.events).toHaveLength(1)
    expect(after.runs[two]).toBe(before.runs[two])
  })

  test('entries of two kitchens are never folded together', () => {
    lot(1)
    const stranger = testKitchen(2)
    const foreign = stranger.author().write('entry-withdrawn', { withdrawsId: stranger.newId(), reason: 'x' })
    expect(() => applyEntries(facts(), [foreign])).toThrow('these entries are of two')
  })

  test('an empty book has empty facts', () => {
    expect(foldFacts([])).toEqual(NO_FACTS)
  })
})

describe('kitchen', () => {
  test('[J23] the latest word on each habit stands, the others stay as they were', () => {
    const { kitchenId } = kitchen
    tell('kitchen-opened', { kitchenId, name: 'Ostrey Point', demo: true })
    tell('kitchen-noted', { kitchenId, elevationM: 249.936, elevationKnownBy: 'map', jarFill: 'half' })
    tell('kitchen-noted', { kitchenId, jarFill: 'third' })
    expect(facts().kitchen).toEqual({
      kitchenId,
      name: 'Ostrey Point',
      demo: true,
      elevationM: 249.936,
      elevationKnownBy: 'map',
      jarFill: 'third',
    })
  })
})

describe('corn balance', () => {
  test('[J24] every gram is named: 10 kg of ears through cobs, sorting, seed, a batch and a gift', () => {
    const lotId = lot(10, { form: 'ears' })
    expect(facts().cornLots[lotId]!.balance).toMatchObject({ leftKg: 10, leftAs: 'ears' })
    tell('corn-shelled', { lotId, earsKg: 5, shelledKg: 4 })
    expect(facts().cornLots[lotId]!.balance).toMatchObject({ cobsKg: 1, leftKg: 9, leftAs: 'both' })
    tell('corn-shelled', { lotId, shelledKg: 4 }) // all ears that were left: 5 kg
    tell('corn-sorted', { entityId: lotId, entity: 'lot', when: 'dry', removedKg: 0.5 })
    const seed = { seedId: kitchen.newId(), lotId, seasonYear: 2026, how: 'by-weight', massKg: 0.25 } as const
    tell('seed-put-by', { ...seed, plantingsCount: 2, places: ['attic', 'neighbour'] })
    const batchId = plan([{ lotId, massKg: 4 }])
    tell('lot-used', { lotId, massKg: 1, how: 'given', toWhom: 'a niece' })
    expect(facts().cornLots[lotId]!.balance).toMatchObject({ usedInBatchesKg: 0, setAsideKg: 4, leftKg: 6.25 })
    tell('cook-noted', { batchId, potLoad: 1, seen: { type: 'boil' } })
    expect(facts().cornLots[lotId]!.balance).toEqual({
      broughtInKg: 10,
      cobsKg: 2,
      sortedOutKg: 0.5,
      seedKg: 0.25,
      usedInBatchesKg: 4,
      eatenKg: 0,
      givenKg: 1,
      discardedKg: 0,
      leftKg: 2.25,
      leftAs: 'shelled',
      setAsideKg: 0,
    })
    expect(facts().batches[batchId]!.cornUsed).toEqual([{ lotId, massKg: 4 }])
    expect(questions()).toEqual([])
  })

  test('[J24] what was told as used in a batch stands before what its plan meant to take', () => {
    const lotId = lot(6)
    const batchId = plan([{ lotId, massKg: 4 }])
    tell('stage-noted', { batchId, potLoad: 1, stageId: 'cook', what: 'begun' })
    tell('lot-used', { lotId, massKg: 3, how: 'used-in-batch', batchId })
    expect(facts().cornLots[lotId]!.balance).toMatchObject({ usedInBatchesKg: 3, leftKg: 3, setAsideKg: 0 })
    expect(facts().batches[batchId]!.cornUsed).toEqual([{ lotId, massKg: 3 }])
  })

  test('[J24] a lot told by volume only has no balance rather than a guessed one', () => {
    const lotId = kitchen.newId()
    const body = { name: 'x', cornType: 'dent', form: 'shelled', asTyped: '6 liquid qt', treatedSeed: false } as const
    tell('corn-lot-brought-in', { lotId, volumeL: 5.678, ...body })
    expect(facts().cornLots[lotId]!.balance).toBeNull()
  })
})

describe('stories', () => {
  test('a batch keeps its plans, stages, cook, sorting and what alkali was added', () => {
    const batchId = plan([])
    const alkaliLotId = kitchen.newId()
    expect(facts().batches[batchId]!.begun).toBe(false)
    tell('cook-noted', { batchId, potLoad: 2, seen: { type: 'alkali-added', alkaliLotId, cups: 0.5 } })
    tell('cook-noted', { batchId, potLoad: 2, seen: { type: 'rubbed', slippedCount: 17, ofCount: 20 } })
    tell('corn-sorted', { entityId: batchId, entity: 'batch', when: 'wet', removedKg: 0.2 })
    tell('batch-planned', { batchId, title: 'again', inputs: 1, edition: 'e', codeVersion: '0', shown: {} })
    const batch = facts().batches[batchId]!
    expect(batch).toMatchObject({ begun: true, plan: { title: 'again' }, earlierPlans: [{ title: 'day one' }] })
    expect(batch.additions).toEqual([{ potLoad: 2, alkaliLotId, cups: 0.5, at: batch.cook[0]!.at }])
    expect(batch.sorts).toMatchObject([{ removedKg: 0.2 }])
  })

  test('the last judgement of an ash stands, and before any it is unknown', () => {
    const alkaliLotId = kitchen.newId()
    tell('alkali-lot-recorded', { alkaliLotId, name: 'M-0', alkali: 'ash', lidded: false })
    expect(facts().alkaliLots[alkaliLotId]!.judged).toBe('unknown')
    tell('alkali-lot-judged', { alkaliLotId, judged: 'works', slipMin: 55 })
    tell('alkali-lot-judged', { alkaliLotId, judged: 'weak' })
    expect(facts().alkaliLots[alkaliLotId]).toMatchObject({ judged: 'weak', judgements: [{ slipMin: 55 }, {}] })
  })

  test('gauge tests lie by the day of the test, whenever they were told', () => {
    const cannerId = canner('A')
    const test = { cannerId, tester: 'extension office', readings: [], marksEveryPsi: 1, restsAtPsi: 0 }
    tell('gauge-tested', { ...test, testedOn: '2026-04-12' })
    tell('gauge-tested', { ...test, testedOn: '2019-05-01' })
    const days = facts().canners[cannerId]!.gaugeTests.map(({ testedOn }) => testedOn)
    expect(days).toEqual(['2019-05-01', '2026-04-12'])
  })

  test('jars put up are jars used and jars remaining', () => {
    const lotId = kitchen.newId()
    tell('food-put-up', { lotId, loadCode: 'A1', form: 'jar', jarSize: 'quart', count: 6, massKg: 6 })
    tell('lot-used', { lotId, count: 2, how: 'eaten' })
    tell('lot-used', { lotId, count: 1, how: 'given' })
    expect(facts().foodLots[lotId]).toMatchObject({ usedCount: 3, remainingCount: 3, remainingKg: 3 })
  })
})

describe('corrections and withdrawals', () => {
  test('[J25] a correction changes the facts; both bodies stay readable', () => {
    const lotId = lot(4)
    const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    const body = { lotId, massKg: 2, how: 'eaten' }
    const correction = tell('entry-corrected', { correctsId: used.envelope.id, body, reason: 'two, not one' })
    expect(facts().cornLots[lotId]!.balance).toMatchObject({ eatenKg: 2, leftKg: 2 })
    expect(applyEntries(foldFacts(entries.slice(0, 2)), [correction])).toEqual(facts())
    expect(history(facts(), used.envelope.id)).toMatchObject({
      entry: { body: { massKg: 1 } },
      amendments: [{ id: correction.envelope.id, body: { reason: 'two, not one' } }],
      standing: { body: { massKg: 2 } },
    })
  })

  test('[J25] a correction may say when it truly happened', () => {
    const runId = run()
    const closed = tell('run-event', { runId, event: { type: 'vent-closed' } }, at('10:08'))
    tell('run-event', { runId, event: { type: 'at-pressure' } }, at('10:17'))
    const { value } = closed.body!
    const happenedAt = '2026-11-02T10:28:00Z'
    tell('entry-corrected', { correctsId: closed.envelope.id, body: value, happenedAt, reason: 'read the wrong hand' })
    expect(facts().runs[runId]!.events.map(({ event, instant }) => [event.type, instant])).toEqual([
      ['at-pressure', '2026-11-02T10:17:00.000Z'],
      ['vent-closed', '2026-11-02T10:28:00.000Z'],
    ])
  })

  test('[J26] a withdrawal takes an entry out of the facts and can itself be withdrawn', () => {
    const lotId = lot(4)
    const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    const withdrawal = tell('entry-withdrawn', { withdrawsId: used.envelope.id, reason: 'told twice' })
    expect(facts().cornLots[lotId]!.balance!.leftKg).toBe(4)
    expect(history(facts(), used.envelope.id)).toMatchObject({ entry: { body: { massKg: 1 } }, standing: null })
    tell('entry-withdrawn', { withdrawsId: withdrawal.envelope.id, reason: 'no, it was so' })
    expect(facts().cornLots[lotId]!.balance!.leftKg).toBe(3)
  })

  test('[J26] works the same when it arrives before the entry it names', () => {
    const lotId = lot(4)
    const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    tell('entry-withdrawn', { withdrawsId: used.envelope.id, reason: 'told twice' })
    const [brought, use, withdrawal] = entries as [StoredEntry, StoredEntry, StoredEntry]
    const early = foldFacts([brought, withdrawal])
    expect(applyEntries(early, [use])).toEqual(facts())
    expect(early.cornLots[lotId]!.balance!.leftKg).toBe(4)
  })

  test('[J27] a correction its kind cannot read, or that would move the entry, changes nothing and is asked about', () => {
    const lotId = lot(4)
    const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    const moved = { lotId: kitchen.newId(), massKg: 1, how: 'eaten' }
    tell('entry-corrected', { correctsId: used.envelope.id, body: moved, reason: 'other lot' })
    expect(questions()).toEqual(['question-correction-unreadable'])
    tell('entry-corrected', { correctsId: used.envelope.id, body: { massKg: 'some' }, reason: 'x' })
    expect(questions()).toEqual(['question-correction-unreadable'])
    expect(facts().cornLots[lotId]!.balance!.eatenKg).toBe(1)
  })

  test('[J26] two amendments that name each other do not hang the fold', () => {
    const lotId = lot(4)
    const one = kitchen.newId()
    const two = kitchen.newId()
    const ring = [
      { id: one, names: two },
      { id: two, names: one },
    ].map(({ id, names }) => {
      const entry = author.write('entry-withdrawn', { withdrawsId: names, reason: 'ring' })
      const envelope = { ...entry.envelope, id }
      return { ...entry, envelope, hash: envelopeHash(envelope) }
    })
    expect(foldFacts([...entries, ...ring]).cornLots[lotId]!.balance!.leftKg).toBe(4)
  })
})

describe('kept and not read', () => {
  test('[J28] a newer kind or version is kept and listed, and read by a program that knows it', () => {
    lot(1)
    const { envelope, body } = entries[0]!
    const newer = { ...envelope, id: kitchen.newId(), kind: 'moon-phase-noted', kindVersion: 3 }
    const all = [...entries, { envelope: newer, hash: envelopeHash(newer), body }]
    expect(foldFacts(all)).toMatchObject({
      entryCount: 2,
      unread: [{ entryId: newer.id, kind: 'moon-phase-noted', kindVersion: 3, why: 'unknown-kind' }],
    })
  })

  test('[J28] a body past its limits from another program is kept, listed, and not counted', () => {
    lot(1)
    const value = { ...(entries[0]!.body!.value as object), massKg: -7 }
    const body = { salt: entries[0]!.body!.salt, value }
    const envelope = { ...entries[0]!.envelope, bodyHash: bodyHash(body) }
    const folded = foldFacts([{ envelope, hash: envelopeHash(envelope), body }])
    expect(folded.cornLots).toEqual({})
    expect(folded.unread).toMatchObject([{ why: 'unreadable-body' }])
  })

  test('[J29] an erased body leaves the facts, whichever copy arrives first', () => {
    const lotId = lot(4)
    const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    const erased = { ...used, body: null }
    const wholeFirst = applyEntries(facts(), [erased])
    const erasedFirst = applyEntries(foldFacts([entries[0]!, erased]), [used])
    expect(wholeFirst).toEqual(erasedFirst)
    expect(wholeFirst.cornLots[lotId]!.balance!.leftKg).toBe(4)
    expect(wholeFirst.unread).toMatchObject([{ entryId: used.envelope.id, why: 'erased' }])
  })
})

describe('two lines that claim one id', () => {
  test('[J29] every device picks the same one and asks, whichever arrives first', () => {
    const lotId = lot(4)
    const used = tell('lot-used', { lotId, massKg: 1, how: 'eaten' })
    const body = { salt: used.body!.salt, value: { lotId, massKg: 2, how: 'eaten' } }
    const envelope = { ...used.envelope, bodyHash: bodyHash(body) }
    const rival = { envelope, hash: envelopeHash(envelope), body }
    const one = applyEntries(facts(), [rival])
    const other = applyEntries(foldFacts([entries[0]!, rival]), [used])
    expect(one).toEqual(other)
    expect(one.questions.map(({ code }) => code)).toEqual(['question-two-entries-one-id'])
    expect(one.entryCount).toBe(2)
  })
})

describe('[J50] questions: both sides are kept and people are asked', () => {
  test('two canners with one name, whatever the case and spaces', () => {
    canner('Old  Faithful')
    expect(questions()).toEqual([])
    const second = canner('old faithful ')
    expect(facts().questions).toMatchObject([
      { code: 'question-two-canners-one-name', params: { name: 'Old  Faithful', count: 2 } },
    ])
    expect(Object.keys(facts().canners)).toContain(second)
  })

  test('corn used beyond what was brought in, and more ears shelled than there were', () => {
    const lotId = lot(4)
    tell('lot-used', { lotId, massKg: 3, how: 'eaten' })
    tell('lot-used', { lotId, massKg: 3, how: 'eaten' })
    const ears = lot(4, { form: 'ears', name: 'braids' })
    tell('corn-shelled', { lotId: ears, earsKg: 6, shelledKg: 3 })
    expect(facts().questions.map(({ code, params }) => [code, params.name])).toEqual([
      ['question-corn-used-beyond', 'Lantern flint'],
      ['question-corn-used-beyond', 'braids'],
    ])
    expect(facts().cornLots[lotId]!.balance!.leftKg).toBe(-2)
  })

  test('a lot used up to the last tenth raises none: 0.1 + 0.2 of 0.3 kg', () => {
    const lotId = lot(0.3)
    tell('lot-used', { lotId, massKg: 0.1, how: 'eaten' })
    tell('lot-used', { lotId, massKg: 0.2, how: 'eaten' })
    expect(questions()).toEqual([])
  })

  test('a lot eaten twice', () => {
    const lotId = kitchen.newId()
    tell('food-put-up', { lotId, loadCode: 'A1', form: 'jar', jarSize: 'quart', count: 6 })
    tell('lot-used', { lotId, count: 6, how: 'eaten' })
    tell('lot-used', { lotId, count: 6, how: 'eaten' })
    expect(facts().questions).toMatchObject([
      { code: 'question-lot-eaten-twice', params: { name: 'A1', count: 6, usedCount: 12 } },
    ])
    expect(facts().foodLots[lotId]!.remainingCount).toBe(-6)
  })

  test('seed over the whole lot, and dressed seed corn told as food', () => {
    const lotId = lot(1, { treatedSeed: true })
    const seed = { seedId: kitchen.newId(), lotId, seasonYear: 2026, how: 'by-weight', massKg: 2 } as const
    tell('seed-put-by', { ...seed, plantingsCount: 2, places: [] })
    tell('lot-used', { lotId, massKg: 0.1, how: 'eaten' })
    expect(questions()).toEqual(['question-seed-over-lot', 'question-corn-used-beyond', 'question-treated-seed-used'])
  })

  test('two people telling two times of heat off for one run; one person turning it off twice is not asked', () => {
    const runId = run()
    tell('run-event', { runId, event: { type: 'heat-off' } }, at('11:17'))
    tell('run-event', { runId, event: { type: 'heat-off' } }, at('11:56'))
    expect(questions()).toEqual([])
    const helper = kitchen.author({ personId: kitchen.newId() })
    tell('run-event', { runId, event: { type: 'heat-off' } }, at('11:58'), helper)
    expect(facts().questions).toMatchObject([
      {
        code: 'question-two-heat-off-times',
        params: { firstAt: '2026-11-02T11:17:00.000Z', otherAt: '2026-11-02T11:58:00.000Z' },
      },
    ])
    expect(facts().runs[runId]!.events).toHaveLength(3)
  })

  test('events of a run whose beginning is still on another device', () => {
    const runId = kitchen.newId()
    tell('run-event', { runId, event: { type: 'lid-seated' } })
    expect(facts().questions).toMatchObject([
      { code: 'question-story-without-beginning', entities: [`run:${runId}`], entryIds: [entries[0]!.envelope.id] },
    ])
    expect(facts().runs).toEqual({})
  })

  test('something said to have happened well after it was written', () => {
    const runId = run()
    tell('run-event', { runId, event: { type: 'lid-seated' } }, at('23:00'))
    expect(questions()).toEqual(['question-happened-after-written'])
  })
})
