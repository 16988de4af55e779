/**
 * Tables of the PostgreSQL store, step by step. A step that has shipped is never edited; the next one is added. Every
 * table leads with the kitchen, and the three that grow with every line are cut into parts by it, so that a distributed
 * engine can lay each kitchen's rows together. No advisory locks, no notifications, no sequences.
 */
import type { PoolClient } from 'pg'
import { factTables, REFS_EITHER_WAY } from './fact-tables.ts'
import { StoreTrouble } from './trouble.ts'

/** Names compare byte by byte, as in every other store, whatever the language of the database. */
const TEXT = 'text collate "C"'
const PARTS_COUNT = 8

function inParts(table: string): string[] {
  return Array.from(
    { length: PARTS_COUNT },
    (_, part) =>
      `create table ${table}_${part} partition of ${table} for values with (modulus ${PARTS_COUNT}, remainder ${part})`,
  )
}

const KEEPS = ['entry', 'body', 'erasure'] as const
const REASONS = {
  entry: { update: 'entries are never changed', delete: 'entries are never removed' },
  body: { update: 'bodies are never changed', delete: 'a body goes only by erasing it' },
  erasure: { update: 'an erasure stays', delete: 'an erasure stays' },
} as const

const refusing = (table: (typeof KEEPS)[number], change: 'update' | 'delete'): string[] => {
  const unless = table === 'body' && change === 'delete'
  return [
    `create function ${table}_no_${change}() returns trigger language plpgsql as $$ begin
      ${unless ? 'if exists (select 1 from erasure x where x.kitchen_id = old.kitchen_id and x.arrival = old.arrival) then return old; end if;' : ''}
      raise exception '${REASONS[table][change]}'; end $$`,
    `create trigger ${table}_no_${change} before ${change} on ${table} for each row execute function ${table}_no_${change}()`,
  ]
}

const STEPS: readonly (readonly string[])[] = [
  [
    // One row a kitchen: the next arrival is taken from it under its lock, so arrivals become visible in their order.
    `create table kitchen (kitchen_id ${TEXT} primary key, last_arrival bigint not null, entry_count bigint not null)`,
    `create table entry (kitchen_id ${TEXT} not null, arrival bigint not null, id ${TEXT} not null, device_id ${TEXT} not null,
      device_seq bigint not null, prev_hash ${TEXT} not null, person_id ${TEXT} not null, kind ${TEXT} not null,
      kind_version integer not null, happened_at ${TEXT} not null, happened_zone ${TEXT} not null, written_at ${TEXT} not null,
      body_hash ${TEXT} not null, visibility ${TEXT} not null, hash ${TEXT} not null,
      primary key (kitchen_id, arrival), unique (kitchen_id, id), unique (kitchen_id, device_id, device_seq))
      partition by hash (kitchen_id)`,
    ...inParts('entry'),
    `create table body (kitchen_id ${TEXT} not null, arrival bigint not null, salt ${TEXT} not null, value ${TEXT} not null,
      primary key (kitchen_id, arrival)) partition by hash (kitchen_id)`,
    ...inParts('body'),
    `create table story (kitchen_id ${TEXT} not null, story ${TEXT} not null, arrival bigint not null,
      primary key (kitchen_id, story, arrival)) partition by hash (kitchen_id)`,
    ...inParts('story'),
    `create table erasure (kitchen_id ${TEXT} not null, arrival bigint not null, how ${TEXT} not null, primary key (kitchen_id, arrival))`,
    ...KEEPS.flatMap((table) => [...refusing(table, 'update'), ...refusing(table, 'delete')]),
    `create function no_truncate() returns trigger language plpgsql as $$ begin raise exception 'entries are never removed'; end $$`,
    ...KEEPS.map(
      (table) =>
        `create trigger ${table}_no_truncate before truncate on ${table} for each statement execute function no_truncate()`,
    ),
    ...factTables({ text: TEXT, big: 'bigint' }),
  ],
  REFS_EITHER_WAY,
]

const FIRST = [
  'create table if not exists book_schema (only_row integer primary key check (only_row = 1), step integer not null)',
  'insert into book_schema (only_row, step) values (1, 0) on conflict (only_row) do nothing',
]

/**
 * Brings the tables to this version. Several servers may start at once: the row of `book_schema` is their lock.
 *
 * @throws {StoreTrouble} `newer-version` when they were made by a newer program; nothing is changed then.
 */
export async function migratePostgres(client: PoolClient, where: string): Promise<void> {
  const found = await client
    .query<{ step: number }>(`select step from book_schema where to_regclass('book_schema') is not null`)
    .catch(() => null)
  const known = found?.rows[0]?.step
  if (known === STEPS.length) return
  if (known !== undefined && known > STEPS.length) throw newer(where, known)
  for (const sql of FIRST) await client.query(sql)
  await client.query('begin')
  try {
    const { rows } = await client.query<{ step: number }>('select step from book_schema where only_row = 1 for update')
    const from = rows[0]!.step
    if (from > STEPS.length) throw newer(where, from)
    for (const step of STEPS.slice(from)) for (const sql of step) await client.query(sql)
    await client.query('update book_schema set step = $1 where only_row = 1', [STEPS.length])
    await client.query('commit')
  } catch (cause) {
    await client.query('rollback')
    throw cause
  }
}

function newer(where: string, step: number): StoreTrouble {
  return new StoreTrouble('newer-version', where, `the tables are at step ${step}; this version knows ${STEPS.length}`)
}
