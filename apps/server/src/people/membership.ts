/**
 * Who has which standing in a kitchen, read from its entries, and the entries this server writes about it. The server is
 * a device of its own, with a chain of its own: it tells what it has itself seen (who was invited, who came, whose role
 * changed), and writes no line for anybody else's device.
 */
import { type BodyOf, createRecorder, type Member, memberStories, membersOf, type Standing } from '@crib/journal'
import type { ServerStore } from '@crib/journal/open'
import type { SecretTables } from '@crib/journal/secrets'

type MembershipKind = 'person-invited' | 'person-joined' | 'role-changed' | 'person-left'

export interface Membership {
  members(kitchenId: string): Promise<ReadonlyMap<string, Member>>
  standing(kitchenId: string, personId: string): Promise<Standing>
  /** Kitchens a person has, or had, a seat in. */
  seats(personId: string): Promise<readonly string[]>
  giveSeat(personId: string, kitchenId: string): Promise<void>
  /** Writes down what this server has seen. `personId`: whose doing it was; null for whoever sits at the machine. */
  record<K extends MembershipKind>(kitchenId: string, personId: string | null, kind: K, body: BodyOf<K>): Promise<void>
}

export interface MembershipSetup {
  readonly store: ServerStore
  readonly tables: SecretTables
  readonly now: () => number
  readonly randomBytes: (count: number) => Uint8Array
  readonly newId: () => string
  readonly zone: string
}

export function createMembership({ store, tables, now, randomBytes, newId, zone }: MembershipSetup): Membership {
  const known = new Map<string, { readonly upTo: number; readonly members: ReadonlyMap<string, Member> }>()

  async function members(kitchenId: string): Promise<ReadonlyMap<string, Member>> {
    // Asked at every request: a role that changed a moment ago, on whichever server, counts at once.
    const { upTo } = await store.facts.last(kitchenId)
    const kept = known.get(kitchenId)
    if (kept?.upTo === upTo) return kept.members
    const filed = await store.facts.ofStories(kitchenId, memberStories(kitchenId), upTo)
    const inOrder = [...filed].sort((a, b) => a.arrival - b.arrival).map(({ line }) => line)
    const read = { upTo, members: membersOf(inOrder) }
    known.set(kitchenId, read)
    if (known.size > MOST_KEPT) known.delete(known.keys().next().value!)
    return read.members
  }

  async function deviceId(): Promise<string> {
    await tables.rows(
      'insert into person_house (only_row, device_id) values (1, $1) on conflict (only_row) do nothing',
      [newId()],
    )
    const [row] = await tables.rows<[string]>('select device_id from person_house')
    return row![0]
  }

  return {
    members,
    async standing(kitchenId, personId) {
      return (await members(kitchenId)).get(personId)?.role ?? 'outsider'
    },
    async seats(personId) {
      const rows = await tables.rows<[string]>(
        'select kitchen_id from person_seat where person_id = $1 order by kitchen_id',
        [personId],
      )
      return rows.map(([kitchenId]) => kitchenId)
    },
    async giveSeat(personId, kitchenId) {
      await tables.rows('insert into person_seat (person_id, kitchen_id) values ($1, $2) on conflict do nothing', [
        personId,
        kitchenId,
      ])
    },
    async record(kitchenId, personId, kind, body) {
      const who = personId ?? (await members(kitchenId)).keys().next().value ?? (await deviceId())
      const recorder = createRecorder({
        store,
        kitchenId,
        deviceId: await deviceId(),
        personId: who,
        clock: { now },
        random: { bytes: randomBytes },
        zone,
      })
      // The household knows who belongs to it; a seed circle does not.
      await recorder.record(kind, body, { visibility: 'family' })
    },
  }
}

const MOST_KEPT = 1000
