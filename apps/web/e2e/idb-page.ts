/** Bundled by idb.test.ts into a page of its own: the browser's store and what writes to it, for a test to call by name. */
import { createAuthor, createId, createRecorder, type JournalStore, type StoredEntry } from '@crib/journal'
import { openIdbStore } from '@crib/journal/idb'
import { CLOCK, newId, oneTabOnly, RANDOM } from '../src/book/keeper.ts'
import { KITCHEN_ZONE } from './kitchen-day.ts'

const BOOK = 'e2e-book'
let store: Promise<JournalStore> | null = null

const bench = {
  open: async () => {
    store ??= openIdbStore(BOOK)
    return (await store).kitchens()
  },
  newId,
  /** Lines of one new device, written but not yet kept. */
  lines: (kitchenId: string, count: number): readonly StoredEntry[] => {
    const deviceId = createId(CLOCK, RANDOM)
    const author = createAuthor({
      kitchenId,
      deviceId,
      personId: newId(),
      head: null,
      clock: CLOCK,
      random: RANDOM,
      zone: KITCHEN_ZONE,
    })
    return Array.from({ length: count }, () => author.write('standing-read', standing()))
  },
  append: async (entries: readonly StoredEntry[]) => (await opened()).append(entries),
  readAll: async (kitchenId: string) => (await (await opened()).read({ kitchenId })).entries,
  erase: async (entryId: string) => (await opened()).erase(entryId),
  verify: async () => (await opened()).verify(),
  /** Writes as the book does: under the lock all tabs share, or without it as on plain HTTP. */
  record: async (kitchenId: string, deviceId: string, count: number, withLock: boolean) => {
    const recorder = createRecorder({
      store: await opened(),
      kitchenId,
      deviceId,
      personId: kitchenId,
      clock: CLOCK,
      random: RANDOM,
      zone: KITCHEN_ZONE,
    })
    const seqs: number[] = []
    for (let written = 0; written < count; written += 1) {
      const write = () => recorder.record('standing-read', standing())
      const entry = withLock ? await oneTabOnly('e2e-chain', write) : await write()
      seqs.push(entry.envelope.deviceSeq)
    }
    return seqs
  },
}

function opened(): Promise<JournalStore> {
  if (!store) throw new Error('the store is not open')
  return store
}

function standing() {
  return { readingId: newId(), seasonYear: 2026, edition: 'guidance-2026-11', food: 'ash-hominy' }
}

export type StoreBench = typeof bench

declare global {
  interface Window {
    storeBench: StoreBench
  }
}
window.storeBench = bench
