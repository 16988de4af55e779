/** Connections to PostgreSQL. The only file that imports pg. */
import pg from 'pg'
import { StoreTrouble, type TroubleCode } from './trouble.ts'

const BIGINT = 20

/** Whole numbers as numbers: arrivals and counts stay far below 2^53. */
const types: pg.CustomTypesConfig = {
  getTypeParser: ((oid: number, format: 'text' | 'binary') =>
    oid === BIGINT ? Number : pg.types.getTypeParser(oid, format as 'text')) as typeof pg.types.getTypeParser,
}

export interface PostgresOptions {
  /** Most connections this program holds at once. */
  readonly poolSize?: number
}

export const USUAL_POOL_SIZE = 10

export function openPool(url: string, { poolSize = USUAL_POOL_SIZE }: PostgresOptions, onLost: () => void): pg.Pool {
  const pool = new pg.Pool({
    connectionString: url,
    max: poolSize,
    types,
    connectionTimeoutMillis: 10_000,
    // An acknowledged line is on disk, whatever the server's own habit.
    onConnect: async (client) => {
      await client.query('set synchronous_commit = on')
    },
  })
  // A connection that breaks while resting, or between two statements, is told here alone: without somebody who
  // listens it would end the program. The next statement opens another, or fails by name.
  pool.on('error', onLost)
  pool.on('connect', (client) => client.on('error', onLost))
  return pool
}

/** The address without its password. */
export function plainAddress(url: string): string {
  try {
    const parsed = new URL(url)
    parsed.password = ''
    return parsed.toString()
  } catch {
    return 'postgres'
  }
}

/** SQLSTATE classes (PostgreSQL documentation, appendix A). */
const TROUBLES: { readonly [state: string]: TroubleCode } = {
  '53100': 'disk-full',
  '25006': 'read-only',
  XX001: 'file-damaged',
  XX002: 'file-damaged',
  '57P01': 'unreachable',
  '57P02': 'unreachable',
  '57P03': 'unreachable',
}
const SOCKET = ['ECONNREFUSED', 'ECONNRESET', 'EPIPE', 'ENOENT', 'ETIMEDOUT', 'ENOTFOUND']

export function stateOf(cause: unknown): string {
  return String((cause as { code?: unknown })?.code ?? '')
}

export function postgresTrouble(cause: unknown, where: string): unknown {
  if (cause instanceof StoreTrouble) return cause
  const state = stateOf(cause)
  const lost =
    SOCKET.includes(state) ||
    state.startsWith('08') ||
    /Connection terminated|timeout exceeded|connection error|pool after calling end/.test(String(cause))
  const code = lost ? 'unreachable' : TROUBLES[state]
  return code === undefined ? cause : new StoreTrouble(code, where, cause)
}

/** Another transaction won; the same work may be tried again. */
export function mayTryAgain(cause: unknown): boolean {
  return ['40001', '40P01'].includes(stateOf(cause))
}

export function isTaken(cause: unknown): boolean {
  return stateOf(cause) === '23505'
}

/** Made by another server a moment ago: a table (42P07), or the type that comes with one (42710). */
export function isThereAlready(cause: unknown): boolean {
  return ['42P07', '42710'].includes(stateOf(cause))
}

export async function inTransaction<T>(pool: pg.Pool, work: (client: pg.PoolClient) => Promise<T>): Promise<T> {
  const client = await pool.connect()
  let broken: Error | undefined
  try {
    await client.query('begin')
    const result = await work(client)
    await client.query('commit')
    return result
  } catch (cause) {
    await client.query('rollback').catch((lost: Error) => {
      broken = lost
    })
    throw cause
  } finally {
    client.release(broken)
  }
}
