/**
 * Who belongs to a kitchen, from its lines in the order they arrived. Corrections and withdrawals count for nothing
 * here: a role is changed by a new entry alone, so that nobody can widen their own by taking another's word back.
 */
import type { StoredEntry } from '../envelope.ts'
import type { LedgerLine } from '../fold/facts.ts'
import { placeEntry } from '../fold/ledger.ts'
import type { BodyOf } from '../kinds/index.ts'
import type { Role } from './roles.ts'

export interface Member {
  readonly personId: string
  /** Empty where only the entries say so much, for example of whoever opened the kitchen before anybody had a name. */
  readonly name: string
  /** Null once they have left. */
  readonly role: Role | null
  /** When the role was given. */
  readonly since: string
}

export type MemberLine = Pick<LedgerLine, 'kind' | 'personId' | 'instant' | 'body'>

/** The stories `membersOf` reads. */
export function memberStories(kitchenId: string): readonly string[] {
  return [`kitchen:${kitchenId}`, 'people:members']
}

/** What of these entries `membersOf` reads, in their order. */
export function memberLines(kitchenId: string, entries: readonly StoredEntry[]): readonly MemberLine[] {
  const stories = memberStories(kitchenId)
  return entries
    .map((entry) => placeEntry(entry))
    .flatMap(({ entity, line }) => (stories.includes(entity) ? [line] : []))
}

/** Whoever opened the kitchen is its first keeper. */
export function membersOf(lines: readonly MemberLine[]): ReadonlyMap<string, Member> {
  const members = new Map<string, Member>()
  const founding = lines.find(({ kind }) => kind === 'kitchen-opened')
  if (founding) {
    const { personId, instant } = founding
    members.set(personId, { personId, name: '', role: 'keeper', since: instant })
  }
  for (const { kind, instant, body } of lines) {
    if (body === null) continue
    if (kind === 'person-joined') {
      const { personId, name, role } = body as unknown as BodyOf<'person-joined'>
      members.set(personId, { personId, name, role, since: instant })
    } else if (kind === 'role-changed') {
      const { personId, role } = body as unknown as BodyOf<'role-changed'>
      const known = members.get(personId)
      if (known) members.set(personId, { ...known, role, since: instant })
    } else if (kind === 'person-left') {
      const { personId } = body as unknown as BodyOf<'person-left'>
      const known = members.get(personId)
      if (known) members.set(personId, { ...known, role: null, since: instant })
    }
  }
  return members
}
