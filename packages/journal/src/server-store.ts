/** What a store on disk can do beyond the port: facts in tables, a look at one entry, storage use, a copy of itself. */
import type { StoredEntry } from './envelope.ts'
import type { JournalStore } from './store.ts'
import type { FactTables } from './tables/port.ts'

export interface StorageUse {
  readonly entryCount: number
  /** Everything the book takes on disk: entries, indexes, facts, what is being written. */
  readonly bytes: number
}

export interface ServerStore extends JournalStore {
  readonly engine: 'sqlite' | 'postgres'
  /** The file, or the address without its password. */
  readonly where: string
  readonly facts: FactTables
  entry(kitchenId: string, entryId: string): Promise<StoredEntry | null>
  storageUse(): Promise<StorageUse>
}
