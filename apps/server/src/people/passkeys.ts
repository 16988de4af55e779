/** Passkeys (WebAuthn): only where the page is a secure context. The library checks signatures; here lie keys and challenges. */
import type { SecretTables } from '@crib/journal/secrets'
import type {
  AuthenticationResponseJSON,
  PublicKeyCredentialCreationOptionsJSON,
  PublicKeyCredentialRequestOptionsJSON,
  RegistrationResponseJSON,
} from '@simplewebauthn/server'
import type { Account } from './accounts.ts'

/** The page's own address, such as `https://corn.example`. */
export type Origin = string

export interface Asked<Options> {
  readonly challengeId: string
  readonly options: Options
}

export interface Passkeys {
  askNew(person: Account, origin: Origin): Promise<Asked<PublicKeyCredentialCreationOptionsJSON>>
  /** False when the answer does not hold. */
  keep(
    person: Account,
    origin: Origin,
    answer: { readonly challengeId: string; readonly response: RegistrationResponseJSON },
  ): Promise<boolean>
  ask(origin: Origin): Promise<Asked<PublicKeyCredentialRequestOptionsJSON>>
  /** Whose passkey it is; null when the answer does not hold. */
  enter(
    origin: Origin,
    answer: { readonly challengeId: string; readonly response: AuthenticationResponseJSON },
  ): Promise<string | null>
}

const CHALLENGE_MS = 5 * 60_000
const RP_NAME = 'Kettle & Crib'
/** Loaded at first use: nobody needs it at home. */
const webauthn = () => import('@simplewebauthn/server')
const NOBODY_YET = 'nobody yet'

export function createPasskeys(tables: SecretTables, now: () => number, newId: () => string): Passkeys {
  async function keepChallenge(challenge: string, about: string): Promise<string> {
    const challengeId = newId()
    await tables.rows('delete from person_challenge where expires_at < $1', [now()])
    await tables.rows(
      'insert into person_challenge (challenge_id, challenge, about, expires_at) values ($1, $2, $3, $4)',
      [challengeId, challenge, about, now() + CHALLENGE_MS],
    )
    return challengeId
  }

  /** A challenge is good once. */
  async function takeChallenge(challengeId: string, about: string): Promise<string | null> {
    const [row] = await tables.rows<[string]>(
      `delete from person_challenge where challenge_id = $1 and about = $2 and expires_at > $3 returning challenge`,
      [challengeId, about, now()],
    )
    return row?.[0] ?? null
  }

  return {
    async askNew({ personId, name }, origin) {
      const kept = await tables.rows<[string]>('select credential_id from person_passkey where person_id = $1', [
        personId,
      ])
      const options = await (await webauthn()).generateRegistrationOptions({
        rpName: RP_NAME,
        rpID: hostOf(origin),
        userName: name,
        userDisplayName: name,
        userID: new TextEncoder().encode(personId),
        excludeCredentials: kept.map(([id]) => ({ id })),
        authenticatorSelection: { residentKey: 'required', userVerification: 'preferred' },
      })
      return { challengeId: await keepChallenge(options.challenge, personId), options }
    },
    async keep({ personId }, origin, { challengeId, response }) {
      const expectedChallenge = await takeChallenge(challengeId, personId)
      if (expectedChallenge === null) return false
      const checked = await (await webauthn())
        .verifyRegistrationResponse({
          response,
          expectedChallenge,
          expectedOrigin: origin,
          expectedRPID: hostOf(origin),
          requireUserVerification: false,
        })
        .catch(() => null)
      if (!checked?.verified) return false
      const { id, publicKey, counter, transports = [] } = checked.registrationInfo.credential
      const rows = await tables.rows(
        `insert into person_passkey (credential_id, person_id, public_key, counter, transports, made_at)
          values ($1, $2, $3, $4, $5, $6) on conflict (credential_id) do nothing returning credential_id`,
        [id, personId, Buffer.from(publicKey).toString('base64url'), counter, transports.join(' '), now()],
      )
      return rows.length > 0
    },
    async ask(origin) {
      const options = await (await webauthn()).generateAuthenticationOptions({
        rpID: hostOf(origin),
        userVerification: 'preferred',
      })
      return { challengeId: await keepChallenge(options.challenge, NOBODY_YET), options }
    },
    async enter(origin, { challengeId, response }) {
      const expectedChallenge = await takeChallenge(challengeId, NOBODY_YET)
      const [row] = await tables.rows<[string, string, number]>(
        'select person_id, public_key, counter from person_passkey where credential_id = $1',
        [String(response.id)],
      )
      if (expectedChallenge === null || !row) return null
      const [personId, publicKey, counter] = row
      const checked = await (await webauthn())
        .verifyAuthenticationResponse({
          response,
          expectedChallenge,
          expectedOrigin: origin,
          expectedRPID: hostOf(origin),
          credential: { id: response.id, publicKey: new Uint8Array(Buffer.from(publicKey, 'base64url')), counter },
          requireUserVerification: false,
        })
        .catch(() => null)
      if (!checked?.verified) return null
      await tables.rows('update person_passkey set counter = $1 where credential_id = $2', [
        checked.authenticationInfo.newCounter,
        response.id,
      ])
      return personId
    },
  }
}

function hostOf(origin: Origin): string {
  return new URL(origin).hostname
}
