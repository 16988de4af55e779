/** Who belongs to the kitchen. Secrets (passphrases, sessions, invitation codes) are never entries. */
import * as v from 'valibot'
import { ROLES } from '../people/roles.ts'
import { defineKind, id, maybe, name } from './kind.ts'

/** One story a kitchen, so that who belongs to it is read at once. */
const entity = (): string => 'people:members'

const role = () => v.picklist(ROLES)

export const personInvited = defineKind({
  kind: 'person-invited',
  version: 1,
  schema: v.strictObject({ invitationId: id(), role: role(), expiresAt: v.pipe(v.string(), v.isoTimestamp()) }),
  migrate: [],
  entity,
})

export const personJoined = defineKind({
  kind: 'person-joined',
  version: 1,
  schema: v.strictObject({ personId: id(), name: name(), role: role(), invitationId: maybe(id()) }),
  migrate: [],
  entity,
})

export const roleChanged = defineKind({
  kind: 'role-changed',
  version: 1,
  schema: v.strictObject({ personId: id(), role: role() }),
  migrate: [],
  entity,
})

export const personLeft = defineKind({
  kind: 'person-left',
  version: 1,
  schema: v.strictObject({ personId: id(), reason: maybe(name()) }),
  migrate: [],
  entity,
})
