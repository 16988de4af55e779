/** Invitations: a secret in a link, good once and for a while. */
import type { Role } from '@crib/journal'
import type { SecretTables } from '@crib/journal/secrets'
import { hashOfSecret, newSecret } from './secrets.ts'

const HOUR_MS = 3_600_000

export interface Invitation {
  readonly invitationId: string
  /** Null: keeper of every kitchen in this book, who may open more; made at the machine itself alone. */
  readonly kitchenId: string | null
  readonly role: Role
  readonly expiresAtMs: number
}

export interface Invitations {
  /** The secret is given once, here; only its hash is kept. */
  make(
    about: { readonly kitchenId: string | null; readonly role: Role },
    hours: number,
  ): Promise<Invitation & { readonly secret: string }>
  /** Null when it is unknown, used, revoked or expired: those are not told apart. */
  look(secret: string): Promise<Invitation | null>
  /** Uses it up; null when somebody was faster. */
  take(secret: string): Promise<Invitation | null>
  /** What it was taken for did not happen. */
  giveBack(invitationId: string): Promise<void>
  /** Still to be used. */
  list(kitchenId: string): Promise<readonly Invitation[]>
  revoke(kitchenId: string, invitationId: string): Promise<boolean>
}

type Row = readonly [string, string | null, Role, number]
const COLUMNS = 'invitation_id, kitchen_id, role, expires_at'
const OPEN = 'used_at is null and revoked_at is null and expires_at > $2'

function invitationOf([invitationId, kitchenId, role, expiresAtMs]: Row): Invitation {
  return { invitationId, kitchenId, role, expiresAtMs }
}

export function createInvitations(tables: SecretTables, now: () => number, newId: () => string): Invitations {
  const first = (rows: readonly Row[]) => (rows[0] ? invitationOf(rows[0]) : null)
  return {
    async make({ kitchenId, role }, hours) {
      const secret = newSecret()
      const invitation = { invitationId: newId(), kitchenId, role, expiresAtMs: now() + hours * HOUR_MS }
      await tables.rows(
        `insert into person_invitation (invitation_id, secret_hash, kitchen_id, role, made_at, expires_at)
          values ($1, $2, $3, $4, $5, $6)`,
        [invitation.invitationId, hashOfSecret(secret), kitchenId, role, now(), invitation.expiresAtMs],
      )
      return { ...invitation, secret }
    },
    look: async (secret) =>
      first(
        await tables.rows<Row>(`select ${COLUMNS} from person_invitation where secret_hash = $1 and ${OPEN}`, [
          hashOfSecret(secret),
          now(),
        ]),
      ),
    take: async (secret) =>
      first(
        await tables.rows<Row>(
          `update person_invitation set used_at = $2 where secret_hash = $1 and ${OPEN} returning ${COLUMNS}`,
          [hashOfSecret(secret), now()],
        ),
      ),
    async giveBack(invitationId) {
      await tables.rows('update person_invitation set used_at = null where invitation_id = $1', [invitationId])
    },
    list: async (kitchenId) =>
      (
        await tables.rows<Row>(
          `select ${COLUMNS} from person_invitation where kitchen_id = $1 and ${OPEN} order by expires_at`,
          [kitchenId, now()],
        )
      ).map(invitationOf),
    async revoke(kitchenId, invitationId) {
      const rows = await tables.rows(
        `update person_invitation set revoked_at = $2 where invitation_id = $3 and kitchen_id = $1 and used_at is null
          and revoked_at is null returning invitation_id`,
        [kitchenId, now(), invitationId],
      )
      return rows.length > 0
    },
  }
}
