/** The embedded store: one file, every acknowledged entry synced to disk. */
import { resolve } from 'node:path'
import { type Insertable, Kysely, type Selectable, sql } from 'kysely'
import { Migrator } from 'kysely/migration'
import { type ChainReport, type EntryFault, verifyChain } from '../chain.ts'
import type { ChainHead, StoredEntry, Visibility } from '../envelope.ts'
import { canonicalJson, type Json } from '../json.ts'
import type { AppendOutcome, EntryOutcome, JournalStore, KitchenSummary, ReadPage, ReadQuery } from '../store.ts'
import { admit, aloneFault, inChainOrder, pageLimit, refusedAlone } from './admit.ts'
import { openDatabase } from './sqlite-driver.ts'
import { type EntryTable, MIGRATIONS, type Tables } from './sqlite-migrations.ts'

export { defaultBookFile } from './book-file.ts'

/**
 * Opens the book in `file`, making it where there is none; `:memory:` keeps nothing.
 *
 * @throws {Error} when the file is no database, or was made by a newer version.
 */
export async function openSqliteStore(file: string): Promise<JournalStore> {
  const { dialect, exec } = openDatabase(file)
  const db = new Kysely<Tables>({ dialect })
  const inTurn = turnsFor(file)
  // Another program may be opening the new file too: the second waits here and finds the tables made.
  const { error } = await inTurn(async () => {
    exec('begin immediate')
    const outcome = await new Migrator({ db, provider: MIGRATIONS, disableTransactions: true }).migrateToLatest()
    exec(outcome.error ? 'rollback' : 'commit')
    return outcome
  })
  if (error) {
    await db.destroy()
    throw error
  }
  /** `immediate`: the write lock is taken before anything is read, so another process cannot slip between. */
  function inTransaction<T>(work: () => Promise<T>): Promise<T> {
    return inTurn(async () => {
      exec('begin immediate')
      try {
        const result = await work()
        exec('commit')
        return result
      } catch (cause) {
        exec('rollback')
        throw cause
      }
    })
  }

  return {
    append: (entries) => inTransaction(() => append(db, entries)),
    read: (query) => inTurn(() => read(db, query)),
    head: (kitchenId, deviceId) => inTurn(() => head(db, kitchenId, deviceId)),
    kitchens: () => inTurn(() => kitchens(db)),
    verify: () => inTurn(() => verify(db)),
    async erase(entryId) {
      const erased = await inTransaction(() => erase(db, entryId))
      // The write-ahead log still holds the page with the body: fold it into the file and cut it off.
      if (erased) await inTurn(async () => exec('pragma wal_checkpoint(truncate)'))
      return erased
    },
    close: () => inTurn(() => db.destroy()),
  }
}

type InTurn = <T>(work: () => Promise<T>) => Promise<T>

const turns = new Map<string, InTurn>()

/**
 * Work on one file waits its turn within this program, so that no read sees a half-made append and two stores opened
 * on one file do not wait for each other's lock without end. Between programs the database's own lock does it.
 */
function turnsFor(file: string): InTurn {
  const path = file === ':memory:' ? '' : resolve(file)
  const known = turns.get(path)
  if (path && known) return known
  let last: Promise<unknown> = Promise.resolve()
  const inTurn: InTurn = (work) => {
    const mine = last.then(work)
    last = mine.catch(() => {})
    return mine
  }
  if (path) turns.set(path, inTurn)
  return inTurn
}

async function append(db: Kysely<Tables>, entries: readonly StoredEntry[]): Promise<AppendOutcome> {
  const results: EntryOutcome[] = []
  for (const { entry, index } of inChainOrder(entries)) results[index] = await appendOne(db, entry)
  return { results }
}

async function appendOne(db: Kysely<Tables>, given: unknown): Promise<EntryOutcome> {
  const alone = aloneFault(given)
  if (alone) return refusedAlone(alone)
  const entry = given as StoredEntry
  const { envelope, body } = entry
  const sameId = await db.selectFrom('entry').select('hash').where('id', '=', envelope.id).executeTakeFirst()
  const samePlace = await db
    .selectFrom('entry')
    .select('id')
    .where('kitchen_id', '=', envelope.kitchenId)
    .where('device_id', '=', envelope.deviceId)
    .where('device_seq', '=', envelope.deviceSeq)
    .executeTakeFirst()
  const outcome = admit(entry, {
    sameIdHash: sameId?.hash ?? null,
    samePlaceId: samePlace?.id ?? null,
    head: await head(db, envelope.kitchenId, envelope.deviceId),
  })
  if (outcome.outcome !== 'accepted') return outcome
  await db.insertInto('entry').values(toRow(entry)).execute()
  if (body) {
    const { salt, value } = body
    await db
      .insertInto('body')
      .values({ entry_id: envelope.id, salt, value: canonicalJson(value) })
      .execute()
  } else await db.insertInto('erasure').values({ entry_id: envelope.id, how: 'arrived' }).execute()
  return outcome
}

async function read(db: Kysely<Tables>, { kitchenId, after = 0, limit }: ReadQuery): Promise<ReadPage> {
  const rows = await entriesWithBodies(db)
    .where('kitchen_id', '=', kitchenId)
    .where('arrival', '>', after)
    .orderBy('arrival')
    .limit(pageLimit(limit))
    .execute()
  return { entries: rows.map(toEntry), next: rows.at(-1)?.arrival ?? after }
}

async function head(db: Kysely<Tables>, kitchenId: string, deviceId: string): Promise<ChainHead | null> {
  const row = await db
    .selectFrom('entry')
    .select(['device_seq as deviceSeq', 'hash', 'written_at as writtenAt'])
    .where('kitchen_id', '=', kitchenId)
    .where('device_id', '=', deviceId)
    .orderBy('device_seq', 'desc')
    .limit(1)
    .executeTakeFirst()
  return row ?? null
}

async function kitchens(db: Kysely<Tables>): Promise<readonly KitchenSummary[]> {
  return await db
    .selectFrom('entry')
    .select(['kitchen_id as kitchenId', ({ fn }) => fn.countAll<number>().as('entryCount')])
    .groupBy('kitchen_id')
    .orderBy('kitchen_id')
    .execute()
}

async function erase(db: Kysely<Tables>, entryId: string): Promise<boolean> {
  const body = await db.selectFrom('body').select('entry_id').where('entry_id', '=', entryId).executeTakeFirst()
  if (!body) return false
  await db.insertInto('erasure').values({ entry_id: entryId, how: 'here' }).execute()
  await db.deleteFrom('body').where('entry_id', '=', entryId).execute()
  return true
}

async function verify(db: Kysely<Tables>): Promise<ChainReport> {
  const rows = await entriesWithBodies(db).select('how').orderBy('arrival').execute()
  const report = verifyChain(rows.map(toEntry))
  const gone: EntryFault[] = rows
    .filter(({ salt, how }) => salt === null && how === null)
    .map((row) => ({
      code: 'body-missing',
      entryId: row.id,
      deviceId: row.device_id,
      deviceSeq: row.device_seq,
      detail: 'no erasure told',
    }))
  const integrity = await sql<{ integrity_check: string }>`pragma integrity_check`.execute(db)
  const damaged: EntryFault[] = integrity.rows
    .filter((row) => row.integrity_check !== 'ok')
    .map((row) => ({ code: 'malformed', entryId: '', detail: row.integrity_check }))
  const faults = [...(report.ok ? [] : report.faults), ...gone, ...damaged]
  const { checkedCount, erasedCount } = report
  const counts = { checkedCount, erasedCount: erasedCount - gone.length }
  return faults.length === 0 ? { ok: true, ...counts } : { ok: false, ...counts, faults }
}

function entriesWithBodies(db: Kysely<Tables>) {
  return db
    .selectFrom('entry')
    .leftJoin('body', 'body.entry_id', 'entry.id')
    .leftJoin('erasure', 'erasure.entry_id', 'entry.id')
    .selectAll('entry')
    .select(['salt', 'value'])
}

function toRow({ envelope, hash }: StoredEntry): Insertable<EntryTable> {
  return {
    id: envelope.id,
    kitchen_id: envelope.kitchenId,
    device_id: envelope.deviceId,
    device_seq: envelope.deviceSeq,
    prev_hash: envelope.prevHash,
    person_id: envelope.personId,
    kind: envelope.kind,
    kind_version: envelope.kindVersion,
    happened_at: envelope.happenedAt.instant,
    happened_zone: envelope.happenedAt.zone,
    written_at: envelope.writtenAt,
    body_hash: envelope.bodyHash,
    visibility: envelope.visibility,
    hash,
  }
}

function toEntry(row: Selectable<EntryTable> & { salt: string | null; value: string | null }): StoredEntry {
  const envelope = {
    id: row.id,
    kitchenId: row.kitchen_id,
    deviceId: row.device_id,
    deviceSeq: row.device_seq,
    prevHash: row.prev_hash,
    personId: row.person_id,
    kind: row.kind,
    kindVersion: row.kind_version,
    happenedAt: { instant: row.happened_at, zone: row.happened_zone },
    writtenAt: row.written_at,
    bodyHash: row.body_hash,
    visibility: row.visibility as Visibility,
  }
  const body = row.salt !== null && row.value !== null ? { salt: row.salt, value: parseValue(row.value) } : null
  return { envelope, hash: row.hash, body }
}

/** A damaged text is kept as text: its hash will not hold, so verify names it. */
function parseValue(text: string): Json {
  try {
    return JSON.parse(text) as Json
  } catch {
    return text
  }
}
