import { describe, expect, test } from 'vitest'
import { checkBody } from '../kinds/index.ts'
import { propose } from '../propose.ts'
import { testKitchen } from '../testing/invented.ts'
import { applyEntries, foldFacts } from './fold.ts'

function crib() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const lotId = kitchen.newId()
  const jarsId = kitchen.newId()
  const corn = { lotId, name: 'Lantern flint', cornType: 'flint', form: 'shelled', asTyped: '9 lb' } as const
  const entries = [
    author.write('corn-lot-brought-in', { ...corn, massKg: 4, treatedSeed: false }),
    author.write('food-put-up', {
      lotId: jarsId,
      loadCode: 'OSTR-1',
      form: 'jar',
      jarSize: 'pint',
      count: 6,
      massKg: 3,
    }),
  ]
  return { kitchen, author, entries, lotId, jarsId }
}

describe('corn in store', () => {
  test('keeps its tests and its places by their own days, however late they were told', () => {
    const { author, entries, lotId } = crib()
    entries.push(
      author.write('moisture-tested', { lotId, testedOn: '2026-12-01', by: 'oven', wetFraction: 0.13 }),
      author.write('moisture-tested', { lotId, testedOn: '2026-11-01', by: 'closed-jar', wetFraction: 0.16 }),
      author.write('store-condition-noted', { lotId, notedOn: '2026-11-20', temperatureC: 8, place: 'attic' }),
      author.write('store-condition-noted', { lotId, notedOn: '2026-10-20', temperatureC: 15 }),
    )
    const lot = foldFacts(entries).cornLots[lotId]!
    expect(lot.moistureTests.map(({ wetFraction }) => wetFraction)).toEqual([0.16, 0.13])
    expect(lot.storeNotes.map(({ temperatureC }) => temperatureC)).toEqual([15, 8])
    expect(applyEntries(foldFacts(entries.slice(0, 3)), entries.slice(3)).cornLots).toEqual(foldFacts(entries).cornLots)
  })

  test('a test without a figure says at least whether salt clung', () => {
    const { lotId } = crib()
    const body = { lotId, testedOn: '2026-12-01', by: 'salt-jar' }
    expect(checkBody('moisture-tested', body)).toMatchObject({ ok: false, refusals: [{ code: 'amount-needed' }] })
    expect(checkBody('moisture-tested', { ...body, saltClung: false }).ok).toBe(true)
    // Percent typed for a fraction, and a basis that is not the wet one.
    expect(checkBody('moisture-tested', { ...body, wetFraction: 13 }).ok).toBe(false)
    expect(checkBody('moisture-tested', { ...body, dryFraction: 0.15 }).ok).toBe(false)
  })
})

describe('a jar opened', () => {
  test('is gone from the shelf, with what was found', () => {
    const { author, entries, jarsId } = crib()
    entries.push(
      author.write('food-opened', { lotId: jarsId, count: 1, found: 'good' }),
      author.write('food-opened', { lotId: jarsId, count: 1, found: 'bulged' }),
      author.write('lot-used', { lotId: jarsId, count: 1, how: 'given' }),
    )
    const facts = foldFacts(entries)
    expect(facts.foodLots[jarsId]).toMatchObject({ usedCount: 3, remainingCount: 3, remainingKg: 1.5 })
    expect(facts.foodLots[jarsId]!.openings.map(({ found }) => found)).toEqual(['good', 'bulged'])
    expect(propose(facts, 'food-opened', { lotId: jarsId, count: 4, found: 'good' })).toMatchObject({
      ok: false,
      refusals: [{ code: 'used-more-than-remaining' }],
    })
  })
})

test('a recall and its drill are told, and found again', () => {
  const { kitchen, author, entries } = crib()
  const recallId = kitchen.newId()
  const body = { recallId, drill: true, by: 'canner', about: 'B', loadCodes: ['OSTR-1'], jarsCount: 6 } as const
  entries.push(author.write('recall-noted', { ...body, toldHouseholds: ['house 4'], tookMin: 12 }))
  expect(foldFacts(entries).recalls[recallId]).toMatchObject({ drill: true, jarsCount: 6, tookMin: 12 })
})

describe('what is done to kept food', () => {
  test('it stands where it was moved last', () => {
    const { author, entries, jarsId } = crib()
    entries.push(
      author.write('food-moved', { lotId: jarsId, place: 'attic' }),
      author.write('food-moved', { lotId: jarsId, place: 'cellar' }),
    )
    expect(foldFacts(entries).foodLots[jarsId]!.place).toBe('cellar')
  })

  test('a pan cools from the moment it left the heat, with its readings, until it is put away', () => {
    const { kitchen, author, entries } = crib()
    const coolingId = kitchen.newId()
    const off = author.write('cooling-noted', { coolingId, seen: { type: 'off-heat', what: 'the big pot' } })
    kitchen.clock.wait(40)
    entries.push(
      off,
      author.write('cooling-noted', { coolingId, seen: { type: 'read', temperatureC: 38, aroundC: 4 } }),
    )
    const cooling = foldFacts(entries).coolings[coolingId]!
    expect(cooling).toMatchObject({ what: 'the big pot', ended: null })
    expect(cooling.at.instant).toBe(off.envelope.happenedAt.instant)
    expect(cooling.readings.map(({ temperatureC }) => temperatureC)).toEqual([38])
    entries.push(author.write('cooling-noted', { coolingId, seen: { type: 'ended', how: 'fridge' } }))
    expect(foldFacts(entries).coolings[coolingId]!.ended).toMatchObject({ how: 'fridge' })
  })

  test('a tray that grew heavier is asked about, and kept when it was so', () => {
    const { kitchen, author, entries } = crib()
    const dryingId = kitchen.newId()
    const begun = { type: 'begun', name: 'tray 1', what: 'hominy', massKg: 5 } as const
    entries.push(
      author.write('drying-noted', { dryingId, seen: { ...begun, startWetFraction: 0.75, endWetFraction: 0.1 } }),
      author.write('drying-noted', { dryingId, seen: { type: 'weighed', massKg: 3.2 } }),
    )
    const facts = foldFacts(entries)
    const heavier = { dryingId, seen: { type: 'weighed', massKg: 3.3 } } as const
    expect(propose(facts, 'drying-noted', heavier)).toMatchObject({
      ok: false,
      refusals: [{ code: 'heavier-while-drying', params: { value: { value: 3.3 }, max: { value: 3.2 } } }],
    })
    expect(propose(facts, 'drying-noted', { dryingId, seen: { type: 'weighed', massKg: 3.2 } }).ok).toBe(true)
    entries.push(author.write('drying-noted', heavier))
    expect(foldFacts(entries).dryings[dryingId]!.weights.map(({ massKg }) => massKg)).toEqual([3.2, 3.3])
  })

  test('a line told before its beginning is asked about, and belongs to it once that arrives', () => {
    const { kitchen, author, entries } = crib()
    const coolingId = kitchen.newId()
    const off = author.write('cooling-noted', { coolingId, seen: { type: 'off-heat', what: 'a pan' } })
    const read = author.write('cooling-noted', { coolingId, seen: { type: 'read', temperatureC: 60 } })
    const early = foldFacts([...entries, read])
    expect(early.questions.map(({ code }) => code)).toContain('question-story-without-beginning')
    expect(applyEntries(early, [off]).coolings[coolingId]!.readings).toHaveLength(1)
  })

  test('[J24] corn parched straight from its lot counts with what the kettle took', () => {
    const { kitchen, author, entries, lotId } = crib()
    const parchedId = kitchen.newId()
    entries.push(
      author.write('food-put-up', { lotId: parchedId, loadCode: 'OSTR-3', form: 'roasted', count: 1, massKg: 0.9 }),
      author.write('lot-used', { lotId, massKg: 1, how: 'made-into', intoLotId: parchedId }),
    )
    expect(foldFacts(entries).cornLots[lotId]!.balance).toMatchObject({ usedInBatchesKg: 1, leftKg: 3 })
  })

  test('flour is told with what went into it, and takes no more out of the mill than went in', () => {
    const { kitchen, author, entries, jarsId } = crib()
    const flourId = kitchen.newId()
    entries.push(
      author.write('food-put-up', { lotId: flourId, loadCode: 'OSTR-2', form: 'flour', count: 1, massKg: 0.97 }),
      author.write('food-worked', { lotId: flourId, how: 'ground', fromLotId: jarsId, inKg: 1, outKg: 0.97 }),
      author.write('lot-used', { lotId: jarsId, count: 2, massKg: 1, how: 'made-into', intoLotId: flourId }),
    )
    const facts = foldFacts(entries)
    expect(facts.foodLots[flourId]!.workings).toMatchObject([{ how: 'ground', inKg: 1 }])
    expect(facts.foodLots[jarsId]).toMatchObject({ remainingCount: 4, remainingKg: 2 })
    expect(
      propose(facts, 'food-worked', { lotId: flourId, how: 'ground', fromLotId: jarsId, inKg: 1, outKg: 1.1 }),
    ).toMatchObject({ ok: false, refusals: [{ code: 'heavier-than-before' }] })
    expect(propose(facts, 'lot-used', { lotId: jarsId, count: 1, how: 'made-into', intoLotId: jarsId })).toMatchObject({
      ok: false,
      refusals: [{ code: 'made-into-itself' }],
    })
  })
})
