import { foldFacts, type StoredEntry } from '@crib/journal'
import { balanceOfYear, becameInYear, yearsOf } from '@crib/planning/year'
import { expect, test } from 'vitest'
import { testKitchen } from '../../../../packages/journal/src/testing/invented.ts'
import { nextThing } from './next-thing.ts'

const TELLING = testKitchen()
const { clock, newId: id } = TELLING
clock.set('2026-11-14T10:00:00.000Z')

function kitchen() {
  const author = TELLING.author()
  const entries: StoredEntry[] = [
    author.write('kitchen-opened', { kitchenId: TELLING.kitchenId, name: 'Kettlebrook Hollow', demo: true }),
  ]
  return { author, entries }
}

/** 24 kg of ears: 5 cobs, 1.4 sorted out, 0.6 seed, 5.4 to the kettle, 2.1 eaten, 1 given; 8.5 is left. */
function aYear() {
  const { author, entries } = kitchen()
  const lotId = id()
  entries.push(
    author.write('corn-lot-brought-in', {
      lotId,
      name: 'Heron Foot flint',
      cornType: 'flint',
      form: 'ears',
      massKg: 24,
      asTyped: '24 kg',
      treatedSeed: false,
    }),
    author.write('corn-shelled', { lotId, earsKg: 24, shelledKg: 19 }),
    author.write('corn-sorted', { entityId: lotId, entity: 'lot', when: 'dry', removedKg: 1.4 }),
    author.write('seed-put-by', {
      seedId: id(),
      lotId,
      seasonYear: 2026,
      how: 'by-weight',
      massKg: 0.6,
      plantingsCount: 2,
      places: ['tin', 'cellar'],
    }),
    author.write('lot-used', { lotId, massKg: 5.4, how: 'used-in-batch', batchId: id() }),
    author.write('lot-used', { lotId, massKg: 2.1, how: 'eaten' }),
    author.write('lot-used', { lotId, massKg: 1, how: 'given', toWhom: 'a niece' }),
  )
  return { author, entries, lotId }
}

test('every strand is a weight from the book, in the order the braid splits', () => {
  const { strands, broughtInKg } = balanceOfYear(foldFacts(aYear().entries), 2026)
  expect(broughtInKg).toBe(24)
  expect(strands.map(({ id, massKg }) => [id, Number(massKg.toFixed(6))])).toEqual([
    ['cobs', 5],
    ['sorted-out', 1.4],
    ['seed', 0.6],
    ['kettle', 5.4],
    ['eaten', 2.1],
    ['given', 1],
    ['left', 8.5],
  ])
})

test('the strands add up to what was brought in, and only cobs, tails and throw-outs are gaps', () => {
  const { strands, broughtInKg } = balanceOfYear(foldFacts(aYear().entries), 2026)
  expect(strands.reduce((sum, { massKg }) => sum + massKg, 0)).toBeCloseTo(broughtInKg, 9)
  expect(strands.filter(({ isGap }) => isGap).map(({ id }) => id)).toEqual(['cobs', 'sorted-out'])
})

test('more used than there was is told, not hidden in a strand below zero', () => {
  const { author, entries, lotId } = aYear()
  entries.push(author.write('lot-used', { lotId, massKg: 10, how: 'eaten' }))
  const balance = balanceOfYear(foldFacts(entries), 2026)
  expect(balance.overdrawnKg).toBeCloseTo(1.5, 9)
  expect(balance.strands.every(({ massKg }) => massKg >= 0)).toBe(true)
})

test('a lot told by measure only is named and not drawn', () => {
  const { author, entries } = kitchen()
  entries.push(
    author.write('corn-lot-brought-in', {
      lotId: id(),
      name: 'Lantern flint',
      cornType: 'flint',
      form: 'ears',
      volumeL: 35,
      asTyped: '1 bu',
      treatedSeed: false,
    }),
  )
  const balance = balanceOfYear(foldFacts(entries), 2026)
  expect(balance.broughtInKg).toBe(0)
  expect(balance.unweighed.map(({ asTyped }) => asTyped)).toEqual(['1 bu'])
})

test('a lot belongs to the year it came in where the people were', () => {
  const { author, entries } = kitchen()
  entries.push(
    author.write(
      'corn-lot-brought-in',
      {
        lotId: id(),
        name: 'Lantern flint',
        cornType: 'flint',
        form: 'shelled',
        massKg: 4,
        asTyped: '4 kg',
        treatedSeed: false,
      },
      { happenedAt: { instant: '2026-01-01T03:00:00.000Z' } }, // still New Year's Eve in Toronto
    ),
  )
  expect(yearsOf(foldFacts(entries))).toEqual([2025])
})

test('the next thing is corn, then seed, then a plan, then the kettle', () => {
  const { author, entries } = kitchen()
  expect(nextThing(foldFacts(entries), clock.now()).say).toBe('shell:bring-in')
  const lotId = id()
  entries.push(
    author.write('corn-lot-brought-in', {
      lotId,
      name: 'Lantern flint',
      cornType: 'flint',
      form: 'shelled',
      massKg: 4,
      asTyped: '4 kg',
      treatedSeed: false,
    }),
  )
  expect(nextThing(foldFacts(entries), clock.now()).say).toBe('shell:next-seed')
  entries.push(
    author.write('seed-put-by', {
      seedId: id(),
      lotId,
      seasonYear: 2026,
      how: 'by-eye',
      plantingsCount: 2,
      places: ['tin'],
    }),
  )
  expect(nextThing(foldFacts(entries), clock.now()).say).toBe('shell:next-plan')
  const batchId = id()
  entries.push(
    author.write('batch-planned', {
      batchId,
      title: 'Saturday',
      inputs: {},
      edition: 'e',
      codeVersion: '0',
      shown: {},
    }),
    author.write('cook-noted', { batchId, potLoad: 1, seen: { type: 'boil' } }),
  )
  expect(nextThing(foldFacts(entries), clock.now())).toMatchObject({
    say: 'shell:next-kettle',
    href: `/kettle/${batchId}`,
  })
})

test('seed is the next thing again when the next harvest comes in, and not for dressed seed corn bought in spring', () => {
  const { author, entries } = kitchen()
  const corn = (name: string, instant: string, treatedSeed = false) =>
    entries.push(
      author.write(
        'corn-lot-brought-in',
        { lotId: id(), name, cornType: 'flint', form: 'shelled', massKg: 4, asTyped: '4 kg', treatedSeed },
        { happenedAt: { instant } },
      ),
    )
  corn('Lantern flint', '2025-10-05T15:00:00.000Z')
  entries.push(
    author.write(
      'seed-put-by',
      { seedId: id(), seasonYear: 2025, how: 'by-eye', plantingsCount: 2, places: ['tin'] },
      { happenedAt: { instant: '2025-10-06T15:00:00.000Z' } },
    ),
  )
  corn('Sweet dressed', '2026-04-20T15:00:00.000Z', true)
  expect(nextThing(foldFacts(entries), clock.now()).say).toBe('shell:next-plan')
  corn('Lantern flint', '2026-10-08T15:00:00.000Z')
  expect(nextThing(foldFacts(entries), clock.now()).say).toBe('shell:next-seed')
})

test('the next thing leads straight to the one open run, and to the list where several are open', () => {
  const { author, entries } = kitchen()
  const begin = (loadCode: string) => {
    const runId = id()
    entries.push(
      author.write('run-begun', {
        runId,
        cannerId: id(),
        cannerName: loadCode,
        loadCode,
        jarSize: 'pint',
        jarCount: 9,
        gauge: 'dial',
        requiredReadingPsi: 11,
        ventMin: 10,
        processMin: 60,
        edition: 'e',
        cardShown: {},
      }),
    )
    return runId
  }
  const runId = begin('A-1')
  expect(nextThing(foldFacts(entries), clock.now())).toMatchObject({
    say: 'shell:next-run',
    href: `/canner/run/${runId}`,
  })
  const second = begin('B-1')
  expect(nextThing(foldFacts(entries), clock.now()).href).toBe('/canner')
  entries.push(author.write('run-event', { runId: second, event: { type: 'abandoned' } }))
  expect(nextThing(foldFacts(entries), clock.now()).href).toBe(`/canner/run/${runId}`)
})

test('while planned pot-loads are left, the kettle stays the next thing for two days, and no longer', () => {
  const { author, entries, lotId } = aYear()
  const batchId = id()
  entries.push(
    author.write('batch-planned', {
      batchId,
      title: 'Saturday',
      inputs: {},
      edition: 'e',
      codeVersion: '0',
      shown: { potLoads: 2 },
      corn: [{ lotId, massKg: 1 }],
    }),
    author.write('cook-noted', { batchId, potLoad: 1, seen: { type: 'boil' } }),
    author.write('food-put-up', { lotId: id(), batchId, loadCode: 'K-1', form: 'freezer', count: 4 }),
  )
  const next = () => nextThing(foldFacts(entries), clock.now())
  expect(next()).toMatchObject({ why: 'shell:next-kettle-more-why', href: `/kettle/${batchId}` })
  expect(nextThing(foldFacts(entries), clock.now() + 3 * 86_400_000).say).toBe('shell:next-plan')
  entries.push(author.write('cook-noted', { batchId, potLoad: 2, seen: { type: 'boil' } }))
  expect(next().say).toBe('shell:next-plan')
})

test('what the kettle made of it is counted by its form, the year it was put up', () => {
  const { author, entries } = kitchen()
  const put = (form: 'jar' | 'freezer', count: number, instant?: string) =>
    entries.push(
      author.write(
        'food-put-up',
        { lotId: id(), loadCode: id().slice(-6), form, count },
        instant === undefined ? {} : { happenedAt: { instant } },
      ),
    )
  put('jar', 6)
  put('freezer', 4)
  put('jar', 5)
  put('jar', 9, '2025-11-14T10:00:00.000Z')
  expect(becameInYear(foldFacts(entries), 2026)).toEqual([
    { form: 'freezer', count: 4 },
    { form: 'jar', count: 11 },
  ])
})
