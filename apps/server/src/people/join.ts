/** Taking up an invitation: a name and a passphrase of one's own, or the account one has, and a place in the kitchen. */
import type { Role } from '@crib/journal'
import type { Invitation } from './invitations.ts'
import type { People } from './people.ts'
import type { Session } from './sessions.ts'

export interface JoinAsked {
  readonly secret: string
  readonly name?: string | undefined
  readonly passphrase?: string | undefined
  /** In place of a passphrase, made for the person id this server gave when it was asked for. */
  readonly passkey?: { readonly personId: string; readonly origin: string; readonly answer: NewPasskey } | undefined
  /** Somebody who is signed in already joins as who they are. */
  readonly session: Session | null
}

export type NewPasskey = Parameters<People['passkeys']['keep']>[2]
export type JoinFault = 'invitation-gone' | 'name-taken' | 'name-missing' | 'passkey-not-taken'
export type Joined =
  | {
      readonly ok: true
      readonly personId: string
      readonly kitchens: readonly { readonly kitchenId: string; readonly role: Role }[]
    }
  | { readonly ok: false; readonly why: JoinFault }

export const JOIN_FAULT_STATUS = {
  'invitation-gone': 404,
  'name-taken': 409,
  'name-missing': 400,
  'passkey-not-taken': 400,
} as const

export async function join(people: People, asked: JoinAsked): Promise<Joined> {
  const { secret, name = '', passphrase, passkey, session } = asked
  // Looked at first: nobody without an invitation makes this machine work on a passphrase.
  if (!(await people.invitations.look(secret))) return { ok: false, why: 'invitation-gone' }
  if (!session && (name === '' || (passphrase === undefined && !passkey))) return { ok: false, why: 'name-missing' }
  const person = session ?? { personId: passkey?.personId ?? people.newId(), name }
  if (!session) {
    // A passkey is proved before anything is kept: the person id it names was given out with its challenge alone.
    if (passkey && !(await people.passkeys.keep(person, passkey.origin, passkey.answer))) {
      return { ok: false, why: 'passkey-not-taken' }
    }
    const made = await people.accounts.make({ ...person, mayOpen: false }, passkey ? null : passphrase!)
    if (!made) return { ok: false, why: 'name-taken' }
  }
  const invitation = await people.invitations.take(secret)
  if (!invitation) {
    if (!session) await people.accounts.remove(person.personId)
    return { ok: false, why: 'invitation-gone' }
  }
  try {
    return { ok: true, personId: person.personId, kitchens: await seat(people, person, invitation) }
  } catch (cause) {
    await people.invitations.giveBack(invitation.invitationId)
    if (!session) await people.accounts.remove(person.personId)
    throw cause
  }
}

async function seat(
  people: People,
  { personId, name }: { readonly personId: string; readonly name: string },
  { invitationId, kitchenId, role }: Invitation,
) {
  if (kitchenId === null) await people.accounts.letOpen(personId)
  const all = kitchenId === null ? await people.store.kitchens() : [{ kitchenId }]
  const kitchens: { kitchenId: string; role: Role }[] = []
  for (const each of all) {
    await people.membership.record(each.kitchenId, personId, 'person-joined', { personId, name, role, invitationId })
    await people.membership.giveSeat(personId, each.kitchenId)
    kitchens.push({ kitchenId: each.kitchenId, role })
  }
  return kitchens
}
