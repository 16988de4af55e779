import { createHash } from 'node:crypto'
import {
  appendFileSync,
  existsSync,
  mkdirSync,
  mkdtempSync,
  readdirSync,
  readFileSync,
  rmSync,
  writeFileSync,
} from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterAll, afterEach, beforeAll, beforeEach, describe, expect, test } from 'vitest'
import { demoKitchen } from '../demo.ts'
import { bodyHash, envelopeHash, type StoredEntry } from '../envelope.ts'
import { foldFacts } from '../fold/fold.ts'
import type { JournalStore } from '../store.ts'
import { openPostgresStore } from '../stores/postgres.ts'
import { openSqliteStore } from '../stores/sqlite.ts'
import { handClock, repeatingRandom, testKitchen } from '../testing/invented.ts'
import { type Cluster, POSTGRES_HERE, startCluster } from '../testing/postgres.ts'
import { backupDue, backupsIn, backupTo, restore } from './backup.ts'
import { writeBundle } from './bundle.ts'
import { moveKitchen } from './move.ts'
import { takeIn } from './take-in.ts'

const NOW_MS = Date.parse('2026-11-08T09:00:00.000Z')

let folder: string
let store: JournalStore
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'book-care-'))
  store = await openSqliteStore(':memory:')
})
afterEach(async () => {
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})

const demo = () => demoKitchen({ clock: handClock(), random: repeatingRandom(7), zone: 'America/Toronto' })
const all = async (from: JournalStore, kitchenId: string) => (await from.read({ kitchenId, limit: 10_000 })).entries
const emptyStore = () => openSqliteStore(':memory:')

/** A book of one line more than it needs: a picture, of which only the beginning is a JPEG. */
function pictured() {
  const kitchen = testKitchen()
  const author = kitchen.author()
  const image = Buffer.concat([Buffer.from([0xff, 0xd8, 0xff, 0xe0]), Buffer.from('an invented picture')])
  const potId = kitchen.newId()
  const pot = author.write('pot-recorded', { potId, name: 'pot', volumeL: 10, material: 'enamel' })
  const photo = author.write('photo-taken', {
    photoId: kitchen.newId(),
    ofId: potId,
    mediaType: 'image/jpeg',
    widthPx: 4,
    heightPx: 3,
    image: image.toString('base64'),
  } as const)
  return { kitchenId: kitchen.kitchenId, entries: [pot, photo], photo, image }
}

/** The demo kitchen's bundle and what went into it. */
async function bundled() {
  const { kitchenId, entries } = demo()
  await store.append(entries)
  const made = await writeBundle({ store, kitchenId, into: folder, nowMs: NOW_MS })
  return { ...made, kitchenId, entries, lines: join(made.folder, 'entries.jsonl') }
}

/** A line made right again after a change, as a forger would. */
function forged(entry: StoredEntry, change: Partial<StoredEntry['envelope']>, value = entry.body!.value): StoredEntry {
  const body = { salt: entry.body!.salt, value }
  const envelope = { ...entry.envelope, ...change, bodyHash: bodyHash(body) }
  return { envelope, hash: envelopeHash(envelope), body }
}

describe('a bundle', () => {
  test('[J80] holds the whole kitchen in a plain folder, and another book takes all of it in', async () => {
    const { folder: made, manifest, kitchenId, entries } = await bundled()
    expect(made).toBe(join(folder, 'ostrey-point-2026-11-08'))
    expect(readdirSync(made).sort()).toEqual(['attachments', 'csv', 'entries.jsonl', 'manifest.json'])
    expect(manifest).toMatchObject({ formatVersion: 1, kitchenName: 'Ostrey Point', entryCount: entries.length })
    const other = await emptyStore()
    expect(await takeIn({ store: other, folder: made })).toEqual({
      acceptedCount: entries.length,
      alreadyCount: 0,
      faults: [],
    })
    expect(await all(other, kitchenId)).toEqual(entries)
    expect(await takeIn({ store: other, folder: made })).toMatchObject({
      acceptedCount: 0,
      alreadyCount: entries.length,
      faults: [],
    })
    expect((await writeBundle({ store, kitchenId, into: folder, nowMs: NOW_MS })).folder).toBe(`${made}-2`)
    await other.close()
  })

  test('[J80] has a sheet for each kind, whose cells no spreadsheet takes for a formula', async () => {
    const kitchen = testKitchen()
    const author = kitchen.author()
    const record = (name: string, note: string) =>
      author.write('alkali-lot-recorded', { alkaliLotId: kitchen.newId(), name, alkali: 'ash', note })
    await store.append([record('M-1, the good one', 'says "slippery"'), record('=1+1', 'two\nlines')])
    const { folder: made } = await writeBundle({ store, kitchenId: kitchen.kitchenId, into: folder, nowMs: NOW_MS })
    const [header, first, ...rest] = readFileSync(join(made, 'csv/alkali-lot-recorded.csv'), 'utf8').split('\r\n')
    expect(header).toBe(
      'entry_id,happened_at,happened_zone,written_at,person_id,device_id,device_seq,visibility,erased,' +
        'body_alkali,body_alkali_lot_id,body_name,body_note',
    )
    expect(first).toMatch(/,1,keeper,no,ash,[0-9a-f-]{36},"M-1, the good one","says ""slippery"""$/)
    expect(rest[0]).toMatch(/,'=1\+1,"two\nlines"$/)
  })

  test('[J81] is taken in line by line: whatever does not verify is refused with its place and reason, the rest lands', async () => {
    const { folder: made, lines, kitchenId, entries } = await bundled()
    const text = readFileSync(lines, 'utf8').trimEnd().split('\n')
    const stranger = testKitchen(9)
    const foreign = stranger
      .author()
      .write('pot-recorded', { potId: stranger.newId(), name: 'x', volumeL: 1, material: 'enamel' })
    const helper = testKitchen(11)
    const newer = forged(
      { ...foreign, envelope: { ...foreign.envelope, kitchenId, deviceId: helper.newId() } },
      { id: helper.newId(), kind: 'moon-phase-noted', kindVersion: 7 },
    )
    const huge = forged(newer, { id: helper.newId(), deviceId: helper.newId() }, 'x'.repeat(300_000))
    const odd = [
      '{"envelope": cut off',
      JSON.stringify(foreign),
      JSON.stringify(newer),
      JSON.stringify(huge),
      JSON.stringify({ ...newer, envelope: { ...newer.envelope, deviceSeq: 0 } }),
      JSON.stringify(entries[0]), // a second time
      text[2]!.replace('"happenedAt":{"instant":"20', '"happenedAt":{"instant":"19'),
      `"${'y'.repeat(2_100_000)}"`,
    ]
    writeFileSync(lines, [...text, ...odd].join('\n'))
    const other = await emptyStore()
    const taken = await takeIn({ store: other, folder: made })
    const at = (n: number) => `entries.jsonl:${text.length + n}`
    expect(taken.faults.map(({ code, where }) => [code, where]).sort()).toEqual(
      [
        ['file-altered', 'entries.jsonl'],
        ['not-json', at(1)],
        ['foreign-kitchen', at(2)],
        ['too-large', at(4)],
        ['malformed', at(5)],
        ['altered-envelope', at(7)],
        ['too-large', at(8)],
      ].sort(),
    )
    expect(taken).toMatchObject({ acceptedCount: entries.length + 1, alreadyCount: 1 })
    expect((await other.verify()).ok).toBe(true)
    await other.close()
  })

  test('[J81] a line missing in the middle, and lines cut off at the end, are told', async () => {
    const { folder: made, lines, entries } = await bundled()
    const text = readFileSync(lines, 'utf8').trimEnd().split('\n')
    writeFileSync(lines, text.slice(0, -2).join('\n'))
    const cut = await emptyStore()
    expect((await takeIn({ store: cut, folder: made })).faults).toMatchObject([
      { code: 'file-altered', where: 'entries.jsonl' },
      { code: 'missing-after', detail: expect.stringContaining(`${entries.length - 1} to ${entries.length}`) },
    ])
    writeFileSync(lines, text.filter((_, i) => i !== 3).join('\n'))
    const holed = await emptyStore()
    const { acceptedCount, faults } = await takeIn({ store: holed, folder: made })
    expect(acceptedCount).toBe(3)
    expect(faults.filter(({ code }) => code === 'missing-before')).toHaveLength(entries.length - 4)
    await cut.close()
    await holed.close()
  })

  test('[J81] without its manifest, or from a newer version, the lines are tried all the same and it is said', async () => {
    const { folder: made, entries } = await bundled()
    const path = join(made, 'manifest.json')
    const manifest = JSON.parse(readFileSync(path, 'utf8'))
    writeFileSync(path, JSON.stringify({ ...manifest, formatVersion: 9, seasons: [] }))
    const one = await emptyStore()
    expect(await takeIn({ store: one, folder: made })).toMatchObject({
      acceptedCount: entries.length,
      faults: [{ code: 'newer-bundle', detail: '9 of 1' }],
    })
    rmSync(path)
    const two = await emptyStore()
    expect(await takeIn({ store: two, folder: made })).toMatchObject({
      acceptedCount: entries.length,
      faults: [{ code: 'no-manifest' }],
    })
    rmSync(join(made, 'entries.jsonl'))
    await expect(takeIn({ store: two, folder: made })).rejects.toThrow('it has no entries.jsonl')
    await one.close()
    await two.close()
  })

  test('[J82] a picture travels in its line, lies once more as a file, and once erased is in neither', async () => {
    const { kitchenId, entries, photo, image } = pictured()
    await store.append(entries)
    const { folder: made, manifest } = await writeBundle({ store, kitchenId, into: folder, nowMs: NOW_MS })
    const name = `${createHash('sha256').update(image).digest('hex')}.jpg`
    expect(readFileSync(join(made, 'attachments', name))).toEqual(image)
    expect(manifest.files.map(({ path }) => path)).toContain(`attachments/${name}`)
    const sheet = readFileSync(join(made, 'csv', 'photo-taken.csv'), 'utf8')
    expect(sheet).toContain(`attachments/${name}`)
    expect(sheet).not.toContain(image.toString('base64'))

    const other = await emptyStore()
    expect(await takeIn({ store: other, folder: made })).toMatchObject({ acceptedCount: entries.length, faults: [] })
    expect(await other.entry(kitchenId, photo.envelope.id)).toEqual(photo)

    await other.erase(photo.envelope.id)
    const { folder: after } = await writeBundle({ store: other, kitchenId, into: join(folder, 'after'), nowMs: NOW_MS })
    expect(readdirSync(join(after, 'attachments'))).toEqual([])
    expect(readFileSync(join(after, 'entries.jsonl'), 'utf8')).not.toContain(image.toString('base64'))
    await other.close()
  })

  test('[J83] names in any script, long notes, and lines of ten years ago come back letter by letter', async () => {
    const kitchen = testKitchen()
    kitchen.clock.set('2016-11-02T13:00:00.000Z')
    const author = kitchen.author()
    const entries = [
      author.write('kitchen-opened', { kitchenId: kitchen.kitchenId, name: 'Ḵʼwálaʔ / 玉蜀黍 🌽', demo: true }),
      author.write('alkali-lot-recorded', {
        alkaliLotId: kitchen.newId(),
        name: 'ʔ',
        alkali: 'ash',
        note: 'щ\u2028'.repeat(5000),
      }),
    ]
    await store.append(entries)
    const { folder: made } = await writeBundle({ store, kitchenId: kitchen.kitchenId, into: folder, nowMs: NOW_MS })
    expect(made.endsWith('ḵʼwálaʔ-玉蜀黍-2026-11-08')).toBe(true)
    const other = await emptyStore()
    expect((await takeIn({ store: other, folder: made })).faults).toEqual([])
    expect(await all(other, kitchen.kitchenId)).toEqual(entries)
    await other.close()
  })
})

describe('a backup', () => {
  test('[J84] restores into an empty book that verifies and has the same facts', async () => {
    const { kitchenId, entries } = demo()
    const other = testKitchen(4)
    await store.append([
      ...entries,
      other.author().write('pot-recorded', { potId: other.newId(), name: 'x', volumeL: 1, material: 'enamel' }),
    ])
    await store.erase(entries[5]!.envelope.id)
    const made = await backupTo({ store, into: folder, nowMs: NOW_MS })
    const fresh = await emptyStore()
    const restored = await restore(fresh, made.folder)
    expect(restored.whole).toBe(true)
    expect(Object.keys(restored.kitchens).sort()).toEqual([kitchenId, other.kitchenId].sort())
    expect(await fresh.verify()).toEqual({ ok: true, checkedCount: entries.length + 1, erasedCount: 1 })
    expect(foldFacts(await all(fresh, kitchenId))).toEqual(foldFacts(await all(store, kitchenId)))
    await expect(restore(fresh, join(folder, 'elsewhere'))).rejects.toThrow('neither a backup nor a bundle')
    await fresh.close()
  })

  test('[J84] brings back nothing that was erased since, and says what it could not take', async () => {
    const { entries } = demo()
    await store.append(entries)
    const made = await backupTo({ store, into: folder, nowMs: NOW_MS })
    const { id, kitchenId } = entries[4]!.envelope
    await store.erase(id)
    expect((await restore(store, made.folder)).whole).toBe(true)
    expect((await all(store, kitchenId))[4]!.body).toBeNull()
    const [bundle] = readdirSync(made.folder)
    appendFileSync(join(made.folder, bundle!, 'entries.jsonl'), '{"half a line')
    const restored = await restore(await emptyStore(), made.folder)
    expect(restored.whole).toBe(false)
    expect(restored.kitchens[kitchenId]!.faults.map(({ code }) => code)).toEqual(['file-altered', 'not-json'])
  })

  test('[J85] keeps the newest, and never counts one that was cut off', async () => {
    await store.append(demo().entries)
    const hours = [0, 24, 48, 72]
    for (const hour of hours) await backupTo({ store, into: folder, nowMs: NOW_MS + hour * 3_600_000, keepCount: 3 })
    mkdirSync(join(folder, 'backup-2026-11-20T09-00-00Z.making'))
    expect((await backupsIn(folder)).map(({ name }) => name)).toEqual([
      'backup-2026-11-11T09-00-00Z',
      'backup-2026-11-10T09-00-00Z',
      'backup-2026-11-09T09-00-00Z',
    ])
    expect(existsSync(join(folder, 'backup-2026-11-08T09-00-00Z'))).toBe(false)
    expect(await backupsIn(join(folder, 'no stick here'))).toEqual([])
    await backupTo({ store, into: folder, nowMs: NOW_MS + 96 * 3_600_000 })
    expect(readdirSync(folder).filter((name) => name.endsWith('.making'))).toEqual([])
  })

  test.each([
    [null, true],
    [NOW_MS - 23 * 3_600_000, false],
    [NOW_MS - 24 * 3_600_000, true],
    [NOW_MS + 5 * 86_400_000, true], // made by a clock that was days ahead
  ])('[J85] every 24 hours, last made at %s: due is %s', (lastMadeAtMs, due) => {
    expect(backupDue({ everyHours: 24, lastMadeAtMs, nowMs: NOW_MS }).due).toBe(due)
  })

  test('[J85] a schedule without hours is refused', () => {
    expect(() => backupDue({ everyHours: 0, lastMadeAtMs: null, nowMs: NOW_MS })).toThrow('everyHours is 0')
  })
})

describe.skipIf(!POSTGRES_HERE)('a kitchen moved', () => {
  let cluster: Cluster
  beforeAll(async () => {
    if (POSTGRES_HERE) cluster = await startCluster()
  }, 60_000)
  afterAll(() => cluster?.stop(), 30_000)

  test('[J86] from a file to PostgreSQL and back loses nothing, brings back nothing erased, and may be done twice', async () => {
    const { kitchenId, entries } = demo()
    await store.append(entries)
    const village = await openPostgresStore(await cluster.url('moved'))
    await moveKitchen(store, village, kitchenId)
    await store.erase(entries[2]!.envelope.id)
    const again = await moveKitchen(store, village, kitchenId)
    expect(again).toEqual({
      kitchenId,
      movedCount: 0,
      alreadyCount: entries.length,
      erasedCount: 1,
      withoutBodyCount: 0,
      refused: [],
      same: true,
    })
    const back = await emptyStore()
    expect(await moveKitchen(village, back, kitchenId)).toMatchObject({
      movedCount: entries.length,
      refused: [],
      same: true,
    })
    expect(await all(back, kitchenId)).toEqual(await all(store, kitchenId))
    expect((await back.verify()).ok).toBe(true)
    await back.close()
    await village.close()
  })

  test('[J86] what the new store refuses is told, and the move does not claim to be whole', async () => {
    const { kitchenId, entries } = demo()
    const forgetful: JournalStore = {
      ...store,
      read: async (query) => ({ entries: query.after ? [] : entries.slice(1), next: 99 }),
    }
    const to = await emptyStore()
    const report = await moveKitchen(forgetful, to, kitchenId)
    expect(report.same).toBe(false)
    expect(report.refused[0]).toMatchObject({ code: 'missing-before', detail: '1' })
    await to.close()
  })
})
