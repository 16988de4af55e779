/** The embedded store: one file, every acknowledged entry synced to disk. */
import { statSync } from 'node:fs'
import { Kysely, SqliteDialect } from 'kysely'
import { Migrator } from 'kysely/migration'
import { createVerifier } from '../chain.ts'
import type { ChainHead, StoredEntry } from '../envelope.ts'
import type { ServerStore } from '../server-store.ts'
import type { AppendOutcome, EntryOutcome, KitchenSummary, ReadPage, ReadQuery } from '../store.ts'
import { amendedStory } from '../tables/amended.ts'
import type { FactTables } from '../tables/port.ts'
import { admit, examine, inChainOrder, pageLimit, refusedAlone } from './admit.ts'
import { continues, createHeads, NOTHING_YET, type SeenHead } from './heads.ts'
import {
  ENTRY_COLUMNS,
  entryOf,
  entryValues,
  type KeepableEntry,
  READ_COLUMNS,
  type ReadRow,
  storyOf,
  systemSha256,
} from './rows.ts'
import type { SqlValue } from './sql-facts.ts'
import { type DatabaseOptions, isConstraint, type OpenedDatabase, openDatabase } from './sqlite-driver.ts'
import { BODIES, sqliteFacts } from './sqlite-facts.ts'
import { foldInLanes } from './sqlite-lanes.ts'
import { createLongLog } from './sqlite-log.ts'
import { MIGRATIONS } from './sqlite-migrations.ts'
import { StoreTrouble } from './trouble.ts'

export { defaultBookFile } from './book-file.ts'

export interface SqliteStore extends ServerStore {
  readonly engine: 'sqlite'
  /** Copies the book into a new file, whole and at one moment, while it may go on being written. */
  copyTo(file: string): Promise<void>
}

/**
 * Opens the book in `file`, making it where there is none; `:memory:` keeps nothing.
 *
 * Work on one file runs to its end without giving way, so within one program nothing reads a half-made append; between
 * programs the database's own lock does it.
 *
 * @throws {StoreTrouble} when the file is no database or is damaged, may not be written, or was made by a newer version.
 */
export async function openSqliteStore(file: string, options: DatabaseOptions = {}): Promise<SqliteStore> {
  const db = openDatabase(file, options)
  try {
    await migrate(db, file)
  } catch (cause) {
    db.close()
    throw cause
  }
  const heads = createHeads()
  const log = createLongLog(db, file)
  const facts: FactTables = {
    ...sqliteFacts(db),
    ...(file !== ':memory:' && { inLanes: (job, take) => log.during(() => foldInLanes(file, job, take)) }),
  }
  return {
    engine: 'sqlite',
    where: file,
    facts,
    append: async (entries) => append(db, heads, entries),
    read: async (query) => read(db, query),
    head: async (kitchenId, deviceId) => head(db, kitchenId, deviceId),
    kitchens: () => kitchens(db, facts),
    entry: async (kitchenId, entryId) => entry(db, kitchenId, entryId),
    verify: async () => verify(db),
    async erase(entryId, kitchenId) {
      const erased = db.transaction(() => erase(db, entryId, kitchenId))
      // The write-ahead log still holds the page with the body: fold it into the file and cut it off.
      if (erased) db.exec('pragma wal_checkpoint(truncate)')
      return erased
    },
    storageUse: async () => ({
      entryCount: db.all<[number]>('select count(*) from entry')[0]![0],
      bytes: [file, `${file}-wal`].reduce(
        (sum, each) => sum + (statSync(each, { throwIfNoEntry: false })?.size ?? 0),
        0,
      ),
    }),
    copyTo: (to) => db.copyTo(to),
    async close() {
      await log.settled()
      db.close()
    },
  }
}

async function migrate(db: OpenedDatabase, file: string): Promise<void> {
  const builder = new Kysely<unknown>({ dialect: new SqliteDialect({ database: db.forBuilder }) })
  const migrator = new Migrator({ db: builder, provider: MIGRATIONS, disableTransactions: true })
  await inTurn(file, async () => {
    // Another program may be opening the new file too: the second waits here and finds the tables made.
    db.exec('begin immediate')
    const { error } = await migrator.migrateToLatest()
    db.exec(error ? 'rollback' : 'commit')
    if (!error) return
    const newer = String(error).includes('previously executed migration')
    throw newer ? new StoreTrouble('newer-version', file, error) : error
  })
}

const openings = new Map<string, Promise<unknown>>()

/** Two openings of one file in this program: the second must not wait for the lock of the first without end. */
function inTurn<T>(file: string, work: () => Promise<T>): Promise<T> {
  const mine = (openings.get(file) ?? Promise.resolve()).then(work)
  const settled = mine.then(
    () => {},
    () => {},
  )
  openings.set(file, settled)
  settled.then(() => {
    if (openings.get(file) === settled) openings.delete(file)
  })
  return mine
}

const INSERT_ENTRY = `insert into entry (${ENTRY_COLUMNS.join(', ')}) values (${ENTRY_COLUMNS.map(() => '?').join(', ')})`

function append(
  db: OpenedDatabase,
  heads: ReturnType<typeof createHeads>,
  given: readonly StoredEntry[],
): AppendOutcome {
  const results: EntryOutcome[] = []
  const whole: (KeepableEntry & { readonly index: number })[] = []
  for (const { entry, index } of inChainOrder(given)) {
    const { fault, bodyText } = examine(entry, systemSha256)
    if (fault) results[index] = refusedAlone(fault)
    else whole.push({ entry: entry as StoredEntry, bodyText, index })
  }
  if (whole.length === 0) return { results }
  const now = new Map<string, SeenHead>() // heads as this transaction leaves them
  db.transaction(() => {
    for (const { index, ...each } of whole) results[index] = keep(db, each, now, heads.of(each.entry))
  })
  for (const { entry, index } of whole) if (results[index]!.outcome === 'accepted') heads.saw(entry)
  return { results }
}

function keep(
  db: OpenedDatabase,
  keepable: KeepableEntry,
  now: Map<string, SeenHead>,
  seen: SeenHead | undefined,
): EntryOutcome {
  const { entry } = keepable
  const { id, kitchenId, deviceId, deviceSeq } = entry.envelope
  const key = `${kitchenId} ${deviceId}`
  const last = now.get(key) ?? seen
  if (continues(entry, last) && insert(db, keepable)) {
    now.set(key, { deviceSeq, hash: entry.hash })
    return { id, outcome: 'accepted' }
  }
  const [same] = db.all<[string]>('select hash from entry where kitchen_id = ? and id = ?', [kitchenId, id])
  const [place] = db.all<[string]>('select id from entry where kitchen_id = ? and device_id = ? and device_seq = ?', [
    kitchenId,
    deviceId,
    deviceSeq,
  ])
  const outcome = admit(entry, {
    sameIdHash: same?.[0] ?? null,
    samePlaceId: place?.[0] ?? null,
    head: head(db, kitchenId, deviceId) ?? NOTHING_YET,
  })
  if (outcome.outcome !== 'accepted') return outcome
  insertSure(db, keepable)
  now.set(key, { deviceSeq, hash: entry.hash })
  return outcome
}

/** False when the place or the id is taken. */
function insert(db: OpenedDatabase, keepable: KeepableEntry): boolean {
  try {
    insertSure(db, keepable)
    return true
  } catch (cause) {
    if (isConstraint(cause)) return false
    throw cause
  }
}

function insertSure(db: OpenedDatabase, { entry, bodyText: value }: KeepableEntry): void {
  const arrival = db.run(INSERT_ENTRY, entryValues(entry))
  if (value === null) db.run(`insert into erasure (arrival, how) values (?, 'arrived')`, [arrival])
  else db.run('insert into body (arrival, salt, value) values (?, ?, ?)', [arrival, entry.body!.salt, value])
  db.run('insert into story (kitchen_id, story, arrival) values (?, ?, ?)', [
    entry.envelope.kitchenId,
    storyOf(entry),
    arrival,
  ])
}

function read(db: OpenedDatabase, { kitchenId, after = 0, limit }: ReadQuery): ReadPage {
  const rows = db.all<ReadRow>(
    `select ${READ_COLUMNS} from entry e ${BODIES} where e.kitchen_id = ? and e.arrival > ? order by e.arrival limit ?`,
    [kitchenId, after, pageLimit(limit)],
  )
  return { entries: rows.map(entryOf), next: rows.at(-1)?.[16] ?? after }
}

function entry(db: OpenedDatabase, kitchenId: string, entryId: string): StoredEntry | null {
  const [row] = db.all<ReadRow>(`select ${READ_COLUMNS} from entry e ${BODIES} where e.kitchen_id = ? and e.id = ?`, [
    kitchenId,
    entryId,
  ])
  return row ? entryOf(row) : null
}

function head(db: OpenedDatabase, kitchenId: string, deviceId: string): ChainHead | null {
  const [row] = db.all<[number, string, string]>(
    `select device_seq, hash, written_at from entry where kitchen_id = ? and device_id = ?
      order by device_seq desc limit 1`,
    [kitchenId, deviceId],
  )
  return row ? { deviceSeq: row[0], hash: row[1], writtenAt: row[2] } : null
}

/** Steps from kitchen to kitchen by the index instead of reading every line's. */
async function kitchens(db: OpenedDatabase, { last }: FactTables): Promise<readonly KitchenSummary[]> {
  const found: KitchenSummary[] = []
  for (let before = ''; ; ) {
    const [row] = db.all<[string]>('select kitchen_id from entry where kitchen_id > ? order by kitchen_id limit 1', [
      before,
    ])
    if (!row) return found
    before = row[0]
    found.push({ kitchenId: before, entryCount: (await last(before)).entryCount })
  }
}

function erase(db: OpenedDatabase, entryId: string, kitchenId: string | undefined): boolean {
  const rows = db.all<ReadRow>(
    `select ${READ_COLUMNS} from entry e join body b on b.arrival = e.arrival where e.id = ? ${kitchenId ? 'and e.kitchen_id = ?' : ''}`,
    kitchenId ? [entryId, kitchenId] : [entryId],
  )
  if (rows.length > 1) throw new RangeError(`${entryId} is in ${rows.length} kitchens; say which`)
  const [row] = rows
  if (!row) return false
  const entry = entryOf(row)
  const arrival = row[16]
  const kitchen = entry.envelope.kitchenId
  const story = storyOf(entry)
  db.run(`insert into erasure (arrival, how) values (?, 'here')`, [arrival])
  db.run('delete from body where arrival = ?', [arrival])
  db.run('delete from story where kitchen_id = ? and story = ? and arrival = ?', [kitchen, story, arrival])
  db.run('insert into story (kitchen_id, story, arrival) values (?, ?, ?)', [kitchen, 'unread', arrival])
  forgetFacts(db, kitchen, story, entryId)
  return true
}

/** What the body said goes from the facts too, at once; the next fold makes them anew without it. */
function forgetFacts(db: OpenedDatabase, kitchenId: string, story: string, entryId: string): void {
  const told = amendedStory(story, (id) => {
    const [row] = db.all<ReadRow>(`select ${READ_COLUMNS} from entry e ${BODIES} where e.kitchen_id = ? and e.id = ?`, [
      kitchenId,
      id,
    ])
    return row ? storyOf(entryOf(row)) : null
  })
  for (const each of new Set([...told, `entry:${entryId}`])) {
    db.run('delete from fact where kitchen_id = ? and fact_id = ?', [kitchenId, each.slice(each.indexOf(':') + 1)])
    db.run('delete from question where kitchen_id = ? and story = ?', [kitchenId, each])
    db.run('insert or ignore into stale_story (kitchen_id, story) values (?, ?)', [kitchenId, each])
  }
  db.run('insert or ignore into stale_story (kitchen_id, story) values (?, ?)', [kitchenId, `unread:${entryId}`])
  db.run('update fact_state set turn = turn + 1 where kitchen_id = ?', [kitchenId])
}

const VERIFY_AT_ONCE = 2000

function verify(db: OpenedDatabase) {
  const verifier = createVerifier(systemSha256)
  try {
    let place: readonly SqlValue[] = ['', '', 0]
    for (;;) {
      const rows = db.all<ReadRow>(
        `select ${READ_COLUMNS}, x.how from entry e ${BODIES} left join erasure x on x.arrival = e.arrival
          where (e.kitchen_id, e.device_id, e.device_seq) > (?, ?, ?)
          order by e.kitchen_id, e.device_id, e.device_seq limit ${VERIFY_AT_ONCE}`,
        [...place],
      )
      for (const row of rows) verifier.add(entryOf(row), row[17] !== null)
      const last = rows.at(-1)
      if (!last) break
      place = [last[1], last[2], last[3]]
    }
    for (const [said] of db.all<[string]>('pragma integrity_check')) if (said !== 'ok') verifier.damaged(said)
  } catch (cause) {
    if (!(cause instanceof StoreTrouble)) throw cause
    verifier.damaged(cause.message)
  }
  return verifier.report()
}
