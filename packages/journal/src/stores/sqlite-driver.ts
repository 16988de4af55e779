/** The embedded database. The only file that imports node:sqlite. */
import { backup, DatabaseSync, type SQLInputValue, type StatementSync } from 'node:sqlite'
import { type SqliteDatabase, SqliteDialect, type SqliteStatement } from 'kysely'
import { StoreTrouble, type TroubleCode } from './trouble.ts'

export interface OpenedDatabase {
  /** For the query builder that makes the tables. */
  readonly dialect: SqliteDialect
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

/**
 * Opens or makes the file. Every commit is on disk before it returns: WAL with a full sync.
 *
 * @throws {StoreTrouble} when the file is no database, is damaged, or may not be written.
 */
export function openDatabase(file: string): OpenedDatabase {
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
      // secure_delete: an erased body's bytes are overwritten, not only unlinked.
      opened.exec(`pragma busy_timeout = 10000; pragma journal_mode = wal; pragma synchronous = full;
        pragma foreign_keys = on; pragma secure_delete = on; pragma cache_size = -32768;
        pragma wal_autocheckpoint = 4000`)
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
  const database: SqliteDatabase = { close: () => raw.close(), prepare: (sql) => wrap(raw.prepare(sql)) }
  return {
    dialect: new SqliteDialect({ database }),
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

/** SQLite's own result codes (sqlite.org/rescode.html), the primary ones. */
const TROUBLES: { readonly [errcode: number]: TroubleCode } = {
  8: 'read-only',
  10: 'file-damaged', // reading or writing failed below the database
  11: 'file-damaged',
  13: 'disk-full',
  14: 'unreachable',
  26: 'file-damaged', // not a database
}

export function isConstraint(cause: unknown): boolean {
  return ((cause as { errcode?: number })?.errcode ?? causeCode(cause)) % 256 === 19
}

function causeCode(cause: unknown): number {
  return ((cause as { cause?: { errcode?: number } })?.cause?.errcode ?? 0) % 256
}

function troubleOf(cause: unknown, file: string): unknown {
  const code = TROUBLES[((cause as { errcode?: number })?.errcode ?? 0) % 256]
  return code === undefined ? cause : new StoreTrouble(code, file, cause)
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
