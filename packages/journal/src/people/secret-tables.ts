/**
 * Where secrets lie: hashes of passphrases, sessions, invitations, passkeys. In tables of their own, in a file beside the
 * book or in the same PostgreSQL, and never among the entries: they are not part of anybody's record and do not travel
 * with it. Leaves out what the rows mean (apps/server/src/people).
 */
import { dirname, join } from 'node:path'
import { openDatabase } from '../stores/sqlite-driver.ts'
import { StoreTrouble } from '../stores/trouble.ts'

export type SecretValue = string | number | null

export interface SecretTables {
  /**
   * Runs one statement; the rows it gives, columns in their order. `$1`, `$2` ... stand for the values. Each statement is
   * on disk when it resolves, and is all or nothing.
   */
  rows<Row extends readonly SecretValue[]>(sql: string, values?: readonly SecretValue[]): Promise<readonly Row[]>
  close(): Promise<void>
}

/** Tables are brought forward step by step; a step that has shipped is never edited. The same words for both engines. */
const STEPS: readonly (readonly string[])[] = [
  [
    `create table person_account (person_id text primary key, name text not null, name_key text not null unique,
      passphrase_hash text, may_open integer not null, made_at bigint not null)`,
    `create table person_passkey (credential_id text primary key, person_id text not null, public_key text not null,
      counter bigint not null, transports text not null, made_at bigint not null)`,
    `create table person_invitation (invitation_id text primary key, secret_hash text not null unique, kitchen_id text,
      role text not null, made_at bigint not null, expires_at bigint not null, used_at bigint, revoked_at bigint)`,
    `create table person_session (session_id text primary key, token_hash text not null unique, person_id text not null,
      device_words text not null, made_at bigint not null, seen_at bigint not null, expires_at bigint not null, revoked_at bigint)`,
    'create index person_session_person on person_session (person_id)',
    'create table person_try (who text primary key, since bigint not null, tries integer not null)',
    `create table person_challenge (challenge_id text primary key, challenge text not null, about text not null,
      expires_at bigint not null)`,
    // A hint, which kitchens to look in; the standing itself is read from the entries.
    `create table person_seat (person_id text not null, kitchen_id text not null, primary key (person_id, kitchen_id))`,
    'create table person_house (only_row integer primary key, device_id text not null)',
  ],
]

function isAddress(where: string): boolean {
  return /^postgres(ql)?:\/\//.test(where)
}

/** Where the secrets of this book lie. */
export function secretsBeside(where: string): string {
  if (isAddress(where) || where === ':memory:') return where
  return join(dirname(where), 'people.sqlite')
}

/**
 * Opens the tables, making them where there are none.
 *
 * @throws {StoreTrouble} when they cannot be opened or were made by a newer version.
 */
export async function openSecretTables(where: string): Promise<SecretTables> {
  const tables = isAddress(where) ? await inPostgres(where) : inSqlite(where)
  try {
    await bringForward(tables, where)
  } catch (cause) {
    await tables.close()
    throw cause
  }
  return tables
}

interface SteppedTables extends SecretTables {
  /** Runs a step's statements, all or nothing, unless somebody else has. */
  step(number: number, statements: readonly string[]): Promise<void>
}

async function bringForward(tables: SteppedTables, where: string): Promise<void> {
  await tables.rows('create table if not exists person_schema (step integer primary key)').catch(async (cause) => {
    // Two servers made it at the same moment: then it is there.
    await tables.rows('select step from person_schema').catch(() => Promise.reject(cause))
  })
  const [row] = await tables.rows<[number | null]>('select max(step) from person_schema')
  const found = row?.[0] ?? 0
  if (found > STEPS.length) {
    throw new StoreTrouble('newer-version', where, `people's tables are at step ${found}; this knows ${STEPS.length}`)
  }
  for (let number = found + 1; number <= STEPS.length; number += 1) await tables.step(number, STEPS[number - 1]!)
}

function inSqlite(file: string): SteppedTables {
  const db = openDatabase(file)
  const rows = <Row extends readonly SecretValue[]>(sql: string, values: readonly SecretValue[] = []): Row[] => {
    const given: SecretValue[] = []
    const numbered = sql.replace(/\$(\d+)/g, (_, at: string) => {
      given.push(values[Number(at) - 1] ?? null)
      return '?'
    })
    return db.all<Row>(numbered, given)
  }
  return {
    rows: async (sql, values) => rows(sql, values),
    step: async (number, statements) =>
      db.transaction(() => {
        if (rows('select step from person_schema where step = $1', [number]).length > 0) return
        for (const sql of statements) db.exec(sql)
        rows('insert into person_schema (step) values ($1)', [number])
      }),
    close: async () => db.close(),
  }
}

async function inPostgres(url: string): Promise<SteppedTables> {
  // Only where it is used: a book in a file starts without it.
  const { inTransaction, openPool, postgresTrouble } = await import('../stores/postgres-pool.ts')
  const pool = openPool(url, { poolSize: 4 }, () => {})
  const named = async <T>(work: () => Promise<T>): Promise<T> => {
    try {
      return await work()
    } catch (cause) {
      throw postgresTrouble(cause, 'people')
    }
  }
  return {
    rows: async <Row extends readonly SecretValue[]>(sql: string, values: readonly SecretValue[] = []) =>
      named(
        async () => (await pool.query({ text: sql, values: [...values], rowMode: 'array' })).rows as unknown as Row[],
      ),
    step: (number, statements) =>
      named(() =>
        inTransaction(pool, async (client) => {
          await client.query('lock table person_schema in exclusive mode')
          const { rows } = await client.query('select step from person_schema where step = $1', [number])
          if (rows.length > 0) return
          for (const sql of statements) await client.query(sql)
          await client.query('insert into person_schema (step) values ($1)', [number])
        }),
      ),
    close: () => pool.end(),
  }
}
