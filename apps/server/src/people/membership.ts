/**
 * Who has which standing in a kitchen, read from its entries, and the entries this server writes about it. The server is
 * a device of its own, with a chain of its own: it tells what it has itself seen (who was invited, who came, whose role
 * changed), and writes no line for anybody else's device.
 */
import {
  type BodyOf,
  createRecorder,
  type Member,
  type MemberLine,
  memberLines,
  memberStories,
  membersOf,
  type Standing,
} from '@crib/journal'
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
  const known = new Map<string, Known>()

  /** The first look reads the stories by name; every later one only what has arrived since, so it costs the same for all. */
  async function firstLook(kitchenId: string): Promise<Known> {
    const { upTo } = await store.facts.last(kitchenId)
    const filed = await store.facts.ofStories(kitchenId, memberStories(kitchenId), upTo)
    const lines = [...filed].sort((a, b) => a.arrival - b.arrival).map(({ line }) => line)
    return { upTo, lines, members: membersOf(lines) }
  }

  async function members(kitchenId: string): Promise<ReadonlyMap<string, Member>> {
    let kept = known.get(kitchenId) ?? (await firstLook(kitchenId))
    // Asked at every request: a role that changed a moment ago, on whichever server, counts at once.
    for (;;) {
      const { entries, next } = await store.read({ kitchenId, after: kept.upTo, limit: PAGE })
      if (entries.length === 0) break
      const told = memberLines(kitchenId, entries)
      const lines = told.length === 0 ? kept.lines : [...kept.lines, ...told]
      kept = { upTo: next, lines, members: told.length === 0 ? kept.members : membersOf(lines) }
    }
    known.delete(kitchenId)
    known.set(kitchenId, kept)
    if (known.size > MOST_KEPT) known.delete(known.keys().next().value!)
    return kept.members
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

interface Known {
  readonly upTo: number
  readonly lines: readonly MemberLine[]
  readonly members: ReadonlyMap<string, Member>
}

const MOST_KEPT = 1000
const PAGE = 5000
