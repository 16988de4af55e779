/** The door of books on disk: opens a file or an address of PostgreSQL, and one kitchen's facts in it. */
import { existsSync, mkdirSync } from 'node:fs'
import { dirname } from 'node:path'
import type { ServerStore } from '../server-store.ts'
import { openPostgresStore } from './postgres.ts'
import { openSqliteStore } from './sqlite.ts'

export type { ServerStore, StorageUse } from '../server-store.ts'
export { type Book, type ListPart, type ListQuery, openBook } from '../tables/book.ts'
export type { CaughtUp } from '../tables/catch-up.ts'
export { StoreTrouble, type TroubleCode } from './trouble.ts'

/** Whether `where` is an address of PostgreSQL rather than a file. */
export function isAddress(where: string): boolean {
  return /^postgres(ql)?:\/\//.test(where)
}

/**
 * Opens the book in a file or at a `postgres://` address, making it where there is none.
 *
 * @throws {StoreTrouble} when it cannot be opened, with the reason as its code.
 */
export async function openStore(where: string): Promise<ServerStore> {
  if (isAddress(where)) return await openPostgresStore(where)
  const folder = dirname(where)
  if (where !== ':memory:' && !existsSync(folder)) mkdirSync(folder, { recursive: true })
  return await openSqliteStore(where)
}
