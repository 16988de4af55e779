/**
 * Copies entries between this device and the house server, both ways, by cursor. Idempotent: whatever is sent twice is
 * already there. The store on each side checks every hash and chain.
 */
import type { AppendOutcome, JournalStore, KitchenSummary, ReadPage, StoredEntry } from '@crib/journal'
import type { Device } from './device.ts'

export interface HouseServer {
  push(entries: readonly StoredEntry[]): Promise<AppendOutcome>
  pull(kitchenId: string, after: number): Promise<ReadPage>
  kitchens(): Promise<readonly KitchenSummary[]>
}

export interface ExchangeResult {
  readonly pushedCount: number
  readonly pulledCount: number
  /** Entries the server did not take; they stay here and are sent again. */
  readonly refusedCount: number
}

const PAGE = 500

/** One exchange. Rejects when the server does not answer; what was acknowledged before that stays acknowledged. */
export async function exchange(
  store: JournalStore,
  device: Device,
  server: HouseServer,
  kitchenId: string,
): Promise<ExchangeResult> {
  let notes = await device.exchange(kitchenId)
  const onServerCount = (await server.kitchens()).find((kitchen) => kitchen.kitchenId === kitchenId)?.entryCount ?? 0
  // A server that holds less than it acknowledged has lost its book, or is another one: offer everything again.
  if (onServerCount < (await acknowledgedCount(store, kitchenId, notes.pushedTo))) notes = { pushedTo: 0, pulledTo: 0 }

  let pulledCount = 0
  for (let more = true; more; ) {
    const page = await server.pull(kitchenId, notes.pulledTo)
    if (page.entries.length > 0) {
      const { results } = await store.append(page.entries)
      pulledCount += results.filter(({ outcome }) => outcome === 'accepted').length
    }
    more = page.next > notes.pulledTo
    notes = { ...notes, pulledTo: page.next }
    await device.setExchange(kitchenId, notes)
  }

  let pushedCount = 0
  for (;;) {
    const { entries, next } = await store.read({ kitchenId, after: notes.pushedTo, limit: PAGE })
    if (entries.length === 0) return { pushedCount, pulledCount, refusedCount: 0 }
    const { results } = await server.push(entries)
    const refusedCount = results.filter(({ outcome }) => outcome === 'refused').length
    pushedCount += results.filter(({ outcome }) => outcome === 'accepted').length
    if (refusedCount > 0) return { pushedCount, pulledCount, refusedCount }
    notes = { ...notes, pushedTo: next }
    await device.setExchange(kitchenId, notes)
  }
}

async function acknowledgedCount(store: JournalStore, kitchenId: string, pushedTo: number): Promise<number> {
  if (pushedTo === 0) return 0
  const all = (await store.kitchens()).find((kitchen) => kitchen.kitchenId === kitchenId)?.entryCount ?? 0
  return all - (await countAfter(store, kitchenId, pushedTo, () => true))
}

/** Entries written on this device that the server has not acknowledged. */
export async function countPending(
  store: JournalStore,
  kitchenId: string,
  pushedTo: number,
  deviceId: string,
): Promise<number> {
  return countAfter(store, kitchenId, pushedTo, (entry) => entry.envelope.deviceId === deviceId)
}

async function countAfter(
  store: JournalStore,
  kitchenId: string,
  after: number,
  counts: (entry: StoredEntry) => boolean,
): Promise<number> {
  let counted = 0
  for (let cursor = after; ; ) {
    const { entries, next } = await store.read({ kitchenId, after: cursor })
    if (entries.length === 0) return counted
    counted += entries.filter(counts).length
    cursor = next
  }
}

/** The house server over HTTP: the address the screens came from. */
export const HTTP_SERVER: HouseServer = {
  push: (entries) => ask('/api/entries', { method: 'POST', body: JSON.stringify({ entries }) }),
  pull: (kitchenId, after) => ask(`/api/entries?kitchen=${kitchenId}&after=${after}`),
  kitchens: async () => (await ask<{ kitchens: readonly KitchenSummary[] }>('/api/kitchens')).kitchens,
}

const PATIENCE_MS = 10_000

async function ask<T>(address: string, init: RequestInit = {}): Promise<T> {
  const response = await fetch(address, {
    ...init,
    headers: { 'content-type': 'application/json' },
    signal: AbortSignal.timeout(PATIENCE_MS),
  })
  if (!response.ok) throw new Error(`${address} answered ${response.status}`)
  return response.json()
}
