import fc from 'fast-check'
import { describe, expect, test } from 'vitest'
import type { StoredEntry } from '../envelope.ts'
import { checkBody, type Kind } from '../kinds/index.ts'
import { propose } from '../propose.ts'
import { testKitchen } from '../testing/invented.ts'
import { foldFacts } from './fold.ts'

/** Invented: the reserve of Kettlebrook Hollow, put by in two tins. */
function reserve() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const seedLotId = kitchen.newId()
  const lot = {
    seedLotId,
    name: 'Heron Foot flint',
    seasonYear: 2026,
    putByOn: '2026-10-20',
    source: 'own',
    parentEarsCount: 60,
    kernelsPerEarCount: 17,
    containers: [
      { container: 'tin 1', place: 'back room', kernelsCount: 510 },
      { container: 'tin 2', place: 'at the neighbour', kernelsCount: 510 },
    ],
  } as const
  const entries = [
    author.write('seed-lot-recorded', lot),
    author.write('germination-tested', { seedLotId, testedOn: '2027-04-02', sproutedCount: 46, ofCount: 50 }),
    author.write('seed-given', { seedLotId, givenOn: '2027-04-10', kernelsCount: 200, toWhom: 'a niece' }),
    author.write('seed-sown', { seedLotId, sownOn: '2027-05-14', kernelsCount: 327 }),
    author.write('off-types-counted', {
      seedLotId,
      countedOn: '2027-09-20',
      what: 'ears',
      offTypesCount: 2,
      ofCount: 180,
    }),
    author.write('germination-tested', { seedLotId, testedOn: '2026-11-05', sproutedCount: 10, ofCount: 10 }),
    author.write('seed-store-noted', { seedLotId, notedOn: '2027-01-10', storeC: 8, kernelWetFraction: 0.11 }),
  ]
  return { kitchen, author, seedLotId, lot, entries }
}

describe('a seed lot in the facts', () => {
  test('[J21] tells its tests by their day and where its kernels went, in any order', () => {
    const { entries, seedLotId } = reserve()
    const facts = foldFacts(entries)
    const lot = facts.seedLots[seedLotId]!
    expect(lot.tests.map(({ testedOn }) => testedOn)).toEqual(['2026-11-05', '2027-04-02'])
    // 60 x 17 = 1020 put by; 50 + 10 tested, 200 given, 327 sown.
    expect(lot.kernels).toEqual({ putByCount: 1020, testedCount: 60, givenCount: 200, sownCount: 327, leftCount: 433 })
    expect(lot.offTypes).toHaveLength(1)
    expect(lot.storeNotes[0]).toMatchObject({ storeC: 8 })
    expect(facts.questions).toEqual([])
    expect(JSON.stringify(foldFacts(entries.toReversed()))).toBe(JSON.stringify(facts))
  })

  test('[J24] kernels balance over any years of tests, gifts and sowings', () => {
    const act = fc.record({
      kind: fc.constantFrom('germination-tested', 'seed-given', 'seed-sown'),
      kernels: fc.integer({ min: 1, max: 500 }),
      year: fc.integer({ min: 2027, max: 2040 }),
    })
    fc.assert(
      fc.property(fc.array(act, { maxLength: 40 }), (acts) => {
        const { author, seedLotId, lot } = reserve()
        const entries: StoredEntry[] = [author.write('seed-lot-recorded', lot)]
        for (const { kind, kernels, year } of acts) {
          const on = `${year}-04-02`
          if (kind === 'germination-tested')
            entries.push(author.write(kind, { seedLotId, testedOn: on, sproutedCount: 0, ofCount: kernels }))
          else if (kind === 'seed-given')
            entries.push(author.write(kind, { seedLotId, givenOn: on, kernelsCount: kernels }))
          else entries.push(author.write('seed-sown', { seedLotId, sownOn: on, kernelsCount: kernels }))
        }
        const { kernels } = foldFacts(entries).seedLots[seedLotId]!
        const taken = acts.reduce((sum, one) => sum + one.kernels, 0)
        expect(kernels!.testedCount + kernels!.givenCount + kernels!.sownCount).toBe(taken)
        expect(kernels!.leftCount + taken).toBe(1020)
      }),
      { numRuns: 30 },
    )
  })

  test('[J24] a weight counts as kernels only with the kernels of an ounce; else nothing is balanced', () => {
    const { author, kitchen, lot } = reserve()
    const { parentEarsCount: _, kernelsPerEarCount: __, ...uncounted } = lot
    const weighed = kitchen.newId()
    const unknown = kitchen.newId()
    const facts = foldFacts([
      author.write('seed-lot-recorded', { ...uncounted, seedLotId: weighed, massKg: 0.45359237, kernelsPerOz: 110 }),
      author.write('seed-lot-recorded', { ...uncounted, seedLotId: unknown, massKg: 0.5 }),
    ])
    expect(facts.seedLots[weighed]!.kernels!.leftCount).toBe(1760) // 16 oz of 110
    expect(facts.seedLots[unknown]!.kernels).toBeNull()
  })

  test('[J50] a test of seed nobody recorded is asked about', () => {
    const { entries } = reserve()
    const { questions, seedLots } = foldFacts(entries.slice(1, 2))
    expect(seedLots).toEqual({})
    expect(questions.map(({ code }) => code)).toEqual(['question-story-without-beginning'])
  })

  test('[J51] seed must be known, nothing is before it was put by, and no more is taken than is left', () => {
    const { entries, seedLotId, kitchen } = reserve()
    const facts = foldFacts(entries)
    const gift = { seedLotId, givenOn: '2027-06-01', kernelsCount: 433 }
    expect(propose(facts, 'seed-given', gift)).toEqual({ ok: true })
    expect(propose(facts, 'seed-given', { ...gift, kernelsCount: 434 })).toMatchObject({
      refusals: [{ code: 'seed-used-beyond', params: { value: 434, max: 433, name: 'Heron Foot flint' } }],
    })
    expect(propose(facts, 'seed-given', { ...gift, givenOn: '2026-10-19' })).toMatchObject({
      refusals: [{ code: 'before-seed-put-by', params: { value: '2026-10-19', min: '2026-10-20' } }],
    })
    expect(propose(facts, 'seed-given', { ...gift, seedLotId: kitchen.newId() })).toMatchObject({
      refusals: [{ code: 'no-such-seed-lot' }],
    })
  })
})

describe('[J11] what a seed entry does not take', () => {
  const seedLotId = testKitchen().newId()
  const test1 = { seedLotId, testedOn: '2027-04-02', sproutedCount: 46, ofCount: 50 }
  test.each<[Kind, object, string, string]>([
    ['germination-tested', { ...test1, sproutedCount: 51 }, 'out-of-limits', 'sproutedCount'],
    ['germination-tested', { ...test1, sproutedCount: 0, ofCount: 0 }, 'out-of-limits', 'ofCount'],
    ['germination-tested', { ...test1, strongCount: 47 }, 'out-of-limits', 'strongCount'],
    ['germination-tested', { ...test1, replicates: [{ sproutedCount: 20, ofCount: 25 }] }, 'wrong-value', 'replicates'],
    ['seed-store-noted', { seedLotId, notedOn: '2027-01-10' }, 'amount-needed', 'storeC'],
    ['seed-given', { seedLotId, givenOn: '2027-01-10', kernelsCount: 0 }, 'out-of-limits', 'kernelsCount'],
    [
      'off-types-counted',
      { seedLotId, countedOn: '2027-09-01', what: 'ears', offTypesCount: 11, ofCount: 10 },
      'out-of-limits',
      'offTypesCount',
    ],
  ])('%s %j: %s at %s', (kind, body, code, field) => {
    const checked = checkBody(kind, body)
    expect(checked.ok ? [] : checked.refusals).toContainEqual({ code, params: expect.objectContaining({ field }) })
  })

  test('two halves that make the whole are taken', () => {
    const replicates = [
      { sproutedCount: 24, ofCount: 25 },
      { sproutedCount: 22, ofCount: 25 },
    ]
    expect(checkBody('germination-tested', { ...test1, replicates }).ok).toBe(true)
  })
})
