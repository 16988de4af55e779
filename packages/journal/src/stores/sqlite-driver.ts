/** The embedded database behind the query builder. The only file that imports node:sqlite. */
import { DatabaseSync, type StatementSync } from 'node:sqlite'
import { type SqliteDatabase, SqliteDialect, type SqliteStatement } from 'kysely'

export interface OpenedDatabase {
  readonly dialect: SqliteDialect
  /** Runs bare SQL, such as a pragma. */
  readonly exec: (sql: string) => void
}

/** Opens or makes the file. Every commit is on disk before it returns: WAL with a full sync. */
export function openDatabase(file: string): OpenedDatabase {
  const raw = new DatabaseSync(file)
  // secure_delete: an erased body's bytes are overwritten, not only unlinked.
  raw.exec(`pragma busy_timeout = 10000; pragma journal_mode = wal; pragma synchronous = full;
    pragma foreign_keys = on; pragma secure_delete = on;`)
  const statements = new Map<string, SqliteStatement>()
  const database: SqliteDatabase = {
    close: () => raw.close(),
    prepare(sql) {
      let statement = statements.get(sql)
      if (!statement) {
        statement = wrap(raw.prepare(sql))
        if (statements.size < MOST_CACHED) statements.set(sql, statement)
      }
      return statement
    },
  }
  return { dialect: new SqliteDialect({ database }), exec: (sql) => raw.exec(sql) }
}

const MOST_CACHED = 200

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
