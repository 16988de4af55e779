/** The embedded database. The only file that imports node:sqlite. */
import { accessSync, constants } from 'node:fs'
import { dirname } from 'node:path'
import { backup, DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite'
import type { SqliteDatabase, SqliteStatement } from 'kysely'
import { StoreTrouble, type TroubleCode } from './trouble.ts'

export interface OpenedDatabase {
  /** For the query builder that makes the tables. A thread that only reads does without it, and loads it not. */
  readonly forBuilder: SqliteDatabase
  /** Runs bare SQL, such as a pragma. */
  readonly exec: (sql: string) => void
  /** Rows as arrays, in the order of the columns selected. */
  all<Row>(sql: string, parameters?: readonly SQLInputValue[]): Row[]
  /** The id of the row just inserted. */
  run(sql: string, parameters: readonly SQLInputValue[]): number
  /** All or nothing. The write lock is taken before anything is read, so that no other process slips between. */
  transaction<T>(work: () => T): T
  /** Copies the whole database into a new file while it may go on being written. */
  copyTo(file: string): Promise<void>
  close(): void
}

export interface DatabaseOptions {
  /** The file may not grow beyond so many pages of 4,096 bytes: then it is as if the disk were full. */
  readonly mostPages?: number
}

/**
 * Opens or makes the file. Every commit is on disk before it returns: WAL with a full sync.
 *
 * @throws {StoreTrouble} when the file is no database, is damaged, or may not be written.
 */
export function openDatabase(file: string, { mostPages }: DatabaseOptions = {}): OpenedDatabase {
  const named = <T>(work: () => T): T => {
    try {
      return work()
    } catch (cause) {
      throw troubleOf(cause, file)
    }
  }
  const raw = named(() => {
    const opened = new DatabaseSync(file)
    try {
      opened.exec(`pragma busy_timeout = ${MOST_WAIT_MS}`)
      keepLog(opened)
      // secure_delete: an erased body's bytes are overwritten, not only unlinked.
      opened.exec(`pragma synchronous = full; pragma foreign_keys = on; pragma secure_delete = on;
        pragma cache_size = -32768; pragma wal_autocheckpoint = 4000; pragma journal_size_limit = ${LONGEST_LOG_BYTES}`)
      if (mostPages !== undefined) opened.exec(`pragma max_page_count = ${Math.floor(mostPages)}`)
      return opened
    } catch (cause) {
      opened.close()
      throw cause
    }
  })
  const statements = new Map<string, StatementSync>()
  const prepared = (sql: string): StatementSync => {
    let statement = statements.get(sql)
    if (!statement) {
      statement = raw.prepare(sql)
      statement.setReturnArrays(true)
      if (statements.size < MOST_CACHED) statements.set(sql, statement)
    }
    return statement
  }
  return {
    forBuilder: { close: () => raw.close(), prepare: (sql) => wrap(raw.prepare(sql)) },
    exec: (sql) => named(() => raw.exec(sql)),
    all: <Row>(sql: string, parameters: readonly SQLInputValue[] = []) =>
      named(() => prepared(sql).all(...parameters) as unknown as Row[]),
    run: (sql, parameters) => named(() => prepared(sql).run(...parameters).lastInsertRowid as number),
    transaction: (work) =>
      named(() => {
        prepared('begin immediate').run()
        try {
          const result = work()
          prepared('commit').run()
          return result
        } catch (cause) {
          // A full disk has rolled back by itself.
          if (raw.isTransaction) prepared('rollback').run()
          throw cause
        }
      }),
    copyTo: async (to) => {
      await backup(raw, to)
    },
    close: () => raw.close(),
  }
}

const MOST_CACHED = 200

/** A log that grew beyond is cut back to it once it has been emptied. */
const LONGEST_LOG_BYTES = 64 * 1024 * 1024

/** How long a lock that another program holds is waited for. [ms] */
const MOST_WAIT_MS = 10_000

/**
 * Turns the write-ahead log on. Of two programs that do so at once on a new file, SQLite tells one that it is busy
 * without waiting, for each may be waiting for the other: that one asks again.
 */
function keepLog(opened: DatabaseSync): void {
  const until = Date.now() + MOST_WAIT_MS
  for (;;) {
    try {
      opened.exec('pragma journal_mode = wal')
      return
    } catch (cause) {
      if (primaryCode(cause) !== BUSY || Date.now() > until) throw cause
      Atomics.wait(PAUSE, 0, 0, 5)
    }
  }
}

const BUSY = 5
const PAUSE = new Int32Array(new SharedArrayBuffer(4))

/** SQLite's own result codes (sqlite.org/rescode.html), the primary ones. */
const TROUBLES: { readonly [errcode: number]: TroubleCode } = {
  8: 'read-only',
  10: 'file-damaged', // reading or writing failed below the database
  11: 'file-damaged',
  13: 'disk-full',
  14: 'unreachable',
  26: 'file-damaged', // not a database
}

/** A place or an id that is taken. */
export function isConstraint(cause: unknown): boolean {
  return primaryCode(cause) === 19
}

function primaryCode(cause: unknown): number {
  return ((cause as { errcode?: number } | null)?.errcode ?? 0) % 256
}

function troubleOf(cause: unknown, file: string): unknown {
  // A number no column of ours ever held: the bytes under it are not what was written.
  const strange = (cause as { code?: string } | null)?.code === 'ERR_OUT_OF_RANGE'
  const code = strange ? 'file-damaged' : TROUBLES[primaryCode(cause)]
  if (code === undefined) return cause
  return new StoreTrouble(code === 'unreachable' && mayOnlyRead(file) ? 'read-only' : code, file, cause)
}

/** A log must be made beside the file even for reading it; in a folder that may not be written it cannot. */
function mayOnlyRead(file: string): boolean {
  try {
    accessSync(file, constants.R_OK)
  } catch {
    return false
  }
  try {
    accessSync(dirname(file), constants.W_OK)
    return false
  } catch {
    return true
  }
}

function wrap(statement: StatementSync): SqliteStatement {
  // A leading object would be taken as named parameters and stored as NULL without a word.
  const primitives = (parameters: readonly unknown[]): never[] => {
    for (const each of parameters) {
      if (typeof each === 'object' && each !== null) throw new TypeError('bind primitives only')
    }
    return parameters as never[]
  }
  return {
    reader: statement.columns().length > 0,
    all: (parameters) => statement.all(...primitives(parameters)),
    run: (parameters) => statement.run(...primitives(parameters)),
    iterate: (parameters) => statement.iterate(...primitives(parameters)),
  }
}
