/** Tables of the embedded store, step by step. A step that has shipped is never edited; the next one is added. */
import { type Generated, type Kysely, sql } from 'kysely'
import type { Migration } from 'kysely/migration'

export interface EntryTable {
  /** Order of arrival here; the cursor of reads. */
  arrival: Generated<number>
  id: string
  kitchen_id: string
  device_id: string
  device_seq: number
  prev_hash: string
  person_id: string
  kind: string
  kind_version: number
  happened_at: string
  happened_zone: string
  written_at: string
  body_hash: string
  visibility: string
  hash: string
}

export interface BodyTable {
  entry_id: string
  salt: string
  /** Canonical JSON. */
  value: string
}

export interface ErasureTable {
  entry_id: string
  /** Erased `here`, or it `arrived` without its body. */
  how: string
}

export interface Tables {
  entry: EntryTable
  body: BodyTable
  erasure: ErasureTable
}

const STEPS: Record<string, Migration> = {
  '0001-entries': {
    async up(db: Kysely<unknown>) {
      await db.schema
        .createTable('entry')
        .addColumn('arrival', 'integer', (column) => column.primaryKey().autoIncrement())
        .addColumn('id', 'text', (column) => column.notNull().unique())
        .addColumn('kitchen_id', 'text', (column) => column.notNull())
        .addColumn('device_id', 'text', (column) => column.notNull())
        .addColumn('device_seq', 'integer', (column) => column.notNull())
        .addColumn('prev_hash', 'text', (column) => column.notNull())
        .addColumn('person_id', 'text', (column) => column.notNull())
        .addColumn('kind', 'text', (column) => column.notNull())
        .addColumn('kind_version', 'integer', (column) => column.notNull())
        .addColumn('happened_at', 'text', (column) => column.notNull())
        .addColumn('happened_zone', 'text', (column) => column.notNull())
        .addColumn('written_at', 'text', (column) => column.notNull())
        .addColumn('body_hash', 'text', (column) => column.notNull())
        .addColumn('visibility', 'text', (column) => column.notNull())
        .addColumn('hash', 'text', (column) => column.notNull())
        .addUniqueConstraint('entry_chain', ['kitchen_id', 'device_id', 'device_seq'])
        .execute()
      await db.schema.createIndex('entry_kitchen_arrival').on('entry').columns(['kitchen_id', 'arrival']).execute()
      await db.schema
        .createTable('body')
        .addColumn('entry_id', 'text', (column) => column.primaryKey().references('entry.id'))
        .addColumn('salt', 'text', (column) => column.notNull())
        .addColumn('value', 'text', (column) => column.notNull())
        .modifyEnd(sql`without rowid`)
        .execute()
      await db.schema
        .createTable('erasure')
        .addColumn('entry_id', 'text', (column) => column.primaryKey().references('entry.id'))
        .addColumn('how', 'text', (column) => column.notNull())
        .modifyEnd(sql`without rowid`)
        .execute()
      for (const trigger of TRIGGERS) await sql.raw(trigger).execute(db)
    },
  },
}

/** Append-only: the database itself refuses to change or drop a line, and a body goes only with its erasure told. */
const TRIGGERS = [
  `create trigger entry_keeps before update on entry begin select raise(abort, 'entries are never changed'); end`,
  `create trigger entry_stays before delete on entry begin select raise(abort, 'entries are never removed'); end`,
  `create trigger body_keeps before update on body begin select raise(abort, 'bodies are never changed'); end`,
  `create trigger body_stays before delete on body
    when not exists (select 1 from erasure where entry_id = old.entry_id)
    begin select raise(abort, 'a body goes only by erasing it'); end`,
  `create trigger erasure_keeps before update on erasure begin select raise(abort, 'an erasure stays'); end`,
  `create trigger erasure_stays before delete on erasure begin select raise(abort, 'an erasure stays'); end`,
]

export const MIGRATIONS = { getMigrations: async (): Promise<Record<string, Migration>> => STEPS }
