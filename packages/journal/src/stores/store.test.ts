import 'fake-indexeddb/auto'
import { mkdtempSync, readFileSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { bodyHash, type StoredEntry } from '../envelope.ts'
import { createRecorder } from '../record.ts'
import type { JournalStore } from '../store.ts'
import { reenveloped, type TestKitchen, testKitchen } from '../testing/invented.ts'
import { type Cluster, POSTGRES_HERE, startCluster } from '../testing/postgres.ts'
import { openIdbStore } from './idb.ts'
import { openPostgresStore } from './postgres.ts'
import { openSqliteStore } from './sqlite.ts'

/**
 * One suite over every store. The browser's store runs here on an IndexedDB written for Node; the browser tests run it
 * on the real one.
 */
const STORES: readonly { name: string; here: boolean; open: (folder: string) => Promise<JournalStore> }[] = [
  { name: 'sqlite', here: true, open: (folder) => openSqliteStore(join(folder, 'book.sqlite')) },
  {
    name: 'postgres',
    here: POSTGRES_HERE,
    open: async (folder) => openPostgresStore(await cluster!.url(schemaOf(folder))),
  },
  { name: 'idb', here: true, open: (folder) => openIdbStore(folder) },
]

const schemaOf = (folder: string): string => `b${folder.replace(/[^a-z0-9]/gi, '').toLowerCase()}`

let cluster: Cluster | null = null
beforeAll(async () => {
  if (POSTGRES_HERE) cluster = await startCluster()
}, 60_000)
afterAll(() => cluster?.stop(), 30_000)

let folder: string
let kitchen: TestKitchen
beforeEach(() => {
  folder = mkdtempSync(join(tmpdir(), 'book-'))
  kitchen = testKitchen()
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

function pots(count: number, author = kitchen.author()): StoredEntry[] {
  return Array.from({ length: count }, (_, i) => {
    kitchen.clock.wait(1)
    return author.write('pot-recorded', {
      potId: kitchen.newId(),
      name: `pot ${i + 1}`,
      volumeL: 18.9,
      material: 'stainless',
    })
  })
}

/** The entry with its envelope changed and its hashes made right again, as a forger would. */
for (const { name, here, open } of STORES)
  describe.skipIf(!here)(`${name} store`, () => {
    let store: JournalStore
    beforeEach(async () => {
      store = await open(folder)
    })
    afterEach(() => store.close())

    const outcomes = async (entries: readonly unknown[]): Promise<string[]> =>
      (await store.append(entries as StoredEntry[])).results.map(({ outcome }) => outcome)
    const faultCodes = async (entry: unknown): Promise<unknown> => {
      const [result] = (await store.append([entry as StoredEntry])).results
      return result?.faults?.map(({ code, detail }) => `${code}: ${detail}`)
    }
    const readAll = async (): Promise<readonly StoredEntry[]> =>
      (await store.read({ kitchenId: kitchen.kitchenId })).entries

    test('[J30] gives entries back whole, in the order of their arrival', async () => {
      const entries = pots(3)
      expect(await outcomes(entries)).toEqual(['accepted', 'accepted', 'accepted'])
      expect(await readAll()).toEqual(entries)
    })

    test('[J30] still has them after closing and opening again', async () => {
      const entries = pots(2)
      await store.append(entries)
      await store.close()
      store = await open(folder)
      expect(await readAll()).toEqual(entries)
    })

    test('[J31] takes an entry once, however often it is handed in', async () => {
      const entries = pots(2)
      await store.append(entries)
      expect(await outcomes([...entries, ...entries])).toEqual(['already', 'already', 'already', 'already'])
      expect(await readAll()).toEqual(entries)
    })

    test('[J32] takes a batch in any order', async () => {
      const [first, second, third] = pots(3)
      expect(await outcomes([third, first, second])).toEqual(['accepted', 'accepted', 'accepted'])
      expect(await readAll()).toEqual([first, second, third])
    })

    test('[J33] refuses a line whose forerunners are missing, and names them', async () => {
      const [first, , , fourth] = pots(4)
      await store.append([first!])
      expect(await faultCodes(fourth)).toEqual(['missing-before: 2 to 3'])
      expect(await readAll()).toEqual([first])
    })

    test('[J34] refuses each bad entry by itself while the rest of the batch lands', async () => {
      const [first, second] = pots(2)
      const stranger = pots(1)[0]!
      const altered = { ...stranger, body: { ...stranger.body!, value: { potId: 'x' } } }
      expect(await outcomes([first, altered, null, second])).toEqual(['accepted', 'refused', 'refused', 'accepted'])
      expect(await readAll()).toEqual([first, second])
    })

    test('[J35] refuses an altered envelope, an altered body and a malformed entry, each by name', async () => {
      const [entry] = pots(1) as [StoredEntry]
      const renamed = { ...entry, envelope: { ...entry.envelope, kind: 'pot-retold' } }
      expect(await faultCodes(renamed)).toEqual(['altered-envelope: hash'])
      const otherSalt = { ...entry, body: { ...entry.body!, salt: '0'.repeat(32) } }
      expect(await faultCodes(otherSalt)).toEqual(['altered-body: bodyHash'])
      const unsigned = { ...entry, envelope: { ...entry.envelope, deviceSeq: -1 } }
      expect(await faultCodes(unsigned)).toEqual(['malformed: envelope.deviceSeq'])
      expect(await faultCodes({ ...entry, extra: 1 })).toEqual(['malformed: extra'])
    })

    test('[J36] refuses a second line at one place of a chain, and a link that does not hold', async () => {
      const author = kitchen.author()
      const [first, second, third] = pots(3, author)
      await store.append([first!, second!])
      const rival = reenveloped(second!, { id: kitchen.newId(), kindVersion: 2 })
      expect(await faultCodes(rival)).toEqual([`fork: ${second!.envelope.id}`])
      expect(await faultCodes(reenveloped(third!, { prevHash: first!.hash }))).toEqual(['broken-link: 2'])
      expect(await faultCodes(reenveloped(second!, { visibility: 'open' }))).toEqual([`altered-copy: ${second!.hash}`])
      expect(await outcomes([third])).toEqual(['accepted'])
    })

    test('[J37] refuses a body longer than its limit, with both lengths', async () => {
      const note = 'x'.repeat(10_000)
      const [entry] = pots(1) as [StoredEntry]
      const body = { salt: entry.body!.salt, value: Array.from({ length: 27 }, () => note) }
      expect(await faultCodes({ ...reenveloped(entry, { bodyHash: bodyHash(body) }), body })).toEqual([
        'too-large: 270082 of 262144',
      ])
    })

    test('[J38] keeps kinds and versions it does not know', async () => {
      const [entry] = pots(1) as [StoredEntry]
      const newer = reenveloped(entry, { kind: 'moon-phase-noted', kindVersion: 7 })
      expect(await outcomes([newer])).toEqual(['accepted'])
      expect(await readAll()).toEqual([newer])
    })

    test('[J39] reads in pages by a cursor that never skips or repeats', async () => {
      const entries = pots(5)
      await store.append(entries)
      const { kitchenId } = kitchen
      const first = await store.read({ kitchenId, limit: 2 })
      const second = await store.read({ kitchenId, after: first.next, limit: 2 })
      const third = await store.read({ kitchenId, after: second.next, limit: 2 })
      const end = await store.read({ kitchenId, after: third.next, limit: 2 })
      expect([...first.entries, ...second.entries, ...third.entries]).toEqual(entries)
      expect(end).toEqual({ entries: [], next: third.next })
      await expect(store.read({ kitchenId, limit: 0 })).rejects.toThrow('limit is 0 entries; a page holds 1 to 10000')
    })

    test('[J40] keeps kitchens apart, and each device of a kitchen on its own chain', async () => {
      const other = testKitchen(2)
      const deviceId = kitchen.newId()
      const here = kitchen.author({ deviceId }).write('standing-read', standing())
      const there = other.author({ deviceId }).write('standing-read', standing())
      const second = kitchen.author().write('standing-read', standing())
      expect(await outcomes([here, there, second])).toEqual(['accepted', 'accepted', 'accepted'])
      expect(await readAll()).toEqual([here, second])
      const byId = [
        { kitchenId: kitchen.kitchenId, entryCount: 2 },
        { kitchenId: other.kitchenId, entryCount: 1 },
      ].sort((a, b) => (a.kitchenId < b.kitchenId ? -1 : 1))
      expect(await store.kitchens()).toEqual(byId)
      expect(await store.head(other.kitchenId, deviceId)).toMatchObject({ deviceSeq: 1, hash: there.hash })
    })

    test('[J41] tells where a chain stands, and nothing before its first line', async () => {
      const entries = pots(2)
      const { deviceId } = entries[0]!.envelope
      expect(await store.head(kitchen.kitchenId, deviceId)).toBeNull()
      await store.append(entries)
      expect(await store.head(kitchen.kitchenId, deviceId)).toEqual({
        deviceSeq: 2,
        hash: entries[1]!.hash,
        writtenAt: entries[1]!.envelope.writtenAt,
      })
    })

    test('[J42] erases a body for good; the chain still holds and handing the entry in again brings nothing back', async () => {
      const entries = pots(3)
      await store.append(entries)
      const { id } = entries[1]!.envelope
      expect(await store.erase(id)).toBe(true)
      expect(await store.erase(id)).toBe(false)
      expect(await store.erase(kitchen.newId())).toBe(false)
      expect(await outcomes([entries[1]])).toEqual(['already'])
      expect(await readAll()).toEqual([entries[0], { ...entries[1], body: null }, entries[2]])
      expect(await store.verify()).toEqual({ ok: true, checkedCount: 3, erasedCount: 1 })
    })

    test('[J43] takes an entry whose body was erased elsewhere', async () => {
      const [first, second] = pots(2)
      expect(await outcomes([{ ...first, body: null }, second])).toEqual(['accepted', 'accepted'])
      expect(await store.verify()).toEqual({ ok: true, checkedCount: 2, erasedCount: 1 })
    })

    test('[J44] two writers of one device both get their lines in, one after the other', async () => {
      const setup = { ...kitchen, deviceId: kitchen.newId(), zone: 'Europe/Oslo', store }
      const a = createRecorder(setup)
      const b = createRecorder(setup)
      const written = await Promise.all(
        Array.from({ length: 12 }, (_, i) => (i % 2 ? a : b).record('standing-read', standing())),
      )
      const seqs = written.map(({ envelope }) => envelope.deviceSeq).sort((x, y) => x - y)
      expect(seqs).toEqual([1, 2, 3, 4, 5, 6, 7, 8, 9, 10, 11, 12])
      expect(await store.verify()).toEqual({ ok: true, checkedCount: 12, erasedCount: 0 })
    })

    test('names in any script and long notes come back letter by letter', async () => {
      const name = 'Ḵʼwálaʔ 玉蜀黍 🌽 "o\'brien" \\ \u0000'
      const author = kitchen.author()
      const entry = author.write('alkali-lot-recorded', {
        alkaliLotId: kitchen.newId(),
        name,
        alkali: 'ash',
        note: 'ʔ'.repeat(10_000),
      })
      await store.append([entry])
      expect(await readAll()).toEqual([entry])
      expect((await store.verify()).ok).toBe(true)
    })

    function standing() {
      return { readingId: kitchen.newId(), seasonYear: 2026, edition: 'guidance-2026-11', food: 'ash-hominy' }
    }
  })

describe('sqlite store alone', () => {
  test('[J42] leaves no trace of an erased body in its files', async () => {
    const file = join(folder, 'book.sqlite')
    const store = await openSqliteStore(file)
    const secret = 'Grandmother Otterfeather told me this'
    const author = kitchen.author()
    const entry = author.write('alkali-lot-recorded', {
      alkaliLotId: kitchen.newId(),
      name: 'M-7',
      alkali: 'ash',
      note: secret,
    })
    await store.append([entry])
    const traces = (): boolean[] => [file, `${file}-wal`].map((each) => readFileSync(each, 'latin1').includes(secret))
    expect(traces()).toContain(true)
    await store.erase(entry.envelope.id)
    expect(traces()).toEqual([false, false])
    await store.close()
  })
})
