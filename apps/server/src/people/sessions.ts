/** Who is signed in where. A session is 32 random bytes in a cookie; here lies only its hash. */
import type { SecretTables } from '@crib/journal/secrets'
import { hashOfSecret, newSecret } from './secrets.ts'

export const SESSION_DAYS = 90
const DAY_MS = 86_400_000
/** How fresh "last seen" is; writing it at every request would cost a sync to disk each time. */
const SEEN_EVERY_MS = 60 * 60_000
const DEVICE_WORDS_LENGTH = 160

export interface Session {
  readonly sessionId: string
  readonly personId: string
  readonly name: string
  /** May open a kitchen of their own in this book. */
  readonly mayOpen: boolean
}

export interface ListedSession {
  readonly sessionId: string
  /** What the browser says it is. */
  readonly deviceWords: string
  readonly madeAt: string
  readonly seenAt: string
  readonly expiresAt: string
}

export interface Sessions {
  /** The token for the cookie; it is shown once. */
  open(personId: string, deviceWords: string): Promise<{ readonly token: string; readonly expiresAtMs: number }>
  /** Null for a token that is unknown, expired or revoked. */
  find(token: string): Promise<Session | null>
  list(personId: string): Promise<readonly ListedSession[]>
  /** False when the person has no such session open. */
  revoke(personId: string, sessionId: string): Promise<boolean>
}

export function createSessions(tables: SecretTables, now: () => number, newId: () => string): Sessions {
  return {
    async open(personId, deviceWords) {
      const token = newSecret()
      const expiresAtMs = now() + SESSION_DAYS * DAY_MS
      await tables.rows(
        `insert into person_session (session_id, token_hash, person_id, device_words, made_at, seen_at, expires_at)
          values ($1, $2, $3, $4, $5, $5, $6)`,
        [newId(), hashOfSecret(token), personId, deviceWords.slice(0, DEVICE_WORDS_LENGTH), now(), expiresAtMs],
      )
      return { token, expiresAtMs }
    },
    async find(token) {
      const [row] = await tables.rows<[string, string, string, number, number]>(
        `select s.session_id, s.person_id, a.name, a.may_open, s.seen_at from person_session s
          join person_account a on a.person_id = s.person_id
          where s.token_hash = $1 and s.revoked_at is null and s.expires_at > $2`,
        [hashOfSecret(token), now()],
      )
      if (!row) return null
      const [sessionId, personId, name, mayOpen, seenAt] = row
      if (now() - seenAt > SEEN_EVERY_MS) {
        await tables.rows('update person_session set seen_at = $1 where session_id = $2', [now(), sessionId])
      }
      return { sessionId, personId, name, mayOpen: mayOpen === 1 }
    },
    async list(personId) {
      const rows = await tables.rows<[string, string, number, number, number]>(
        `select session_id, device_words, made_at, seen_at, expires_at from person_session
          where person_id = $1 and revoked_at is null and expires_at > $2 order by seen_at desc`,
        [personId, now()],
      )
      return rows.map(([sessionId, deviceWords, madeAt, seenAt, expiresAt]) => ({
        sessionId,
        deviceWords,
        madeAt: new Date(madeAt).toISOString(),
        seenAt: new Date(seenAt).toISOString(),
        expiresAt: new Date(expiresAt).toISOString(),
      }))
    },
    async revoke(personId, sessionId) {
      const rows = await tables.rows(
        `update person_session set revoked_at = $1 where session_id = $2 and person_id = $3 and revoked_at is null
          returning session_id`,
        [now(), sessionId, personId],
      )
      return rows.length > 0
    },
  }
}
