/** Which of the lines somebody brings may be written here. Each is judged by itself; the rest of a batch lands. */
import {
  actOfKind,
  type EntryFault,
  mayDo,
  type ReadingIndex,
  readsFrom,
  type Standing,
  type StoredEntry,
} from '@crib/journal'
import type { People } from './people.ts'
import type { Session } from './sessions.ts'

/** Why a line may not be written, one for each, null where it may. */
export async function faultsOfWriting(
  people: People,
  session: Session,
  entries: readonly StoredEntry[],
): Promise<readonly (EntryFault | null)[]> {
  const brought = new Set(entries.map(({ envelope }) => envelope.id))
  const faults: (EntryFault | null)[] = []
  const batch: Batch = {
    brought,
    founded: new Set(),
    standing: once((kitchenId) => people.membership.standing(kitchenId, session.personId)),
    index: once((kitchenId) => people.feed.index(kitchenId)),
  }
  for (const entry of entries) {
    const may = await mayWrite(people, session, entry, batch)
    faults.push(may ? null : { code: 'not-allowed', entryId: entry.envelope.id, detail: 'not yours to write here' })
  }
  return faults
}

interface Batch {
  /** Ids of the lines brought with it. */
  readonly brought: ReadonlySet<string>
  /** Kitchens that begin with this batch. */
  readonly founded: Set<string>
  standing(kitchenId: string): Promise<Standing>
  index(kitchenId: string): Promise<ReadingIndex>
}

/** Asked once for each kitchen of a batch, not for each line. */
function once<T>(ask: (kitchenId: string) => Promise<T>): (kitchenId: string) => Promise<T> {
  const asked = new Map<string, Promise<T>>()
  return (kitchenId) => {
    const known = asked.get(kitchenId) ?? ask(kitchenId)
    asked.set(kitchenId, known)
    return known
  }
}

async function mayWrite(people: People, session: Session, entry: StoredEntry, batch: Batch): Promise<boolean> {
  const { kitchenId, kind, personId, deviceId } = entry.envelope
  if (typeof kitchenId !== 'string' || typeof kind !== 'string') return true // the store says what is wrong with it
  if (batch.founded.has(kitchenId)) return true
  const standing = await batch.standing(kitchenId)
  if (standing === 'keeper') return true
  if (personId !== session.personId) return false
  if (kind === 'kitchen-opened' && session.mayOpen && (await isNew(people, kitchenId))) {
    batch.founded.add(kitchenId)
    return true
  }
  const act = actOfKind(kind)
  if (act === null || !mayDo(standing, act === 'amend' ? 'amend-own' : act)) return false
  const index = await batch.index(kitchenId)
  // A chain belongs to whoever began it; asking the store would tell how long it is.
  if ((index.personOfDevice(deviceId) ?? session.personId) !== session.personId) return false
  if (act !== 'amend') return true
  const target = targetOf(entry)
  if (target === null) return false
  const author = index.personOfLine(target)
  if (author === session.personId || (author === undefined && batch.brought.has(target))) return true
  const width = index.widthOfLine(target)
  return mayDo(standing, 'amend') && width !== undefined && width >= readsFrom(standing)
}

async function isNew({ store }: People, kitchenId: string): Promise<boolean> {
  return (await store.read({ kitchenId, limit: 1 })).entries.length === 0
}

function targetOf({ body }: StoredEntry): string | null {
  const { correctsId, withdrawsId } = (body?.value ?? {}) as { correctsId?: unknown; withdrawsId?: unknown }
  const target = correctsId ?? withdrawsId
  return typeof target === 'string' ? target : null
}
