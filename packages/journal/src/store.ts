/** The store port: what every store of the book promises. Its rules are SPEC.md J30 on; one suite proves each store. */
import type { ChainReport, EntryFault } from './chain.ts'
import type { ChainHead, StoredEntry } from './envelope.ts'

export interface EntryOutcome {
  readonly id: string
  /** `already`: the same line is here, nothing changed. */
  readonly outcome: 'accepted' | 'already' | 'refused'
  /** Why, when refused. */
  readonly faults?: readonly EntryFault[]
}

export interface AppendOutcome {
  /** One for each entry handed in, in the same order. */
  readonly results: readonly EntryOutcome[]
}

export interface ReadQuery {
  readonly kitchenId: string
  /** Cursor from an earlier page; 0 or nothing reads from the beginning. */
  readonly after?: number
  /** At most so many entries; 1 to 10,000, usually 1,000. */
  readonly limit?: number
}

export interface ReadPage {
  /** In the order this store received them. */
  readonly entries: readonly StoredEntry[]
  /** Cursor for the next page; equal to `after` when nothing is left. */
  readonly next: number
}

export interface KitchenSummary {
  readonly kitchenId: string
  readonly entryCount: number
}

export interface JournalStore {
  /**
   * Keeps entries for good. Resolves only when every accepted one is on disk. Each entry stands for itself: a refused
   * one does not stop the rest, the order inside the batch does not matter, and handing one in twice changes nothing.
   */
  append(entries: readonly StoredEntry[]): Promise<AppendOutcome>
  read(query: ReadQuery): Promise<ReadPage>
  /** The last line of one device's chain in one kitchen; null before its first. */
  head(kitchenId: string, deviceId: string): Promise<ChainHead | null>
  kitchens(): Promise<readonly KitchenSummary[]>
  /**
   * Removes a body for good; its envelope stays. False when there is no such entry or it was erased before.
   *
   * @throws {RangeError} without `kitchenId`, when entries of two kitchens go by that id.
   */
  erase(entryId: string, kitchenId?: string): Promise<boolean>
  /** Reads every line and checks it. */
  verify(): Promise<ChainReport>
  close(): Promise<void>
}
