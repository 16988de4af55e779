import { mkdtempSync, rmSync } from 'node:fs'
import { tmpdir } from 'node:os'
import { join } from 'node:path'
import { Kysely, SqliteDialect } from 'kysely'
import { Migrator } from 'kysely/migration'
import { expect, test } from 'vitest'
import { canonicalJson } from '../json.ts'
import { testKitchen } from '../testing/invented.ts'
import { openSqliteStore } from './sqlite.ts'
import { openDatabase } from './sqlite-driver.ts'
import { MIGRATIONS } from './sqlite-migrations.ts'

test('[J71] a book of the first layout opens with every line, in its order, and with what was erased still erased', async () => {
  const folder = mkdtempSync(join(tmpdir(), 'book-old-'))
  const file = join(folder, 'book.sqlite')
  const kitchen = testKitchen()
  const author = kitchen.author()
  const entries = ['first', 'second', 'third'].map((name) =>
    author.write('pot-recorded', { potId: kitchen.newId(), name, volumeL: 10, material: 'enamel' }),
  )
  const old = openDatabase(file)
  const db = new Kysely<unknown>({ dialect: new SqliteDialect({ database: old.forBuilder }) })
  const { error } = await new Migrator({ db, provider: MIGRATIONS, disableTransactions: true }).migrateTo(
    '0001-entries',
  )
  expect(error).toBeUndefined()
  for (const { envelope: e, hash, body } of entries) {
    const { instant, zone } = e.happenedAt
    old.run(
      `insert into entry (id, kitchen_id, device_id, device_seq, prev_hash, person_id, kind, kind_version, happened_at,
        happened_zone, written_at, body_hash, visibility, hash) values (?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?, ?)`,
      [e.id, e.kitchenId, e.deviceId, e.deviceSeq, e.prevHash, e.personId, e.kind, e.kindVersion].concat(
        instant,
        zone,
        e.writtenAt,
        e.bodyHash,
        e.visibility,
        hash,
      ),
    )
    if (e.deviceSeq === 2) old.run(`insert into erasure (entry_id, how) values (?, 'here')`, [e.id])
    else
      old.run('insert into body (entry_id, salt, value) values (?, ?, ?)', [
        e.id,
        body!.salt,
        canonicalJson(body!.value),
      ])
  }
  old.close()

  const store = await openSqliteStore(file)
  const { entries: kept, next } = await store.read({ kitchenId: kitchen.kitchenId })
  expect(kept).toEqual([entries[0], { ...entries[1], body: null }, entries[2]])
  expect(next).toBe(3)
  expect(await store.verify()).toEqual({ ok: true, checkedCount: 3, erasedCount: 1 })
  const tamper = openDatabase(file)
  expect(() => tamper.exec('delete from body')).toThrow('a body goes only by erasing it')
  expect(() => tamper.exec("update entry set kind = 'x'")).toThrow('entries are never changed')
  tamper.close()
  await store.close()
  rmSync(folder, { recursive: true, force: true })
})
