import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import fc from 'fast-check'
import { afterAll, beforeAll, describe, expect, test } from 'vitest'
import type { StoredEntry } from '../envelope.ts'
import { foldFacts } from '../fold/fold.ts'
import { history } from '../fold/history.ts'
import type { ServerStore } from '../server-store.ts'
import { openPostgresStore } from '../stores/postgres.ts'
import { openSqliteStore } from '../stores/sqlite.ts'
import { reenveloped, testKitchen } from '../testing/invented.ts'
import { play, step } from '../testing/played.ts'
import { type Cluster, POSTGRES_HERE, startCluster } from '../testing/postgres.ts'
import { openBook } from './book.ts'
import { FOLD_VERSION } from './catch-up.ts'
import { foldAnew } from './fold-anew.ts'

let cluster: Cluster | null = null
beforeAll(async () => {
  if (POSTGRES_HERE) cluster = await startCluster(['synchronous_commit=off'])
}, 60_000)
afterAll(() => cluster?.stop(), 30_000)

const STORES = [
  {
    name: 'sqlite',
    here: true,
    runs: 60,
    open: async (_: string): Promise<ServerStore> => openSqliteStore(':memory:'),
  },
  {
    name: 'postgres',
    here: POSTGRES_HERE,
    runs: 5,
    open: async (name: string): Promise<ServerStore> => openPostgresStore(await cluster!.url(name), { poolSize: 3 }),
  },
]

const inMemory = (entries: readonly StoredEntry[]) => {
  const { ledger: _, ...facts } = foldFacts(entries)
  return facts
}

for (const { name, here, runs, open } of STORES)
  describe.skipIf(!here)(`${name}: facts in tables`, () => {
    let count = 0
    const fresh = (): Promise<ServerStore> => {
      count += 1
      return open(`t${count}`)
    }

    test('[J75] are the facts of the fold in memory, however the entries came in and whatever was erased', {
      timeout: 120_000,
    }, async () => {
      await fc.assert(
        fc.asyncProperty(
          fc.array(step, { maxLength: 40 }),
          fc.array(fc.nat({ max: 30 }), { minLength: 1, maxLength: 12 }),
          async (steps, numbers) => {
            const store = await fresh()
            const { entries } = play(steps, true)
            const kept = [...entries]
            const kitchenId = entries[0]?.envelope.kitchenId ?? testKitchen().kitchenId
            const book = await openBook(store, kitchenId)
            const waiting = [...entries]
            for (let turn = 0; waiting.length > 0; turn += 1) {
              const number = numbers[turn % numbers.length]!
              await store.append(waiting.splice(0, 1 + (number % 7)))
              if (number % 3 === 0) await book.catchUp()
              if (number % 5 === 0) {
                const at = (number * 7) % kept.length
                const erased = await store.erase(kept[at]!.envelope.id)
                if (erased) kept[at] = { ...kept[at]!, body: null }
              }
            }
            await book.catchUp()
            const arrived = new Set((await store.read({ kitchenId })).entries.map(({ envelope }) => envelope.id))
            expect(arrived.size).toBe(entries.length)
            expect(JSON.stringify(await book.facts())).toBe(JSON.stringify(inMemory(kept)))
            // The same again, made anew from nothing.
            const state = await store.facts.state(kitchenId)
            if (state) {
              const { turn, ...next } = state
              await store.facts.change({ kitchenId, fromTurn: turn, next: { ...next, version: 'older' } })
            }
            const again = await openBook(store, kitchenId)
            expect(JSON.stringify(await again.facts())).toBe(JSON.stringify(inMemory(kept)))
            await store.close()
          },
        ),
        // Found by an earlier run: a line erased before it was ever folded.
        { numRuns: runs, examples: [[[{ what: 0, pick: 0, grams: 0, device: 0, minute: 0 }], [5, 0]]] },
      )
    })

    test('[J76] a warm start folds only the stories that new and late entries touch', async () => {
      const store = await fresh()
      const kitchen = testKitchen()
      const author = kitchen.author()
      const pot = (potId: string, potName: string) =>
        author.write('pot-recorded', { potId, name: potName, volumeL: 10, material: 'enamel' })
      const ids = Array.from({ length: 50 }, () => kitchen.newId())
      await store.append(ids.map((id) => pot(id, 'pot')))
      const book = await openBook(store, kitchen.kitchenId)
      const late = pot(ids[3]!, 'milk pail')
      await store.append([late])
      expect(await book.catchUp()).toMatchObject({ storyCount: 1, anew: false, entryCount: 51 })
      expect(await book.get('pots', ids[3]!)).toMatchObject({ name: 'milk pail' })
      expect(await (await openBook(store, kitchen.kitchenId)).catchUp()).toMatchObject({ storyCount: 0, anew: false })
      await store.close()
    })

    test('[J76] facts made by another version of the fold are made anew', async () => {
      const store = await fresh()
      const kitchen = testKitchen()
      const potId = kitchen.newId()
      await store.append([
        kitchen.author().write('pot-recorded', { potId, name: 'pot', volumeL: 10, material: 'enamel' }),
      ])
      await openBook(store, kitchen.kitchenId)
      const state = (await store.facts.state(kitchen.kitchenId))!
      expect(state.version).toBe(FOLD_VERSION)
      const wrong = [{ part: 'pots', id: potId, open: true, value: '{"name":"of an older fold"}' }]
      const next = { ...state, version: 'an older fold' }
      await store.facts.change({ kitchenId: kitchen.kitchenId, fromTurn: state.turn, next, facts: wrong })
      const book = await openBook(store, kitchen.kitchenId)
      expect(await book.get('pots', potId)).toMatchObject({ name: 'pot' })
      await store.close()
    })

    test('[J77] two programs that fold one book at once end with the same facts', async () => {
      const store = await fresh()
      const steps = Array.from({ length: 60 }, (_, i) => ({
        what: i % 12,
        pick: i % 8,
        grams: 100 + i,
        device: i % 3,
        minute: -i,
      }))
      const { entries } = play(steps, true)
      const { kitchenId } = entries[0]!.envelope
      const books = await Promise.all([openBook(store, kitchenId), openBook(store, kitchenId)])
      for (let at = 0; at < entries.length; at += 9) {
        await Promise.all([store.append(entries.slice(at, at + 9)), ...books.map((book) => book.catchUp())])
      }
      await Promise.all(books.map((book) => book.catchUp()))
      expect(JSON.stringify(await books[1]!.facts())).toBe(JSON.stringify(inMemory(entries)))
      await store.close()
    })

    test('[J78] what an erased body said is gone from the facts at once, before anybody folds again', async () => {
      const store = await fresh()
      const kitchen = testKitchen()
      const author = kitchen.author()
      const alkaliLotId = kitchen.newId()
      const lot = author.write('alkali-lot-recorded', { alkaliLotId, name: 'from Aunt Wrenfield', alkali: 'ash' })
      const corrected = { alkaliLotId, name: 'from Cousin Wrenfield', alkali: 'ash' }
      const correction = author.write('entry-corrected', {
        correctsId: lot.envelope.id,
        body: corrected,
        reason: 'who',
      })
      await store.append([lot, correction])
      const book = await openBook(store, kitchen.kitchenId)
      expect(await book.get('alkaliLots', alkaliLotId)).toMatchObject({ name: 'from Cousin Wrenfield' })
      await store.erase(correction.envelope.id, kitchen.kitchenId)
      expect(await book.get('alkaliLots', alkaliLotId)).toBeNull()
      await book.catchUp()
      expect(await book.get('alkaliLots', alkaliLotId)).toMatchObject({ name: 'from Aunt Wrenfield' })
      await store.close()
    })

    test('[J79] lists come in pages, newest first, of all or of what something is left of; history tells every word', async () => {
      const store = await fresh()
      const kitchen = testKitchen()
      const author = kitchen.author()
      const ids = Array.from({ length: 7 }, () => {
        kitchen.clock.wait(1)
        return kitchen.newId()
      })
      const jars = ids.map((lotId, i) =>
        author.write('food-put-up', { lotId, loadCode: `J${i}`, form: 'jar', jarSize: 'pint', count: 3 }),
      )
      const used = author.write('lot-used', { lotId: ids[5]!, count: 3, how: 'eaten' })
      const withdrawn = author.write('entry-withdrawn', { withdrawsId: jars[0]!.envelope.id, reason: 'never was' })
      await store.append([...jars, used, withdrawn])
      const book = await openBook(store, kitchen.kitchenId)
      const codes = async (query: Parameters<typeof book.list>[1]) =>
        (await book.list('foodLots', query)).map(({ loadCode }) => loadCode)
      expect(await codes({ limit: 3 })).toEqual(['J6', 'J5', 'J4'])
      expect(await codes({ limit: 3, after: ids[4]! })).toEqual(['J3', 'J2', 'J1'])
      expect(await codes({ onlyOpen: true, oldestFirst: true })).toEqual(['J1', 'J2', 'J3', 'J4', 'J6'])
      expect((await book.counts()).foodLots).toEqual({ all: 6, open: 5 })
      expect(await book.history(jars[0]!.envelope.id)).toEqual(
        history(foldFacts([...jars, used, withdrawn]), jars[0]!.envelope.id),
      )
      expect(await book.history(kitchen.newId())).toBeNull()
      await expect(async () => book.list('pots', { limit: 0 })).rejects.toThrow('limit is 0; a page holds 1 to 1000')
      await store.close()
    })

    test('[J13] a kind this version cannot read is kept aside, and taken into the facts once it can', async () => {
      const store = await fresh()
      const kitchen = testKitchen()
      const potId = kitchen.newId()
      const entry = kitchen.author().write('pot-recorded', { potId, name: 'pot', volumeL: 10, material: 'enamel' })
      await store.append([entry])
      const { kitchenId } = kitchen
      // As an older program would have left it: filed as unread.
      const book = await openBook(store, kitchenId)
      const state = (await store.facts.state(kitchenId))!
      const aside = { kitchenId, fromTurn: state.turn, next: { ...state, version: 'of fewer kinds' } }
      await store.facts.change({ ...aside, refiled: [{ arrival: 1, from: `pot:${potId}`, to: 'unread' }] })
      await book.catchUp()
      expect(await book.get('pots', potId)).toMatchObject({ name: 'pot' })
      await store.close()
    })

    test('[J13] a line of a newer version, filed by a newer program amid a story told here, is kept aside', async () => {
      const store = await fresh()
      const kitchen = testKitchen()
      const author = kitchen.author()
      const potId = kitchen.newId()
      const pot = { potId, name: 'pot', volumeL: 10, material: 'enamel' } as const
      const entries = [author.write('pot-recorded', pot)]
      const newer = author.write('pot-recorded', { ...pot, name: 'the same pot' })
      entries.push(reenveloped(newer, { kindVersion: 2 }))
      await store.append(entries)
      const { kitchenId } = kitchen
      const book = await openBook(store, kitchenId)
      // As a newer program leaves it: it can read the line, and files it under its pot.
      const state = (await store.facts.state(kitchenId))!
      const filed = { kitchenId, fromTurn: state.turn, next: { ...state, version: 'of more kinds' } }
      await store.facts.change({ ...filed, refiled: [{ arrival: 2, from: 'unread', to: `pot:${potId}` }] })
      expect(await book.catchUp()).toMatchObject({ anew: true })
      const facts = await book.facts()
      expect(facts.unread).toEqual([
        { entryId: newer.envelope.id, kind: 'pot-recorded', kindVersion: 2, why: 'newer-version' },
      ])
      expect(JSON.stringify(facts)).toBe(JSON.stringify(inMemory(entries)))
      await store.close()
    })
  })

test('[J75] a long book folded in threads has the same facts', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-lanes-'))
  const store = await openSqliteStore(join(folder, 'book.sqlite'))
  const random = fc.sample(fc.array(step, { minLength: 200, maxLength: 200 }), { numRuns: 1, seed: 12 })[0]!
  const { entries } = play(random, true)
  const { kitchenId } = entries[0]!.envelope
  await store.append(entries)
  expect(await foldAnew(store.facts, kitchenId, FOLD_VERSION, 1)).toBeGreaterThan(20)
  const book = await openBook(store, kitchenId)
  expect(await book.catchUp()).toMatchObject({ storyCount: 0, anew: false })
  expect(JSON.stringify(await book.facts())).toBe(JSON.stringify(inMemory(entries)))
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

test('[J75] of one story a line erased in its midst, and one told ahead of its clock, come out as in memory', async () => {
  const store = await openSqliteStore(':memory:')
  const kitchen = testKitchen()
  const author = kitchen.author()
  const runId = kitchen.newId()
  const run = {
    runId,
    cannerId: kitchen.newId(),
    cannerName: 'dial',
    loadCode: 'L1',
    jarSize: 'quart',
    jarCount: 7,
  } as const
  const held = {
    gauge: 'dial',
    requiredReadingPsi: 11,
    ventMin: 10,
    processMin: 85,
    edition: 'e',
    cardShown: {},
  } as const
  const entries = [
    author.write('run-begun', { ...run, ...held }),
    ...[11, 12, 11.5].map((psi) => author.write('run-event', { runId, event: { type: 'reading', psi } })),
  ]
  const ahead = { instant: Date.parse(entries.at(-1)!.envelope.writtenAt) + 3 * 3_600_000 }
  entries.push(author.write('run-event', { runId, event: { type: 'heat-off' } }, { happenedAt: ahead }))
  await store.append(entries)
  await store.erase(entries[2]!.envelope.id)
  const kept = entries.map((entry, at) => (at === 2 ? { ...entry, body: null } : entry))
  expect(await foldAnew(store.facts, kitchen.kitchenId, FOLD_VERSION)).toBe(1)
  const facts = await (await openBook(store, kitchen.kitchenId)).facts()
  expect(facts.unread).toHaveLength(1)
  expect(facts.questions.map(({ code }) => code)).toContain('question-happened-after-written')
  expect(JSON.stringify(facts)).toBe(JSON.stringify(inMemory(kept)))
  await store.close()
})

test('[J76] a book on disk starts warm in another program', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-warm-'))
  const file = join(folder, 'book.sqlite')
  const kitchen = testKitchen()
  const store = await openSqliteStore(file)
  await store.append([
    kitchen.author().write('standing-read', { readingId: kitchen.newId(), seasonYear: 2026, edition: 'e', food: 'f' }),
  ])
  await openBook(store, kitchen.kitchenId)
  await store.close()
  const later = await openSqliteStore(file)
  const book = await openBook(later, kitchen.kitchenId)
  expect(await book.catchUp()).toEqual({ upTo: 1, entryCount: 1, storyCount: 0, anew: false })
  await later.close()
  rmSync(folder, { recursive: true, force: true })
})
