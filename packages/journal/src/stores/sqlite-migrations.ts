/** Tables of the embedded store, step by step. A step that has shipped is never edited; the next one is added. */
import { type Kysely, sql } from 'kysely'
import type { Migration } from 'kysely/migration'
import { FACT_TABLES, REFS_EITHER_WAY } from './fact-tables.ts'
import { entryOf, READ_COLUMNS, type ReadRow, storyOf } from './rows.ts'

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
  // Bodies lie by order of arrival (one lookup less for each line read and written), an id is one kitchen's own, each
  // line is filed under its story, and facts are kept in tables.
  '0002-stories-and-facts': {
    async up(db: Kysely<unknown>) {
      const run = (text: string) => sql.raw(text).execute(db)
      for (const step of TO_0002) await run(step)
      await fileStories(db)
      for (const trigger of [...TRIGGERS.filter((each) => !each.includes(' on body')), ...BODY_TRIGGERS])
        await run(trigger)
      for (const table of FACT_TABLES) await run(table)
    },
  },
  '0003-references-either-way': {
    async up(db: Kysely<unknown>) {
      for (const step of REFS_EITHER_WAY) await sql.raw(step).execute(db)
    },
  },
}

const TO_0002 = [
  `create table entry_2 (arrival integer primary key, id text not null, kitchen_id text not null,
    device_id text not null, device_seq integer not null, prev_hash text not null, person_id text not null,
    kind text not null, kind_version integer not null, happened_at text not null, happened_zone text not null,
    written_at text not null, body_hash text not null, visibility text not null, hash text not null,
    unique (kitchen_id, id), unique (kitchen_id, device_id, device_seq))`,
  `insert into entry_2 select arrival, id, kitchen_id, device_id, device_seq, prev_hash, person_id, kind, kind_version,
    happened_at, happened_zone, written_at, body_hash, visibility, hash from entry order by arrival`,
  'create table body_2 (arrival integer primary key, salt text not null, value text not null)',
  'insert into body_2 select arrival, salt, value from body join entry on id = entry_id order by arrival',
  'create table erasure_2 (arrival integer primary key, how text not null)',
  'insert into erasure_2 select arrival, how from erasure join entry on id = entry_id order by arrival',
  'drop table body',
  'drop table erasure',
  'drop table entry',
  'alter table entry_2 rename to entry',
  'create table body (arrival integer primary key references entry, salt text not null, value text not null)',
  'insert into body select * from body_2',
  'drop table body_2',
  'create table erasure (arrival integer primary key references entry, how text not null)',
  'insert into erasure select * from erasure_2',
  'drop table erasure_2',
  'create index entry_kitchen_arrival on entry (kitchen_id, arrival)',
  `create table story (kitchen_id text not null, story text not null, arrival integer not null,
    primary key (kitchen_id, story, arrival)) without rowid`,
]

async function fileStories(db: Kysely<unknown>): Promise<void> {
  const { rows } = await sql
    .raw<Record<string, unknown>>(`select ${READ_COLUMNS} from entry e left join body b on b.arrival = e.arrival`)
    .execute(db)
  for (const row of rows) {
    const values = Object.values(row) as unknown as ReadRow
    await sql`insert into story values (${row.kitchen_id}, ${storyOf(entryOf(values))}, ${row.arrival})`.execute(db)
  }
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

const BODY_TRIGGERS = [
  TRIGGERS.find((each) => each.includes('body_keeps'))!,
  `create trigger body_stays before delete on body
    when not exists (select 1 from erasure where arrival = old.arrival)
    begin select raise(abort, 'a body goes only by erasing it'); end`,
]

export const MIGRATIONS = { getMigrations: async (): Promise<Record<string, Migration>> => STEPS }
