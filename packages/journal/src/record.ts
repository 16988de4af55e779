/** Writing straight into a store: reads where the chain stands, writes the next line, tries again if another took it. */
import { type AuthorSetup, createAuthor, type WriteOptions } from './author.ts'
import type { StoredEntry } from './envelope.ts'
import type { BodyOf, Kind } from './kinds/index.ts'
import type { EntryOutcome, JournalStore } from './store.ts'

export interface RecorderSetup extends Omit<AuthorSetup, 'head'> {
  readonly store: JournalStore
}

export interface Recorder {
  /**
   * Resolves with the line once it is on disk.
   *
   * @throws {BodyRefused} when the kind does not take the body.
   * @throws {Error} when the store refuses the line; the message names the faults.
   */
  record<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<StoredEntry>
}

/** Two writers of one device meet rarely (two terminals, two tabs without locks); each loses at most once a round. */
const MOST_TRIES = 20

export function createRecorder({ store, ...setup }: RecorderSetup): Recorder {
  async function record<K extends Kind>(kind: K, body: BodyOf<K>, options?: WriteOptions): Promise<StoredEntry> {
    let outcome: EntryOutcome | undefined
    for (let tries = 0; tries < MOST_TRIES; tries += 1) {
      const head = await store.head(setup.kitchenId, setup.deviceId)
      const entry = createAuthor({ ...setup, head }).write(kind, body, options)
      outcome = (await store.append([entry])).results[0]
      if (outcome?.outcome !== 'refused') return entry
      if (!outcome.faults?.every(({ code }) => code === 'fork')) break
    }
    throw new Error(`${kind} was not kept: ${JSON.stringify(outcome?.faults)}`)
  }
  return { record }
}
