/** Names and passphrases of the people who sign in here. What each may do is told by the entries of each kitchen. */
import type { SecretTables } from '@crib/journal/secrets'
import { hashOfPassphrase, isPassphrase, nameKey } from './secrets.ts'

export interface Account {
  readonly personId: string
  readonly name: string
}

export interface Accounts {
  /** Null when the name is taken. Without a passphrase the account is entered by passkey alone. */
  make(account: Account & { readonly mayOpen: boolean }, passphrase: string | null): Promise<Account | null>
  /** Null when name and passphrase do not belong together; as slow for a name nobody has. */
  check(name: string, passphrase: string): Promise<Account | null>
  find(personId: string): Promise<Account | null>
  letOpen(personId: string): Promise<void>
  remove(personId: string): Promise<void>
  count(): Promise<number>
}

export function createAccounts(tables: SecretTables, now: () => number): Accounts {
  return {
    async make({ personId, name, mayOpen }, passphrase) {
      const kept = passphrase === null ? null : await hashOfPassphrase(passphrase)
      const rows = await tables.rows(
        `insert into person_account (person_id, name, name_key, passphrase_hash, may_open, made_at)
          values ($1, $2, $3, $4, $5, $6) on conflict (name_key) do nothing returning person_id`,
        [personId, name, nameKey(name), kept, mayOpen ? 1 : 0, now()],
      )
      return rows.length > 0 ? { personId, name } : null
    },
    async check(name, passphrase) {
      const [row] = await tables.rows<[string, string, string | null]>(
        'select person_id, name, passphrase_hash from person_account where name_key = $1',
        [nameKey(name)],
      )
      const fits = await isPassphrase(row?.[2] ?? null, passphrase)
      return row && fits ? { personId: row[0], name: row[1] } : null
    },
    async find(personId) {
      const [row] = await tables.rows<[string, string]>(
        'select person_id, name from person_account where person_id = $1',
        [personId],
      )
      return row ? { personId: row[0], name: row[1] } : null
    },
    async letOpen(personId) {
      await tables.rows('update person_account set may_open = 1 where person_id = $1', [personId])
    },
    async remove(personId) {
      await tables.rows('delete from person_account where person_id = $1', [personId])
    },
    async count() {
      const [row] = await tables.rows<[number]>('select count(*) from person_account')
      return Number(row?.[0] ?? 0)
    },
  }
}
