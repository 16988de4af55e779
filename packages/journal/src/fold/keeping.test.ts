import { describe, expect, test } from 'vitest'
import { checkBody } from '../kinds/index.ts'
import { propose } from '../propose.ts'
import { testKitchen } from '../testing/invented.ts'
import { applyEntries, foldFacts } from './fold.ts'

function crib() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const [lotId, jarsId] = [kitchen.newId(), kitchen.newId()]
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
