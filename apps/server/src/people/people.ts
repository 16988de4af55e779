/** Everything the doors ask about people, opened once. */
import { randomBytes } from 'node:crypto'
import { createId } from '@crib/journal'
import type { ServerStore } from '@crib/journal/open'
import type { SecretTables } from '@crib/journal/secrets'
import { type Accounts, createAccounts } from './accounts.ts'
import { createFeed, type Feed } from './feed.ts'
import { createInvitations, type Invitations } from './invitations.ts'
import { createMembership, type Membership } from './membership.ts'
import { createPasskeys, type Passkeys } from './passkeys.ts'
import { createSessions, type Sessions } from './sessions.ts'
import { createTryLimit, type TryLimit } from './try-limit.ts'

export interface People {
  /**
   * home: this machine alone, nothing to sign into. network: everybody signs in. hosted: so, behind a proxy that ends
   * TLS and tells the address and the protocol it was asked by.
   */
  readonly reach: Reach
  readonly store: ServerStore
  readonly accounts: Accounts
  readonly sessions: Sessions
  readonly invitations: Invitations
  readonly membership: Membership
  readonly passkeys: Passkeys
  readonly tryLimit: TryLimit
  readonly feed: Feed
  /** Where other devices of the house reach this server; null where only the page itself knows (behind a proxy). */
  address: string | null
  newId(): string
}

export type Reach = 'home' | 'network' | 'hosted'

export interface PeopleSetup {
  readonly reach: Reach
  readonly store: ServerStore
  readonly tables: SecretTables
  /** Milliseconds since 1970. */
  readonly now?: () => number
}

export function createPeople({ reach, store, tables, now = Date.now }: PeopleSetup): People {
  const random = { bytes: (count: number) => new Uint8Array(randomBytes(count)) }
  const newId = () => createId({ now }, random)
  const zone = Intl.DateTimeFormat().resolvedOptions().timeZone || 'UTC'
  return {
    reach,
    address: null,
    store,
    accounts: createAccounts(tables, now),
    sessions: createSessions(tables, now, newId),
    invitations: createInvitations(tables, now, newId),
    membership: createMembership({ store, tables, now, randomBytes: random.bytes, newId, zone }),
    passkeys: createPasskeys(tables, now, newId),
    tryLimit: createTryLimit(tables, now),
    feed: createFeed(store),
    newId,
  }
}
