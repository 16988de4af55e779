import { mkdtempSync, rmSync, writeFileSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { afterEach, beforeEach, expect, test } from 'vitest'
import type { StoredEntry } from '../envelope.ts'
import { testKitchen } from '../testing/invented.ts'
import { openSqliteStore } from './sqlite.ts'
import { openDatabase } from './sqlite-driver.ts'

let folder: string
let file: string
let entries: StoredEntry[]
beforeEach(async () => {
  folder = mkdtempSync(join(tmpdir(), 'book-'))
  file = join(folder, 'book.sqlite')
  const kitchen = testKitchen()
  const author = kitchen.author()
  entries = ['first', 'second', 'third'].map((name) =>
    author.write('pot-recorded', { potId: kitchen.newId(), name, volumeL: 10, material: 'enamel' }),
  )
  const store = await openSqliteStore(file)
  await store.append(entries)
  await store.close()
})
afterEach(() => rmSync(folder, { recursive: true, force: true }))

/** Somebody with a database tool and bad intent, or a failing disk. */
function tamper(sql: string): void {
  openDatabase(file).exec(sql)
}

async function verified() {
  const store = await openSqliteStore(file)
  try {
    return await store.verify()
  } finally {
    await store.close()
  }
}

test.each([
  ["update entry set kind = 'x'", 'entries are never changed'],
  ['delete from entry', 'entries are never removed'],
  ["update body set value = '{}'", 'bodies are never changed'],
  ['delete from body', 'a body goes only by erasing it'],
  ["insert into erasure select arrival, 'here' from entry; delete from erasure", 'an erasure stays'],
])('[J46] the database itself refuses: %s', async (sql, reason) => {
  expect(() => tamper(sql)).toThrow(reason)
})

test('[J47] verify names a line altered, and a line missing, by somebody who dropped the triggers', async () => {
  const [first, second, third] = entries.map(({ envelope }) => envelope)
  tamper(`drop trigger entry_keeps; update entry set happened_at = '2026-11-02T13:00:00.001Z' where device_seq = 2`)
  expect(await verified()).toMatchObject({
    ok: false,
    checkedCount: 3,
    faults: [{ code: 'altered-envelope', entryId: second!.id, deviceSeq: 2 }],
  })
  tamper(`drop trigger entry_stays; drop trigger body_stays; pragma foreign_keys = off;
    delete from body where arrival = 2; delete from entry where id = '${second!.id}'`)
  expect(await verified()).toMatchObject({
    faults: [{ code: 'missing-before', entryId: third!.id, deviceSeq: 3, detail: '2' }],
  })
  tamper(`drop trigger body_keeps; update body set value = replace(value, 'first', 'worst')`)
  expect(await verified()).toMatchObject({
    faults: [{ code: 'altered-body', entryId: first!.id }, { code: 'missing-before' }],
  })
})

test('[J47] verify tells a body that was erased from one that merely went missing', async () => {
  tamper(`drop trigger body_stays; delete from body where arrival = 2`)
  expect(await verified()).toMatchObject({
    ok: false,
    erasedCount: 0,
    faults: [{ code: 'body-missing', entryId: entries[1]!.envelope.id }],
  })
})

test('a body whose text was damaged is named, and the rest still reads', async () => {
  tamper(`drop trigger body_keeps; update body set value = '{"na' where arrival = 1`)
  expect(await verified()).toMatchObject({ faults: [{ code: 'altered-body', entryId: entries[0]!.envelope.id }] })
  const store = await openSqliteStore(file)
  const { entries: read } = await store.read({ kitchenId: entries[0]!.envelope.kitchenId })
  expect(read.slice(1)).toEqual(entries.slice(1))
  await store.close()
})

test('a file that is no database is refused and left as it was', async () => {
  const other = join(folder, 'letter.txt')
  writeFileSync(other, 'Dear neighbour, '.repeat(100))
  await expect(openSqliteStore(other)).rejects.toThrow('file is not a database')
})

test('a book made by a newer version is refused rather than guessed at', async () => {
  tamper(`insert into kysely_migration (name, timestamp) values ('9999-later', '2030-01-01T00:00:00.000Z')`)
  await expect(openSqliteStore(file)).rejects.toThrow('9999-later')
})

test('one program may open a new file twice at the same moment, and write to both', async () => {
  const fresh = join(folder, 'fresh.sqlite')
  const [a, b] = await Promise.all([openSqliteStore(fresh), openSqliteStore(fresh)])
  await a.append(entries.slice(0, 1))
  await Promise.all([b.append(entries.slice(1)), a.append(entries)])
  expect((await a.verify()).checkedCount).toBe(3)
  await a.close()
  await b.close()
})
