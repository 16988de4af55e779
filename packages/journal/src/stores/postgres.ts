/**
 * The store for a village or a region: one PostgreSQL database, several servers at once, no state in any of them. Lines
 * of one kitchen take their arrival from its row, under its lock, so a reader's cursor never passes a line that will
 * only become visible later; kitchens do not wait for each other.
 */
import type { Pool } from 'pg'
import { createVerifier } from '../chain.ts'
import type { StoredEntry } from '../envelope.ts'
import type { ServerStore } from '../server-store.ts'
import type { EntryOutcome } from '../store.ts'
import { examine, inChainOrder, pageLimit, refusedAlone } from './admit.ts'
import { createHeads } from './heads.ts'
import { appendToKitchen } from './postgres-append.ts'
import { erasePostgres } from './postgres-erase.ts'
import {
  inTransaction,
  isTaken,
  isThereAlready,
  mayTryAgain,
  openPool,
  type PostgresOptions,
  plainAddress,
  postgresTrouble,
} from './postgres-pool.ts'
import { migratePostgres } from './postgres-schema.ts'
import { entryOf, type KeepableEntry, READ_COLUMNS, type ReadRow, systemSha256 } from './rows.ts'
import { type RowsChange, type SqlEngine, type SqlValue, sqlFacts } from './sql-facts.ts'
import { StoreTrouble } from './trouble.ts'

export type { PostgresOptions } from './postgres-pool.ts'

export interface PostgresStore extends ServerStore {
  readonly engine: 'postgres'
}

const MOST_TRIES = 8

/**
 * Opens the book at `url`, making its tables where there are none.
 *
 * @throws {StoreTrouble} when nobody answers, or the tables were made by a newer version.
 */
export async function openPostgresStore(url: string, options: PostgresOptions = {}): Promise<PostgresStore> {
  const where = plainAddress(url)
  const heads = createHeads()
  // After a break the server may stand at an older moment (restored from a backup): look again.
  const pool = openPool(url, options, () => heads.forget())
  const tried = async <T>(work: () => Promise<T>): Promise<T> => {
    for (let tries = 1; ; tries += 1) {
      try {
        return await work()
      } catch (cause) {
        heads.forget()
        if (!mayTryAgain(cause) || tries >= MOST_TRIES) throw postgresTrouble(cause, where)
        await new Promise((resolve) => setTimeout(resolve, 2 ** tries))
      }
    }
  }
  try {
    await tried(() => migrateOnce(pool, where))
  } catch (cause) {
    await pool.end()
    throw cause
  }
  const rows = async <Row>(text: string, values: readonly SqlValue[]): Promise<Row[]> =>
    tried(async () => (await pool.query({ text, values: [...values], rowMode: 'array' })).rows as Row[])
  const keep = inBatches((kitchenId, entries) => tried(() => appendToKitchen(pool, heads, kitchenId, entries)))

  return {
    engine: 'postgres',
    where,
    facts: sqlFacts(engineOf(pool, rows, tried)),
    async append(given) {
      const results: EntryOutcome[] = []
      const byKitchen = new Map<string, (KeepableEntry & { readonly index: number })[]>()
      for (const { entry, index } of inChainOrder(given)) {
        const { fault, bodyText } = examine(entry, systemSha256)
        if (fault) {
          results[index] = refusedAlone(fault)
          continue
        }
        const { kitchenId } = (entry as StoredEntry).envelope
        const items = byKitchen.get(kitchenId) ?? []
        byKitchen.set(kitchenId, items)
        items.push({ entry: entry as StoredEntry, bodyText, index })
      }
      for (const [kitchenId, items] of byKitchen) {
        const outcomes = await keep(kitchenId, items)
        for (const [i, { index }] of items.entries()) results[index] = outcomes[i]!
      }
      return { results }
    },
    async read({ kitchenId, after = 0, limit }) {
      const found = await rows<ReadRow>(
        `select ${READ_COLUMNS} from entry e ${BODIES} where e.kitchen_id = $1 and e.arrival > $2
          order by e.arrival limit $3`,
        [kitchenId, after, pageLimit(limit)],
      )
      return { entries: found.map(entryOf), next: found.at(-1)?.[16] ?? after }
    },
    async head(kitchenId, deviceId) {
      const [row] = await rows<[number, string, string]>(
        `select device_seq, hash, written_at from entry where kitchen_id = $1 and device_id = $2
          order by device_seq desc limit 1`,
        [kitchenId, deviceId],
      )
      return row ? { deviceSeq: row[0], hash: row[1], writtenAt: row[2] } : null
    },
    async kitchens() {
      const found = await rows<[string, number]>(
        'select kitchen_id, entry_count from kitchen where entry_count > 0 order by 1',
        [],
      )
      return found.map(([kitchenId, entryCount]) => ({ kitchenId, entryCount }))
    },
    async entry(kitchenId, entryId) {
      const [row] = await rows<ReadRow>(
        `select ${READ_COLUMNS} from entry e ${BODIES} where e.kitchen_id = $1 and e.id = $2`,
        [kitchenId, entryId],
      )
      return row ? entryOf(row) : null
    },
    erase: (entryId, kitchenId) =>
      tried(() => inTransaction(pool, (client) => erasePostgres(client, entryId, kitchenId))),
    async verify() {
      const verifier = createVerifier(systemSha256)
      try {
        for (let place: readonly SqlValue[] = ['', '', 0]; ; ) {
          const found = await rows<ReadRow>(
            `select ${READ_COLUMNS}, x.how from entry e ${BODIES}
              left join erasure x on x.kitchen_id = e.kitchen_id and x.arrival = e.arrival
              where (e.kitchen_id, e.device_id, e.device_seq) > ($1, $2, $3)
              order by e.kitchen_id, e.device_id, e.device_seq limit 2000`,
            place,
          )
          for (const row of found) verifier.add(entryOf(row), row[17] !== null)
          const last = found.at(-1)
          if (!last) break
          place = [last[1], last[2], last[3]]
        }
      } catch (cause) {
        if (!(cause instanceof StoreTrouble) || cause.code !== 'file-damaged') throw cause
        verifier.damaged(cause.message)
      }
      return verifier.report()
    },
    async storageUse() {
      const [row] = await rows<[number, number]>(
        `select coalesce((select sum(entry_count) from kitchen), 0)::bigint,
          (select sum(pg_total_relation_size(c.oid)) from pg_class c
            where c.relkind in ('r', 'p') and pg_table_is_visible(c.oid) and c.relname ~ $1)::bigint`,
        ['^(kitchen|entry|body|story|erasure|fact|fact_state|question|story_ref|stale_story)(_[0-9]+)?$'],
      )
      return { entryCount: row![0], bytes: row![1] }
    },
    close: () => pool.end(),
  }
}

const BODIES = 'left join body b on b.kitchen_id = e.kitchen_id and b.arrival = e.arrival'

async function migrateOnce(pool: Pool, where: string): Promise<void> {
  const client = await pool.connect()
  try {
    for (let tries = 1; ; tries += 1) {
      try {
        return await migratePostgres(client, where)
      } catch (cause) {
        // Several servers making the very first table at one moment: a slower one meets the other's rows of the catalogue.
        if (!(isTaken(cause) || isThereAlready(cause)) || tries >= MOST_TRIES) throw cause
      }
    }
  } finally {
    client.release()
  }
}

type Keep = (kitchenId: string, entries: readonly KeepableEntry[]) => Promise<readonly EntryOutcome[]>

/**
 * Lines that arrive for a kitchen while its row is being written wait and are written together: they would only wait
 * for the row's lock otherwise, each holding a connection.
 */
function inBatches(keep: Keep): Keep {
  interface Waiting {
    readonly entries: readonly KeepableEntry[]
    done(outcomes: readonly EntryOutcome[]): void
    failed(cause: unknown): void
  }
  const waiting = new Map<string, Waiting[]>()

  async function work(kitchenId: string): Promise<void> {
    for (;;) {
      const taken = waiting.get(kitchenId) ?? []
      if (taken.length === 0) {
        waiting.delete(kitchenId)
        return
      }
      waiting.set(kitchenId, [])
      const entries = taken.flatMap((each) => each.entries)
      try {
        const outcomes = await keep(kitchenId, entries)
        let at = 0
        for (const each of taken) {
          each.done(outcomes.slice(at, at + each.entries.length))
          at += each.entries.length
        }
      } catch (cause) {
        for (const each of taken) each.failed(cause)
      }
    }
  }

  return (kitchenId, entries) =>
    new Promise((done, failed) => {
      const queue = waiting.get(kitchenId)
      if (queue) queue.push({ entries, done, failed })
      else {
        waiting.set(kitchenId, [{ entries, done, failed }])
        work(kitchenId)
      }
    })
}

function numbered(sql: string): string {
  let count = 0
  return sql.replace(/\?/g, () => {
    count += 1
    return `$${count}`
  })
}

function engineOf(
  pool: Pool,
  rows: <Row>(sql: string, values: readonly SqlValue[]) => Promise<Row[]>,
  tried: <T>(work: () => Promise<T>) => Promise<T>,
): SqlEngine {
  return {
    textList: '(select jsonb_array_elements_text(?::jsonb))',
    // After many lines at once (a move, a restore) the planner still believes the tables empty, and reads them whole.
    prepare: async () => {
      await pool.query('analyze entry, body, story').catch(() => {}) // a login without that right reads more slowly
    },
    all: (sql, parameters) => rows(numbered(sql), parameters),
    changeIf: (guard, changes) =>
      tried(() =>
        inTransaction(pool, async (client) => {
          const { rowCount } = await client.query(numbered(guard.sql), [...guard.parameters])
          if (rowCount === 0) return false
          for (const change of changes) await client.query(manySql(change), columnsOf(change))
          return true
        }),
      ),
  }
}

function columnsOf({ columns, rows }: RowsChange): SqlValue[][] {
  return columns.map((_, i) => rows.map((row) => row[i]!))
}

function manySql({ does, table, columns, bigs = [], key }: RowsChange): string {
  const given = columns.map((column, i) => `$${i + 1}::${bigs.includes(column) ? 'bigint' : 'text'}[]`).join(', ')
  const names = columns.join(', ')
  const from = `unnest(${given}) as given(${names})`
  if (does === 'remove') {
    return `delete from ${table} t using ${from} where ${columns.map((column) => `t.${column} = given.${column}`).join(' and ')}`
  }
  const others = key ? columns.filter((column) => !key.includes(column)) : []
  const meeting = key
    ? `(${key.join(', ')}) do update set ${others.map((column) => `${column} = excluded.${column}`).join(', ')}`
    : 'do nothing'
  return `insert into ${table} (${names}) select ${names} from ${from} on conflict ${meeting}`
}
