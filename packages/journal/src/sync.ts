/**
 * Exchange between two books by cursor: push what the other has not acknowledged, pull what it has and we do not. Each
 * step may be repeated or cut off anywhere; entries are kept once. The other side is a small port, usually two HTTP
 * calls: POST entries, GET entries after a cursor.
 */
import { compareChain } from './chain.ts'
import type { StoredEntry } from './envelope.ts'
import type { AppendOutcome, EntryOutcome, JournalStore, ReadPage } from './store.ts'

/** The other book, as seen from here. */
export interface RemoteBook {
  push(entries: readonly StoredEntry[]): Promise<AppendOutcome>
  pull(query: { readonly kitchenId: string; readonly after: number }): Promise<ReadPage>
}

/** How far the exchange with one other book has come, for one kitchen. Plain JSON, kept by whoever exchanges. */
export interface SyncState {
  /** Our cursor: everything up to it is acknowledged by the other book. */
  readonly pushedUpTo: number
  /** Its cursor: everything up to it is kept here. */
  readonly pulledUpTo: number
}

export const NOTHING_EXCHANGED: SyncState = { pushedUpTo: 0, pulledUpTo: 0 }

export interface SyncReport {
  readonly state: SyncState
  readonly pushedCount: number
  /** Entries new here. */
  readonly pulled: readonly StoredEntry[]
  /** Refused by either side, with the reasons. The exchange stops before them and tries again next time. */
  readonly refused: readonly EntryOutcome[]
}

export interface SyncSetup {
  readonly store: JournalStore
  readonly remote: RemoteBook
  readonly kitchenId: string
  readonly state: SyncState
  /** Push this device's lines alone, as a browser does; without it everything is pushed. */
  readonly onlyDeviceId?: string
  /** Entries in one call. */
  readonly pageSize?: number
  /** Told after every page that is safe on both sides: kept, an exchange that was cut off goes on from there. */
  readonly onProgress?: (state: SyncState) => void | Promise<void>
}

/** Entries still to be handed over, in an order the other side can take: each chain from its beginning. */
export function unacknowledged(
  entries: readonly StoredEntry[],
  acknowledgedIds: ReadonlySet<string>,
): readonly StoredEntry[] {
  return entries
    .filter(({ envelope }) => !acknowledgedIds.has(envelope.id))
    .sort((a, b) => compareChain(a.envelope, b.envelope))
}

/** Ids the other side now keeps: taken just now or there before. */
export function acknowledgedBy({ results }: AppendOutcome): readonly string[] {
  return results.filter(({ outcome }) => outcome !== 'refused').map(({ id }) => id)
}

/**
 * One full exchange: push to the end, then pull to the end.
 *
 * @throws whatever the remote throws, for example when the network is away. What was exchanged until then is kept; the
 *   next exchange from the old state repeats some of it harmlessly.
 */
export async function exchange(setup: SyncSetup): Promise<SyncReport> {
  const push = await pushAll(setup)
  const pull = await pullAll({ ...setup, state: { ...setup.state, pushedUpTo: push.upTo } })
  return {
    state: { pushedUpTo: push.upTo, pulledUpTo: pull.upTo },
    pushedCount: push.count,
    pulled: pull.entries,
    refused: [...push.refused, ...pull.refused],
  }
}

const USUAL_PAGE = 500

async function pushAll({
  store,
  remote,
  kitchenId,
  state,
  onlyDeviceId,
  onProgress,
  pageSize = USUAL_PAGE,
}: SyncSetup) {
  let upTo = state.pushedUpTo
  let count = 0
  for (;;) {
    const page = await store.read({ kitchenId, after: upTo, limit: pageSize })
    if (page.entries.length === 0) return { upTo, count, refused: [] }
    const mine = page.entries.filter(({ envelope }) => !onlyDeviceId || envelope.deviceId === onlyDeviceId)
    const { results } = mine.length > 0 ? await remote.push(mine) : { results: [] }
    count += results.filter(({ outcome }) => outcome === 'accepted').length
    const refused = results.filter(({ outcome }) => outcome === 'refused')
    if (refused.length > 0) return { upTo, count, refused }
    upTo = page.next
    await onProgress?.({ ...state, pushedUpTo: upTo })
  }
}

async function pullAll({ store, remote, kitchenId, state, onProgress }: SyncSetup) {
  let upTo = state.pulledUpTo
  const entries: StoredEntry[] = []
  for (;;) {
    const page = await remote.pull({ kitchenId, after: upTo })
    if (page.entries.length === 0) return { upTo, entries, refused: [] }
    const { results } = await store.append(page.entries)
    entries.push(...page.entries.filter((_, i) => results[i]?.outcome === 'accepted'))
    const refused = results.filter(({ outcome }) => outcome === 'refused')
    if (refused.length > 0) return { upTo, entries, refused }
    upTo = page.next
    await onProgress?.({ ...state, pulledUpTo: upTo })
  }
}
