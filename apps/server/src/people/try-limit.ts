/** How often a passphrase may be tried, for one name and from one address. Kept in the tables: servers share the count. */
import type { SecretTables } from '@crib/journal/secrets'
import { hashOfSecret } from './secrets.ts'

const WINDOW_MS = 15 * 60_000
export const TRIES_OF_NAME = 10
export const TRIES_OF_ADDRESS = 50

export interface TryLimit {
  /** Counts this try; false when there were too many. Asked before any work is done. */
  mayTry(nameKey: string, address: string): Promise<boolean>
  /** The passphrase was right: the name's count begins anew. */
  forget(nameKey: string): Promise<void>
}

export function createTryLimit(tables: SecretTables, now: () => number): TryLimit {
  const nameWho = (nameKey: string) => hashOfSecret(`name\n${nameKey}`)

  async function count(who: string): Promise<number> {
    const [row] = await tables.rows<[number]>(
      `insert into person_try (who, since, tries) values ($1, $2, 1) on conflict (who) do update set
        tries = case when person_try.since < $3 then 1 else person_try.tries + 1 end,
        since = case when person_try.since < $3 then $2 else person_try.since end returning tries`,
      [who, now(), now() - WINDOW_MS],
    )
    return row?.[0] ?? 0
  }

  return {
    async mayTry(nameKey, address) {
      const ofAddress = await count(hashOfSecret(`address\n${address}`))
      const ofName = await count(nameWho(nameKey))
      return ofAddress <= TRIES_OF_ADDRESS && ofName <= TRIES_OF_NAME
    },
    async forget(nameKey) {
      await tables.rows('delete from person_try where who = $1', [nameWho(nameKey)])
    },
  }
}
