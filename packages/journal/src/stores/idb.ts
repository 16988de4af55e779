/** The browser's store: IndexedDB, each append acknowledged only when its transaction has been written through. */
import { type DBSchema, type IDBPDatabase, openDB } from 'idb'
import { type ChainReport, type EntryFault, verifyChain } from '../chain.ts'
import type { Body, Envelope, StoredEntry } from '../envelope.ts'
import type { AppendOutcome, EntryOutcome, JournalStore, KitchenSummary } from '../store.ts'
import { admit, examine, inChainOrder, pageLimit, refusedAlone } from './admit.ts'

interface EntryRow {
  /** Given by the store, 1 and up. Counted here: not every browser indexes a number it made itself. */
  readonly arrival: number
  readonly envelope: Envelope
  readonly hash: string
}

interface Schema extends DBSchema {
  entry: {
    key: number
    value: EntryRow
    indexes: {
      id: string
      chain: [string, string, number]
      kitchen: [string, number]
    }
  }
  body: { key: string; value: Body & { readonly entryId: string } }
  erasure: { key: string; value: { readonly entryId: string; readonly how: 'here' | 'arrived' } }
}

const ALL = ['entry', 'body', 'erasure'] as const
const WRITTEN_THROUGH = { durability: 'strict' } as const

/** Opens the book called `name` in this browser, making it where there is none. */
export async function openIdbStore(name = 'book'): Promise<JournalStore> {
  const db = await openDB<Schema>(name, 1, {
    upgrade(fresh) {
      const entry = fresh.createObjectStore('entry', { keyPath: 'arrival' })
      entry.createIndex('id', 'envelope.id', { unique: true })
      const chain = ['envelope.kitchenId', 'envelope.deviceId', 'envelope.deviceSeq']
      entry.createIndex('chain', chain, { unique: true })
      entry.createIndex('kitchen', ['envelope.kitchenId', 'arrival'])
      fresh.createObjectStore('body', { keyPath: 'entryId' })
      fresh.createObjectStore('erasure', { keyPath: 'entryId' })
    },
    // A newer page wants to upgrade: let it.
    blocking: () => db.close(),
  })

  return {
    append: (entries) => append(db, entries),
    read: async ({ kitchenId, after = 0, limit }) => {
      const tx = db.transaction(ALL)
      const range = IDBKeyRange.bound([kitchenId, after], [kitchenId, Number.MAX_SAFE_INTEGER], true)
      const rows = await tx.objectStore('entry').index('kitchen').getAll(range, pageLimit(limit))
      const bodies = await Promise.all(rows.map((row) => tx.objectStore('body').get(row.envelope.id)))
      await tx.done
      return { entries: rows.map((row, i) => toEntry(row, bodies[i])), next: rows.at(-1)?.arrival ?? after }
    },
    head: async (kitchenId, deviceId) => {
      const tx = db.transaction('entry')
      const row = await lastOf(tx.objectStore('entry').index('chain'), kitchenId, deviceId)
      await tx.done
      return row ? { deviceSeq: row.envelope.deviceSeq, hash: row.hash, writtenAt: row.envelope.writtenAt } : null
    },
    kitchens: () => kitchens(db),
    erase: (entryId, kitchenId) => erase(db, entryId, kitchenId),
    verify: () => verify(db),
    close: async () => db.close(),
  }
}

async function append(db: IDBPDatabase<Schema>, entries: readonly StoredEntry[]): Promise<AppendOutcome> {
  const results: EntryOutcome[] = []
  const tx = db.transaction(ALL, 'readwrite', WRITTEN_THROUGH)
  const kept = tx.objectStore('entry')
  let arrival = (await kept.openKeyCursor(null, 'prev'))?.primaryKey ?? 0
  // Only database requests are awaited inside: anything else would let the transaction end early.
  for (const { entry: given, index } of inChainOrder(entries)) {
    const { fault: alone } = examine(given)
    if (alone) {
      results[index] = refusedAlone(alone)
      continue
    }
    const entry = given as StoredEntry
    const { id, kitchenId, deviceId, deviceSeq } = entry.envelope
    const sameId = await kept.index('id').get(id)
    const samePlace = await kept.index('chain').get([kitchenId, deviceId, deviceSeq])
    const last = await lastOf(kept.index('chain'), kitchenId, deviceId)
    const outcome = admit(entry, {
      sameIdHash: sameId?.hash ?? null,
      samePlaceId: samePlace?.envelope.id ?? null,
      head: last ? { deviceSeq: last.envelope.deviceSeq, hash: last.hash } : null,
    })
    results[index] = outcome
    if (outcome.outcome !== 'accepted') continue
    arrival += 1
    await kept.add({ arrival, envelope: entry.envelope, hash: entry.hash })
    if (entry.body) await tx.objectStore('body').add({ entryId: id, ...entry.body })
    else await tx.objectStore('erasure').add({ entryId: id, how: 'arrived' })
  }
  await tx.done
  return { results }
}

interface ChainIndex {
  openCursor(range: IDBKeyRange, direction: 'prev'): Promise<{ readonly value: EntryRow } | null>
}

async function lastOf(chain: ChainIndex, kitchenId: string, deviceId: string): Promise<EntryRow | null> {
  const range = IDBKeyRange.bound([kitchenId, deviceId, 0], [kitchenId, deviceId, Number.MAX_SAFE_INTEGER])
  return (await chain.openCursor(range, 'prev'))?.value ?? null
}

/** Steps from kitchen to kitchen by the index, counting each without reading its entries. */
async function kitchens(db: IDBPDatabase<Schema>): Promise<readonly KitchenSummary[]> {
  const found: KitchenSummary[] = []
  const tx = db.transaction('entry')
  const byKitchen = tx.objectStore('entry').index('kitchen')
  let cursor = await byKitchen.openKeyCursor()
  while (cursor) {
    const [kitchenId] = cursor.key
    const end: [string, number] = [kitchenId, Number.MAX_SAFE_INTEGER]
    found.push({ kitchenId, entryCount: await byKitchen.count(IDBKeyRange.bound([kitchenId, 0], end)) })
    cursor = await cursor.continue(end)
  }
  await tx.done
  return found
}

async function erase(db: IDBPDatabase<Schema>, entryId: string, kitchenId?: string): Promise<boolean> {
  const tx = db.transaction(ALL, 'readwrite', WRITTEN_THROUGH)
  // One browser keeps an id once, whichever kitchen it is of.
  const kept = kitchenId === undefined ? null : await tx.objectStore('entry').index('id').get(entryId)
  if (kept && kept.envelope.kitchenId !== kitchenId) return false
  const body = await tx.objectStore('body').getKey(entryId)
  if (body !== undefined) {
    await tx.objectStore('erasure').put({ entryId, how: 'here' })
    await tx.objectStore('body').delete(entryId)
  }
  await tx.done
  return body !== undefined
}

async function verify(db: IDBPDatabase<Schema>): Promise<ChainReport> {
  const tx = db.transaction(ALL)
  const rows = await tx.objectStore('entry').getAll()
  const bodies = new Map((await tx.objectStore('body').getAll()).map((body) => [body.entryId, body]))
  const erased = new Set(await tx.objectStore('erasure').getAllKeys())
  await tx.done
  const entries = rows.map((row) => toEntry(row, bodies.get(row.envelope.id)))
  const report = verifyChain(entries)
  const gone: EntryFault[] = entries
    .filter(({ envelope, body }) => body === null && !erased.has(envelope.id))
    .map(({ envelope: { id, deviceId, deviceSeq } }) => ({
      code: 'body-missing',
      entryId: id,
      deviceId,
      deviceSeq,
      detail: 'no erasure told',
    }))
  const faults = [...(report.ok ? [] : report.faults), ...gone]
  const { checkedCount, erasedCount } = report
  const counts = { checkedCount, erasedCount: erasedCount - gone.length }
  return faults.length === 0 ? { ok: true, ...counts } : { ok: false, ...counts, faults }
}

function toEntry({ envelope, hash }: EntryRow, body: Body | undefined): StoredEntry {
  return { envelope, hash, body: body ? { salt: body.salt, value: body.value } : null }
}
