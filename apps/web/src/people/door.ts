/** The house server's questions about people. Every call rejects with `PeopleRefused`, whose message is the server's sentence. */
import type { Role } from '@crib/journal'

export interface Me {
  /** False at home: nobody signs in. */
  readonly asks: boolean
  /** Where other devices reach the server; null where only this page knows. */
  readonly address: string | null
  readonly person: { readonly personId: string; readonly name: string; readonly mayOpen: boolean } | null
  readonly kitchens: readonly { readonly kitchenId: string; readonly role: Role }[]
}

export interface MemberListed {
  readonly personId: string
  readonly name: string
  readonly role: Role
}

export interface InvitationListed {
  readonly invitationId: string
  readonly role: Role
  readonly expiresAt: string
}

export interface DeviceListed {
  readonly sessionId: string
  readonly deviceWords: string
  readonly seenAt: string
  readonly here: boolean
}

export interface Joined {
  readonly personId: string
  readonly kitchens: readonly { readonly kitchenId: string; readonly role: Role }[]
}

/** `status` 0: the server did not answer. */
export class PeopleRefused extends Error {
  readonly status: number
  constructor(status: number, message: string) {
    super(message)
    this.name = 'PeopleRefused'
    this.status = status
  }
}

const PATIENCE_MS = 15_000

export async function askPeople<T>(path: string, body?: unknown): Promise<T> {
  const response = await fetch(`/api/people/${path}`, {
    ...(body !== undefined && {
      method: 'POST',
      body: JSON.stringify(body),
      headers: { 'content-type': 'application/json' },
    }),
    signal: AbortSignal.timeout(PATIENCE_MS),
  }).catch(() => null)
  if (!response) throw new PeopleRefused(0, '')
  const answer = await response.json().catch(() => ({}))
  if (!response.ok) throw new PeopleRefused(response.status, String(answer.error ?? response.status))
  return answer
}

export const askMe = () => askPeople<Me>('me')

export const membersOf = async (kitchenId: string) =>
  (await askPeople<{ readonly members: readonly MemberListed[] }>(`members?kitchen=${kitchenId}`)).members

/** Passkeys need a secure context and a name: an address made of numbers has none. */
export function passkeysWork(): boolean {
  const isNumbers = /^[\d.]+$|:/.test(location.hostname)
  return window.isSecureContext && !isNumbers && 'PublicKeyCredential' in window
}
