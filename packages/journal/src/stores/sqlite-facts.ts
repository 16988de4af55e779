/** Facts in tables of the embedded store. */
import type { FactTables } from '../tables/port.ts'
import { type RowsChange, type SqlEngine, type SqlValue, sqlFacts } from './sql-facts.ts'
import type { OpenedDatabase } from './sqlite-driver.ts'

/** A body lies under its entry's arrival, whatever the kitchen. */
export const BODIES = 'left join body b on b.arrival = e.arrival'

export function sqliteFacts(db: OpenedDatabase): FactTables {
  return sqlFacts(engineOf(db), BODIES, '')
}

function engineOf(db: OpenedDatabase): SqlEngine {
  return {
    textList: '(select value from json_each(?))',
    all: async <Row>(sql: string, parameters: readonly SqlValue[]) => db.all<Row>(sql, parameters),
    changeIf: async (guard, changes) => {
      // Facts can be made anew from the entries: a power cut may take the last of them, so they need not wait for the disk.
      db.exec('pragma synchronous = normal')
      try {
        return db.transaction(() => {
          if (db.all(guard.sql, guard.parameters).length === 0) return false
          for (const change of changes) {
            const sql = rowSql(change)
            for (const row of change.rows) db.run(sql, row)
          }
          return true
        })
      } finally {
        db.exec('pragma synchronous = full')
      }
    },
  }
}

function rowSql({ does, table, columns, key }: RowsChange): string {
  if (does === 'remove') return `delete from ${table} where ${columns.map((column) => `${column} = ?`).join(' and ')}`
  const fields = columns.map(() => '?').join(', ')
  const others = key ? columns.filter((column) => !key.includes(column)) : []
  const meeting = key
    ? `(${key.join(', ')}) do update set ${others.map((column) => `${column} = excluded.${column}`).join(', ')}`
    : 'do nothing'
  return `insert into ${table} (${columns.join(', ')}) values (${fields}) on conflict ${meeting}`
}
